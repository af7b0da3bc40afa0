import type { Area } from "../sheets/plan";
import type { LookBefore } from "./cellDress";
import { type KeptText, queueReadKept, queueWriteKept } from "./keptSetting";
import { isReceipt } from "./receiptShape";

/** What was inserted last, kept with the workbook, so that it can be taken back after a reload, too. */
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

/** What has to be known of a plan that was written to take it off again. */
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
  /** The looks that occur, and which of them each cell has, -1 for none; left out where no cell was dressed. */
  readonly looks?: {
    readonly distinct: readonly LookBefore[];
    readonly cells: readonly (readonly number[])[];
  };
}

export const RECEIPT: KeptText<Receipt> = {
  key: "Bedrow.lastInsert",
  version: 1,
  read: (content) => (isReceipt(content) ? content : undefined),
};

/**
 * Keeps a receipt in the place of the one before, whatever that was: there is one last insert, and a note of an earlier
 * one would have the wrong insert taken back. That of a later version goes, too; what it inserted stays on its sheet.
 */
export function queueReceipt(context: Excel.RequestContext, receipt: Receipt): void {
  queueWriteKept(context, RECEIPT, receipt);
}

/** Puts a receipt back as it was read; "" for none. */
export function queueReceiptText(context: Excel.RequestContext, text: string): void {
  context.workbook.settings.add(RECEIPT.key, text);
}

/** Asks for the last receipt; readable after a sync. */
export function queueReadReceipt(context: Excel.RequestContext) {
  return queueReadKept(context, RECEIPT);
}
