import { inWorkbook } from "./trouble";

/** The sheets and names of the workbook, by which it is known what formulas can read there. */
export interface WhatIsThere {
  readonly sheets: readonly string[];
  readonly names: readonly string[];
}

/** One sync. */
export async function whatIsThere(): Promise<WhatIsThere> {
  return inWorkbook(async (context) => {
    const { names, worksheets } = context.workbook;
    names.load("items/name");
    worksheets.load("items/name");
    await context.sync();
    return { sheets: worksheets.items.map(({ name }) => name), names: names.items.map(({ name }) => name) };
  });
}

/** The address of the selected cells with their sheet, such as `Rates!B2`. One sync. */
export async function selectedAddress(): Promise<string> {
  return inWorkbook(async (context) => {
    const selected = context.workbook.getSelectedRange();
    selected.load("address");
    await context.sync();
    return selected.address;
  });
}
