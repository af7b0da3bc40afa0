import { CUBIC_FEET_PER_CUBIC_YARD, INCHES_PER_FOOT, POUNDS_PER_SHORT_TON } from "../units";
import { DEPTH_CHECK } from "./depthVerdict";
import { quoted } from "./evaluate";
import type { Way } from "./form";
import {
  byRuleOrPlan,
  counted,
  countedEdging,
  type Expression,
  edgingIn,
  inPieces,
  lapOf,
  type Outline,
  ofSecond,
  onSand,
  PINS_AROUND_OTHERS,
  roundedCorners,
  SPAN,
  soldByIn,
  where,
} from "./inPlan";

/*
 * The estimate, declared once: every amount with its label, its unit, and one expression. The expressions are ordinary
 * formulas in which `{key}` is another amount or a field, and `{key.decimal}` the number that tape text reads as. The
 * pane evaluates them (`estimate.ts`), and the block on the sheet prints them (`sheets/estimate`).
 */

export interface Amount {
  readonly label: string;
  readonly unit: string;
  /** How it comes about, in words; those of most are in `amountNotes.ts`. */
  readonly how?: string;
  /** How the number is shown; with two decimals where left out. */
  readonly shows?: "whole" | "money" | "share";
  readonly is: Expression;
}

/** A formula that differs by the way a bed was measured. */
const byWay =
  (formulas: Readonly<Record<Way, string>>) =>
  ({ way }: Outline): string =>
    formulas[way];

const [LENGTH, WIDTH] = ["{length.decimal}", "{width.decimal}"];
const [LONG, SHORT] = [`MAX(${LENGTH},${WIDTH})`, `MIN(${LENGTH},${WIDTH})`];
const ROLL = "{rollWidth},{rollLength},{overlap},{endLap}";
/**
 * Whether strips lie along the length: they lie along the long side, unless that takes more rolls. The half roll decides
 * between equals. Each side stands as it is, without MAX and MIN: the ordinary form of the roll count names them so often
 * that it would be too long.
 *
 * @param isShort whether the length is the shorter side, as a condition; `along` length and width as two arguments,
 *   `across` the other way round, and `roll` the arguments after them.
 */
export const liesAlong = (isShort: string, along: string, across: string, roll: string): string =>
  `BED.FABRIC_ROLLS(${along},${roll})<BED.FABRIC_ROLLS(${across},${roll})+IF(${isShort},0,0.5)`;
const alongFirst = (one: string, other: string) =>
  liesAlong(`${one}<${other}`, `${one},${other}`, `${other},${one}`, ROLL);
const LIES_ALONG = alongFirst(LENGTH, WIDTH);
/** A bed that is known by its area is laid like the rectangle around it. */
const [OVERALL_LENGTH, OVERALL_WIDTH] = ["{longest.decimal}", "{widest.decimal}"];
const OVERALL_LIES_ALONG = alongFirst(OVERALL_LENGTH, OVERALL_WIDTH);
const extent = (axis: "x" | "y") => `MAX({points.${axis}})-MIN({points.${axis}})`;

/** The edging of a rectangle. */
interface Edged {
  /** How many of two opposite sides have edging, and of the two others. */
  readonly along: string;
  readonly across: string;
  readonly run: string;
  /** The side that the edging starts with, as in its plan; the other kind of side follows it. */
  readonly firstSide: string;
}

/** By its sides; the edging goes around clockwise, so that it starts with a side whose left neighbor has none. */
const bySides: Edged = {
  along: "({houseEdging}+{frontEdging})",
  across: "({rightEdging}+{leftEdging})",
  run: `({houseEdging}+{frontEdging})*${LENGTH}+({rightEdging}+{leftEdging})*${WIDTH}`,
  firstSide: `IF(OR({frontEdging}>{leftEdging},{houseEdging}>{rightEdging}),${LENGTH},${WIDTH})`,
};
/** By how many long and short sides there are, as beds of earlier versions say. */
const byCounts: Edged = {
  along: "{longBorders}",
  across: "{shortBorders}",
  run: `{longBorders}*${LONG}+{shortBorders}*${SHORT}`,
  firstSide: `IF({longBorders}={shortBorders},${WIDTH},IF({longBorders}>{shortBorders},${LONG},${SHORT}))`,
};
export const edged = ({ countsEdging }: Outline): Edged => (countsEdging ? byCounts : bySides);
const isAllAround = ({ along, across }: Edged) => `${along}+${across}=4`;

/** Whether the edging comes back to where it began. It has no row of its own. */
export const isClosed = (outline: Outline): string =>
  byWay({
    rectangle: isAllAround(edged(outline)),
    round: "TRUE",
    // An end of no width is no side. The last width is found in its list, which may have grown since.
    widths: outline.countsEdging
      ? "FALSE"
      : "{baseEdging}*{outerEdging}*IF({widths.first}=0,1,{firstEdging})*IF(INDEX({widths.decimal},ROWS({widths.decimal}))=0,1,{lastEdging})=1",
    points: "MIN({points.border})=1",
    area: "FALSE",
  })(outline);

/** Edging along two opposite sides alone is two runs; anything else of a rectangle is one. */
export const runsOf = ({ along, across }: Edged) => `IF(ABS(${along}-${across})=2,2,1)`;
/** Pieces of one run: pavers stand a joint apart, all others lap or butt. */
const piecesOf = (outline: Outline, run: string, closed: string) =>
  edgingIn(outline).inSand
    ? `BED.PAVERS(${run},{pieceLength.decimal}*${INCHES_PER_FOOT},{joint},${closed})`
    : `BED.EDGING_PIECES(${run},{pieceLength},${lapOf(outline)[0]},${closed})`;
/** Stakes of a rectangle's edging, with so many corners. */
const rectangleStakes = (edging: Edged, corners: string, sides = "") => {
  const runs = runsOf(edging);
  return `${runs}*BED.STAKES({borderRun}/${runs},{pieceLength},{stakeSpacing},{pieceLap},${corners},${isAllAround(edging)}${sides})`;
};
/** A count along one run, and along the inner one of a ring, which always closes. */
const alongRuns = (count: (run: string, closed: string) => string) => (outline: Outline) =>
  count("{borderRun}", isClosed(outline)) + (outline.way === "round" ? `+${count("{innerRun}", "TRUE")}` : "");

/** Pieces of all runs. */
const countedPieces = countedEdging((outline) => {
  const runs = runsOf(edged(outline));
  return outline.way === "rectangle"
    ? `${runs}*${piecesOf(outline, `{borderRun}/${runs}`, isClosed(outline))}`
    : alongRuns((run, closed) => piecesOf(outline, run, closed))(outline);
}, "pieces");

/** Stakes along all runs. */
const countedStakes = countedEdging((outline) => {
  const corners = outline.way === "area" ? "{corners}" : "0";
  const edging = edged(outline);
  const { along, across, firstSide } = edging;
  return outline.way === "rectangle"
    ? rectangleStakes(edging, `${along}*${across}`, `,${firstSide},${LENGTH}+${WIDTH}-${firstSide}`)
    : alongRuns((run, closed) => `BED.STAKES(${run},{pieceLength},{stakeSpacing},{pieceLap},${corners},${closed})`)(
        outline,
      );
}, "stakes");

/** What there is only where stakes go along the run. */
const staked = (is: Expression) => where(({ fastened }) => fastened === "along", is);

/** A count for each layer of fabric; a roll that one layer leaves over is not used in the other. */
const inLayers = (is: (outline: Outline) => string) => (outline: Outline) => `{fabricLayers}*${is(outline)}`;
/** One set of pins holds all layers. */
const countedPins = counted(
  `BED.PINS(${SPAN},{overlap},{pinSpacing},{cutAround},{pinBay})`,
  "pins",
  PINS_AROUND_OTHERS,
);

/** The length of edging. */
const countedRun = countedEdging(
  (outline) =>
    byWay({
      rectangle: edged(outline).run,
      round: "PI()*{diameter.decimal}",
      widths: outline.countsEdging
        ? "BED.EDGE_WIDTHS({spacing},{widths})+IF({endBorders}>=1,{widths.first},0)+IF({endBorders}>=2,{widths.last},0)"
        : "{outerEdging}*BED.EDGE_WIDTHS({spacing},{widths})+{firstEdging}*{widths.first}+{lastEdging}*{widths.last}+{baseEdging}*{spacing.decimal}*(ROWS({widths})-1)",
      points: "SUMPRODUCT({points.side},{points.border})",
      area: "{edge.decimal}",
    })(outline),
  "edgingFt",
);

/** What the measurements come to. */
const shapeAmounts = {
  placedArea: {
    label: "Cut-outs together",
    unit: "sq ft",
    is: ({ cutOuts }) => (cutOuts > 0 ? "SUM({cutOuts.area})" : "0"),
  },
  stoneArea: {
    label: "Area to cover",
    unit: "sq ft",
    is: (outline) =>
      byWay({
        rectangle: `BED.AREA_RECTANGLE({length},{width},{cornerRadius},${roundedCorners(outline)},{cutOuts})-{placedArea}`,
        round: "BED.AREA_ROUND({diameter},{innerDiameter})-{cutOuts}-{placedArea}",
        widths: "BED.AREA_WIDTHS({spacing},{widths})-{cutOuts}-{placedArea}",
        points: "BED.AREA_POINTS({points})-{cutOuts}-{placedArea}",
        area: "{area}-{cutOuts}-{placedArea}",
      })(outline),
  },
  fabricLength: {
    label: "Along the strips",
    unit: "ft",
    is: byWay({
      rectangle: `IF(${LIES_ALONG},${LENGTH},${WIDTH})`,
      round: "{diameter.decimal}",
      widths: "{spacing.decimal}*(ROWS({widths})-1)",
      points: `MAX(${extent("x")},${extent("y")})`,
      area: `IF(${OVERALL_LIES_ALONG},${OVERALL_LENGTH},${OVERALL_WIDTH})`,
    }),
  },
  fabricWidth: {
    label: "Across the strips",
    unit: "ft",
    is: byWay({
      rectangle: `IF(${LIES_ALONG},${WIDTH},${LENGTH})`,
      round: "{diameter.decimal}",
      widths: "MAX({widths.decimal})",
      points: `MIN(${extent("x")},${extent("y")})`,
      area: `IF(${OVERALL_LIES_ALONG},${OVERALL_WIDTH},${OVERALL_LENGTH})`,
    }),
  },
  borderRun: {
    label: "Edging",
    unit: "lin ft",
    is: countedRun,
  },
  innerRun: {
    label: "Edging, inside",
    unit: "lin ft",
    is: (outline) =>
      outline.way === "round" && edgingIn(outline).drawn !== "none"
        ? "{innerBorder}*PI()*{innerDiameter.decimal}"
        : "0",
  },
  secondRun: { label: "Second edging", unit: "lin ft", is: ofSecond(countedRun) },
  cornerStakes: {
    label: "Corners with their own stake",
    unit: "corners",
    shows: "whole",
    is: staked(
      countedEdging(
        (outline) =>
          outline.way === "rectangle"
            ? `{stakes}-${rectangleStakes(edged(outline), "0")}`
            : outline.way === "area"
              ? "{corners}"
              : "0",
        "cornerStakes",
      ),
    ),
  },
} as const satisfies Record<string, Amount>;

/** The run of the border inside a ring, after the outer one. */
export const allRuns = ({ way }: Outline): string => (way === "round" ? "{borderRun}+{innerRun}" : "{borderRun}");

/** The edging's runs with two ends, as a list in one cell such as "2 x 18.5"; they have no row of their own. */
export const openRuns = countedEdging((outline) => {
  const run =
    outline.way === "rectangle" ? `IF(${runsOf(edged(outline))}=2,"2 x "&{borderRun}/2,{borderRun})` : "{borderRun}";
  return `IF(${isClosed(outline)},0,${run})`;
}, "openRunList");
/** The run along the outer edge, where it comes back to its start; 0 where it doesn't. */
export const closedRun = (outline: Outline): string =>
  edgingIn(outline).drawn === "none" ? "0" : `IF(${isClosed(outline)},{borderRun},0)`;

/** The sand of all edging that stands in it, as a sum. */
export const allSand = ({ edging, second }: Outline): string =>
  [...(edging?.inSand ? ["{sandYards}"] : []), ...(second?.inSand ? ["{secondSandYards}"] : [])].join("+");

/** How far stone can reach up: to the top of the edging, which sand lifts, or to the ground beside the bed. */
function stoneDepthOf(outline: Outline): string {
  const { lines, inSand } = edgingIn(outline);
  if (!lines.edging) return "BED.STONE_DEPTH({scrapeDepth},0,{topGap})";
  const top = inSand ? "{borderHeight.decimal}+{sandDepth.decimal}" : "{borderHeight}";
  return `BED.STONE_DEPTH(${top},{trenchDepth},{topGap})`;
}

/** In cubic yards, of feet by inches by inches. */
const SECOND_TRENCH = `+{secondRun}*{secondTrenchWidth.decimal}*{secondTrenchDepth.decimal}/${CUBIC_FEET_PER_CUBIC_YARD * INCHES_PER_FOOT ** 2}`;

/** The cubic yards of what is ordered. */
const orderYards = (outline: Outline) => `{stoneOrder}${soldByIn(outline).inYards}`;

/** What each edging of a bed takes. */
const edgingAmounts = {
  pieces: inPieces(countedPieces),
  stakes: (outline) =>
    edgingIn(outline).fastened === "each"
      ? `{pieces}*(BED.ORDER_UP({pieceLength.decimal}*${INCHES_PER_FOOT},{stakeSpacing.decimal})/{stakeSpacing.decimal}+1)`
      : staked(countedStakes)(outline),
  extraStakes: (outline) =>
    edgingIn(outline).fastened === "each" ? "{stakes}" : staked("MAX(0,{stakes}-{pieces}*{stakesPerPiece})")(outline),
  sandYards: onSand((outline) => `BED.SAND_YARDS(${allRuns(outline)},{trenchWidth},{sandDepth})`),
} as const satisfies Record<string, Expression>;

/** What the quantities rest on. */
const workingAmounts = {
  stoneDepth: {
    label: "Stone depth",
    unit: "in",
    is: stoneDepthOf,
  },
  stoneDensity: {
    label: "Stone weight",
    unit: "tons/cu yd",
    is: "BED.STONE_DENSITY({stone})",
  },
  stoneYards: {
    label: "Stone needed",
    unit: "cu yd",
    is: "BED.STONE_YARDS({stoneArea},{stoneDepth},{waste})",
  },
  stoneTons: {
    label: "Stone needed",
    unit: "tons",
    is: "BED.STONE_TONS({stoneArea},{stoneDepth},{stoneDensity},{waste})",
  },
  bagPounds: {
    label: "Bag weight",
    unit: "lb",
    is: (outline) =>
      soldByIn(outline).isCounted ? `${soldByIn(outline).yardsEach}*{stoneDensity}*${POUNDS_PER_SHORT_TON}` : "0",
  },
  stoneOrder: {
    label: "Stone to order",
    unit: "tons",
    is: (outline) => `BED.ORDER_UP(${soldByIn(outline).needed},{orderStep},{orderMinimum})`,
  },
  orderTons: {
    label: "Order weight",
    unit: "tons",
    is: (outline) => (soldByIn(outline).isWeight ? "{stoneOrder}" : `${orderYards(outline)}*{stoneDensity}`),
  },
  orderYards: {
    label: "Order volume",
    unit: "cu yd",
    is: orderYards,
  },
  pieces: {
    label: "Edging pieces",
    unit: "pieces",
    shows: "whole",
    is: edgingAmounts.pieces,
  },
  stakes: {
    label: "Stakes",
    unit: "stakes",
    shows: "whole",
    is: edgingAmounts.stakes,
  },
  extraStakes: {
    label: "Stakes to buy extra",
    unit: "stakes",
    shows: "whole",
    is: edgingAmounts.extraStakes,
  },
  sandYards: {
    label: "Sand needed",
    unit: "cu yd",
    is: edgingAmounts.sandYards,
  },
  secondPieces: {
    label: "Second edging, pieces",
    unit: "pieces",
    shows: "whole",
    is: ofSecond(edgingAmounts.pieces),
  },
  secondStakes: {
    label: "Second edging, stakes",
    unit: "stakes",
    shows: "whole",
    is: ofSecond(edgingAmounts.stakes),
  },
  secondExtraStakes: {
    label: "Second edging, stakes to buy extra",
    unit: "stakes",
    shows: "whole",
    is: ofSecond(edgingAmounts.extraStakes),
  },
  secondSandYards: {
    label: "Second edging, sand needed",
    unit: "cu yd",
    is: ofSecond(edgingAmounts.sandYards),
  },
  sandOrder: {
    label: "Sand to order",
    unit: "cu yd",
    is: (outline) => (allSand(outline) === "" ? "0" : `BED.ORDER_UP(${allSand(outline)},{sandStep})`),
  },
  fabricStrips: {
    label: "Fabric strips",
    unit: "strips",
    shows: "whole",
    is: inLayers(counted("BED.FABRIC_STRIPS({fabricWidth},{rollWidth},{overlap})", "strips")),
  },
  fabricArea: {
    label: "Fabric laid",
    unit: "sq ft",
    is: inLayers(counted(`BED.FABRIC_AREA(${SPAN},{overlap},{rollLength},{endLap})`, "fabricSqFt")),
  },
  rolls: {
    label: "Fabric rolls",
    unit: "rolls",
    shows: "whole",
    is: inLayers(counted(`BED.FABRIC_ROLLS(${SPAN},{rollLength},{overlap},{endLap})`, "rolls")),
  },
  pins: {
    label: "Pins",
    unit: "pins",
    shows: "whole",
    is: (outline) => `IF({fabricLayers}=0,0,${countedPins(outline)})`,
  },
  pinBoxes: {
    label: "Boxes of pins",
    unit: "boxes",
    shows: "whole",
    is: "BED.ORDER_UP({pins},{pinsPerBox})/{pinsPerBox}",
  },
  digYards: {
    label: "Excavation, bank",
    unit: "cu yd",
    is: (outline) =>
      where(
        ({ lines }) => lines.setEdging,
        `BED.DIG_YARDS({stoneArea},{scrapeDepth},${allRuns(outline)},{trenchWidth},{trenchDepth})`,
        "BED.DIG_YARDS({stoneArea},{scrapeDepth})",
      )(outline) + (outline.second?.lines.setEdging ? SECOND_TRENCH : ""),
  },
  spoilYards: {
    label: "Spoil, loose",
    unit: "cu yd",
    is: "BED.SPOIL_YARDS({digYards},{soil})",
  },
  spoilLoads: {
    label: "Spoil loads",
    unit: "loads",
    shows: "whole",
    is: "BED.LOADS({spoilYards},{truckYards},{soilTonsPerYard},{truckPayload})",
  },
  deliveries: {
    label: "Stone deliveries",
    unit: "loads",
    shows: "whole",
    is: (outline) => `BED.LOADS(${orderYards(outline)},{deliveryYards},{stoneDensity},{deliveryPayload})`,
  },
  barrowTrips: {
    label: "Wheelbarrow trips",
    unit: "trips",
    shows: "whole",
    is: "BED.BARROW_TRIPS({stoneYards},{stoneDensity},{barrowSize},{barrowLoad})",
  },
  scrapeTime: { label: "Scrape and load", unit: "labor hours", is: "{digYards}*{scrapeHours}" },
  edgingTime: {
    label: "Set edging",
    unit: "labor hours",
    is: where(
      ({ lines }) => lines.setEdging,
      (outline) => (outline.way === "round" ? `(${allRuns(outline)})/{edgingRate}` : "{borderRun}/{edgingRate}"),
    ),
  },
  secondTime: {
    label: "Set second edging",
    unit: "labor hours",
    is: ofSecond(where(({ lines }) => lines.setEdging, "{borderRun}/{edgingRate}")),
  },
  fabricTime: { label: "Lay and pin fabric", unit: "labor hours", is: "{fabricArea}/{fabricRate}" },
  spreadTime: {
    label: "Wheelbarrow and spread",
    unit: "labor hours",
    is: "BED.HAUL_HOURS({barrowTrips},{barrowDistance})+{stoneArea}/{rakeRate}",
  },
} as const satisfies Record<string, Amount>;

/** From the priced lines to the price, before and after tax. */
export const priceAmounts = {
  directCost: { label: "Totals", unit: "", shows: "money", is: "SUM({lines.cost})" },
  linePrices: { label: "Totals", unit: "", shows: "money", is: "SUM({lines.price})" },
  overheadCost: {
    label: "Overhead",
    unit: "",
    how: "% of total cost",
    shows: "money",
    is: "{overhead}*{directCost}",
  },
  fullCost: { label: "Cost with overhead", unit: "", shows: "money", is: "{directCost}+{overheadCost}" },
  price: {
    label: "Price",
    unit: "before tax",
    how: "or the minimum charge if that's more",
    shows: "money",
    // A text among the things compared would be passed over; added to 0 it is an error.
    is: "ROUND(MAX({minimumCharge}+0,{linePrices}+{overheadCost}),2)",
  },
  taxSum: { label: "Sales tax", unit: "", shows: "money", is: "ROUND({salesTax}*{price},2)" },
  priceWithTax: { label: "Price with tax", unit: "", shows: "money", is: "{price}+{taxSum}" },
  markupOnCost: {
    label: "Markup on cost",
    unit: "",
    how: "profit ÷ cost",
    shows: "share",
    is: 'IF({fullCost}>0,{price}/{fullCost}-1,"")',
  },
  marginOnPrice: {
    label: "Margin on price",
    unit: "",
    how: "profit ÷ price; always less than the markup",
    shows: "share",
    is: 'IF({price}>0,1-{fullCost}/{price},"")',
  },
  laborHours: { label: "Labor", unit: "labor hours", is: 'SUMIF({lines.kind},"labor",{lines.quantity})' },
  crewDays: {
    label: "Crew time",
    unit: "days",
    how: "with the whole crew",
    is: "{laborHours}/({crewSize}*{crewDay})",
  },
} as const satisfies Record<string, Amount>;

export const amounts = { ...shapeAmounts, ...workingAmounts, ...priceAmounts };
export type AmountKey = keyof typeof amounts;
/** Amounts that a priced line can take as its quantity, or a paper read. */
export type QuantityKey = keyof typeof shapeAmounts | keyof typeof workingAmounts;
export const quantityKeys = Object.keys({ ...shapeAmounts, ...workingAmounts }) as readonly QuantityKey[];

/** Results that are words. */
export const verdicts = {
  depthCheck: {
    label: "Depth check",
    is: DEPTH_CHECK,
  },
  counted: {
    label: "Fabric and pins counted",
    is: (outline: Outline) =>
      outline.inPlan
        ? byRuleOrPlan(outline, quoted("by the rule for a plain rectangle"), quoted("on the bed laid out in plan"))
        : quoted("by length and widest width, so some is cut away"),
  },
} as const satisfies Record<string, Pick<Amount, "label" | "is">>;
export type VerdictKey = keyof typeof verdicts;

/** The area of one cut-out: round where it has no depth. */
export const CUT_OUT_AREA = 'IF({deep}="",BED.AREA_ROUND({across}),BED.AREA_RECTANGLE({across},{deep}))';
/** From one point of an outline to the next, by the numbers that their texts read as. */
export const SIDE_LENGTH = "SQRT(({next.x}-{x})^2+({next.y}-{y})^2)";

/** What every priced line works out of its own quantity, unit cost, and kind. */
export const lineFormulas = {
  cost: "{quantity}*{unitCost}",
  markup: 'IF({kind}="labor",{laborMarkup},IF({kind}="hauling",{haulingMarkup},{materialMarkup}))',
  price: "{cost}*(1+{markup})",
} as const;
