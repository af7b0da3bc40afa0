import { inTheWayWords } from "../../../../src/pane/inTheWayWords";
import { undoInsert } from "../../../../src/pane/undoInsert";
import type { Inserted, InsertedSheets } from "../../../../src/workbook/change/insert";
import type { Report } from "../bench";

export const done: Report = { done: true, text: "" };

/** What the pane makes of an insert. */
export async function said(what: string, inserted: Promise<Inserted>): Promise<Report> {
  const result = await inserted;
  if (result.done) return done;
  const { lead, things, instead } = inTheWayWords(result.inTheWay, what);
  const buttons = [instead, "On a new sheet", "Cancel"].filter(Boolean).map((button) => `[${button}]`);
  return { done: false, text: `${lead} ${things.join("; ")}. ${buttons.join(" ")}` };
}

export async function saidOfSheets(inserted: Promise<InsertedSheets>): Promise<Report> {
  await written(inserted);
  return done;
}

/** Fails the test where what has to be there first was not written. */
export async function written<T extends { readonly done: boolean }>(inserted: Promise<T>): Promise<T & { done: true }> {
  const result = await inserted;
  if (!result.done) throw new Error(`What comes first was not written: ${JSON.stringify(result)}`);
  return result as T & { done: true };
}

export async function saidOfTakeBack(id: string): Promise<Report> {
  return { done: true, text: await undoInsert(id) };
}
