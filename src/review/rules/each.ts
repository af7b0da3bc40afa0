import type { Cell } from "../book";
import type { Pattern } from "../formula/pattern";
import type { SheetGrid } from "../sheet/grid";
import type { Measure } from "../sheet/measures";
import type { Study, SummingCell } from "../study";
import type { Observation } from "./rule";

/*
 * How rules go through a workbook. Each of these looks at everything of one kind on the checked sheets, and pauses
 * often enough that the screen stays alive.
 */

type Looking = Generator<Observation | undefined>;
type Found = Observation | Iterable<Observation> | undefined;

const ROWS_A_SLICE = 100;
const ITEMS_A_SLICE = 100;
/** Of formulas filled down further than this, some are looked at first; the rest only if those show something. */
const LONG = 200;

/** Looks at every cell. */
export function* eachCell(study: Study, look: (cell: Cell, grid: SheetGrid) => Found): Looking {
  for (const grid of study.book.grids) {
    if (!study.isChecked(grid.index)) continue;
    for (let row = grid.top; row <= grid.bottom; row++) {
      if (row % ROWS_A_SLICE === 0) yield undefined;
      for (let column = grid.left; column <= grid.right; column++) {
        yield* listOf(look({ sheet: grid.index, row, column }, grid));
      }
    }
  }
}

/** Looks at every number that says what it measures. */
export function* eachMeasure(study: Study, look: (measure: Measure) => Found): Looking {
  yield* inSlices(study.measures, look);
}

/** Looks at every formula that adds something up. */
export function* eachSum(study: Study, look: (summing: SummingCell) => Found): Looking {
  yield* inSlices(
    study.summing.filter(({ cell }) => study.isChecked(cell.sheet)),
    look,
  );
}

function* inSlices<Item>(items: readonly Item[], look: (item: Item) => Found): Looking {
  for (const [index, item] of items.entries()) {
    if (index % ITEMS_A_SLICE === 0) yield undefined;
    yield* listOf(look(item));
  }
}

/**
 * Looks at every formula. Formulas filled down a long way differ in nothing that most rules ask about, so that ten
 * thousand rows cost no more than a few.
 */
export function* eachFormula(study: Study, look: (cell: Cell, pattern: Pattern) => Found): Looking {
  let count = 0;
  for (const { sheet, column, from, to, pattern } of study.readers.runs) {
    if (!study.isChecked(sheet) || pattern.tree === undefined) continue;
    if (count++ % ITEMS_A_SLICE === 0) yield undefined;
    const at = (row: number) => listOf(look({ sheet, row, column }, pattern));
    const isLong = to - from >= LONG;
    if (isLong && [from, from + 1, Math.floor((from + to) / 2), to].every((row) => at(row).length === 0)) continue;
    for (let row = from; row <= to; row++) {
      if (row % ROWS_A_SLICE === 0) yield undefined;
      yield* at(row);
    }
  }
}

function listOf(found: Found): readonly Observation[] {
  if (found === undefined) return [];
  return "cell" in found ? [found] : [...found];
}
