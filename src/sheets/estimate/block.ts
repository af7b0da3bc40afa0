import type { BedForm } from "../../quantities/bed/form";
import type { Anchor } from "../../spreadsheet/areas";
import { cautions } from "../cautions";
import { compose, type DraftRow } from "../compose";
import { inLines } from "../file/lines";
import type { PageSetup, Plan } from "../plan";
import { pointsOfCharacters } from "../points";
import { LINE_POINTS } from "../rowHeights";
import { named } from "../typed";
import { headRow } from "./head";
import { BLOCK_TITLE, headings, MEASURED } from "./headings";
import { lineRows } from "./lines";
import { measuredRows, shapeResultRows } from "./measured";
import { blankRow, partRows, resultRow, sectionRow, textRow } from "./rows";

/** Least widths of the block's nine columns, in characters. */
const WIDTHS = [27, 11, 10, 10, 11, 9, 11, 9, 28];
const LETTER_IN = { width: 8.5, height: 11 } as const;
const POINTS_PER_INCH = 72;
/** Programs differ a little in how high their rows are. */
const FULL = 0.97;
const [TOP_IN, BOTTOM_IN] = [0.375, 0.625];
/** Wider sides would shrink the print until it can't be read; a long bed takes more pages. */
const [LEAST_SIDE_IN, MOST_SIDE_IN] = [0.5, 1.25];
/** The parts that everything above rests on. */
const WORKING = ["stone", "border", "fabric", "digging", "crew"] as const;
/** Characters of a caution that fit from the second column to the last. */
const ACROSS = 98;

/**
 * The estimate of one bed as a block of live cells: price on top, then what was measured, the priced lines, the
 * price, cautions, and below them everything the quantities rest on.
 *
 * @param form what was typed about the bed; it must have been read without problems.
 * @param at where the block will stand.
 */
export function estimateBlock(form: BedForm, at: Anchor): Plan {
  const name = form.name.trim();
  const plan = compose(name ? `estimate for ${name}` : "estimate", estimateRows(form), WIDTHS, at);
  return { ...plan, page: pageOf(plan) };
}

/**
 * Portrait and one page wide: the estimate with its price and cautions on a page, then what the numbers rest on. The
 * sides are as wide as it takes for the rows to fit their pages, since programs shrink a print to its width alone where
 * it has page breaks. Planned for letter; A4 is longer and narrower, so the rows fit there, too.
 */
function pageOf({ formulas, rows }: Plan): PageSetup {
  const working = formulas.findIndex(([label]) => label === headings[WORKING[0]]);
  const rowsOnPage = Math.max(working, rows - working + 1);
  const scale = ((LETTER_IN.height - TOP_IN - BOTTOM_IN) * POINTS_PER_INCH * FULL) / (rowsOnPage * LINE_POINTS);
  const sheetIn = WIDTHS.reduce((sum, width) => sum + pointsOfCharacters(width), 0) / POINTS_PER_INCH;
  const wanted = (LETTER_IN.width - sheetIn * scale) / 2;
  const side = Math.min(MOST_SIDE_IN, Math.max(LEAST_SIDE_IN, Math.ceil(wanted * 8) / 8));
  return {
    landscape: false,
    pagesWide: 1,
    headingRows: 1,
    breaksAbove: [working],
    marginsIn: { top: TOP_IN, bottom: BOTTOM_IN, left: side, right: side },
    footer: "Page &P of &N",
  };
}

/** The rows of the block, for {@link estimateBlock} and for finding its cells again. */
export function estimateRows(form: BedForm): DraftRow[] {
  return [
    { look: "title", cells: [{ content: BLOCK_TITLE }, { content: named(form.name), key: "name" }] },
    headRow(form),
    resultRow("Stone to order", { content: "={orderTons}", key: "headTons" }, "tons"),
    {
      cells: [
        { content: "Depth", look: "label" },
        { content: "={depthCheck}", key: "headDepth", look: "note" },
      ],
    },
    blankRow,
    sectionRow(MEASURED + form.way, "Taped", "Unit", "Reads as"),
    ...measuredRows(form),
    ...shapeResultRows(form),
    blankRow,
    ...lineRows(form),
    blankRow,
    sectionRow(headings.price, "", "Unit"),
    ...partRows(form, "price"),
    blankRow,
    sectionRow(headings.cautions),
    ...cautions.flatMap(({ about, text }) =>
      inLines(text, ACROSS).map((line, place) => textRow(line, "caution", place === 0 ? about : "")),
    ),
    blankRow,
    ...WORKING.flatMap((part) => [sectionRow(headings[part], "Typed", "Unit", "Reads as"), ...partRows(form, part)]),
  ];
}
