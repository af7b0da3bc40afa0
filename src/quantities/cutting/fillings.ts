import { must } from "../must";
import { eachPattern } from "./eachPattern";
import { isDominated } from "./isDominated";
import { type Job, type Pattern, type Pieces, sumOfPieces, without } from "./job";
import type { Relaxed } from "./relax";
import type { Steps } from "./steps";

/**
 * Every way to fill up a stock with the longest piece in it that can matter, the dearest first. If the pieces can be
 * cut from so many stocks at all, then with one of these fillings among them.
 *
 * @param pieces what is left to cut, a piece at least.
 * @param stocks how many stocks are left for them.
 */
export function fillings(job: Job, pieces: Pieces, stocks: number, { worth, most }: Relaxed, steps: Steps): Pattern[] {
  const longest = pieces.findIndex((count) => count > 0);
  const others = without(pieces, { at: [longest], copies: [1] });
  // The other stocks hold no more than `most` each, so this one must hold what is over.
  const least = sumOfPieces(pieces, worth) - (stocks - 1) * most - must(worth[longest]);
  const found: { pattern: Pattern; worth: number }[] = [];
  const options = { room: job.capacity - must(job.sizes[longest]), worth, least, want: "all" } as const;
  eachPattern(job, others, options, steps, (pattern, sum, room) => {
    steps.spend(job.sizes.length);
    if (!isDominated(job, others, pattern, room)) found.push({ pattern: withOneMore(pattern, longest), worth: sum });
    return least;
  });
  return found.sort((a, b) => b.worth - a.worth).map(({ pattern }) => pattern);
}

function withOneMore({ at, copies }: Pattern, size: number): Pattern {
  if (!at.includes(size)) return { at: [size, ...at], copies: [1, ...copies] };
  return { at, copies: copies.map((count, n) => (at[n] === size ? count + 1 : count)) };
}
