import { useEffect, useState } from "preact/hooks";
import { type Additions, additions } from "../../sheets/rates/additions";
import { RATES_SHEET, ratesSheet, type WantedRates } from "../../sheets/rates/ratesSheet";
import { type Inserted, insertPlan } from "../../workbook/change/insert";
import type { PlaceOnSheet } from "../../workbook/change/place";
import { WorkbookFailure } from "../../workbook/failure";
import { type FoundRates, readRates } from "../../workbook/read/rates";
import { belowUsed, goTo } from "../../workbook/sheets";
import { inTheWayText } from "../inTheWayWords";
import { undoInsert } from "../undoInsert";
import type { Reporter } from "../useStatus";
import { missingRates } from "./missing";
import { refreshRates } from "./store";

/** What the Rates sheet lacks, and where it would go. */
export interface ProposedAdditions extends Additions {
  readonly sheet: string;
  readonly wanted: WantedRates;
  readonly place: PlaceOnSheet;
}

/** Inserting the sheet of rates, adding to it, and going there. */
export function useRatesSheet({ complain, attempt, say }: Reporter) {
  /** The id of the insert that can be undone. */
  const [canUndo, setCanUndo] = useState<string>();
  const [proposed, setProposed] = useState<ProposedAdditions>();

  useEffect(() => {
    // What is shown may be older than a change that the host did not tell of.
    refreshRates().catch((error: unknown) => complain(String((error as Error).message)));
  }, [complain]);
  const told = async (inserted: Inserted, what: string): Promise<string> => {
    if (!inserted.done) throw new WorkbookFailure(inTheWayText(inserted.inTheWay, "list of rates"));
    setCanUndo(inserted.id);
    // They stand, whether or not they can be read at once.
    await refreshRates().catch(() => false);
    const { sheetName, address } = inserted;
    return `Added ${what}: ${sheetName}!${address}. Type your own prices over the samples.`;
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
        return told(
          await insertPlan((at) => ratesSheet(at), { kind: "new sheet", name: RATES_SHEET }),
          "the Rates sheet",
        );
      }),
    proposed,
    propose: (found: FoundRates) =>
      attempt("Reading the sheet…", async () => {
        const sheet = found.sheets[0] ?? RATES_SHEET;
        const { sheetId, at } = await belowUsed(sheet);
        const wanted = missingRates(found);
        setProposed({ sheet, wanted, place: { kind: "cell", sheetId, at }, ...additions(wanted, at) });
        return undefined;
      }),
    leave: () => {
      setProposed(undefined);
      say("Nothing was changed.");
    },
    addProposed: () =>
      attempt("Adding to the rates…", async () => {
        if (!proposed) return undefined;
        const { wanted, place, parts } = proposed;
        // Where the sheet has changed since, the next preview starts from what it has then.
        setProposed(undefined);
        const inserted = await insertPlan((at) => ratesSheet(at, wanted), place);
        return told(inserted, parts.length === 1 ? "what was missing" : `the ${parts.length} missing parts`);
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

export type RatesSheetWork = ReturnType<typeof useRatesSheet>;
