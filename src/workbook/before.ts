import { BEFORE_ASKED, type LookBefore, lookBeforeOf, queueDress, queuePlainFont } from "./cellDress";
import type { PlaceBefore } from "./receipt";

/** What a cell's number format is after a clearing. */
export const PLAIN_FORMAT = "General";

/** Asks how a blank place looks; readable after a sync. */
export function queueBefore(context: Excel.RequestContext, target: Excel.Range): { read: () => PlaceBefore } {
  target.load("numberFormat");
  const plainFont = queuePlainFont(context);
  const properties = target.getCellProperties(BEFORE_ASKED);
  const columns = target.getColumnProperties({ format: { columnWidth: true } });
  return {
    read: () => {
      const numberFormat = target.numberFormat as string[][];
      const plain = plainFont();
      const dress = properties.value.map((cells) => cells.map((cell) => lookBeforeOf(cell, plain)));
      return {
        columnWidths: columns.value.map(({ format }) => format?.columnWidth ?? 0),
        ...(numberFormat.some((cells) => cells.some((format) => format !== PLAIN_FORMAT)) && { numberFormat }),
        ...(dress.some((cells) => cells.some((cell) => cell)) && { looks: distinctLooks(dress) }),
      };
    },
  };
}

/**
 * Asks how wide the columns of a place are, in points; readable after a sync.
 *
 * @param columns how many it has. It is asked of each, which can be done on a sheet that may be gone.
 */
export function queueWidths(target: Excel.Range, columns: number): () => readonly number[] {
  const formats = Array.from({ length: columns }, (_, index) => target.getColumn(index).format);
  for (const format of formats) format.load("columnWidth");
  return () => formats.map(({ columnWidth }) => columnWidth);
}

/**
 * Queues everything that makes a written place as blank, and as it looked, as before.
 *
 * @param keepsContents whether only its looks go, for cells that were emptied before.
 * @param widthsNow of its columns: those that somebody has set since it was written stay as they are.
 */
export function queueRestore(
  target: Excel.Range,
  before: PlaceBefore,
  keepsContents = false,
  widthsNow?: readonly number[],
): void {
  target.unmerge();
  target.conditionalFormats.clearAll();
  target.dataValidation.clear();
  target.clear(keepsContents ? "Formats" : "All");
  queueLooksBack(target, before, widthsNow);
}

/** Queues the looks of a place that was cleared, and its widths, as they were. */
export function queueLooksBack(target: Excel.Range, before: PlaceBefore, widthsNow?: readonly number[]): void {
  const { numberFormat, looks, columnWidths, widthsWritten } = before;
  if (numberFormat) target.numberFormat = numberFormat as string[][];
  // After the clearing all cells are plain, so that only those that were not plain are written.
  if (looks) {
    queueDress(
      target,
      looks.cells.map((row) => row.map((index) => looks.distinct[index])),
    );
  }
  columnWidths.forEach((width, index) => {
    if (widthsNow && widthsWritten && widthsNow[index] !== widthsWritten[index]) return;
    target.getColumn(index).format.columnWidth = width;
  });
}

/** A plain cell has the index -1. */
function distinctLooks(dress: readonly (readonly (LookBefore | undefined)[])[]): NonNullable<PlaceBefore["looks"]> {
  const indexes = new Map<string, number>();
  const distinct: LookBefore[] = [];
  const cells = dress.map((row) =>
    row.map((cell) => {
      if (!cell) return -1;
      const text = JSON.stringify(cell);
      const known = indexes.get(text);
      if (known !== undefined) return known;
      indexes.set(text, distinct.length);
      return distinct.push(cell) - 1;
    }),
  );
  return { distinct, cells };
}
