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
  context.workbook.settings.add(KEY, JSON.stringify(receipt));
}

/** The last receipt; undefined where there is none, or one that cannot be read. Costs one sync. */
export async function readReceipt(context: Excel.RequestContext): Promise<Receipt | undefined> {
  const setting = context.workbook.settings.getItemOrNullObject(KEY);
  setting.load("value");
  await context.sync();
  if (setting.isNullObject) return undefined;
  try {
    const receipt = JSON.parse(String(setting.value)) as Receipt;
    return Array.isArray(receipt.formulas) && receipt.area && receipt.before ? receipt : undefined;
  } catch {
    return undefined;
  }
}

export function queueForgetReceipt(context: Excel.RequestContext): void {
  context.workbook.settings.add(KEY, "");
}
