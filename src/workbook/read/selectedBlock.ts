import { drawnInputs } from "../../sheets/estimate/drawnInputs";
import { BLOCK_COLUMNS, blockAt, type FoundBlock, findBlocks } from "../../sheets/estimate/readBlock";
import { type Anchor, type Area, cellAddress, common, SHEET_COLUMNS, SHEET_ROWS } from "../../spreadsheet/areas";
import { type DrawingRecord, drawingAt, drawingOf, queueReadDrawings } from "../drawing/records";
import { inWorkbook } from "../failure";
import { anchorOf, queueUsed, rangeAt } from "./areas";

/** The block that is selected, and whether its drawing is current. */
export interface SelectedBlock {
  readonly name: string;
  /** Its first cell, such as `Sheet1!A4`. */
  readonly where: string;
  readonly drawing: "none" | "current" | "out of date";
}

/** What is selected. */
export interface Selected {
  /** The first selected cell, such as `Jobs!B4`. */
  readonly address: string;
  /** The estimate block that it is in, if any. */
  readonly block: SelectedBlock | undefined;
}

/** Rows above a cell in which a block's title is looked for: a usual block has 130 rows, one with 300 points 430. */
const ROWS_ABOVE = 450;
/** Rows below it in which the block's end is looked for; where it may go on, the rest is read, too. */
const ROWS_BELOW = 200;
/** Two parts of a block are closer than this. */
const LARGEST_GAP = 10;

/**
 * What is selected. It is asked at each change of the selection, so it takes two small requests, however large the
 * sheet: only what is around the cell is read. More is read for a larger block, and for one that was moved since it was
 * drawn.
 */
export function readSelected(): Promise<Selected> {
  return inWorkbook(async (context) => {
    const corner = context.workbook.getSelectedRange().getCell(0, 0);
    corner.load("address,rowIndex,columnIndex");
    const { worksheet } = corner;
    worksheet.load("id");
    const used = queueUsed(worksheet, true);
    const drawings = queueReadDrawings(context);
    await context.sync();

    const { address } = corner;
    const at = anchorOf(corner);
    const all = used();
    const around = all && common(all, aroundCell(at));
    if (!all || !around) return { address, block: undefined };
    const near = await valuesOf(worksheet, around);
    const found = blockAt(findBlocks(near, around), at);
    const block = found && goesOn(found, around, all) ? await whole(worksheet, found, all) : found;
    if (!block) return { address, block: undefined };
    const record = await recordOf(worksheet, block, all, drawings.records());
    const isCurrent = record?.drawnFrom === drawnInputs(block.form);
    const drawing = record ? (isCurrent ? "current" : "out of date") : "none";
    const where = address.slice(0, address.lastIndexOf("!") + 1) + cellAddress(block.area);
    return { address, block: { name: block.form.name, where, drawing } };
  });
}

/** The cells that would have the title and the rows of the cell's block, if it is in one. */
function aroundCell({ row, column }: Anchor): Area {
  const first = { row: Math.max(0, row - ROWS_ABOVE), column: Math.max(0, column - BLOCK_COLUMNS + 1) };
  const end = {
    row: Math.min(SHEET_ROWS, row + ROWS_BELOW),
    column: Math.min(SHEET_COLUMNS, column + BLOCK_COLUMNS),
  };
  return { ...first, rows: end.row - first.row, columns: end.column - first.column };
}

async function valuesOf(worksheet: Excel.Worksheet, area: Area): Promise<unknown[][]> {
  const range = rangeAt(worksheet, area);
  range.load("values");
  await range.context.sync();
  return range.values;
}

const endOf = ({ row, rows }: Area) => row + rows;

function goesOn({ area }: FoundBlock, around: Area, all: Area): boolean {
  return endOf(around) < endOf(all) && endOf(area) > endOf(around) - LARGEST_GAP;
}

async function whole(worksheet: Excel.Worksheet, { area }: FoundBlock, all: Area): Promise<FoundBlock | undefined> {
  const place = { ...area, rows: endOf(all) - area.row };
  return findBlocks(await valuesOf(worksheet, place), place)[0];
}

/** The record of its picture; for one that was drawn elsewhere, all blocks of the sheet are read. */
async function recordOf(
  worksheet: Excel.Worksheet,
  block: FoundBlock,
  all: Area,
  records: readonly DrawingRecord[],
): Promise<DrawingRecord | undefined> {
  const { name } = block.form;
  const here = drawingAt(records, worksheet.id, block.area);
  if (here?.bedName === name) return here;
  if (!records.some((record) => record.sheetId === worksheet.id && record.bedName === name)) return undefined;
  return drawingOf(records, worksheet.id, block, findBlocks(await valuesOf(worksheet, all), all));
}
