/** Which picture belongs to which block, kept with the workbook. */
export interface DrawingRecord {
  readonly shapeName: string;
  readonly sheetId: string;
  readonly bedName: string;
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

/** The record of a block's picture. */
export function drawingOf(
  records: readonly DrawingRecord[],
  sheetId: string,
  bedName: string,
): DrawingRecord | undefined {
  return records.find((record) => record.sheetId === sheetId && record.bedName === bedName);
}

function isRecord(value: unknown): value is DrawingRecord {
  const { shapeName, sheetId, bedName, drawnFrom } = (value ?? {}) as Record<string, unknown>;
  return [shapeName, sheetId, bedName, drawnFrom].every((text) => typeof text === "string");
}
