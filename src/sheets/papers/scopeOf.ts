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
}

/**
 * What is done for a bed, in plain words for the customer.
 *
 * @param facts areas in square feet, lengths in feet, small dimensions in inches.
 * @example scopeOf(facts) // "About 91 sq ft: scrape 2 1/2 in and haul it off; set 28 ft of 4 in border; …"
 */
export function scopeOf(facts: ScopeFacts): string {
  const { areaSqFt, depthIn, stone, stoneSizeIn, borderFt, borderHeightIn, scrapeIn, hauledOff } = facts;
  const steps = [
    `scrape ${inches(scrapeIn)} and ${hauledOff ? "haul it off" : "leave the soil on site"}`,
    ...(borderFt > 0 ? [`set ${Math.round(borderFt)} ft of ${inches(borderHeightIn)} border`] : []),
    "lay and pin weed fabric with overlaps",
    `spread ${stoneWords(stone)}, pieces up to ${inches(stoneSizeIn)}, ${inches(depthIn)} deep, raked level`,
    "clean up",
  ];
  return `About ${Math.round(areaSqFt)} sq ft: ${steps.join("; ")}.`;
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
