import { useEffect, useState } from "preact/hooks";
import type { BedForm } from "../quantities/bed/form";
import type { InTheWay, Place } from "../workbook/place";
import { lastInsert } from "../workbook/takeBack";
import { WorkbookTrouble } from "../workbook/trouble";
import { refreshRates } from "./rates/store";
import { takenBack } from "./takenBack";
import { useWord } from "./useWord";

/** The host keeps a request waiting as long as a cell is open for typing. */
const WAITING = {
  afterMs: 2500,
  text: "Waiting for the sheet. If a cell is open for typing, press Enter or Esc there.",
};

const RATES_CHANGED =
  "Nothing was written: the rates have changed in the meantime. Look at the price again, then insert.";

/** Inserting, what stands in the way of it, and taking it back. */
export function useInsert() {
  const speaking = useWord(WAITING);
  const [inTheWay, setInTheWay] = useState<InTheWay>();
  const [canTakeBack, setCanTakeBack] = useState<string>();

  const attempt: typeof speaking.attempt = (text, deed) => {
    setInTheWay(undefined);
    return speaking.attempt(text, deed);
  };

  useEffect(() => {
    // Before the first insert nothing can be taken back, and a host that cannot tell is treated the same.
    lastInsert().then(
      (last) => setCanTakeBack(last?.title),
      () => setCanTakeBack(undefined),
    );
  }, []);

  return {
    word: speaking.word,
    inTheWay,
    canTakeBack,
    /** Writes the estimate; `thenDraw`, where given, puts its drawing beside it. */
    insert: (form: BedForm, place: Place, thenDraw?: () => Promise<unknown>) =>
      attempt("Writing the estimate…", async () => {
        // What was shown is what is written.
        if (await refreshRates()) throw new WorkbookTrouble(RATES_CHANGED);
        const { insertEstimate } = await import(/* webpackChunkName: "insert" */ "./insertEstimate");
        const inserted = await insertEstimate(form, place);
        if (!inserted.done) {
          setInTheWay(inserted.inTheWay);
          return undefined;
        }
        setCanTakeBack(inserted.title);
        await thenDraw?.();
        return `The estimate stands on ${inserted.sheetName} at ${inserted.address}.`;
      }),
    draw: (deed: () => Promise<string>) =>
      attempt("Drawing…", async () => {
        const name = await deed();
        return name ? `The drawing of ${name} is up to date.` : "The drawing is up to date.";
      }),
    takeBack: () =>
      attempt("Taking it back…", async () => {
        const said = await takenBack();
        setCanTakeBack(undefined);
        return said;
      }),
    cancel: () => {
      setInTheWay(undefined);
      speaking.say("Nothing was written.");
    },
  };
}
