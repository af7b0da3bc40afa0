import type { WatchPort } from "../grid/port";

/** How long a person pauses before what was typed is kept. */
const pauseMs = 400;

/** What keeping takes from the page. */
export interface Keeping<T> {
  readonly watch: Pick<WatchPort, "anything">;
  readonly work: () => T;
  readonly put: (work: T) => Promise<void>;
  /** Told whether the last try to keep the work went well. */
  readonly onResult: (error: unknown) => void;
}

/**
 * Keeps a person's work shortly after each change, and when the page is left.
 *
 * @returns Stops keeping; what waits to be kept is dropped.
 */
export function keepWork<T>({ watch, work, put, onResult }: Keeping<T>): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const keep = () => {
    clearTimeout(timer);
    if (timer === undefined) return;
    timer = undefined;
    put(work()).then(() => onResult(undefined), onResult);
  };
  const stopper = watch.anything(() => {
    clearTimeout(timer);
    timer = setTimeout(keep, pauseMs);
  });
  addEventListener("pagehide", keep);
  addEventListener("visibilitychange", keep);
  return () => {
    clearTimeout(timer);
    timer = undefined;
    stopper.stop();
    removeEventListener("pagehide", keep);
    removeEventListener("visibilitychange", keep);
  };
}
