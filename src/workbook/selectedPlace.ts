import type { Anchor } from "../sheets/plan";
import { anchorOf } from "./place";
import { inWorkbook } from "./trouble";

/** The first selected cell, and its sheet by id and by name. One sync. */
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
