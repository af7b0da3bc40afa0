import type { PageSetup } from "./plan";
import { pointsOfCharacters } from "./points";
import { LINE_POINTS } from "./rowHeights";

const LETTER_IN = { width: 8.5, height: 11 } as const;
const POINTS_PER_INCH = 72;
/** Programs differ a little in how high their rows are. */
const FULL = 0.97;
const [TOP_IN, BOTTOM_IN] = [0.375, 0.625];
/** Wider sides would shrink the print until it can't be read; more rows take more pages. */
const [LEAST_SIDE_IN, MOST_SIDE_IN] = [0.5, 1.25];

/**
 * How an estimate is printed: portrait, one page wide, its title on each page. The sides are as wide as it takes for the
 * rows to fit a page, since programs shrink a print to its width alone where it has page breaks. Planned for letter; A4 is
 * longer and narrower, so the rows fit there, too.
 *
 * @param widths of its columns, in characters.
 * @param rows that belong on one page.
 * @param breaksAbove rows that begin a page.
 */
export function onePageWide(widths: readonly number[], rows: number, breaksAbove: readonly number[]): PageSetup {
  const scale = ((LETTER_IN.height - TOP_IN - BOTTOM_IN) * POINTS_PER_INCH * FULL) / (rows * LINE_POINTS);
  const sheetIn = widths.reduce((sum, width) => sum + pointsOfCharacters(width), 0) / POINTS_PER_INCH;
  const wanted = (LETTER_IN.width - sheetIn * scale) / 2;
  const side = Math.min(MOST_SIDE_IN, Math.max(LEAST_SIDE_IN, Math.ceil(wanted * 8) / 8));
  return {
    landscape: false,
    pagesWide: 1,
    headingRows: 1,
    breaksAbove,
    marginsIn: { top: TOP_IN, bottom: BOTTOM_IN, left: side, right: side },
    footer: "Page &P of &N",
  };
}
