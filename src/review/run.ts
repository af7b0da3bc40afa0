import type { Progress, Review } from "./review";

export interface RunOptions {
  readonly onProgress?: (progress: Progress) => void;
  /** Stops the check; what was found until then is not given, since it would look like all there is. */
  readonly signal?: AbortSignal;
  /** Lets the screen breathe; a turn of the event loop where left out. */
  readonly pause?: () => Promise<void>;
  /** How long to work between two pauses, in milliseconds. */
  readonly sliceMs?: number;
}

/** Long enough to get on, short enough that typing does not stutter. */
const USUAL_SLICE_MS = 25;

/**
 * Runs a check, or anything else in slices, to its end.
 *
 * @param steps such as {@link review} gives.
 * @returns undefined where it was stopped.
 */
export async function runInSlices(
  steps: Generator<Progress, Review>,
  options: RunOptions = {},
): Promise<Review | undefined> {
  const { onProgress, signal, pause = turn, sliceMs = USUAL_SLICE_MS } = options;
  let since = performance.now();
  for (;;) {
    if (signal?.aborted) return undefined;
    const step = steps.next();
    if (step.done) return step.value;
    if (performance.now() - since < sliceMs) continue;
    onProgress?.(step.value);
    await pause();
    since = performance.now();
  }
}

const turn = () => new Promise<void>((resolve) => setTimeout(resolve));
