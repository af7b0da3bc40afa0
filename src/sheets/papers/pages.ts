import { must } from "../../quantities/must";
import type { PageSetup, Plan } from "../plan";
import { pointsOfCharacters } from "../points";
import { rowHeights } from "../rowHeights";

/** Width and height in inches: ANSI A for letter, ISO 216 for A4. */
const SIZE_IN = { letter: [8.5, 11], a4: [8.27, 11.69] } as const;
const POINTS_PER_INCH = 72;
/** Programs differ a little in how high their rows are, so a page is never planned quite full. */
const FULL = 0.97;

type Sheet = Pick<PageSetup, "landscape" | "marginsIn" | "headingRows"> & { readonly paper: "letter" | "a4" };

/** What a page holds of a sheet whose columns fit its width. */
export interface PageRoom {
  /** How much the print shrinks, 1 for not at all. */
  readonly scale: number;
  /** Points of the sheet's rows that fit below one another, before the print shrinks them. */
  readonly heightPoints: number;
}

/** @param widths of all columns, in characters. */
export function roomOf(widths: readonly number[], { paper, landscape, marginsIn }: Sheet): PageRoom {
  const [short, long] = SIZE_IN[paper];
  const [wideIn, highIn] = landscape ? [long, short] : [short, long];
  const paperPoints = (wideIn - marginsIn.left - marginsIn.right) * POINTS_PER_INCH;
  const sheetPoints = widths.reduce((sum, width) => sum + pointsOfCharacters(width), 0);
  const scale = Math.min(1, paperPoints / sheetPoints);
  const heightPoints = ((highIn - marginsIn.top - marginsIn.bottom) * POINTS_PER_INCH * FULL) / scale;
  return { scale, heightPoints };
}

/**
 * The rows above which a page begins, so that what belongs together is not torn apart. Only what is longer than a page
 * runs on to the next.
 *
 * @param starts the first row of each group, rising.
 * @param newPages those of them that begin a page in any case.
 */
export function pageBreaks(
  plan: Plan,
  starts: readonly number[],
  sheet: Sheet,
  newPages: readonly number[] = [],
): number[] {
  const heights = rowHeights(plan);
  const heightOf = (from: number, to: number) => heights.slice(from, to).reduce((sum, points) => sum + points, 0);
  const room = roomOf(plan.widths, sheet).heightPoints;
  const repeated = heightOf(0, sheet.headingRows ?? 0);
  const breaks: number[] = [];
  let used = 0;
  [0, ...starts.filter((row) => row > 0)].forEach((start, index, all) => {
    const height = heightOf(start, all[index + 1] ?? plan.rows);
    const isFull = used > repeated && used + height > room;
    if (start > 0 && (isFull || newPages.includes(start))) {
      breaks.push(must(start));
      used = repeated;
    }
    used += height;
    // What is longer than a page has used up the pages that it fills.
    while (used > room) used -= room - repeated;
  });
  return breaks;
}
