import { drawnInputs } from "../../sheets/estimate/drawnInputs";
import { blockAt, type FoundBlock, findBlocks } from "../../sheets/estimate/readBlock";
import type { Area } from "../../spreadsheet/areas";
import { leftoverMessage, withRetry, writing } from "../change/change";
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
  withCovered,
} from "./records";

/** The inputs of a block, as its form. */
export type BlockForm = FoundBlock["form"];

/**
 * Draws the selected block as its inputs are now, and puts the picture beside it, in place of the one before. Three
 * syncs; where one fails, the picture before stays.
 *
 * @param draw makes the picture from the block's inputs.
 * @param startOver whether a list of drawings that cannot be read gives way.
 * @throws WorkbookFailure where no block is selected, or the list of drawings has to stay as it is.
 */
export async function redrawSelectedBlock(
  draw: (form: BlockForm) => Promise<Picture>,
  startOver = false,
): Promise<{ readonly name: string }> {
  return inWorkbook(async (context) => {
    const found = await findSelected(context);
    if (!found) throw new WorkbookFailure("Nothing was drawn. Select a cell of an estimate block, then draw it.");
    const { sheetId, block, record } = found;
    const picture = await draw(block.form);
    await putDrawing(context, { sheetId, area: block.area, form: block.form, record, picture, startOver });
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
const STEM = "Bedrow drawing";
const TAKEN_AWAY =
  "The estimate was taken away at the same moment, so nothing was drawn. Insert it anew, or select another, then draw it.";
const MAYBE_TWICE =
  "The bed is drawn all the same. If another window drew it at the same moment, its drawing is there twice: draw it once more, and delete what lies below the new drawing.";

/** A picture, and the block that it belongs to. */
interface Placing {
  readonly sheetId: string;
  readonly area: Area;
  readonly form: FoundBlock["form"];
  /** The drawing that it takes the place of. */
  readonly record: DrawingRecord | undefined;
  readonly picture: Picture;
  readonly startOver: boolean;
}

/** Puts a picture beside its block, in place of the one before, which stays where this fails. Two syncs. */
export async function putDrawing(context: Excel.RequestContext, placing: Placing): Promise<void> {
  const { sheetId, area, form, record, picture, startOver } = placing;
  const worksheet = context.workbook.worksheets.getItem(sheetId);
  const column = area.column + area.columns;
  const beside = worksheet.getRangeByIndexes(area.row, column, area.rows, COLUMNS_BESIDE);
  beside.load("left,top,formulas");
  const below = worksheet.getCell(area.row + area.rows + 1, area.column);
  below.load("left,top");
  const before = record && worksheet.shapes.getItemOrNullObject(record.shapeName);
  before?.load("name");
  const shapesBefore = queueShapes(worksheet);
  // Read once more: making the picture took a while, in which another pane may have drawn.
  const drawings = queueReadDrawings(context);
  await context.sync();

  drawings.refuseUnchangeable(startOver);
  const earlier = shapesBefore.ids();
  const isFree = areBlank(beside.formulas);
  const { left, top } = isFree ? beside : below;
  const at = { left: left + GAP_POINTS, top };
  // A name that no other pane gives at the same moment.
  const shapeName = `${STEM} ${crypto.randomUUID().slice(0, 8)}`;
  const { row, column: first } = area;
  const drawn = { shapeName, sheetId, bedName: form.name, row, column: first, drawnFrom: drawnInputs(form) };
  const replaced = before && !before.isNullObject ? before : undefined;
  const others = (records: readonly DrawingRecord[]) => records.filter((one) => one.shapeName !== record?.shapeName);

  let isTakenAway = false;
  const write = async () => {
    const covered = queueReadDrawings(context);
    const title = worksheet.getCell(row, first);
    title.load("values");
    queuePicture(worksheet, picture, at, shapeName);
    drawings.queueChange([...others(drawings.records()), drawn], startOver);
    // Last of all: once it is gone, all of the new one stands.
    replaced?.delete();
    await context.sync();
    isTakenAway = title.values[0]?.[0] === "";
    if (isTakenAway) throw new WorkbookFailure(TAKEN_AWAY);
    return { isAlone: covered.text() === drawings.text(), records: covered.records() };
  };
  const putBack = async () => {
    const there = context.workbook.worksheets.getItemOrNullObject(sheetId);
    const shapes = queueShapes(there);
    const now = queueReadDrawings(context);
    await context.sync();
    const isNoted = now.records().some((one) => one.shapeName === shapeName);
    if (!there.isNullObject) {
      const isReplaced = !shapes.has(({ name }) => name === replaced?.name);
      if (isNoted && isReplaced && !isTakenAway) return { isAlone: false, records: now.records() };
      // What has no name yet is this one; what another pane has drawn meanwhile has one of ours.
      const isOurs = ({ name }: { readonly name: string }) => name === shapeName || !name.startsWith(STEM);
      shapes.remove((shape) => !earlier.includes(shape.id) && isOurs(shape));
    }
    // The drawing before belonged to what was taken away.
    if (isNoted && isTakenAway) now.queueChange(now.records().filter((one) => one.shapeName !== shapeName));
    else if (isNoted) drawings.queuePutBack();
    await context.sync();
    return undefined;
  };
  const words = leftoverMessage(`the drawing beside the estimate “${form.name}”`);
  const { isAlone, records } = await writing(write, putBack, words);
  if (isAlone) return;

  // Another pane has drawn at the same moment: what it noted stays, but of two pictures in one place, only this one.
  const clearTwins = async () => {
    const shapes = queueShapes(worksheet);
    const now = queueReadDrawings(context);
    await context.sync();
    now.refuseUnchangeable(startOver);
    const isTwin = (shape: Excel.Shape) =>
      shape.name !== shapeName &&
      shape.name.startsWith(STEM) &&
      isSame(shape.left, at.left) &&
      isSame(shape.top, at.top);
    const twins = shapes.all().filter(isTwin);
    for (const twin of twins) twin.delete();
    const gone = twins.map(({ name }) => name);
    const all = withCovered(now.records(), records, drawings.records());
    const noted = others(all).filter((one) => one.shapeName !== shapeName && !gone.includes(one.shapeName));
    now.queueChange([...noted, drawn], startOver);
    await context.sync();
  };
  await withRetry(clearTwins).catch((cause) => {
    // Trouble of its own words, and a sheet that is gone with the drawing.
    if (cause instanceof WorkbookFailure || codeOf(cause) === "ItemNotFound") throw cause;
    throw new WorkbookFailure(`${whatHappened(cause)} ${MAYBE_TWICE}`, { cause });
  });
}

/** Lengths are kept in whole pixels, so that they come back a little other than they were given. */
const isSame = (one: number, other: number) => Math.abs(one - other) < 1;

/**
 * Queues that the drawings of parts are no longer noted, where one is.
 *
 * @param known the drawings as they were read last.
 * @returns what takes off, after the sync, a drawing that another pane has made of one of them meanwhile.
 */
export function queueDrawingsOff(context: Excel.RequestContext, known: KnownDrawings, parts: readonly InsertedPart[]) {
  const covered = queueReadDrawings(context);
  const isGone = ({ shapeName }: DrawingRecord) => parts.some(({ drawing }) => drawing?.shapeName === shapeName);
  const before = known.records();
  const hasWritten = before.some(isGone);
  if (hasWritten) known.queueChange(before.filter((record) => !isGone(record)));
  const lateOf = (records: readonly DrawingRecord[]) =>
    parts.flatMap(
      ({ part }) =>
        drawingAt(
          records.filter((record) => !isGone(record)),
          part.sheetId,
          part.area,
        ) ?? [],
    );
  return {
    takeOff: async (): Promise<void> => {
      const late = lateOf(covered.records());
      const isAlone = !hasWritten || covered.text() === known.text();
      if (isAlone && late.length === 0) return;
      await withRetry(async () => {
        const worksheets = late.map(({ sheetId }) => context.workbook.worksheets.getItemOrNullObject(sheetId));
        const shapes = worksheets.map(queueShapes);
        const now = queueReadDrawings(context);
        await context.sync();
        now.refuseUnchangeable();
        const names = late.map(({ shapeName }) => shapeName);
        worksheets.forEach((worksheet, index) => {
          if (!worksheet.isNullObject) shapes[index]!.remove(({ name }) => names.includes(name));
        });
        const noted = withCovered(now.records(), hasWritten ? covered.records() : [], before);
        now.queueChange(noted.filter((record) => !isGone(record) && !names.includes(record.shapeName)));
        await context.sync();
      });
    },
  };
}
