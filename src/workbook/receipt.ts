import type { Area, CellDress } from "../sheets/plan";

/** What was inserted last, kept with the workbook, so that it can be taken back after a reload, too. */
export interface Receipt {
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
  /** Left out where no cell had a format. */
  readonly numberFormat?: readonly (readonly string[])[];
  /** The looks that occur, and which of them each cell has, -1 for none; left out where no cell was dressed. */
  readonly looks?: {
    readonly distinct: readonly CellDress[];
    readonly cells: readonly (readonly number[])[];
  };
}

const KEY = "Bedrow.lastInsert";

export function queueReceipt(context: Excel.RequestContext, receipt: Receipt): void {
  queueReceiptText(context, JSON.stringify(receipt));
}

/** Puts a receipt back as it was read; "" for none. */
export function queueReceiptText(context: Excel.RequestContext, text: string): void {
  context.workbook.settings.add(KEY, text);
}

/** Asks for the last receipt; readable after a sync. */
export function queueReadReceipt(context: Excel.RequestContext) {
  const setting = context.workbook.settings.getItemOrNullObject(KEY);
  setting.load("value");
  const text = () => (setting.isNullObject ? "" : String(setting.value));
  return {
    text,
    /** undefined where there is none, or one that cannot be read. */
    receipt: (): Receipt | undefined => {
      try {
        const receipt = JSON.parse(text()) as Receipt;
        return receipt.parts.length > 0 && receipt.parts.every(isPart) ? receipt : undefined;
      } catch {
        return undefined;
      }
    },
  };
}

function isPart({ area, names, before, formulas, pictures }: ReceiptPart): boolean {
  return Boolean(area && before) && [names, formulas, pictures, before.columnWidths].every(Array.isArray);
}
