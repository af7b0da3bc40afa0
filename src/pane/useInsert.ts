import { useEffect, useState } from "preact/hooks";
import type { BedForm } from "../quantities/bed/form";
import type { InTheWay, Place } from "../workbook/place";
import { lastInsert, takeBackLastInsert } from "../workbook/takeBack";
import { WorkbookTrouble } from "../workbook/trouble";
import { refreshRates } from "./rates/store";

/** What the pane says about its last deed. */
export type Word =
  | { readonly kind: "none" }
  | { readonly kind: "working"; readonly text: string }
  | { readonly kind: "done"; readonly text: string }
  | { readonly kind: "trouble"; readonly text: string };

/** The host keeps a request waiting as long as a cell is open for typing. */
const WAITING = "Waiting for the sheet. If a cell is open for typing, press Enter or Esc there.";
const WAITING_AFTER_MS = 2500;

const RATES_CHANGED =
  "Nothing was written: the rates have changed in the meantime. Look at the price again, then insert.";

const NOTHING: Word = { kind: "none" };

/** Inserting, what stands in the way of it, and taking it back. */
export function useInsert() {
  const [word, setWord] = useState<Word>(NOTHING);
  const [inTheWay, setInTheWay] = useState<InTheWay>();
  const [canTakeBack, setCanTakeBack] = useState<string>();

  const attempt = async (text: string, deed: () => Promise<Word>) => {
    setInTheWay(undefined);
    setWord({ kind: "working", text });
    const waiting = setTimeout(() => setWord({ kind: "working", text: WAITING }), WAITING_AFTER_MS);
    try {
      setWord(await deed());
    } catch (error) {
      if (!(error instanceof WorkbookTrouble)) throw error;
      setWord({ kind: "trouble", text: error.message });
    } finally {
      clearTimeout(waiting);
    }
  };

  useEffect(() => {
    // Before the first insert nothing can be taken back, and a host that cannot tell is treated the same.
    lastInsert().then(
      (last) => setCanTakeBack(last?.title),
      () => setCanTakeBack(undefined),
    );
  }, []);

  return {
    word,
    inTheWay,
    canTakeBack,
    /** Writes the estimate; `thenDraw`, where given, puts its drawing beside it. */
    insert: (form: BedForm, place: Place, thenDraw?: () => Promise<unknown>) =>
      attempt("Writing the estimate…", async () => {
        // What was shown is what is written.
        if (await refreshRates()) return { kind: "trouble", text: RATES_CHANGED };
        const { insertEstimate } = await import(/* webpackChunkName: "insert" */ "./insertEstimate");
        const inserted = await insertEstimate(form, place);
        if (!inserted.done) {
          setInTheWay(inserted.inTheWay);
          return NOTHING;
        }
        setCanTakeBack(inserted.title);
        await thenDraw?.();
        return { kind: "done", text: `The estimate stands on ${inserted.sheetName} at ${inserted.address}.` };
      }),
    draw: (deed: () => Promise<string>) =>
      attempt("Drawing…", async () => {
        const name = await deed();
        return { kind: "done", text: name ? `The drawing of ${name} is up to date.` : "The drawing is up to date." };
      }),
    takeBack: () =>
      attempt("Taking it back…", async () => {
        const { title, where } = await takeBackLastInsert();
        setCanTakeBack(undefined);
        return { kind: "done", text: `The ${title} was taken back from ${where}.` };
      }),
    cancel: () => {
      setInTheWay(undefined);
      setWord({ kind: "done", text: "Nothing was written." });
    },
  };
}
