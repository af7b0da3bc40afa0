import type { OpenGrid } from "./library";

/**
 * Has the grid carry out one of its commands on a sheet.
 *
 * @throws Error where the grid refuses it, which it otherwise does without a word.
 */
export function command(grid: OpenGrid, id: string, sheetId: string, parameters: object): void {
  const { injector, library, workbook } = grid;
  const done = injector.get(library.core.ICommandService).syncExecuteCommand(id, {
    unitId: workbook.getId(),
    subUnitId: sheetId,
    ...parameters,
  });
  if (!done) throw new Error(`The grid did not carry out ${id}.`);
}
