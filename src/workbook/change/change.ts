import { asFailure, codeOf, isUnknown, NOTHING_CHANGED, WorkbookFailure, whatHappened } from "../failure";

/**
 * One change to the workbook: it knows what was there, applies itself, verifies that, and can be undone.
 *
 * The host can't lock cells, so another pane or another person can write to the same place between the look and the
 * write. A change therefore reads once more what it overwrites, in the same request that writes: what was lost is known
 * afterwards, and can be restored.
 */
export interface Change<T> {
  /** Writes, then verifies: throws where someone else's work was overwritten. */
  readonly apply: () => Promise<T>;
  /**
   * Restores what was there, whatever part of the change was made. It looks again each time, since it is retried.
   *
   * @returns what `apply` would have returned, where all of the change is in place and only the answer was lost.
   */
  readonly undo: (cause: unknown) => Promise<T | undefined>;
  /** What the message says where undo fails, too: see {@link leftoverMessage}. */
  readonly leftover: string;
}

/**
 * Applies a change. Where that fails it is undone, and the message says whether that worked.
 *
 * @throws WorkbookFailure for the person.
 */
export async function applyChange<T>(change: Change<T>): Promise<T> {
  try {
    return await change.apply();
  } catch (error) {
    const applied = await withRetry(() => change.undo(error)).catch(() => {
      const first = codeOf(error) === "AccessDenied" ? "Unprotect the sheet first. " : "";
      throw new WorkbookFailure(`${whatHappened(error)} ${first}${change.leftover}`);
    });
    if (applied !== undefined) return applied;
    throw asFailure(error, NOTHING_CHANGED);
  }
}

/**
 * What is said where something may be left.
 *
 * @param where as "Notes!D12:L40", or in words.
 * @param todo what to do there.
 */
export function leftoverMessage(where: string, todo = "fix it by hand"): string {
  return `What was already written couldn't be undone. Check ${where}, and ${todo}. The program's own Undo may not reach it. You can also go back to an earlier version of the file, or close without saving if the file isn't saved automatically.`;
}

/** Has the host calculate and redraw once, after the next request, rather than after each cell. */
export function suspendCalculation({ application }: Excel.RequestContext): void {
  application.suspendApiCalculationUntilNextSync();
  application.suspendScreenUpdatingUntilNextSync();
}

/** How long the host is left alone before each retry. */
const PAUSES_MS = [0, 150, 400] as const;

/** Errors that a retry may get past; a protected sheet stays protected. */
const PASSING = new Set([
  "ActivityLimitReached",
  "Conflict",
  "ConnectionFailure",
  "GeneralException",
  "InvalidOperationInCellEditMode",
  "ItemNotFound",
  "RequestAborted",
  "Timeout",
]);

/**
 * Runs an action that can be run again after it failed halfway, and retries it where that may help.
 *
 * @throws the last error of the host.
 */
export async function withRetry<T>(action: () => Promise<T>): Promise<T> {
  for (let retries = 0; ; retries += 1) {
    try {
      return await action();
    } catch (error) {
      const pauseMs = PAUSES_MS[retries];
      if (pauseMs === undefined || !(PASSING.has(codeOf(error)) || isUnknown(error))) throw error;
      await new Promise((resolve) => setTimeout(resolve, pauseMs));
    }
  }
}
