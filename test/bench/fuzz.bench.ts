import * as functions from "../../src/functions/index";
import { standInForCustomFunctions } from "../fakeCustomFunctions";
import { fuzz } from "../fuzz/fuzzFunctions";
import type { Table } from "./table";

const CALLS = Number(process.env.FUZZ_CALLS ?? 100_000);
/** A sheet must never hang: no single call may take longer, on a slow machine under load. */
const LONGEST_MS = 5000;

/** Every function with random and hostile values: answers, refusals, faults, and the slowest call. */
export async function bench(): Promise<Table> {
  standInForCustomFunctions();
  const faults: string[] = [];
  const rows = (Object.keys(functions) as (keyof typeof functions)[]).map((id) => {
    const found = fuzz(id, CALLS, 11);
    faults.push(...found.faults);
    if (found.slowestMs > LONGEST_MS) faults.push(`${id}(${found.slowest}) took ${Math.round(found.slowestMs)} ms`);
    return {
      function: id,
      calls: found.calls,
      answers: found.answers,
      refusals: found.refusals,
      faults: found.faults.length,
      "slowest call, ms": Number(found.slowestMs.toFixed(1)),
    };
  });
  if (faults.length > 0) throw new Error(`Faults found:\n${faults.join("\n")}`);
  const sum = (of: "calls" | "faults") => rows.reduce((total, row) => total + row[of], 0);
  const claim = {
    what: `Faults in ${sum("calls").toLocaleString("en-US")} calls with random and hostile values`,
    measured: sum("faults"),
    most: 0,
    unit: "",
    how: "each answer is checked: a possible number, or an error that gives its reason",
  };
  return { title: "Fuzz: a right answer or a clear error, whatever is typed", rows, claims: [claim] };
}
