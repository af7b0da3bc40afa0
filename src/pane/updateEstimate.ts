import type { BedForm } from "../quantities/bed/form";
import type { Rates } from "../quantities/bed/rates";
import { inFormWords } from "../quantities/bed/words";
import { Problem } from "../quantities/problem";
import type { BlockUpdate, CellUpdate } from "../sheets/blockUpdate";
import { type BlockOnSheet, estimateUpdate, formOnSheet, formToEdit, mergedForm } from "../sheets/estimate/openBlock";
import { type Anchor, cellAddress, quotedSheet } from "../spreadsheet/areas";
import { updateBlock, type WrittenBlock } from "../workbook/change/updateBlock";
import { WorkbookFailure } from "../workbook/failure";
import { readBlock, type WantedBlock } from "../workbook/read/blockCells";
import { previewOf } from "./preview";
import { type KeptChange, keptChanges, linesOf, ownRowWords } from "./updateWords";
import { whyRowsStay } from "./whyRowsStay";

/*
 * Opening an estimate of the sheet in the pane, and writing it back where it is. This file and what it asks are fetched
 * when a bed is first opened.
 */

/** A bed that is open in the pane. */
export interface OpenedBed {
  readonly sheetId: string;
  readonly at: Anchor;
  readonly name: string;
  /** Its first cell, such as `Sheet1!A4`. */
  readonly where: string;
  /** As it was opened. */
  readonly form: BedForm;
  /** What was changed by hand on the sheet and is kept, in words. */
  readonly kept: readonly string[];
}

/** What an update will do, before it is done. */
export interface UpdatePreview {
  readonly there: BlockOnSheet;
  readonly update: BlockUpdate;
  /** What changes, in words, what was typed first. */
  readonly lines: readonly string[];
  readonly kept: readonly KeptChange[];
  /** Why it can't be done in place; undefined where it can. */
  readonly refused: string | undefined;
}

const NONE_SELECTED = "No estimate is selected. Select a cell of one, then open it.";
const GONE = "The estimate isn't where it was opened, so nothing was changed. Select a cell of it, then open it again.";
/**
 * Reads an estimate of the sheet for the pane.
 *
 * @param rates the office's rates, where the workbook has them.
 * @throws WorkbookFailure where there is none, or its inputs can't be read.
 */
export async function openBed(wanted: WantedBlock, rates: Rates | undefined): Promise<OpenedBed> {
  const there = await readBlock(wanted);
  if (!there) throw new WorkbookFailure(wanted === "selected" ? NONE_SELECTED : GONE);
  const { sheetId, sheetName, block } = there;
  const form = formNow(there, rates);
  const { byHand, ownRows } = updated(there, form, rates ? { ...form, rates } : form);
  return {
    sheetId,
    at: { row: block.area.row, column: block.area.column },
    name: block.form.name,
    where: `${quotedSheet(sheetName)}!${cellAddress(block.area)}`,
    form: formToEdit(form, rates),
    kept: [...keptChanges(byHand).map(({ words }) => words), ...ownRows.map(ownRowWords)],
  };
}

/**
 * What writing the pane's form back would change. What was typed into the sheet since the bed was opened stays, unless
 * the same was changed in the pane.
 *
 * @param pane the form as it is in the pane, without what its plan fills in.
 */
export async function previewUpdate(
  opened: OpenedBed,
  pane: BedForm,
  rates: Rates | undefined,
): Promise<UpdatePreview & { readonly form: BedForm }> {
  const there = await readBlock(opened);
  if (!there) throw new WorkbookFailure(GONE);
  const now = formNow(there, rates);
  const form = mergedForm(opened.form, formToEdit(now, rates), pane);
  const preview = previewOf(rates ? { ...form, rates } : form);
  const [problem] = preview.problems;
  if (problem) throw new WorkbookFailure(`Nothing was changed. ${problem.message}`);
  const update = updated(there, now, preview.form);
  const { byHand, operations, missing } = update;
  const gone = `Rows of this estimate are gone from the sheet (${missing.join(", ")}), so it can't be updated in place. Nothing was changed. Insert it as a new estimate.`;
  const reshaped =
    operations.length > 0 && missing.length === 0
      ? await whyRowsStay({ sheetName: there.sheetName, area: there.block.area }, update)
      : undefined;
  return {
    there,
    form,
    update,
    lines: linesOf(update),
    kept: keptChanges(byHand),
    refused: missing.length > 0 ? gone : reshaped,
  };
}

/** An update that was written. */
export interface WrittenUpdate extends WrittenBlock {
  /** What the bed is called now, and what it was called. */
  readonly names: { readonly before: string; readonly after: string };
}

/**
 * Writes an update, each cell only where the block still holds what the preview showed.
 *
 * @param replaced what was changed by hand and is to be as the product makes it, all the same.
 */
export async function writeUpdate(
  { there, update }: UpdatePreview,
  replaced: readonly KeptChange[],
): Promise<WrittenUpdate> {
  const { area, form } = there.block;
  const byHand = replaced.flatMap((one) => one.cells);
  const isName = ({ rowBefore, column }: CellUpdate) => rowBefore === area.row && column === area.column + 1;
  const name = [...update.changes, ...byHand].find(isName);
  const title = `update of ${form.name || "the estimate"}`;
  const written = await updateBlock(title, { ...there, area }, update, byHand);
  return { ...written, names: { before: form.name, after: name ? String(name.after).replace(/^'/, "") : form.name } };
}

/** @throws WorkbookFailure where the block's own inputs can't be printed. */
function formNow(there: BlockOnSheet, rates: Rates | undefined): BedForm {
  return inTheSheet(() => formOnSheet(there, rates));
}

const updated = (there: BlockOnSheet, was: BedForm, wanted: BedForm) =>
  inTheSheet(() => estimateUpdate(there, was, wanted));

function inTheSheet<T>(work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    throw new WorkbookFailure(
      `An input of this estimate can't be read: ${inFormWords(error.message)} Nothing was changed. Fix it on the sheet, then try again.`,
    );
  }
}
