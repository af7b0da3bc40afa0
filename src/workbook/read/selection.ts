import type { Anchor } from "../../spreadsheet/areas";
import { inWorkbook } from "../failure";
import { anchorOf } from "./areas";

/**
 * Tells what is selected, now and whenever it changes. Where it changes faster than it can be read, as while an arrow
 * key is held down, only the last one is read.
 *
 * @param read reads what is wanted of the selection.
 * @param tell called with it; with undefined where it cannot be read: the selection may be a picture or a chart, which
 *   has no address, and that is no failure.
 * @returns stops it.
 */
export async function watchSelection<T>(
  read: () => Promise<T>,
  tell: (selected: T | undefined) => void,
): Promise<() => Promise<void>> {
  let reading = false;
  let again = false;
  const changed = async () => {
    again = true;
    if (reading) return;
    reading = true;
    while (again) {
      again = false;
      const selected = await read().catch(() => undefined);
      if (!again) tell(selected);
    }
    reading = false;
  };
  const registered = await inWorkbook(async (context) => {
    const result = context.workbook.onSelectionChanged.add(changed);
    await context.sync();
    return result;
  });
  await changed();
  return () =>
    inWorkbook(async () => {
      registered.remove();
      await registered.context.sync();
    });
}

/** The first selected cell, such as `Estimate!B4`. One request. */
export function selectedCell(): Promise<string> {
  return inWorkbook(async (context) => {
    const corner = context.workbook.getSelectedRange().getCell(0, 0);
    corner.load("address");
    await context.sync();
    return corner.address;
  });
}

/** The first selected cell, and its sheet by id and by name. One request. */
export async function selectedPlace(): Promise<{
  readonly sheetId: string;
  readonly sheetName: string;
  readonly at: Anchor;
}> {
  return inWorkbook(async (context) => {
    const corner = context.workbook.getSelectedRange().getCell(0, 0);
    corner.load("rowIndex,columnIndex");
    corner.worksheet.load("id,name");
    await context.sync();
    return { sheetId: corner.worksheet.id, sheetName: corner.worksheet.name, at: anchorOf(corner) };
  });
}

/** The sheets and names of the workbook: what formulas can read there. */
export interface SheetsAndNames {
  readonly sheets: readonly string[];
  readonly names: readonly string[];
}

/** One request. */
export async function sheetsAndNames(): Promise<SheetsAndNames> {
  return inWorkbook(async (context) => {
    const { names, worksheets } = context.workbook;
    names.load("items/name");
    worksheets.load("items/name");
    await context.sync();
    return { sheets: worksheets.items.map(({ name }) => name), names: names.items.map(({ name }) => name) };
  });
}

/** The address of the selected cells with their sheet, such as `Rates!B2`. One request. */
export async function selectedAddress(): Promise<string> {
  return inWorkbook(async (context) => {
    const selected = context.workbook.getSelectedRange();
    selected.load("address");
    await context.sync();
    return selected.address;
  });
}
