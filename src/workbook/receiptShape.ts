import { isObject } from "../sheets/kept";
import type { Area } from "../sheets/plan";
import type { PlaceBefore, Receipt, ReceiptPart } from "./receipt";

/*
 * Taking an insert back empties cells, so a receipt is believed only where all of it fits together: an area larger than
 * the formulas that were written there would empty what somebody else has typed.
 */

/** Whether a value is a receipt, whole and sound. */
export function isReceipt(value: unknown): value is Receipt {
  if (!isObject(value)) return false;
  const { title, parts } = value;
  return isText(title) && Array.isArray(parts) && parts.length > 0 && parts.every(isPart);
}

function isPart(value: unknown): value is ReceiptPart {
  if (!isObject(value)) return false;
  const { sheetId, area, names, before, formulas, pictures, newSheet } = value;
  return (
    isText(sheetId) &&
    isArea(area) &&
    isList(names, isText) &&
    isList(pictures, isText) &&
    typeof newSheet === "boolean" &&
    isTable(formulas, area, isCell) &&
    isBefore(before, area)
  );
}

function isArea(value: unknown): value is Area {
  if (!isObject(value)) return false;
  const { row, column, rows, columns } = value;
  return [row, column].every((place) => isWhole(place, 0)) && [rows, columns].every((size) => isWhole(size, 1));
}

function isBefore(value: unknown, area: Area): value is PlaceBefore {
  if (!isObject(value)) return false;
  const { columnWidths, widthsWritten, numberFormat, looks } = value;
  return (
    isList(columnWidths, isSize) &&
    columnWidths.length === area.columns &&
    (widthsWritten === undefined || (isList(widthsWritten, isSize) && widthsWritten.length === area.columns)) &&
    (numberFormat === undefined || isTable(numberFormat, area, isText)) &&
    (looks === undefined || isLooks(looks, area))
  );
}

function isLooks(value: unknown, area: Area): value is NonNullable<PlaceBefore["looks"]> {
  if (!isObject(value)) return false;
  const { distinct, cells } = value;
  if (!isList(distinct, isObject)) return false;
  return isTable(cells, area, (index) => isWhole(index, -1) && Number(index) < distinct.length);
}

/** Whether it has a row for each row of the area, and a cell for each of its columns. */
function isTable(value: unknown, { rows, columns }: Area, isRight: (cell: unknown) => boolean): boolean {
  return (
    Array.isArray(value) &&
    value.length === rows &&
    value.every((row) => Array.isArray(row) && row.length === columns && row.every(isRight))
  );
}

function isList<T>(value: unknown, isItem: (item: unknown) => item is T): value is readonly T[] {
  return Array.isArray(value) && value.every(isItem);
}

const isText = (value: unknown): value is string => typeof value === "string";
const isCell = (value: unknown): boolean => ["string", "number", "boolean"].includes(typeof value);
const isSize = (value: unknown): value is number => typeof value === "number" && value >= 0;
const isWhole = (value: unknown, least: number): boolean => Number.isSafeInteger(value) && Number(value) >= least;
