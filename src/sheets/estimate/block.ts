import type { BedForm } from "../../quantities/bed/form";
import { SOILS } from "../../quantities/soil";
import { STONES } from "../../quantities/stone";
import { cautions } from "../cautions";
import { compose, type DraftRow } from "../compose";
import { inLines } from "../file/lines";
import type { Anchor, Plan } from "../plan";
import { named } from "../typed";
import { headRow } from "./head";
import { BLOCK_TITLE, headings, MEASURED } from "./headings";
import { lineRows } from "./lines";
import { measuredRows, shapeResultRows } from "./measured";
import { priceRows } from "./price";
import { blankRow, resultRow, sectionRow, textRow } from "./rows";
import { borderRows, crewRows, diggingRows, fabricRows, stoneRows } from "./working";

/** Least widths of the block's nine columns, in characters. */
const WIDTHS = [27, 11, 10, 10, 11, 9, 11, 9, 28];
/** Characters of a caution that fit from the second column to the last. */
const ACROSS = 98;

const stoneNames = STONES.map(({ name }) => name);
const soilNames = SOILS.map(({ name }) => name);

/**
 * The estimate of one bed as a block of live cells: price on top, then what was measured, the priced lines, the
 * price, cautions, and below them everything the quantities rest on.
 *
 * @param form what was typed about the bed; it must have been read without problems.
 * @param at where the block will stand.
 */
export function estimateBlock(form: BedForm, at: Anchor): Plan {
  const name = form.name.trim();
  return compose(name ? `estimate for ${name}` : "estimate", estimateRows(form), WIDTHS, at);
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
    ...priceRows(form),
    blankRow,
    sectionRow(headings.cautions),
    ...cautions.flatMap(({ about, text }) =>
      inLines(text, ACROSS).map((line, place) => textRow(line, "caution", place === 0 ? about : "")),
    ),
    blankRow,
    sectionRow(headings.stone, "Typed", "Unit", "Reads as"),
    ...stoneRows(form, stoneNames),
    sectionRow(headings.border, "Typed", "Unit", "Reads as"),
    ...borderRows(form),
    sectionRow(headings.fabric, "Typed", "Unit", "Reads as"),
    ...fabricRows(form),
    sectionRow(headings.digging, "Typed", "Unit", "Reads as"),
    ...diggingRows(form, soilNames),
    sectionRow(headings.crew, "Typed", "Unit", "Reads as"),
    ...crewRows(form),
  ];
}
