import { useCallback, useState } from "preact/hooks";
import { Problem } from "../quantities/problem";
import { onLongWait, WorkbookFailure } from "../workbook/failure";

/** What a screen says about its last action. */
export interface Status {
  readonly kind: "working" | "done" | "trouble";
  readonly text: string;
}

/** The host keeps a request waiting as long as a cell is open for typing. */
const WAITING = "Waiting for the sheet. If a cell is open for typing, press Enter or Esc there.";
export const NOT_FETCHED = "A part of the add-in couldn't be loaded.";
const OWN_FAULT =
  "Something went wrong in the add-in, and it stopped. Check the sheet before you go on. Undo may not reach what was written last. If so, go back to an earlier version of the file, or close it without saving if AutoSave is off.";

/** Runs actions against the workbook, and says what came of them. */
export function useStatus() {
  const [status, setStatus] = useState<Status>();
  const complain = useCallback((text: string) => setStatus({ kind: "trouble", text }), []);
  return {
    status,
    isWorking: status?.kind === "working",
    say: (text: string) => setStatus({ kind: "done", text }),
    complain,
    clear: () => setStatus(undefined),
    /**
     * A action gives what is to be said, if anything; refusals are said in its place.
     *
     * @param working what is said meanwhile; left out, what was said last stays.
     */
    attempt: async (working: string | undefined, action: () => Promise<string | undefined>) => {
      if (working !== undefined) setStatus({ kind: "working", text: working });
      const stop = onLongWait(() => setStatus({ kind: "working", text: WAITING }));
      try {
        const text = await action();
        setStatus(text === undefined ? undefined : { kind: "done", text });
      } catch (error) {
        const text = troubleOf(error);
        setStatus({ kind: "trouble", text: text ?? OWN_FAULT });
        if (text === undefined) throw error;
      } finally {
        stop();
      }
    },
  };
}

export type Reporter = ReturnType<typeof useStatus>;

/** A refusal in words for the person; undefined for what is a fault of this program. */
function troubleOf(error: unknown): string | undefined {
  if (error instanceof WorkbookFailure || error instanceof Problem) return error.message;
  return isNotFetched(error) ? `${NOT_FETCHED} Nothing was written. Try again.` : undefined;
}

/** Whether it is a part that is fetched when it is first wanted, and could not be. */
export function isNotFetched(error: unknown): boolean {
  return error instanceof Error && error.name === "ChunkLoadError";
}
