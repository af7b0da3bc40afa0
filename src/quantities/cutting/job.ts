import { must } from "../must";

/*
 * The words of the solver. A job is what is to be cut, in whole units; the loss of a cut is already in the
 * capacity and in every size. A pattern is what is cut from one stock length; a plan is patterns and how often.
 */

export interface Job {
  readonly capacity: number;
  /** Each size once, the longest first; none is longer than the capacity. */
  readonly sizes: readonly number[];
}

/** How many pieces of each size, in the order of the sizes. */
export type Pieces = readonly number[];

/** Cuts copies[n] pieces of size number at[n] from one stock length. */
export interface Pattern {
  readonly at: readonly number[];
  readonly copies: readonly number[];
}

/** A pattern and how often: whole in a plan, in fractions in a relaxed one. */
export interface Cut {
  readonly pattern: Pattern;
  readonly times: number;
}

export type Plan = readonly Cut[];

export function stocksIn(plan: Plan): number {
  return plan.reduce((sum, { times }) => sum + times, 0);
}

/** What a pattern comes to, for any amount that each size has. */
export function sumOver({ at, copies }: Pattern, amounts: ArrayLike<number>): number {
  let sum = 0;
  for (let n = 0; n < at.length; n++) sum += must(copies[n]) * must(amounts[must(at[n])]);
  return sum;
}

/** What all the pieces come to, for any amount that each size has. */
export function sumOfPieces(pieces: Pieces, amounts: ArrayLike<number>): number {
  return pieces.reduce((sum, count, size) => sum + count * must(amounts[size]), 0);
}

/** The pieces still to be cut after the pattern was cut so often. */
export function without(pieces: Pieces, { at, copies }: Pattern, times = 1): number[] {
  const rest = [...pieces];
  for (let n = 0; n < at.length; n++) {
    const place = must(at[n]);
    rest[place] = must(rest[place]) - must(copies[n]) * times;
  }
  return rest;
}

/** How often the whole pattern can be cut before one of its sizes runs out. */
export function timesWithin(pieces: Pieces, { at, copies }: Pattern): number {
  let times = Number.POSITIVE_INFINITY;
  for (let n = 0; n < at.length; n++) times = Math.min(times, Math.floor(must(pieces[must(at[n])]) / must(copies[n])));
  return times;
}

export function isDone(pieces: Pieces): boolean {
  return pieces.every((count) => count === 0);
}
