import { useEffect, useState } from "preact/hooks";
import { RATES_SHEET, ratesSheet } from "../../sheets/rates/ratesSheet";
import { type Inserted, insertPlan } from "../../workbook/change/insert";
import { WorkbookFailure } from "../../workbook/failure";
import { type FoundRates, readRates } from "../../workbook/read/rates";
import { belowUsed, goTo } from "../../workbook/sheets";
import { inTheWayText } from "../inTheWayWords";
import { undoInsert } from "../undoInsert";
import type { Reporter } from "../useStatus";
import { missingRates } from "./missing";
import { refreshRates } from "./store";

/** Inserting the sheet of rates, adding to it, and going there. */
export function useRatesSheet({ complain, attempt }: Reporter) {
  /** The id of the insert that can be undone. */
  const [canUndo, setCanUndo] = useState<string>();

  useEffect(() => {
    // What is shown may be older than a change that the host did not tell of.
    refreshRates().catch((error: unknown) => complain(String((error as Error).message)));
  }, [complain]);
  const told = async (inserted: Inserted): Promise<string> => {
    if (!inserted.done) throw new WorkbookFailure(inTheWayText(inserted.inTheWay, "list of rates"));
    setCanUndo(inserted.id);
    // They stand, whether or not they can be read at once.
    await refreshRates().catch(() => false);
    const { sheetName, address } = inserted;
    return `Added the Rates sheet: ${sheetName}!${address}. Type your own prices over the samples.`;
  };

  return {
    canUndo,
    insert: () =>
      attempt("Writing the rates…", async () => {
        // Someone may have put one there in the meantime; there is never a second.
        if (await readRates())
          throw new WorkbookFailure(
            "This workbook already has rates, so nothing was written. Use those, or undo them first.",
          );
        return told(await insertPlan((at) => ratesSheet(at), { kind: "new sheet", name: RATES_SHEET }));
      }),
    addMissing: (found: FoundRates) =>
      attempt("Writing the missing rates…", async () => {
        const { sheetId, at } = await belowUsed(found.sheets[0] ?? RATES_SHEET);
        return told(
          await insertPlan((anchor) => ratesSheet(anchor, missingRates(found)), { kind: "cell", sheetId, at }),
        );
      }),
    undo: () =>
      attempt("Undoing…", async () => {
        const said = await undoInsert(canUndo);
        setCanUndo(undefined);
        await refreshRates().catch(() => false);
        return said;
      }),
    show: (sheet: string) =>
      attempt("Going there…", async () => {
        await goTo({ sheet, row: 0, column: 0, rows: 1, columns: 1 });
        return undefined;
      }),
  };
}
