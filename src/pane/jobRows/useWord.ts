import { useState } from "preact/hooks";
import { WorkbookTrouble } from "../../workbook/trouble";

/** What the screen says about its last deed. */
export interface Word {
  readonly kind: "working" | "done" | "trouble";
  readonly text: string;
}

/** Runs deeds against the workbook, and says what came of them. */
export function useWord() {
  const [word, setWord] = useState<Word>();
  return {
    word,
    isWorking: word?.kind === "working",
    /** A deed gives what is to be said; the host's refusals are said in its place. */
    attempt: async (working: string, deed: () => Promise<string | undefined>) => {
      setWord({ kind: "working", text: working });
      try {
        const text = await deed();
        setWord(text === undefined ? undefined : { kind: "done", text });
      } catch (error) {
        if (!(error instanceof WorkbookTrouble)) throw error;
        setWord({ kind: "trouble", text: error.message });
      }
    },
    say: (text: string) => setWord({ kind: "done", text }),
  };
}

export type Speaking = ReturnType<typeof useWord>;
