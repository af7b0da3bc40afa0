import { fields } from "../quantities/bed/fields";
import { type BedForm, ways } from "../quantities/bed/form";
import { isObject } from "../sheets/kept";
import { draftKey } from "./draftPlace";
import type { StoredThing } from "./keep/stored";

/** The half-typed form outlives a closed pane, in the browser's own storage. */
export const draft: StoredThing<BedForm> = {
  key: draftKey,
  oldKey: "Bedrow.form.3",
  version: 1,
  read: formOf,
  // A bed of one pane and half of another's would be neither.
  join: (_there, _before, now) => now,
};

function formOf(content: unknown): BedForm | undefined {
  if (!isObject(content)) return undefined;
  const { name, way, typed, widths, points, cutOuts } = content;
  if (!isText(name) || !isWay(way) || !isObject(typed) || !Object.values(typed).every(isText)) return undefined;
  if (!isTexts(widths) || !isRows(points, 3) || !isRows(cutOuts, 4)) return undefined;
  const known = Object.entries(typed).filter(([key]) => Object.hasOwn(fields, key));
  return {
    name,
    way,
    typed: Object.fromEntries(known),
    widths,
    points: points as BedForm["points"],
    cutOuts: cutOuts as BedForm["cutOuts"],
  };
}

function isWay(value: unknown): value is BedForm["way"] {
  return isText(value) && Object.hasOwn(ways, value);
}

/** Far more than anyone types, so that what is no form does not keep the pane from coming up. */
const MOST_LINES = 5000;

function isTexts(value: unknown, length?: number): value is readonly string[] {
  return (
    Array.isArray(value) &&
    value.length <= MOST_LINES &&
    value.length === (length ?? value.length) &&
    value.every(isText)
  );
}

function isRows(value: unknown, length: number): value is readonly (readonly string[])[] {
  return Array.isArray(value) && value.length <= MOST_LINES && value.every((row) => isTexts(row, length));
}

function isText(value: unknown): value is string {
  return typeof value === "string";
}
