import { useEffect, useState } from "preact/hooks";
import { RATES_SHEET, ratesSheet } from "../../sheets/rates/ratesSheet";
import { belowUsed } from "../../workbook/belowUsed";
import { goTo } from "../../workbook/goTo";
import { type Inserted, insertPlan } from "../../workbook/insert";
import { type FoundRates, readRates } from "../../workbook/readRates";
import { takeBackLastInsert } from "../../workbook/takeBack";
import { WorkbookTrouble } from "../../workbook/trouble";
import type { Word } from "../useInsert";
import { missingRates } from "./missing";
import { refreshRates } from "./store";

/** Inserting the sheet of rates, adding to it, and going there. */
export function useRatesSheet() {
  const [word, setWord] = useState<Word>({ kind: "none" });
  const [canTakeBack, setCanTakeBack] = useState(false);

  const attempt = async (text: string, deed: () => Promise<Word>) => {
    setWord({ kind: "working", text });
    try {
      setWord(await deed());
    } catch (error) {
      if (!(error instanceof WorkbookTrouble)) throw error;
      setWord({ kind: "trouble", text: error.message });
    }
  };
  useEffect(() => {
    // What is shown may be older than a change that the host did not tell of.
    refreshRates().catch((error: unknown) => setWord({ kind: "trouble", text: String((error as Error).message) }));
  }, []);
  const told = async (inserted: Inserted): Promise<Word> => {
    await refreshRates();
    if (!inserted.done) {
      const { obstacles, address } = inserted.inTheWay;
      const what = obstacles.map((one) => `${one.what}: ${one.where}`).join("; ");
      return { kind: "trouble", text: `Nothing was written. In the way of ${address} there are ${what}.` };
    }
    setCanTakeBack(true);
    const { sheetName, address } = inserted;
    return { kind: "done", text: `The rates stand on ${sheetName} at ${address}. Type your own over the examples.` };
  };

  return {
    word,
    canTakeBack,
    insert: () =>
      attempt("Writing the rates…", async () => {
        // Somebody may have put one there in the meantime; there is never a second.
        if (await readRates())
          return { kind: "trouble", text: "The workbook has rates already, so nothing was written." };
        return told(await insertPlan((at) => ratesSheet(at), { kind: "new sheet", name: RATES_SHEET }));
      }),
    addMissing: (found: FoundRates) =>
      attempt("Writing the missing rates…", async () => {
        const { sheetId, at } = await belowUsed(found.sheets[0] ?? RATES_SHEET);
        return told(
          await insertPlan((anchor) => ratesSheet(anchor, missingRates(found)), { kind: "cell", sheetId, at }),
        );
      }),
    takeBack: () =>
      attempt("Taking it back…", async () => {
        const { title, where } = await takeBackLastInsert();
        setCanTakeBack(false);
        await refreshRates();
        return { kind: "done", text: `The ${title} was taken back from ${where}.` };
      }),
    show: (sheet: string) =>
      attempt("Going there…", async () => {
        await goTo({ sheet, row: 0, column: 0, rows: 1, columns: 1 });
        return { kind: "none" };
      }),
  };
}
