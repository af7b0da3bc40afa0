import { queueBefore, queueRestore, queueWidths } from "./before";
import { pointsOfCharacters } from "./columnWidth";
import type { PlaceBefore } from "./receipt";

/** Headings of new columns, side by side, that are to look like one that is there. */
export interface NewHeadings {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  /** The heading that they look like. */
  readonly like: { readonly row: number; readonly column: number };
  /** How wide each column is at least, in characters. */
  readonly widths: readonly number[];
}

/** With how their place looked before. */
export interface DressedHeadings extends NewHeadings {
  readonly before: PlaceBefore;
}

/** Asks how the place of new headings looks; readable after a sync. */
export function queueHeadings(context: Excel.RequestContext, headings: NewHeadings): () => DressedHeadings {
  const before = queueBefore(context, placeOf(context, headings));
  return () => ({ ...headings, before: before.read() });
}

/**
 * Queues that new headings look like the one that is there; columns only ever get wider.
 *
 * @returns the headings with how wide their columns are then, after a sync.
 */
export function queueDressed(context: Excel.RequestContext, headings: DressedHeadings): () => DressedHeadings {
  const { sheet, like, widths, before } = headings;
  const place = placeOf(context, headings);
  place.copyFrom(context.workbook.worksheets.getItem(sheet).getCell(like.row, like.column), "Formats");
  widths.forEach((characters, index) => {
    const width = pointsOfCharacters(characters);
    if ((before.columnWidths[index] ?? width) < width) place.getColumn(index).format.columnWidth = width;
  });
  const widthsWritten = queueWidths(place, widths.length);
  return () => ({ ...headings, before: { ...before, widthsWritten: widthsWritten() } });
}

/** Asks how wide the columns of new headings are by now; readable after a sync. */
export function queueHeadingWidths(context: Excel.RequestContext, headings: NewHeadings): () => readonly number[] {
  return queueWidths(placeOf(context, headings), headings.widths.length);
}

/** Queues that the place of new headings is blank, and looks as it did. @param widthsNow of its columns. */
export function queueUndressed(
  context: Excel.RequestContext,
  headings: DressedHeadings,
  widthsNow?: readonly number[],
): void {
  queueRestore(placeOf(context, headings), headings.before, false, widthsNow);
}

function placeOf(context: Excel.RequestContext, { sheet, row, column, widths }: NewHeadings): Excel.Range {
  return context.workbook.worksheets.getItem(sheet).getRangeByIndexes(row, column, 1, widths.length);
}
