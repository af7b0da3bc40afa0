import { useEffect, useState } from "preact/hooks";
import type { BedForm } from "../quantities/bed/form";
import { Problem } from "../quantities/problem";
import type { InTheWay, Place } from "../workbook/change/place";
import type { LastInsert } from "../workbook/change/receipt";
import { WorkbookFailure } from "../workbook/failure";
import { stopIfRatesChanged } from "./rates/store";
import { isNotFetched, NOT_FETCHED, useStatus } from "./useStatus";

/** Where a new estimate goes: a sheet of its own, or the selected cell. */
export type WhereTo = "new sheet" | "cell";

/** As it was chosen last, for as long as the pane is open. */
let chosenLast: WhereTo = "new sheet";

/** Inserting, what is in the way of it, and undoing it. */
export function useInsert() {
  const reporter = useStatus();
  const [whereTo, setWhereTo] = useState(chosenLast);
  const [inTheWay, setInTheWay] = useState<InTheWay>();
  const [last, setLast] = useState<LastInsert>();

  const attempt: typeof reporter.attempt = (text, action) => {
    setInTheWay(undefined);
    return reporter.attempt(text, action);
  };

  useEffect(() => {
    // Before the first insert nothing can be undone, and a host that cannot tell is treated the same.
    import(/* webpackChunkName: "receipt" */ "../workbook/change/receipt")
      .then(({ lastInsert }) => lastInsert())
      .then(setLast, () => setLast(undefined));
  }, []);

  return {
    status: reporter.status,
    /** For what else is done with the estimate: the same message, and nothing is in the way any more. */
    attempt,
    inTheWay,
    whereTo,
    chooseWhereTo: (next: WhereTo) => {
      chosenLast = next;
      setWhereTo(next);
    },
    canUndo: last?.title,
    /** Writes the estimate; `thenDraw`, where given, puts its drawing beside it. */
    insert: (form: BedForm, place: Place, thenDraw?: () => Promise<unknown>) =>
      attempt("Writing the estimate…", async () => {
        await stopIfRatesChanged();
        const { insertEstimate } = await import(/* webpackChunkName: "insert" */ "./insertEstimate");
        const inserted = await insertEstimate(form, place);
        if (!inserted.done) {
          setInTheWay(inserted.inTheWay);
          return undefined;
        }
        setLast(inserted);
        const stands = `Added to ${inserted.sheetName}!${inserted.address}.`;
        try {
          await thenDraw?.();
        } catch (error) {
          throw new WorkbookFailure(`${stands} It isn't drawn. ${whyNotDrawn(error)}`, { cause: error });
        }
        return stands;
      }),
    draw: (action: () => Promise<string>) =>
      attempt("Drawing…", async () => {
        const name = await action();
        return name ? `The drawing of ${name} is up to date.` : "The drawing is up to date.";
      }),
    undo: () =>
      attempt("Undoing…", async () => {
        const { undoInsert } = await import(/* webpackChunkName: "insert" */ "./undoInsert");
        const said = await undoInsert(last?.id);
        setLast(undefined);
        return said;
      }),
    cancel: () => {
      setInTheWay(undefined);
      reporter.say("Nothing was written.");
    },
  };
}

/** Whatever it was, the estimate stands: none of these words may make someone insert it again. */
function whyNotDrawn(error: unknown): string {
  if (error instanceof WorkbookFailure || error instanceof Problem) return error.message;
  const todo = "Select a cell of the block, then press Draw.";
  if (isNotFetched(error)) return `${NOT_FETCHED} ${todo}`;
  // A fault of this program is to be found in the browser's own list of errors, too.
  reportError(error);
  return `Something went wrong in the add-in. ${todo}`;
}
