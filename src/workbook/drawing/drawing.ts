import { drawnInputs } from "../../sheets/estimate/drawnInputs";
import { blockAt, type FoundBlock, findBlocks } from "../../sheets/estimate/readBlock";
import { applyChange, leftoverMessage, withRetry } from "../change/change";
import type { InsertedPart } from "../change/remove";
import { codeOf, inWorkbook, WorkbookFailure, whatHappened } from "../failure";
import { anchorOf } from "../read/areas";
import { areBlank } from "../read/cells";
import { type Picture, queuePicture, queueShapes } from "./picture";
import {
  type DrawingRecord,
  drawingAt,
  drawingOf,
  type KnownDrawings,
  queueReadDrawings,
  withOverwritten,
} from "./records";

/** The inputs of a block, as its form. */
export type BlockForm = FoundBlock["form"];

/** A block that is selected, and the record of its drawing. */
interface BlockToDraw {
  readonly sheetId: string;
  readonly block: FoundBlock;
  readonly record: DrawingRecord | undefined;
}

/** Room that a picture takes beside a block, in columns; where something is there already, it goes below the block. */
const COLUMNS_BESIDE = 8;
const GAP_POINTS = 12;
const STEM = "Bedrow drawing";
const NONE_SELECTED = "Nothing was drawn. Select a cell in an estimate, then draw it.";
const TAKEN_AWAY =
  "The estimate was removed at the same time, so nothing was drawn. Insert it again, or select another, then draw it.";
const MAYBE_TWICE =
  "The bed was drawn. If another window drew it at the same time, there are two drawings: draw it again, and delete the one underneath.";

/**
 * Draws the selected block as its inputs are now, and puts the picture beside it, in place of the one before. Three
 * requests; where one fails, the picture before stays.
 *
 * @param draw makes the picture from the block's inputs.
 * @param startOver whether a list of drawings that can't be read is replaced.
 * @throws WorkbookFailure where no block is selected, or the list of drawings has to stay as it is.
 */
export async function redrawSelectedBlock(
  draw: (form: BlockForm) => Promise<Picture>,
  startOver = false,
): Promise<{ readonly name: string }> {
  return inWorkbook(async (context) => {
    const selected = await findSelected(context);
    if (!selected) throw new WorkbookFailure(NONE_SELECTED);
    const { form } = selected.block;
    await replaceDrawing(context, selected, await draw(form), startOver);
    return { name: form.name };
  });
}

async function findSelected(context: Excel.RequestContext): Promise<BlockToDraw | undefined> {
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
  const sheetId = corner.worksheet.id;
  return block && { sheetId, block, record: drawingOf(drawings.records(), sheetId, block, blocks) };
}

/** Puts a picture beside its block, in place of the one before. Two requests. */
async function replaceDrawing(
  context: Excel.RequestContext,
  { sheetId, block: { area, form }, record }: BlockToDraw,
  picture: Picture,
  startOver: boolean,
): Promise<void> {
  const worksheet = context.workbook.worksheets.getItem(sheetId);
  const beside = worksheet.getRangeByIndexes(area.row, area.column + area.columns, area.rows, COLUMNS_BESIDE);
  beside.load("left,top,formulas");
  const below = worksheet.getCell(area.row + area.rows + 1, area.column);
  below.load("left,top");
  const before = record && worksheet.shapes.getItemOrNullObject(record.shapeName);
  before?.load("name");
  const shapesBefore = queueShapes(worksheet);
  // Refresh: making the picture took a while, in which another pane may have drawn.
  const drawings = queueReadDrawings(context);
  await context.sync();

  drawings.refuseUnchangeable(startOver);
  const earlier = shapesBefore.ids();
  const { left, top } = areBlank(beside.formulas) ? beside : below;
  const at = { left: left + GAP_POINTS, top };
  // A name that no other pane gives at the same moment.
  const shapeName = `${STEM} ${crypto.randomUUID().slice(0, 8)}`;
  const { row, column } = area;
  const drawn = { shapeName, sheetId, bedName: form.name, row, column, drawnFrom: drawnInputs(form) };
  const replaced = before && !before.isNullObject ? before : undefined;
  const others = (records: readonly DrawingRecord[]) => records.filter((one) => one.shapeName !== record?.shapeName);

  let isTakenAway = false;
  const { isAlone, overwritten } = await applyChange({
    apply: async () => {
      const there = queueReadDrawings(context);
      const title = worksheet.getCell(row, column);
      title.load("values");
      queuePicture(worksheet, picture, at, shapeName);
      drawings.queueChange([...others(drawings.records()), drawn], startOver);
      // Last of all: once it is gone, all of the new one is in place.
      replaced?.delete();
      await context.sync();
      isTakenAway = title.values[0]?.[0] === "";
      if (isTakenAway) throw new WorkbookFailure(TAKEN_AWAY);
      return { isAlone: there.text() === drawings.text(), overwritten: there.records() };
    },
    undo: async () => {
      const sheet = context.workbook.worksheets.getItemOrNullObject(sheetId);
      const shapes = queueShapes(sheet);
      const now = queueReadDrawings(context);
      await context.sync();
      const isRecorded = now.records().some((one) => one.shapeName === shapeName);
      if (!sheet.isNullObject) {
        const isReplaced = !shapes.has(({ name }) => name === replaced?.name);
        if (isRecorded && isReplaced && !isTakenAway) return { isAlone: false, overwritten: now.records() };
        // What has no name yet is this one; what another pane has drawn meanwhile has one of ours.
        const isOurs = ({ name }: { readonly name: string }) => name === shapeName || !name.startsWith(STEM);
        shapes.remove((shape) => !earlier.includes(shape.id) && isOurs(shape));
      }
      // The drawing before belonged to what was taken away.
      if (isRecorded && isTakenAway) now.queueChange(now.records().filter((one) => one.shapeName !== shapeName));
      else if (isRecorded) drawings.queuePutBack();
      await context.sync();
      return undefined;
    },
    leftover: leftoverMessage(`the drawing beside the estimate “${form.name}”`),
  });
  if (isAlone) return;

  // Another pane has drawn at the same moment: its records stay, but of two pictures in one place, only this one.
  const removeTwins = async () => {
    const shapes = queueShapes(worksheet);
    const now = queueReadDrawings(context);
    await context.sync();
    now.refuseUnchangeable(startOver);
    const isAt = (shape: Excel.Shape) => isSame(shape.left, at.left) && isSame(shape.top, at.top);
    const twins = shapes.all().filter((one) => one.name !== shapeName && one.name.startsWith(STEM) && isAt(one));
    for (const twin of twins) twin.delete();
    const gone = [shapeName, ...twins.map(({ name }) => name)];
    const all = others(withOverwritten(now.records(), overwritten, drawings.records()));
    now.queueChange([...all.filter((one) => !gone.includes(one.shapeName)), drawn], startOver);
    await context.sync();
  };
  await withRetry(removeTwins).catch((cause) => {
    // A failure with a message of its own, and a sheet that is gone with the drawing.
    if (cause instanceof WorkbookFailure || codeOf(cause) === "ItemNotFound") throw cause;
    throw new WorkbookFailure(`${whatHappened(cause)} ${MAYBE_TWICE}`, { cause });
  });
}

/** Lengths are kept in whole pixels, so they are read back a little different. */
const isSame = (one: number, other: number) => Math.abs(one - other) < 1;

/**
 * Queues the removal of the records of the drawings of parts, where they have one.
 *
 * @param known the drawings as they were read last.
 * @returns removes, after the request, a drawing that another pane has made of one of them meanwhile.
 */
export function queueRemoveRecords(
  context: Excel.RequestContext,
  known: KnownDrawings,
  parts: readonly InsertedPart[],
): () => Promise<void> {
  const there = queueReadDrawings(context);
  const isStaying = ({ shapeName }: DrawingRecord) => !parts.some(({ drawing }) => drawing?.shapeName === shapeName);
  const before = known.records();
  const hasWritten = !before.every(isStaying);
  if (hasWritten) known.queueChange(before.filter(isStaying));
  return async () => {
    const others = there.records().filter(isStaying);
    const late = parts.flatMap(({ part }) => drawingAt(others, part.sheetId, part.area) ?? []);
    const isAlone = !hasWritten || there.text() === known.text();
    if (isAlone && late.length === 0) return;
    await withRetry(async () => {
      const sheets = late.map(({ sheetId }) => {
        const worksheet = context.workbook.worksheets.getItemOrNullObject(sheetId);
        return { worksheet, shapes: queueShapes(worksheet) };
      });
      const now = queueReadDrawings(context);
      await context.sync();
      now.refuseUnchangeable();
      const names = late.map(({ shapeName }) => shapeName);
      for (const { worksheet, shapes } of sheets) {
        if (!worksheet.isNullObject) shapes.remove(({ name }) => names.includes(name));
      }
      const records = withOverwritten(now.records(), hasWritten ? there.records() : [], before);
      now.queueChange(records.filter((record) => isStaying(record) && !names.includes(record.shapeName)));
      await context.sync();
    });
  };
}
