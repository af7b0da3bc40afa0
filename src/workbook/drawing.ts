import { blockAt, type FoundBlock, findBlocks } from "../sheets/estimate/readBlock";
import { type DrawingRecord, drawingOf, queueReadDrawings } from "./drawingRecords";
import type { Picture } from "./pictures";
import { anchorOf } from "./place";
import { putDrawing } from "./putDrawing";
import { inWorkbook, WorkbookTrouble } from "./trouble";

export type { Picture } from "./pictures";
export { type SelectedBlock, selectedBlock } from "./selectedBlock";

/** The inputs of a block, as its form. */
export type BlockForm = FoundBlock["form"];

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
    if (!found) throw new WorkbookTrouble("Nothing was drawn. Select a cell of an estimate block, then draw it.");
    const { sheetId, block, record } = found;
    const picture = await draw(block.form);
    await putDrawing(context, { sheetId, area: block.area, form: block.form, record, picture, startAnew });
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
