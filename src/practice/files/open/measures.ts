import type { IColumnData, IFreeze, IRowData } from "@univerjs/core";
import { pointsToPixels } from "../../grid/lengths";
import { isTrue } from "../package/bookParts";
import { elements, firstElement, numberIn } from "../package/xml";

/** The width of a digit of the plain font in pixels, by which files count: ECMA-376 18.3.1.13, for Calibri 11. */
export const digitPixels = 7;
/** What columns are wide where a file says nothing, in digits with their padding; from memory. */
const plainWidth = 9.140625;
const plainRowPoints = 15;
const mostColumns = 16_384;
const mostRows = 1_048_576;
/** The widest column, in digits, and the highest row, in points, that a file may have: ECMA-376 18.3.1, from memory. */
const widest = 255;
const highest = 409;
/** The grid's own numbers for no and yes. */
const [no, yes] = [0, 1] as const;

/** How wide columns and how high rows are, and what of them does not show; lengths in pixels. */
export interface Measures {
  readonly columns: Record<number, Partial<IColumnData>>;
  readonly rows: Record<number, Partial<IRowData>>;
  readonly plainWidth: number;
  readonly plainHeight: number;
}

/** @param styleId the id of a style by its number in the file. */
export function readMeasures(xml: string, styleId: (number: number) => string | undefined): Measures {
  const format = firstElement(xml, "sheetFormatPr")?.attributes ?? {};
  const columns: Record<number, Partial<IColumnData>> = {};
  for (const { attributes } of elements(firstElement(xml, "cols")?.inner ?? "", "col")) {
    const { min = "1", max = min, width, hidden, style = "0" } = attributes;
    const s = Number(style) === 0 ? undefined : styleId(Number(style));
    const column: Partial<IColumnData> = {
      ...(width !== undefined && { w: Math.round(numberIn(width, plainWidth, 0, widest) * digitPixels) }),
      ...(isTrue(hidden) && { hd: yes }),
      ...(s !== undefined && { s }),
    };
    const last = numberIn(max, 0, 0, mostColumns);
    for (let at = numberIn(min, 1, 1, mostColumns); at <= last; at += 1) columns[at - 1] = column;
  }
  const rows: Record<number, Partial<IRowData>> = {};
  for (const { attributes } of elements(xml, "row")) {
    const { r, ht, hidden, customHeight } = attributes;
    if (r === undefined || (ht === undefined && !isTrue(hidden))) continue;
    rows[numberIn(r, 1, 1, mostRows) - 1] = {
      ...(ht !== undefined && {
        h: pointsToPixels(numberIn(ht, plainRowPoints, 0, highest)),
        ia: isTrue(customHeight) ? no : yes,
      }),
      ...(isTrue(hidden) && { hd: yes }),
    };
  }
  return {
    columns,
    rows,
    plainWidth: Math.round(numberIn(format.defaultColWidth, plainWidth, 1, widest) * digitPixels),
    plainHeight: pointsToPixels(numberIn(format.defaultRowHeight, plainRowPoints, 1, highest)),
  };
}

/** The rows and columns that stay in sight. */
export function readFreeze(xml: string): IFreeze {
  const pane = firstElement(xml, "pane")?.attributes ?? {};
  const isFrozen = pane.state === "frozen" || pane.state === "frozenSplit";
  const ySplit = isFrozen ? numberIn(pane.ySplit, 0, 0, mostRows) : 0;
  const xSplit = isFrozen ? numberIn(pane.xSplit, 0, 0, mostColumns) : 0;
  return { ySplit, xSplit, startRow: ySplit > 0 ? ySplit : -1, startColumn: xSplit > 0 ? xSplit : -1 };
}
