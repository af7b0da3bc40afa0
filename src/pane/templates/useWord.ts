import { useState } from "preact/hooks";
import { WorkbookTrouble } from "../../workbook/trouble";
import type { Word } from "../useInsert";

const NOTHING: Word = { kind: "none" };

/** What the screen says about its last deed. */
export function useWord() {
  const [word, setWord] = useState<Word>(NOTHING);
  return {
    word,
    say: (text: string) => setWord({ kind: "done", text }),
    complain: (text: string) => setWord({ kind: "trouble", text }),
    hush: () => setWord(NOTHING),
    /** Does something that takes time; what it gives, if anything, is said. */
    attempt: async (text: string, deed: () => Promise<string | undefined>) => {
      setWord({ kind: "working", text });
      try {
        const done = await deed();
        setWord(done === undefined ? NOTHING : { kind: "done", text: done });
      } catch (error) {
        if (!(error instanceof WorkbookTrouble)) throw error;
        setWord({ kind: "trouble", text: error.message });
      }
    },
  };
}

export type Speaking = ReturnType<typeof useWord>;
