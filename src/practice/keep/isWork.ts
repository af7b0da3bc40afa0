import type { KeptWorkbook } from "../browser/browserGrid";

/**
 * Whether what was kept is a workbook: it has sheets, in an order, each with its cells. The grid would make an empty
 * workbook of anything else, and that would then be kept in its place.
 */
export function isWork(kept: unknown): kept is KeptWorkbook {
  if (!isObject(kept)) return false;
  const { sheetOrder, sheets } = kept;
  if (!Array.isArray(sheetOrder) || sheetOrder.length === 0 || !isObject(sheets)) return false;
  return sheetOrder.every((id) => typeof id === "string" && Object.hasOwn(sheets, id) && isSheet(sheets[id]));
}

function isSheet(sheet: unknown): boolean {
  if (!isObject(sheet) || typeof sheet.name !== "string") return false;
  const { cellData = {} } = sheet;
  return (
    isObject(cellData) && Object.values(cellData).every((row) => isObject(row) && Object.values(row).every(isCell))
  );
}

/** A cell that was emptied may stay as null. */
const isCell = (cell: unknown): boolean => cell === null || cell === undefined || isObject(cell);

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
