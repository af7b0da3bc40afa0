/**
 * A piece of work that stops now and then, so that a page can show how far it is, or end it.
 *
 * It stops with the share of the work that is done, from 0 to 1.
 */
export type Steps<T> = Generator<number, T, void>;

/** Does all of a piece of work at once. */
export function allAtOnce<T>(steps: Steps<T>): T {
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}

/** The work was ended before it was done. */
export class Canceled extends Error {
  override readonly name = "Canceled";
}

/** A page stays at work without a pause for so long, in milliseconds. */
const longestSlice = 40;

/**
 * Does a piece of work in slices, between which the page can do something else.
 *
 * @param onProgress told the share of the work that is done.
 * @throws Canceled where the signal ended it.
 */
export async function inSlices<T>(
  steps: Steps<T>,
  onProgress: (share: number) => void,
  signal: AbortSignal,
): Promise<T> {
  let start = performance.now();
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
    if (performance.now() - start < longestSlice) continue;
    onProgress(value);
    await new Promise((resolve) => setTimeout(resolve, 0));
    if (signal.aborted) throw new Canceled();
    start = performance.now();
  }
}

/** A piece of work that is a part of another one: its share counts from one share of that one to another. */
export function* partOf<T>(steps: Steps<T>, from: number, to: number): Steps<T> {
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
    yield from + value * (to - from);
  }
}
