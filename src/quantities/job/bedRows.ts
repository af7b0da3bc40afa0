import { savedByAnInch } from "../bed/amountNotes";
import { type Amount, allRuns, allSand, closedRun, openRuns } from "../bed/amounts";
import { fields } from "../bed/fields";
import {
  type Expression,
  edgingIn,
  inPieces,
  lapOf,
  type Outline,
  ofSecond,
  onSand,
  STRIPS_TO_CUT,
  soldByIn,
  where,
} from "../bed/inPlan";
import { METAL } from "../edgingKinds";
import { TON } from "../soldBy";
import { INCHES_PER_FOOT } from "../units";

/*
 * What a job takes of each bed: a row of one value a bed, written in the bed's own keys (`bed/amounts.ts`). What was
 * typed over on a line of a bed's own block is taken as typed, beside what the other beds need together.
 */

/** One value of each bed. */
export interface BedRow {
  readonly label: string;
  readonly unit: string;
  readonly shows?: Amount["shows"] | "words";
  readonly is: Expression;
}

const unlessTyped = (line: string, is: string) => `IF({${line}.isTyped},0,${is})`;
const ifTyped = (line: string) => `IF({${line}.isTyped},{${line}.quantity},0)`;
const row = (label: string, unit: string, is: Expression, shows?: BedRow["shows"]): BedRow => ({
  label,
  unit,
  is,
  ...(shows && { shows }),
});
/** A size in the name of a kind, as it is in `plain`: a third of an inch without its fifteen places. */
const sizeOf = (field: string) => `ROUND({${field}.decimal},3)`;
const hoursOf = (line: string) => `{${line}.quantity}`;
const STAKES_TYPED = "OR({edging.isTyped},{stakeLine.isTyped})";
const USUAL_FINISH = fields.borderFinish.initial;

/** What there is only where any edging of the bed stands in sand. */
const onAnySand =
  (is: string, otherwise = "0") =>
  (outline: Outline): string =>
    allSand(outline) === "" ? otherwise : is;

const fastened = (is: Expression) => where((edging) => edging.fastened, is);

/** What the job takes of each bed, in the order of its working. */
export const bedRows = {
  area: row("Area", "sq ft", "{stoneArea}"),
  edging: row("Edging", "lin ft", allRuns),
  depth: row("Stone depth", "in", "{stoneDepth}"),
  alone: row("Cost, by itself", "", "{directCost}", "money"),

  stone: row(
    "Stone",
    "",
    (outline) =>
      'IF(ISNUMBER({stone}),"stone of "&{stone}&" tons/cu yd",{stone})&", to "&' +
      `${sizeOf("stoneSize")}&" in"${soldAs(outline)}`,
    "words",
  ),
  stoneTons: row("Stone needed", "tons", (outline) => unlessTyped("stoneLine", soldByIn(outline).needed)),
  stoneTyped: row("Stone typed in the bed's estimate", "tons", ifTyped("stoneLine")),
  stoneDensity: row("Stone weight", "tons/cu yd", "{stoneDensity}"),
  stoneStep: row("Order increment", "tons", "{orderStep}"),
  stoneMinimum: row("Minimum order", "tons", "{orderMinimum}"),
  stoneCost: row("Stone, cost per ton", "", "{stoneLine.unitCost}", "money"),
  loadsTyped: row("Deliveries typed", "loads", ifTyped("delivery")),
  tonsToBring: row(
    "Stone for shared deliveries",
    "tons",
    (outline) => `IF({delivery.isTyped},0,${soldByIn(outline).needed})`,
  ),

  edgingKind: row("Edging kind", "", inPieces(edgingWords, '""'), "words"),
  openRun: row("Runs with two ends", "ft", inPieces(openRun)),
  closedRun: row(
    "Closed run",
    "ft",
    inPieces((outline) => unlessTyped("edging", closedRun(outline))),
  ),
  innerRun: row("Closed run, inside", "ft", inPieces(innerRun)),
  pieceLength: row("Piece length", "ft", inPieces("{pieceLength.decimal}")),
  // A joint is a lap under 0.
  pieceLap: row(
    "Piece lap",
    "in",
    inPieces((outline) => onSand("-{joint.decimal}", lapOf(outline)[1])(outline)),
  ),
  ownPieces: row("Pieces, by itself", "pieces", inPieces(unlessTyped("edging", "{pieces}")), "whole"),
  piecesTyped: row("Pieces typed", "pieces", inPieces(ifTyped("edging"))),
  pieceCost: row("Cost per piece", "", inPieces("{edging.unitCost}"), "money"),
  stakes: row("Stakes needed", "stakes", fastened(`IF(${STAKES_TYPED},0,{stakes})`), "whole"),
  stakesTyped: row("Extra stakes typed", "stakes", fastened(`IF(${STAKES_TYPED},{stakeLine.quantity},0)`)),
  piecesOfTyped: row("Pieces those stakes go with", "pieces", fastened(`IF(${STAKES_TYPED},{edging.quantity},0)`)),
  stakesPerPiece: row(
    "Stakes included per piece",
    "stakes",
    where((edging) => edging.fastened === "along", "{stakesPerPiece}"),
  ),
  stakeCost: row("Cost per stake", "", fastened("{stakeLine.unitCost}"), "money"),
  shortPieces: row("Pieces to save", "pieces", pieceSaved, "whole"),

  fabricKind: row("Fabric", "", `${sizeOf("rollWidth")}&" ft × "&${sizeOf("rollLength")}&" ft"`, "words"),
  strips: row("Strips to cut", "ft", stripsToCut, "words"),
  rollLength: row("Roll length", "ft", "{rollLength.decimal}"),
  endLap: row("End lap", "in", "{endLap.decimal}"),
  ownRolls: row("Rolls, by itself", "rolls", unlessTyped("fabric", "{rolls}"), "whole"),
  rollsTyped: row("Rolls typed", "rolls", ifTyped("fabric")),
  rollCost: row("Cost per roll", "", "{fabric.unitCost}", "money"),

  pins: row("Pins needed", "pins", unlessTyped("pinLine", "{pins}"), "whole"),
  boxesTyped: row("Boxes of pins typed", "boxes", ifTyped("pinLine")),

  spoil: row("Spoil, loose", "cu yd", "{spoilYards}"),
  spoilHauled: row("Spoil to haul together", "cu yd", unlessTyped("haul", "{spoilYards}")),
  haulsTyped: row("Loads typed, haul off", "loads", ifTyped("haul")),
  spoilDumped: row("Spoil to dump together", "cu yd", unlessTyped("dump", "{spoilYards}")),
  dumpsTyped: row("Loads typed, dump fee", "loads", ifTyped("dump")),
  spoilTons: row("Spoil weight", "tons", "{spoilYards}*{soilTonsPerYard}"),

  scrapeTime: row("Scrape and load", "labor hours", hoursOf("scrape")),
  edgingTime: row(
    "Set edging",
    "labor hours",
    where(({ lines }) => lines.setEdging, hoursOf("setEdging")),
  ),
  fabricTime: row("Lay and pin fabric", "labor hours", hoursOf("layFabric")),
  spreadTime: row("Wheelbarrow and spread", "labor hours", hoursOf("spread")),
  cleanUpTime: row("Clean up", "labor hours", hoursOf("cleanUp")),

  sandKind: row("Sand", "", onAnySand('"sand"', '""'), "words"),
  sand: row("Sand needed", "cu yd", (outline) => onAnySand(unlessTyped("sandLine", allSand(outline)))(outline)),
  sandTyped: row("Sand typed in the bed's estimate", "cu yd", onAnySand(ifTyped("sandLine"))),
  sandStep: row("Sand order increment", "cu yd", onAnySand("{sandStep}")),
  sandCost: row("Sand, cost per cu yd", "", onAnySand("{sandLine.unitCost}"), "money"),

  yardsEach: row("Stone, volume of one as sold", "cu yd", (outline) => soldByIn(outline).yardsEach),
} as const satisfies Record<string, BedRow>;
export type BedRowKey = keyof typeof bedRows;

/** What a piece of edging is called where pieces of several beds are ordered together, as `edgingSize` words it. */
function edgingWords(outline: Outline): string {
  const { name, inSand: isInSand } = edgingIn(outline);
  const finish = `IF(OR({borderFinish}="",{borderFinish}="${USUAL_FINISH}"),"",", "&{borderFinish})`;
  if (isInSand)
    return `"${name}, "&ROUND({pieceLength.decimal}*${INCHES_PER_FOOT},3)&" in long, "&${sizeOf("borderHeight")}&" in thick"&${finish}`;
  const kind = name === METAL.name ? "" : `"${name}, "&`;
  return `${kind}${sizeOf("borderHeight")}&" in high, "&${sizeOf("pieceLength")}&" ft long"&${finish}`;
}

/** What the kind of a bed's stone says where its cell has another unit than its block was made for. */
const SOLD_OTHERWISE = '", by the "&{soldBy}';
/** The same for stone by the ton; blocks of earlier versions have no cell to ask. */
export const UNLESS_BY_TON = `&IF({soldBy}="${TON.name}","",${SOLD_OTHERWISE})`;

function soldAs(outline: Outline): string {
  const { name, inKind, size } = soldByIn(outline);
  if (name === TON.name) return UNLESS_BY_TON;
  return `&IF({soldBy}="${name}","${inKind}"${size ? `&{${size.key}}&"${size.unit}"` : ""},${SOLD_OTHERWISE})`;
}

function openRun(outline: Outline): string {
  return unlessTyped("edging", openRuns(outline));
}

function pieceSaved(outline: Outline): string {
  return inPieces((one) => unlessTyped("edging", savedByAnInch(one)))(outline);
}

function innerRun({ way }: Outline): string {
  return way === "round" ? unlessTyped("edging", "{innerRun}") : "0";
}

function stripsToCut(outline: Outline): string {
  return `IF({fabric.isTyped},"",${STRIPS_TO_CUT(outline)})`;
}

/** Rows by which beds are sorted into kinds, each with lines of its own. */
export const kindRows = {
  stone: "stone",
  edging: "edgingKind",
  fabric: "fabricKind",
  sand: "sandKind",
} as const satisfies Record<string, BedRowKey>;
export type KindOf = keyof typeof kindRows;

/** Rows that are in tons, or in what stone is sold by where that is something else for any of it. */
export const asSoldRows: Readonly<Partial<Record<BedRowKey, Pick<BedRow, "label" | "unit">>>> = {
  stoneTons: { label: "Stone needed", unit: "as sold" },
  stoneTyped: { label: "Stone typed in the bed's estimate", unit: "as sold" },
  stoneStep: { label: "Order increment", unit: "as sold" },
  stoneMinimum: { label: "Minimum order", unit: "as sold" },
  stoneCost: { label: "Stone, cost of one as sold", unit: "" },
  tonsToBring: { label: "Stone for shared deliveries", unit: "as sold" },
};
/** Rows that a job has only there. */
export const soldByRows: readonly BedRowKey[] = ["yardsEach"];

/** Rows that a second edging has, in a column of its own after those of the beds; all others are the bed's own. */
export const edgingRows: readonly BedRowKey[] = [
  ...(["edging", "edgingKind", "openRun", "closedRun", "innerRun", "pieceLength", "pieceLap", "ownPieces"] as const),
  ...(["piecesTyped", "pieceCost", "stakes", "stakesTyped", "piecesOfTyped", "stakesPerPiece", "stakeCost"] as const),
  ...(["shortPieces", "edgingTime"] as const),
];

/** A row's value for the second edging of a bed: nothing where only the bed itself has one. */
export function secondRow(key: BedRowKey): Expression {
  const { is, shows }: BedRow = bedRows[key];
  if (edgingRows.includes(key)) return ofSecond(is);
  return shows === "words" ? '""' : "0";
}

/** Rows that a job has only where pavers are set in sand. */
export const sandRows: readonly BedRowKey[] = ["sandKind", "sand", "sandTyped", "sandStep", "sandCost"];
