import { SHORT_PIECE_WORDS } from "../edging";
import { INCHES_PER_FOOT } from "../units";
import { type AmountKey, edged, isClosed, runsOf } from "./amounts";
import { quoted } from "./evaluate";
import { countedEdging, edgingIn, lapOf, type Outline, soldByIn } from "./inPlan";

/*
 * What a block says beside its amounts: fetched with what writes one.
 */

/** How amounts come about, in words. */
export const howAmounts: Readonly<Partial<Record<AmountKey, string>>> = {
  stoneDepth: "edging height less trench and gap",
  stoneDensity: "loose, from the stone list; a scale ticket beats it",
  stoneYards: "area × depth ÷ 324, plus waste",
  stoneOrder: "rounded up to the order increment",
  orderTons: "trucks are limited by weight and by volume",
  orderYards: "loose, as the yard loads it",
  stakes: "at ends, joints, corners, and between",
  sandYards: "edging × trench width × sand depth",
  fabricArea: "laps counted twice",
  pins: "rows, laps, and corners",
  digYards: "scrape plus edging trench",
  spoilYards: "after swell",
  spoilLoads: "by volume or weight, whichever is more",
  barrowTrips: "by tray size or load limit",
  spreadTime: "2 min to load, 1/2 to dump, 200 ft/min; then rake",
};

/** The load constant of the NIOSH lifting equation: more than that takes two. */
export const MOST_TO_LIFT_LB = 51;

/**
 * Pieces that an inch less of every run would save: those bought for less than an inch, as `shortPieces` finds them. A
 * piece and a lap that are both an inch longer reach an inch farther with the same joints; a closed run is an inch shorter.
 */
export const savedByAnInch = (outline: Outline): string => {
  const { lines, inSand } = edgingIn(outline);
  // A paver is cut to less than an inch as soon as to half.
  if (!lines.edging || inSand) return "0";
  const inch = `1/${INCHES_PER_FOOT}`;
  const [lap, lapInches] = lapOf(outline);
  const longer = `{pieceLength.decimal}+${inch},${lapInches}+1`;
  const shorter = (run: string) => `BED.EDGING_PIECES(MAX(0,${run}-${inch}),{pieceLength},${lap},TRUE)`;
  if (outline.way === "round") return `{pieces}-${shorter("{borderRun}")}-${shorter("{innerRun}")}`;
  const runs = outline.way === "rectangle" ? runsOf(edged(outline)) : "1";
  const open = countedEdging(
    () => `${runs}*BED.EDGING_PIECES({borderRun}/${runs},${longer})`,
    "pieces",
    `{pieceLength.decimal}+${inch},{stakeSpacing},${lapInches}+1`,
  )(outline);
  const closed = isClosed(outline);
  return `{pieces}-${closed === "FALSE" ? open : `IF(${closed},${shorter("{borderRun}")},${open})`}`;
};

/** What to mind about a bag: too heavy for one person, or for itself. */
function bagWarning(outline: Outline): string {
  const { asks } = soldByIn(outline);
  if (asks.includes("bulkBagLoad"))
    return `IF({bagPounds}>{bulkBagLoad},${quoted("Over the bag's rated load: order smaller bags, or have these filled less.")},"")`;
  return `IF({bagPounds}>${MOST_TO_LIFT_LB},${quoted(`Over ${MOST_TO_LIFT_LB} lb: lift with a partner.`)},"")`;
}

/** Common practice; Caltrans lays gravel mulch over fabric alone (Roadside Management Toolbox, side slopes). */
export const NO_FABRIC = "No fabric: stone works into the soil, and weeds come up through it.";

/** Expressions for what to check about an amount, in words: "" where there is nothing to say. */
export const amountWarnings: Readonly<Partial<Record<AmountKey, (outline: Outline) => string>>> = {
  bagPounds: bagWarning,
  pieces: (outline) => `IF(${savedByAnInch(outline)}>0,${quoted(`A piece ${SHORT_PIECE_WORDS}`)},"")`,
  fabricArea: () => `IF({fabricLayers}=0,${quoted(NO_FABRIC)},"")`,
};
