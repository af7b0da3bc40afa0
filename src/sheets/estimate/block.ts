import { type BedForm, edgingNames, soldByIn } from "../../quantities/bed/form";
import { edgingCautions } from "../../quantities/edgingWork";
import type { Anchor } from "../../spreadsheet/areas";
import { cautions, coveringCautionFormula } from "../cautions";
import { compose, type DraftRow } from "../compose";
import { inLines } from "../file/lines";
import { onePageWide } from "../onePageWide";
import type { Plan } from "../plan";
import { named } from "../typed";
import { headRow } from "./head";
import { BLOCK_TITLE, headings, MEASURED } from "./headings";
import { lineRows } from "./lines";
import { measuredRows, shapeResultRows } from "./measured";
import { blankRow, partRows, resultRow, sectionRow, textRow } from "./rows";

/** Least widths of the block's nine columns, in characters. */
const WIDTHS = [27, 11, 12, 10, 13, 11, 11, 9, 28];
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
  const working = plan.formulas.findIndex(([label]) => label === headings[WORKING[0]]);
  return { ...plan, page: onePageWide(WIDTHS, Math.max(working, plan.rows - working + 1), [working]) };
}

/** What to mind about the covering that the bed has by now: an empty row for stone that asks for no more. */
const coveringRow: DraftRow = {
  cells: [
    { content: '=IF(LEN({coveringCaution})>0,"This covering","")', look: "label" },
    { content: `=${coveringCautionFormula("{stone}")}`, key: "coveringCaution", look: "caution" },
  ],
};

/** What to mind about what the bed is edged with; metal asks for no more than the usual. */
function edgingRows(form: BedForm): DraftRow[] {
  return edgingCautions(edgingNames(form)).flatMap(({ about, text }) =>
    inLines(text, ACROSS).map((line, place) => textRow(line, "caution", place === 0 ? about : "")),
  );
}

/** The rows of the block, for {@link estimateBlock} and for finding its cells again. */
export function estimateRows(form: BedForm): DraftRow[] {
  return [
    { look: "title", cells: [{ content: BLOCK_TITLE }, { content: named(form.name), key: "name" }] },
    headRow(form),
    resultRow("Stone to order", { content: "={stoneOrder}", key: "headTons" }, soldByIn(form).unit),
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
    coveringRow,
    ...edgingRows(form),
    blankRow,
    ...WORKING.flatMap((part) => [sectionRow(headings[part], "Typed", "Unit", "Reads as"), ...partRows(form, part)]),
  ];
}
