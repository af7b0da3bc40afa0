import { isObject } from "../../sheets/kept";
import type { Area } from "../../spreadsheet/areas";
import { inWorkbook } from "../failure";
import type { StyleBefore } from "../read/cellStyle";
import { type KeptText, queueReadKept, queueWriteKept } from "../settings/setting";

/** What was inserted last, kept with the workbook, so that it can be undone after a reload, too. */
export interface Receipt {
  /** Tells it from every other; left out by earlier versions. */
  readonly id?: string;
  readonly title: string;
  readonly parts: readonly ReceiptPart[];
}

/** One plan that was written. */
export interface ReceiptPart extends Written {
  readonly sheetId: string;
  /** The formulas as the host gave them back right after the write. */
  readonly formulas: readonly (readonly unknown[])[];
  /** The names of its pictures on the sheet. */
  readonly pictures: readonly string[];
}

/** What it takes to remove a plan that was written. */
export interface Written {
  readonly area: Area;
  /** Names of the workbook that came with it. */
  readonly names: readonly string[];
  /** How the place was before: what a write puts over blank cells. */
  readonly before: PlaceBefore;
  /** Whether the sheet was made for this. */
  readonly newSheet: boolean;
}

export interface PlaceBefore {
  readonly columnWidths: readonly number[];
  /** How wide the columns were once all was written; left out by earlier versions. */
  readonly widthsWritten?: readonly number[];
  /** Left out where no cell had a format. */
  readonly numberFormat?: readonly (readonly string[])[];
  /** The looks that occur, and which of them each cell has, -1 for none; left out where no cell had any. */
  readonly looks?: {
    readonly distinct: readonly StyleBefore[];
    readonly cells: readonly (readonly number[])[];
  };
}

export const RECEIPT: KeptText<Receipt> = {
  key: "Bedrow.lastInsert",
  version: 1,
  read: (content) => (isReceipt(content) ? content : undefined),
};

/**
 * Keeps a receipt in the place of the one before, whatever that was: there is one last insert, and a record of an
 * earlier one would undo the wrong insert. That of a later version goes, too; what it inserted stays on its sheet.
 */
export function queueReceipt(context: Excel.RequestContext, receipt: Receipt): void {
  queueWriteKept(context, RECEIPT, receipt);
}

/** Restores a receipt as it was read; "" for none. */
export function queueReceiptText(context: Excel.RequestContext, text: string): void {
  context.workbook.settings.add(RECEIPT.key, text);
}

/** Asks for the last receipt; readable after the request. */
export function queueReadReceipt(context: Excel.RequestContext) {
  return queueReadKept(context, RECEIPT);
}

/**
 * Whether a value is a receipt. Undo empties cells, so all of it has to fit together: an area larger than the formulas
 * that were written there would empty what someone else has typed.
 */
function isReceipt(value: unknown): value is Receipt {
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

/** An insert that can be undone. */
export interface LastInsert {
  readonly title: string;
  /** Left out for one that an earlier version made. */
  readonly id?: string | undefined;
}

/** What undo would remove; undefined where there is nothing. One request. */
export async function lastInsert(): Promise<LastInsert | undefined> {
  return inWorkbook(async (context) => {
    const read = queueReadReceipt(context);
    await context.sync();
    const kept = read.kept();
    if (kept.state === "none") return undefined;
    // Undo says why it can't undo one that can't be read.
    return kept.state === "kept" ? { title: kept.value.title, id: kept.value.id } : { title: "what was inserted last" };
  });
}
