import { useEffect, useState } from "preact/hooks";
import { Problem } from "../../quantities/problem";
import { STONES } from "../../quantities/stone";
import { readTape } from "../../quantities/tape";
import {
  type FirstBed,
  type MoreRole,
  moreRolesOf,
  type NewListOptions,
  newList,
  newListResults,
} from "../../sheets/jobRows/newList";
import { productNames } from "../../sheets/jobRows/products";
import { type ResultRole, roleLabel } from "../../sheets/jobRows/roles";
import { rateKeysOf } from "../../sheets/jobRows/setting";
import { offeredFor } from "../../sheets/jobRows/wanted";
import { insertPlan } from "../../workbook/change/insert";
import type { InTheWay, Place } from "../../workbook/change/place";
import { type LastInsert, lastInsert } from "../../workbook/change/receipt";
import { stopIfRatesChanged, useRates } from "../rates/store";
import { undoInsert } from "../undoInsert";
import { useStatus } from "../useStatus";
import { type AssumedTexts, askedTexts, readAssumed } from "./assumed";

const NO_BED: FirstBed = { job: "", bed: "", length: "", width: "" };
const USUAL: readonly ResultRole[] = ["area", "border", "pieces", "tons", "order", "rolls", "pins"];

/** Starting a list: its first bed, its columns, and writing it. */
export function useStart() {
  const reporter = useStatus();
  const rates = useRates();
  const [first, setFirst] = useState(NO_BED);
  const [results, setResults] = useState(USUAL);
  const [more, setMore] = useState<readonly MoreRole[]>([]);
  const [texts, setTexts] = useState<AssumedTexts>(askedTexts);
  const [inTheWay, setInTheWay] = useState<InTheWay>();
  const [last, setLast] = useState<LastInsert>();
  const { assumed, problems } = readAssumed(texts);
  const { stones = [], stonesHaveUnits } = rates?.found?.rates ?? {};
  const products = productNames(rates?.found?.rates);
  // A result that goes with a column goes with it.
  const offered = offeredFor((role) => more.some((one) => one === role));
  const wantedNow = results.filter((role) => offered.includes(role));
  const options: NewListOptions = {
    first,
    assumed,
    results: wantedNow,
    rates: rateKeysOf(rates?.found?.names ?? []),
    weighsStone: stones.some(({ tonsPerYard }) => tonsPerYard),
    stonesHaveUnits: stonesHaveUnits ?? false,
    stonesHaveSteps: stones.some(({ orderStep, orderMinimum }) => orderStep || orderMinimum),
    stones: [...new Set([...stones, ...STONES].map(({ name }) => name))],
    more,
    products,
  };

  useEffect(() => {
    // Before the first insert nothing can be undone, and a host that cannot tell is treated the same.
    lastInsert().then(setLast, () => setLast(undefined));
  }, []);

  return {
    ...reporter,
    first,
    setFirst,
    results: wantedNow,
    setResults,
    /** Columns for what differs by bed, and whether each is wanted. */
    more: moreRolesOf(products).map((role) => ({
      label: roleLabel(role),
      isOn: more.includes(role),
      toggle: () => setMore(more.includes(role) ? more.filter((one) => one !== role) : [...more, role]),
    })),
    inputs: more,
    texts,
    setTexts,
    problems,
    sizeProblems: { length: sizeProblem(first.length, "Length"), width: sizeProblem(first.width, "Width") },
    wanted: newListResults(options),
    preview: newList(options, { row: 0, column: 0 }),
    inTheWay,
    canUndo: last?.title,
    write: (place: Place) =>
      reporter.attempt("Writing the list…", async () => {
        setInTheWay(undefined);
        await stopIfRatesChanged();
        const inserted = await insertPlan((at) => newList(options, at), place);
        if (!inserted.done) {
          setInTheWay(inserted.inTheWay);
          return undefined;
        }
        setLast(inserted);
        return `Added the list to ${inserted.sheetName}!${inserted.address}. Type the next bed below it, then copy the formulas down.`;
      }),
    undo: () =>
      reporter.attempt("Undoing…", async () => {
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

/** What is wrong with a side of the first bed; undefined where it can be used. "" asks for it. */
function sizeProblem(text: string, side: string): string | undefined {
  if (text.trim() === "") return "";
  try {
    return readTape(text, "ft", side) > 0 ? undefined : `Type a ${side.toLowerCase()} over 0, such as 18' 6".`;
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    return problem.message;
  }
}
