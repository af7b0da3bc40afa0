import { type Amount, allRuns, closedRun, openRuns, savedByAnInch } from "../bed/amounts";
import { fields } from "../bed/fields";
import { type Outline, STRIPS_TO_CUT } from "../bed/inPlan";

/*
 * What a job takes of each bed: a row of one value a bed, written in the bed's own keys (`bed/amounts.ts`). What was
 * typed over on a line of a bed's own block is taken as typed, beside what the other beds need together.
 */

type Expression = string | ((outline: Outline) => string);

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

/** What the job takes of each bed, in the order of its working. */
export const bedRows = {
  area: row("Area", "sq ft", "{stoneArea}"),
  edging: row("Edging", "lin ft", allRuns),
  depth: row("Stone depth", "in", "{stoneDepth}"),
  alone: row("Cost, by itself", "", "{directCost}", "money"),

  stone: row(
    "Stone",
    "",
    'IF(ISNUMBER({stone}),"stone of "&{stone}&" tons/cu yd",{stone})&", to "&' + `${sizeOf("stoneSize")}&" in"`,
    "words",
  ),
  stoneTons: row("Stone needed", "tons", unlessTyped("stoneLine", "{stoneTons}")),
  stoneTyped: row("Stone typed in the bed's estimate", "tons", ifTyped("stoneLine")),
  stoneDensity: row("Stone weight", "tons/cu yd", "{stoneDensity}"),
  stoneStep: row("Order increment", "tons", "{orderStep}"),
  stoneMinimum: row("Minimum order", "tons", "{orderMinimum}"),
  stoneCost: row("Stone, cost per ton", "", "{stoneLine.unitCost}", "money"),
  loadsTyped: row("Deliveries typed", "loads", ifTyped("delivery")),
  tonsToBring: row("Stone for shared deliveries", "tons", "IF({delivery.isTyped},0,{stoneTons})"),

  edgingKind: row(
    "Edging kind",
    "",
    `${sizeOf("borderHeight")}&" in high, "&${sizeOf("pieceLength")}&" ft long"&` +
      `IF(OR({borderFinish}="",{borderFinish}="${USUAL_FINISH}"),"",", "&{borderFinish})`,
    "words",
  ),
  openRun: row("Runs with two ends", "ft", openRun),
  closedRun: row("Closed run", "ft", (outline) => unlessTyped("edging", closedRun(outline))),
  innerRun: row("Closed run, inside", "ft", innerRun),
  pieceLength: row("Piece length", "ft", "{pieceLength.decimal}"),
  pieceLap: row("Piece lap", "in", "{pieceLap.decimal}"),
  ownPieces: row("Pieces, by itself", "pieces", unlessTyped("edging", "{pieces}"), "whole"),
  piecesTyped: row("Pieces typed", "pieces", ifTyped("edging")),
  pieceCost: row("Cost per piece", "", "{edging.unitCost}", "money"),
  stakes: row("Stakes needed", "stakes", `IF(${STAKES_TYPED},0,{stakes})`, "whole"),
  stakesTyped: row("Extra stakes typed", "stakes", `IF(${STAKES_TYPED},{stakeLine.quantity},0)`),
  piecesOfTyped: row("Pieces those stakes go with", "pieces", `IF(${STAKES_TYPED},{edging.quantity},0)`),
  stakesPerPiece: row("Stakes included per piece", "stakes", "{stakesPerPiece}"),
  stakeCost: row("Cost per stake", "", "{stakeLine.unitCost}", "money"),
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
  edgingTime: row("Set edging", "labor hours", hoursOf("setEdging")),
  fabricTime: row("Lay and pin fabric", "labor hours", hoursOf("layFabric")),
  spreadTime: row("Wheelbarrow and spread", "labor hours", hoursOf("spread")),
  cleanUpTime: row("Clean up", "labor hours", hoursOf("cleanUp")),
} as const satisfies Record<string, BedRow>;
export type BedRowKey = keyof typeof bedRows;

function openRun(outline: Outline): string {
  return unlessTyped("edging", openRuns(outline));
}

function pieceSaved(outline: Outline): string {
  return unlessTyped("edging", savedByAnInch(outline));
}

function innerRun({ way }: Outline): string {
  return way === "round" ? unlessTyped("edging", "{innerRun}") : "0";
}

function stripsToCut(outline: Outline): string {
  return `IF({fabric.isTyped},"",${STRIPS_TO_CUT(outline)})`;
}

/** Rows by which beds are sorted into kinds, each with lines of its own. */
export const kindRows = { stone: "stone", edging: "edgingKind", fabric: "fabricKind" } as const satisfies Record<
  string,
  BedRowKey
>;
export type KindOf = keyof typeof kindRows;
