import type { Area } from "../sheets/plan";

/** What was inserted last, kept with the workbook, so that it can be taken back after a reload, too. */
export interface Receipt {
  readonly title: string;
  readonly sheetId: string;
  readonly area: Area;
  /** The formulas as the host gave them back right after the write. */
  readonly formulas: readonly (readonly unknown[])[];
  /** How the place was before: what a write puts over blank cells. */
  readonly before: PlaceBefore;
  /** Whether the sheet was made for this. */
  readonly newSheet: boolean;
}

export interface PlaceBefore {
  readonly numberFormat: readonly (readonly string[])[];
  readonly columnWidths: readonly number[];
  /** The looks that occur, and which of them each cell has. */
  readonly looks: {
    readonly distinct: readonly Excel.SettableCellProperties[];
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
        return Array.isArray(receipt.formulas) && receipt.area && receipt.before ? receipt : undefined;
      } catch {
        return undefined;
      }
    },
  };
}
