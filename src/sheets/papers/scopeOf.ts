import { must } from "../../quantities/must";

/** What the customer is told about a bed, in figures that the block worked out. */
export interface ScopeFacts {
  readonly areaSqFt: number;
  readonly depthIn: number;
  readonly stone: string;
  readonly stoneSizeIn: number;
  readonly borderFt: number;
  readonly borderHeightIn: number;
  readonly scrapeIn: number;
  readonly hauledOff: boolean;
  readonly hasFabric: boolean;
  /** Lines of the estimator's own, in words: "Remove old shrubs". */
  readonly ownWork: readonly string[];
}

/**
 * What is done for a bed, in plain words for the customer.
 *
 * @param facts areas in square feet, lengths in feet, small dimensions in inches.
 * @example scopeOf(facts) // "About 91 sq ft. Strip 2 1/2 in of sod and soil, and haul it away. …"
 */
export function scopeOf(facts: ScopeFacts): string {
  const { areaSqFt, depthIn, stone, stoneSizeIn, borderFt, borderHeightIn, scrapeIn, hauledOff, hasFabric } = facts;
  const steps = [
    `About ${Math.round(areaSqFt)} sq ft`,
    `Strip ${inches(scrapeIn)} of sod and soil, and ${hauledOff ? "haul it away" : "leave it on site"}`,
    ...(borderFt > 0 ? [`Set ${Math.round(borderFt)} ft of ${inches(borderHeightIn)} edging`] : []),
    ...(hasFabric ? ["Lay weed fabric, overlapped and pinned"] : []),
    `Spread ${stoneWords(stone)}, up to ${inches(stoneSizeIn)}, ${inches(depthIn)} deep, raked level`,
    ...facts.ownWork.map((work) => work.trim().replace(/\.+$/, "")),
    "Clean up",
  ];
  return `${steps.join(". ")}.`;
}

/** A stone that was given by its weight has no name to tell. */
function stoneWords(stone: string): string {
  const isName = /[a-z]/i.test(stone);
  return isName ? stone : "decorative stone";
}

const QUARTERS = ["", " 1/4", " 1/2", " 3/4"];

/** A small dimension to the quarter inch, as a tape reads. */
export function inches(value: number): string {
  const quarters = Math.max(1, Math.round(value * 4));
  const whole = Math.floor(quarters / 4);
  const part = must(QUARTERS[quarters % 4]);
  return `${whole === 0 ? part.trim() : whole + part} in`;
}
