import { allRates, ratesSheet } from "../src/sheets/rates/ratesSheet";
import { cellAddress } from "../src/spreadsheet/areas";
import { insertPlan } from "../src/workbook/change/insert";

/** Puts the sheet of rates into the workbook, as the pane does, and says where it stands. */
export async function insertRates(): Promise<string> {
  const inserted = await insertPlan((at) => ratesSheet(at), { kind: "new sheet", name: "Rates" });
  if (!inserted.done) throw new Error("a new sheet is free");
  return inserted.sheetName;
}

/** Where on the sheet of rates, put at its first cell, the cell of a name is. */
export function rateAddress(name: string, wanted = allRates): string {
  const area = ratesSheet({ row: 0, column: 0 }, wanted).names?.find((one) => one.name === name)?.area;
  if (!area) throw new Error(`No rate has the name ${name}.`);
  return cellAddress(area);
}
