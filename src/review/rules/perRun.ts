import type { Cell } from "../book";
import type { Pattern } from "../formula/pattern";
import type { Study } from "../study";
import type { Observation } from "./rule";

/** Of formulas filled down further than this, some are looked at first; the rest only if those show something. */
const LONG = 200;

/**
 * Looks at every formula of the checked sheets. Formulas filled down a long way differ in nothing that most rules
 * ask about, so that ten thousand rows cost no more than a few.
 */
export function* perRun(
  study: Study,
  look: (cell: Cell, pattern: Pattern) => Iterable<Observation>,
): Generator<Observation | undefined> {
  let count = 0;
  for (const { sheet, column, from, to, pattern } of study.readers.runs) {
    if (!study.isChecked(sheet) || pattern.tree === undefined) continue;
    if (count++ % 100 === 0) yield undefined;
    const at = (row: number) => [...look({ sheet, row, column }, pattern)];
    const isLong = to - from >= LONG;
    if (isLong && [from, from + 1, Math.floor((from + to) / 2), to].every((row) => at(row).length === 0)) continue;
    for (let row = from; row <= to; row++) {
      if (row % 100 === 0) yield undefined;
      yield* at(row);
    }
  }
}
