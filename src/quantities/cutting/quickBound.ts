import { must } from "../must";
import type { Job, Pieces } from "./job";

/**
 * How many stock lengths the pieces need at least, without search: for each cut-off, pieces over half a stock
 * need one each, and the middling ones share what those leave over. It is never less than ⌈total/capacity⌉.
 *
 * Bound L2 of Martello and Toth, Knapsack Problems (1990), chapter 8: from memory.
 */
export function quickBound({ capacity, sizes }: Job, pieces: Pieces): number {
  const isLong = (length: number) => 2 * length > capacity;
  let alone = 0;
  let middling = 0;
  sizes.forEach((length, size) => {
    if (isLong(length)) alone += must(pieces[size]);
    else middling += length * must(pieces[size]);
  });
  // From no cut-off up to half a stock: fewer pieces count as middling, and fewer long ones have room for them.
  let longest = 0;
  let spare = sizes.reduce(
    (sum, length, size) => sum + (isLong(length) ? (capacity - length) * must(pieces[size]) : 0),
    0,
  );
  let bound = alone + Math.max(0, Math.ceil((middling - spare) / capacity));
  for (let size = sizes.length - 1; size >= 0 && !isLong(must(sizes[size])); size--) {
    for (; isLong(must(sizes[longest])) && must(sizes[longest]) > capacity - must(sizes[size]); longest++)
      spare -= (capacity - must(sizes[longest])) * must(pieces[longest]);
    bound = Math.max(bound, alone + Math.ceil((middling - spare) / capacity));
    middling -= must(sizes[size]) * must(pieces[size]);
  }
  return bound;
}
