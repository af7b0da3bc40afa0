import { drawnInputs } from "../sheets/estimate/drawnInputs";
import { blockAt, type FoundBlock, findBlocks } from "../sheets/estimate/readBlock";
import type { Area } from "../sheets/plan";
import { type DrawingRecord, drawingOf, queueReadDrawings } from "./drawingRecords";
import { freeShapeName, type Picture, queuePicture, queueShapes } from "./pictures";
import { anchorOf } from "./place";
import { inWorkbook, WorkbookTrouble } from "./trouble";
import { writing } from "./writing";

export type { Picture } from "./pictures";

/** The inputs of a block, as its form. */
export type BlockForm = FoundBlock["form"];

/** The block that is selected, and how it stands with its drawing. */
export interface SelectedBlock {
  readonly name: string;
  readonly drawing: "none" | "current" | "out of date";
}

/** The estimate block in which the selection lies; undefined where it lies in none. One sync. */
export async function selectedBlock(): Promise<SelectedBlock | undefined> {
  return inWorkbook(async (context) => {
    const found = await findSelected(context);
    if (!found) return undefined;
    const { block, record } = found;
    const isCurrent = record?.drawnFrom === drawnInputs(block.form);
    return {
      name: block.form.name,
      drawing: record ? (isCurrent ? "current" : "out of date") : "none",
    };
  });
}

/**
 * Draws the selected block as its inputs are now, and puts the picture beside it, in place of the one before. Three
 * syncs; where one fails, the picture before stays.
 *
 * @param draw makes the picture from the block's inputs.
 * @param startAnew whether a list of drawings that cannot be read gives way.
 * @throws WorkbookTrouble where no block is selected, or the list of drawings has to stay as it is.
 */
export async function redrawSelectedBlock(
  draw: (form: BlockForm) => Promise<Picture>,
  startAnew = false,
): Promise<{ readonly name: string }> {
  return inWorkbook(async (context) => {
    const found = await findSelected(context);
    if (!found) throw new WorkbookTrouble("Select a cell of an estimate block, then draw it.");
    const { sheetId, block, record } = found;
    const picture = await draw(block.form);
    await putBeside(context, { sheetId, area: block.area, form: block.form, record, picture, startAnew });
    return { name: block.form.name };
  });
}

interface Found {
  readonly sheetId: string;
  readonly block: FoundBlock;
  readonly record: DrawingRecord | undefined;
}

async function findSelected(context: Excel.RequestContext): Promise<Found | undefined> {
  const corner = context.workbook.getSelectedRange().getCell(0, 0);
  corner.load("rowIndex,columnIndex");
  corner.worksheet.load("id");
  const used = corner.worksheet.getUsedRangeOrNullObject(true);
  used.load("rowIndex,columnIndex,values");
  const drawings = queueReadDrawings(context);
  await context.sync();
  if (used.isNullObject) return undefined;
  const blocks = findBlocks(used.values, anchorOf(used));
  const block = blockAt(blocks, anchorOf(corner));
  if (!block) return undefined;
  const sheetId = corner.worksheet.id;
  return { sheetId, block, record: drawingOf(drawings.records(), sheetId, block, blocks) };
}

/** Room that a picture takes beside a block, in columns; what stands there already keeps it below the block. */
const COLUMNS_BESIDE = 8;
const GAP_POINTS = 12;

interface Placing {
  readonly sheetId: string;
  readonly area: Area;
  readonly form: BlockForm;
  readonly record: DrawingRecord | undefined;
  readonly picture: Picture;
  readonly startAnew: boolean;
}

async function putBeside(context: Excel.RequestContext, placing: Placing): Promise<void> {
  const { sheetId, area, form, record, picture, startAnew } = placing;
  const worksheet = context.workbook.worksheets.getItem(sheetId);
  const column = area.column + area.columns;
  const beside = worksheet.getRangeByIndexes(area.row, column, area.rows, COLUMNS_BESIDE);
  beside.load("left,top,formulas");
  const below = worksheet.getCell(area.row + area.rows + 1, area.column);
  below.load("left,top");
  const before = record && worksheet.shapes.getItemOrNullObject(record.shapeName);
  before?.load("name");
  const shapes = queueShapes(worksheet);
  // Read once more: making the picture took a while, in which another pane may have drawn.
  const drawings = queueReadDrawings(context);
  await context.sync();

  const earlier = shapes.ids();
  const records = drawings.records();
  const isFree = beside.formulas.every((cells) => cells.every((cell) => cell === ""));
  const place = isFree ? beside : below;
  const shapeName = freeShapeName(
    "Bedrow drawing",
    records.map((other) => other.shapeName),
  );
  const { row, column: first } = area;
  const drawn = { shapeName, sheetId, bedName: form.name, row, column: first, drawnFrom: drawnInputs(form) };
  const replaced = before && !before.isNullObject ? before : undefined;
  const write = async () => {
    queuePicture(worksheet, picture, { left: place.left + GAP_POINTS, top: place.top }, shapeName);
    drawings.queueChange([...records.filter((other) => other.shapeName !== record?.shapeName), drawn], startAnew);
    // Last of all: once it is gone, all of the new one stands.
    replaced?.delete();
    await context.sync();
    return true;
  };
  await writing(write, async () => {
    const there = context.workbook.worksheets.getItemOrNullObject(sheetId);
    const left = queueShapes(there);
    const now = queueReadDrawings(context);
    await context.sync();
    if (there.isNullObject) return undefined;
    const isNoted = now.records().some((other) => other.shapeName === shapeName);
    if (isNoted && !(replaced && left.has(({ name }) => name === replaced.name))) return true;
    left.remove(({ id }) => !earlier.includes(id));
    if (isNoted) drawings.queuePutBack();
    await context.sync();
    return undefined;
  });
}
