import { inTheWayWords } from "../../../../src/pane/inTheWayWords";
import { undoInsert } from "../../../../src/pane/undoInsert";
import type { Inserted, InsertedSheets } from "../../../../src/workbook/change/insert";
import type { Told } from "../bench";

export const done: Told = { done: true, text: "" };

/** What the pane makes of an insert. */
export async function said(what: string, inserted: Promise<Inserted>): Promise<Told> {
  const result = await inserted;
  if (result.done) return done;
  const { lead, things, instead } = inTheWayWords(result.inTheWay, what);
  const buttons = [instead, "On a new sheet", "Cancel"].filter(Boolean).map((button) => `[${button}]`);
  return { done: false, text: `${lead} ${things.join("; ")}. ${buttons.join(" ")}` };
}

export async function saidOfSheets(inserted: Promise<InsertedSheets>): Promise<Told> {
  await written(inserted);
  return done;
}

/** Fails the test where what has to be there first was not written. */
export async function written<T extends { readonly done: boolean }>(inserted: Promise<T>): Promise<T & { done: true }> {
  const result = await inserted;
  if (!result.done) throw new Error(`What comes first was not written: ${JSON.stringify(result)}`);
  return result as T & { done: true };
}

export async function saidOfTakeBack(id: string): Promise<Told> {
  return { done: true, text: await undoInsert(id) };
}
