import type { FoundBed } from "./readJob";

/** What to do about sample prices. */
export const SET_YOUR_OWN = "Set your own prices in Rates or in the estimates.";

/** Labels that a line in the pane has room for. */
const MOST_NAMED = 4;

/**
 * The sample prices behind the prices of a job's beds, in one line; undefined where there are none.
 *
 * @example samplesIn(beds) // "Sample prices: Front strip, Back strip (Stone, Edging pieces, and 7 more)."
 */
export function samplesIn(beds: readonly FoundBed[]): string | undefined {
  const concerned = beds.filter(({ block }) => (block.samples ?? []).length > 0);
  if (concerned.length === 0) return undefined;
  const labels = [...new Set(concerned.flatMap(({ block }) => block.samples ?? []))];
  const more = labels.length - MOST_NAMED;
  const named = more > 1 ? [...labels.slice(0, MOST_NAMED), `and ${more} more`] : labels;
  const names = concerned.length > MOST_NAMED ? `${concerned.length} beds` : concerned.map(nameOf).join(", ");
  return `Sample prices: ${names} (${named.join(", ")}).`;
}

const nameOf = ({ block, where }: FoundBed) => block.name || where;
