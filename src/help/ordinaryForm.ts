import { nativeForms } from "../functions/native/forms";
import { must } from "../quantities/must";
import type { CellContent, Region } from "../sheets/plain/region";
import { toPlain } from "../sheets/plain/toPlain";
import { cellAddress } from "../spreadsheet/areas";
import type { Result } from "./calls";
import type { Example } from "./example";

/** An example as it is on a sheet: the cells it refers to, and beside them the call. */
export interface ExampleSheet {
  readonly cells: readonly (readonly CellContent[])[];
  /** Where the call stands. */
  readonly at: string;
}

/** Lays the cells of an example out as its formula refers to them, with the call in the column beside them. */
export function sheetOf({ formula, cells, firstCell }: Example): ExampleSheet {
  const skipped = Number(must(/\d+/.exec(firstCell ?? "A1") ?? undefined)[0]) - 1;
  const width = cells[0]?.length ?? 0;
  const rows: CellContent[][] = Array.from({ length: Math.max(1, skipped + cells.length) }, (_, row) => [
    ...(cells[row - skipped] ?? Array<CellContent>(width).fill("")),
    "",
    "",
  ]);
  const column = width === 0 ? 0 : width + 1;
  must(rows[0])[column] = formula;
  return { cells: rows, at: cellAddress({ row: 0, column }) };
}

/**
 * The example in ordinary formulas, as a copy for others writes it; or why there is none.
 *
 * @param answer what the call gives, which is in the copy where it has no ordinary form.
 */
export function ordinaryForm(id: string, example: Example, answer: Result): { formula: string } | { none: string } {
  const form = nativeForms[id];
  if (!form) throw new Error(`${id} has neither a native form nor a reason for having none.`);
  if ("none" in form) return form;
  const { cells } = sheetOf(example);
  const isCall = (cell: CellContent) => cell === example.formula;
  const region: Region = {
    sheetName: "Example",
    row: 0,
    column: 0,
    formulas: cells,
    values: cells.map((row) => row.map((cell) => (isCall(cell) && typeof answer === "number" ? answer : cell))),
    formats: cells.map((row) => row.map(() => "General")),
  };
  const copied = must(toPlain(region).plan.formulas[0]).find((_, column) => isCall(must(must(cells[0])[column])));
  return { formula: String(copied) };
}
