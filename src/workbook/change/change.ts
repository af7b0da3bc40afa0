import { asFailure, codeOf, isUnknown, NOTHING_CHANGED, WorkbookFailure, whatHappened } from "../failure";

/** How long the host is left alone before each time that something is put back. */
const PAUSES_MS = [0, 150, 400] as const;

/** What may have passed by the time that it is tried again, and looked at anew; a protection has not. */
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
 * What is said where something may be left.
 *
 * @param where as "Notes!D12:L40", or in words.
 * @param todo what to do there.
 */
export function leftoverMessage(where: string, todo = "put it right by hand"): string {
  return `What was already written could not be taken back. Look at ${where}, and ${todo}. Undo may not reach it; an earlier version of the file is the other way back, or closing without saving where the file is not saved by itself.`;
}

/**
 * Writes; where that fails, whatever it has left is put back, and the person is told whether it could be.
 *
 * @param putBack looks anew each time what is left, since it is tried again where the host fails once more. Where all
 *   of it stands after all, and only the host's answer was lost, it gives what the write would have given.
 * @param left what is said where it could not be put back.
 * @throws WorkbookFailure for the person.
 */
export async function writing<T>(
  write: () => Promise<T>,
  putBack: (cause: unknown) => Promise<T | undefined>,
  left: string,
): Promise<T> {
  try {
    return await write();
  } catch (error) {
    const stands = await withRetry(() => putBack(error)).catch(() => {
      const first = codeOf(error) === "AccessDenied" ? "Lift the protection first. " : "";
      throw new WorkbookFailure(`${whatHappened(error)} ${first}${left}`);
    });
    if (stands !== undefined) return stands;
    throw asFailure(error, NOTHING_CHANGED);
  }
}

/**
 * Does something that can be begun again after it failed half-way, and begins again where that may help.
 *
 * @throws what the host said last.
 */
export async function withRetry<T>(deed: () => Promise<T>): Promise<T> {
  for (let times = 0; ; times += 1) {
    try {
      return await deed();
    } catch (error) {
      const pauseMs = PAUSES_MS[times];
      if (pauseMs === undefined || !(PASSING.has(codeOf(error)) || isUnknown(error))) throw error;
      await new Promise((resolve) => setTimeout(resolve, pauseMs));
    }
  }
}
