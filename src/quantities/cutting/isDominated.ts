import { must } from "../must";
import { type Job, type Pattern, type Pieces, without } from "./job";

/**
 * Whether another pattern does at least as well whatever the other stocks are cut into: one piece, or two together,
 * can change places with one longer piece from elsewhere, and the place they go to has room for them.
 *
 * The dominance rule of Martello and Toth, Knapsack Problems (1990), chapter 8, for one piece and for two: from
 * memory. Each change fills the stock further or cuts it into fewer pieces, so it never leads round in a ring.
 *
 * @param pieces all the pieces at hand, those of the pattern included.
 * @param room what the pattern leaves over.
 */
export function isDominated(job: Job, pieces: Pieces, pattern: Pattern, room: number): boolean {
  const spare = without(pieces, pattern);
  const lengths = pattern.at.flatMap((size, n) =>
    new Array<number>(Math.min(2, must(pattern.copies[n]))).fill(must(job.sizes[size])),
  );
  const isSpare = (least: number, most: number) =>
    job.sizes.some((length, size) => must(spare[size]) > 0 && length >= least && length <= most);
  return lengths.some(
    (one, n) =>
      // Sizes are whole numbers, so the next longer is longer by 1 at least.
      isSpare(one + 1, one + room) || lengths.slice(0, n).some((other) => isSpare(one + other, one + other + room)),
  );
}
