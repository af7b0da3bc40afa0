import { useCallback, useState } from "preact/hooks";
import { Problem } from "../quantities/problem";
import { WorkbookTrouble } from "../workbook/trouble";

/** What a screen says about its last deed. */
export interface Word {
  readonly kind: "working" | "done" | "trouble";
  readonly text: string;
}

/** What is said while a deed takes longer than usual. */
interface Waiting {
  readonly afterMs: number;
  readonly text: string;
}

/** Runs deeds against the workbook, and says what came of them. */
export function useWord(waiting?: Waiting) {
  const [word, setWord] = useState<Word>();
  const complain = useCallback((text: string) => setWord({ kind: "trouble", text }), []);
  return {
    word,
    isWorking: word?.kind === "working",
    say: (text: string) => setWord({ kind: "done", text }),
    complain,
    hush: () => setWord(undefined),
    /**
     * A deed gives what is to be said, if anything; refusals are said in its place.
     *
     * @param working what is said meanwhile; left out, what was said last stays.
     */
    attempt: async (working: string | undefined, deed: () => Promise<string | undefined>) => {
      if (working !== undefined) setWord({ kind: "working", text: working });
      const late = waiting && setTimeout(() => setWord({ kind: "working", text: waiting.text }), waiting.afterMs);
      try {
        const text = await deed();
        setWord(text === undefined ? undefined : { kind: "done", text });
      } catch (error) {
        setWord({ kind: "trouble", text: troubleOf(error) });
      } finally {
        clearTimeout(late);
      }
    },
  };
}

export type Speaking = ReturnType<typeof useWord>;

/** A refusal in words for the person; what is a fault of this program goes on its way. */
function troubleOf(error: unknown): string {
  if (error instanceof WorkbookTrouble || error instanceof Problem) return error.message;
  // Some parts are fetched when they are first wanted.
  if (error instanceof Error && error.name === "ChunkLoadError") {
    return "A part of the add-in could not be fetched. Nothing was written. Try again.";
  }
  throw error;
}
