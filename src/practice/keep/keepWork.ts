import type { WatchPort } from "../grid/port";

/** How long a person pauses before what was typed is kept. */
const pauseMs = 400;

/** A page that is about to be left is told first, so that the storage has until it's gone. */
const LEAVING = ["beforeunload", "pagehide", "visibilitychange"] as const;

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
 * @returns Stops keeping. What waits to be kept is kept first where that is asked for, and dropped otherwise.
 */
export function keepWork<T>({ watch, work, put, onResult }: Keeping<T>): (keepsLast?: boolean) => Promise<void> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const keep = async () => {
    clearTimeout(timer);
    if (timer === undefined) return;
    timer = undefined;
    await put(work()).then(() => onResult(undefined), onResult);
  };
  const stopper = watch.anything(() => {
    clearTimeout(timer);
    timer = setTimeout(keep, pauseMs);
  });
  for (const event of LEAVING) addEventListener(event, keep);
  return async (keepsLast = false) => {
    if (keepsLast) await keep();
    clearTimeout(timer);
    timer = undefined;
    stopper.stop();
    for (const event of LEAVING) removeEventListener(event, keep);
  };
}
