import { type EdgingKind, METAL } from "../../quantities/edgingKinds";

interface Edge {
  readonly borderFt: number;
  readonly borderHeightIn: number;
  /** What it is edged with; left out: metal. */
  readonly edging?: EdgingKind;
}

/** What the customer is told about a bed, in figures that the block worked out. */
export interface ScopeFacts extends Edge {
  readonly areaSqFt: number;
  readonly depthIn: number;
  readonly stone: string;
  readonly stoneSizeIn: number;
  /** What it is edged with beside that. */
  readonly second?: Edge;
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
  const { areaSqFt, depthIn, stone, stoneSizeIn, second, scrapeIn, hauledOff, hasFabric } = facts;
  const steps = [
    `About ${Math.round(areaSqFt)} sq ft`,
    `Strip ${inches(scrapeIn)} of sod and soil, and ${hauledOff ? "haul it away" : "leave it on site"}`,
    ...[facts, ...(second ? [second] : [])].filter(({ borderFt }) => borderFt > 0).map(edgingScope),
    ...(hasFabric ? ["Lay weed fabric, overlapped and pinned"] : []),
    `Spread ${stoneWords(stone)}, up to ${inches(stoneSizeIn, 8)}, ${inches(depthIn)} deep, raked level`,
    ...facts.ownWork.map((work) => work.trim().replace(/\.+$/, "")),
    "Clean up",
  ];
  return `${steps.join(". ")}.`;
}

/** How the edge is made. */
function edgingScope({ borderFt, borderHeightIn, edging = METAL }: Edge): string {
  const feet = `${Math.round(borderFt)} ft`;
  if (edging.drawn === "cut") return `Cut ${feet} of edge with a spade`;
  if (edging.inSand) return `Set ${feet} of ${edging.name} in sand`;
  // Metal is what a customer takes edging for.
  const what = edging === METAL ? "edging" : `${edging.name} edging`;
  return `Set ${feet} of ${inches(borderHeightIn)} ${what}`;
}

/** A stone that was given by its weight has no name to tell. */
function stoneWords(stone: string): string {
  const isName = /[a-z]/i.test(stone);
  return isName ? stone : "decorative stone";
}

/**
 * A small dimension as a tape reads it.
 *
 * @param parts of an inch that it is rounded to: stone is sold by eighths.
 * @example inches(0.375, 8) // "3/8 in"
 */
export function inches(value: number, parts: 4 | 8 = 4): string {
  const all = Math.max(1, Math.round(value * parts));
  const [whole, rest] = [Math.floor(all / parts), all % parts];
  const common = [8, 4, 2].find((divisor) => rest % divisor === 0 && parts % divisor === 0) ?? 1;
  const fraction = rest === 0 ? "" : `${rest / common}/${parts / common}`;
  return `${[whole || "", fraction].filter(Boolean).join(" ")} in`;
}
