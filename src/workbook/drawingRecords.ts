import type { FoundBlock } from "../sheets/estimate/readBlock";
import type { Anchor } from "../sheets/plan";

/** Which picture belongs to which block, kept with the workbook. */
export interface DrawingRecord {
  readonly shapeName: string;
  readonly sheetId: string;
  readonly bedName: string;
  /** The block's first cell when it was drawn, to tell blocks of one name apart. */
  readonly row: number;
  readonly column: number;
  /** The inputs it was drawn from, as text; another text means that it is out of date. */
  readonly drawnFrom: string;
}

const KEY = "Bedrow.drawings";

/** Asks for the records; readable after a sync. */
export function queueReadDrawings(context: Excel.RequestContext): () => DrawingRecord[] {
  const setting = context.workbook.settings.getItemOrNullObject(KEY);
  setting.load("value");
  return () => {
    try {
      const records: unknown = JSON.parse(setting.isNullObject ? "[]" : String(setting.value));
      return Array.isArray(records) ? records.filter(isRecord) : [];
    } catch {
      // Records that cannot be read lose no more than the tie between a picture and its block.
      return [];
    }
  };
}

export function queueWriteDrawings(context: Excel.RequestContext, records: readonly DrawingRecord[]): void {
  context.workbook.settings.add(KEY, JSON.stringify(records));
}

/** The record of the picture of the block that stands at a cell. */
export function drawingAt(records: readonly DrawingRecord[], sheetId: string, { row, column }: Anchor) {
  return records.find((record) => record.sheetId === sheetId && record.row === row && record.column === column);
}

/**
 * The record of a block's picture: the one drawn where it stands, or, where it was moved since and no other block of
 * the sheet has its name, the one with its name.
 *
 * @param blocks all blocks of its sheet.
 */
export function drawingOf(
  records: readonly DrawingRecord[],
  sheetId: string,
  block: FoundBlock,
  blocks: readonly FoundBlock[],
): DrawingRecord | undefined {
  const { name } = block.form;
  const here = drawingAt(records, sheetId, block.area);
  if (here?.bedName === name) return here;
  const isOnly = blocks.filter(({ form }) => form.name === name).length === 1;
  return isOnly ? records.find((record) => record.sheetId === sheetId && record.bedName === name) : undefined;
}

function isRecord(value: unknown): value is DrawingRecord {
  const { shapeName, sheetId, bedName, drawnFrom, row, column } = (value ?? {}) as Record<string, unknown>;
  const isText = [shapeName, sheetId, bedName, drawnFrom].every((text) => typeof text === "string");
  return isText && [row, column].every((place) => typeof place === "number");
}
