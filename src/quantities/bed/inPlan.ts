import { type EdgingKind, METAL, NO_EDGING } from "../edgingKinds";
import { type SoldBy, TON } from "../soldBy";
import { INCHES_PER_FOOT } from "../units";
import type { Way } from "./form";
import { exchanged } from "./secondEdging";

/*
 * How fabric, pins, and edging of a bed are counted: by the rule for a plain rectangle, or on the bed laid out in plan.
 */

/** What an expression can depend on beyond numbers: how the bed was measured, and how long its lists are. */
export interface Outline {
  readonly way: Way;
  readonly widths: number;
  readonly points: number;
  readonly cutOuts: number;
  /** The bed can be laid out in plan, so fabric, pins, and edging are counted there. */
  readonly inPlan: boolean;
  /** It says how many sides have edging, and not which. */
  readonly countsEdging?: boolean;
  /** It says which corners are rounded, and not how many. */
  readonly picksCorners?: boolean;
  /** What it is edged with; left out: metal. */
  readonly edging?: EdgingKind;
  /** What it is edged with beside that; left out: nothing. */
  readonly second?: EdgingKind;
  /** What its stone is sold by; left out: tons. */
  readonly soldBy?: SoldBy;
}

/** What a bed is edged with. */
export const edgingIn = ({ edging = METAL }: Outline): EdgingKind => edging;
/** What its stone is sold by. */
export const soldByIn = ({ soldBy = TON }: Outline): SoldBy => soldBy;

/** An expression of a bed, the same for all or by its outline. */
export type Expression = string | ((outline: Outline) => string);
export const expressionOf = (is: Expression, outline: Outline): string => (typeof is === "string" ? is : is(outline));

/**
 * An expression of the edging as one of the bed's second edging; 0 where there is none. Its sides are counted by rule, and
 * where a bed has no sides by name, as the one run that was taped.
 */
export const ofSecond =
  (is: Expression) =>
  ({ second = NO_EDGING, way, widths, points, cutOuts }: Outline): string => {
    if (second === NO_EDGING) return "0";
    const hasSides = way === "rectangle" || way === "widths";
    const outline: Outline = { way: hasSides ? way : "area", widths, points, cutOuts, inPlan: false, edging: second };
    return exchanged(expressionOf(is, outline));
  };

/** What there is only with some edging; a block of other edging has no cells for it. */
export const where =
  (has: (edging: EdgingKind) => unknown, is: Expression, otherwise = "0") =>
  (outline: Outline): string =>
    has(edgingIn(outline)) ? expressionOf(is, outline) : otherwise;
export const inPieces = (is: Expression, otherwise?: string) => where(({ lines }) => lines.edging, is, otherwise);
export const onSand = (is: Expression, otherwise?: string) => where((edging) => edging.inSand, is, otherwise);

/** The lap of two pieces, as its cell and as a number of inches: none where pieces butt. */
export const lapOf = (outline: Outline): readonly [cell: string, inches: string] =>
  edgingIn(outline).fastened === "along" ? ["{pieceLap}", "{pieceLap.decimal}"] : ["0", "0"];

/**
 * Piece length, stake spacing, and lap, as a layout counts edging by them. A joint is a lap under 0. An edge without
 * pieces is only measured.
 */
function edgingRule(outline: Outline): string {
  const { lines, inSand } = edgingIn(outline);
  if (!lines.edging) return `1,${INCHES_PER_FOOT},0`;
  return inSand
    ? `{pieceLength},${INCHES_PER_FOOT},-{joint.decimal}`
    : `{pieceLength},{stakeSpacing},${lapOf(outline)[0]}`;
}

/** The call that lays a bed out in plan, and which column of its list holds what. */
function layout(outline: Outline, edging = edgingRule(outline)): string {
  const { way, cutOuts } = outline;
  const laying =
    "{rollWidth},{rollLength},{overlap},{endLap},{pinSpacing}," +
    `${cutOuts > 0 ? "{cutOuts.placed}" : ""},{pinBay},IF(ISNUMBER({stripDirection}),{stripDirection},"")`;
  // The edging of a round bed has no corners and no gaps, so that the rule counts it (`counted`).
  const [corners, rounded] = outline.picksCorners ? ["", ",{rounded}"] : ["{roundedCorners}", ""];
  const [sides, ends] = outline.countsEdging
    ? [`{longBorders},{shortBorders}${rounded && `,${rounded}`}`, "{endBorders}"]
    : [`,,{edged}${rounded}`, ",{edged}"];
  const calls: Readonly<Record<Way, string>> = {
    rectangle: `BED.LAYOUT_RECTANGLE({length},{width},{cornerRadius},${corners},${laying},${edging},${sides})`,
    round: `BED.LAYOUT_ROUND({diameter},{innerDiameter},${laying})`,
    widths: `BED.LAYOUT_WIDTHS({spacing},{widths},${laying},${edging},${ends})`,
    points: `BED.LAYOUT({points},${laying},${edging},{points.border})`,
    area: "",
  };
  return calls[way];
}
export const LAYOUT_COLUMNS = {
  strips: 3,
  fabricSqFt: 4,
  rolls: 5,
  pins: 7,
  stripList: 8,
  edgingFt: 9,
  pieces: 10,
  stakes: 11,
  cornerStakes: 12,
  openRunList: 13,
} as const;

/**
 * Where the rule for a plain rectangle holds, laid in the direction that its plan has; undefined for a bed that never is
 * one.
 */
const isPlain = (outline: Outline): string | undefined =>
  outline.way === "rectangle" && outline.cutOuts === 0
    ? `AND(OR({cornerRadius.decimal}=0,${roundedCorners(outline)}=0),NOT(ISNUMBER({stripDirection})))`
    : undefined;

/** How many corners are rounded. */
export const roundedCorners = ({ picksCorners }: Outline): string =>
  picksCorners ? "SUM({rounded})" : "{roundedCorners}";

/** One thing for a plain rectangle, another for a bed that is counted on its plan. */
export function byRuleOrPlan(outline: Outline, byRule: string, inPlan: string): string {
  if (!outline.inPlan) return byRule;
  const plain = isPlain(outline);
  return plain ? `IF(${plain},${byRule},${inPlan})` : inPlan;
}

/** A count by the rule for a plain rectangle, or the one of the layout's list. */
export const counted =
  (byRule: string, column: keyof typeof LAYOUT_COLUMNS, after = "", edging?: string) =>
  (outline: Outline) =>
    byRuleOrPlan(outline, byRule, `INDEX(${layout(outline, edging)},2,${LAYOUT_COLUMNS[column]})${after}`);

/**
 * A count of edging: by the rule for one run where there are no corners or they are typed, too. A bed without edging has
 * none to count.
 */
export const countedEdging =
  (byRule: (outline: Outline) => string, column: keyof typeof LAYOUT_COLUMNS, edging?: string) =>
  (outline: Outline): string => {
    if (edgingIn(outline).drawn === "none") return "0";
    return outline.way === "round" ? byRule(outline) : counted(byRule(outline), column, "", edging)(outline);
  };

export const SPAN = "{fabricLength},{fabricWidth},{rollWidth}";
/** A layout pins around what was placed in it; what is known by the length of its edge alone is added. */
export const PINS_AROUND_OTHERS =
  "+BED.ORDER_UP({cutAround.decimal},{pinSpacing.decimal}/12)/({pinSpacing.decimal}/12)";

/**
 * The lengths of fabric to cut, as BED.JOB_ROLLS reads them: "3 x 18.5", or a list of the strips in plan, layer by layer,
 * up to as much text as a cell holds.
 */
export const STRIPS_TO_CUT = (outline: Outline): string =>
  byRuleOrPlan(
    outline,
    '{fabricStrips}&" x "&{fabricLength}',
    `MID(REPT("; "&INDEX(${layout(outline)},2,${LAYOUT_COLUMNS.stripList}),{fabricLayers}),3,32767)`,
  );
