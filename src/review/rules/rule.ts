import { must } from "../../quantities/must";
import type { Cell, Target } from "../book";
import type { Change, Level } from "../finding";
import type { Pattern } from "../formula/pattern";
import type { SheetGrid } from "../sheet/grid";
import type { Measure } from "../sheet/measures";
import type { Study, SummingCell } from "../study";

/** One thing that a rule saw, in one cell. */
export interface Observation {
  readonly cell: Cell;
  /** The cell to fix, where it's another one: all that comes from one cause is one finding. */
  readonly cause?: Cell;
  /** Other cells that it is about, beside the first. */
  readonly more?: readonly (Cell | Target)[];
  /** Observations of a rule with the same group are one mistake in many cells. */
  readonly group: string;
  /** What makes it this observation and no other; a dismissal holds while it stays the same. */
  readonly about: string;
  /** Cells that it may come from: where another rule found an error in one of them, this is no more than its echo. */
  readonly echoOf?: readonly Target[];
  /** What was seen, from the verb on: the cell's name goes in front of it. */
  readonly seen: string;
  /** What was seen is a sentence by itself. */
  readonly isSentence?: true;
  readonly todo: string;
  /** Where they differ from the rule's own. */
  readonly matters?: string;
  readonly level?: Level;
  readonly rank?: number;
  readonly fix?: readonly Change[];
}

/** Something that is looked for. Rules are pure: a study in, observations out. */
export interface Rule {
  readonly id: string;
  readonly title: string;
  readonly level: Level;
  /** About how many percent of a quantity or price such a thing usually costs, 0 to 100. */
  readonly rank: number;
  readonly matters: string;
  /** Rules that say less about the same cell: what they saw there is left out. */
  readonly covers?: readonly string[];
  /** Looks through a study; an undefined in between is a place to pause. */
  readonly look: (study: Study) => Generator<Observation | undefined>;
}

/** How far one number is off another, in percent of what it should be, at most 100. */
export function offBy(is: number | undefined, shouldBe: number | undefined, otherwise: number): number {
  if (is === undefined || shouldBe === undefined) return otherwise;
  if (shouldBe === 0) return is === 0 ? 0 : 100;
  return Math.min(100, Math.round((Math.abs(is - shouldBe) / Math.abs(shouldBe)) * 100));
}

/** A change of one cell, from what is there now. */
export function change(
  study: Study,
  { sheet, row, column }: Cell,
  after: string | number,
  numberFormat?: string,
): Change {
  const grid = must(study.book.grids[sheet]);
  const before = grid.formula(row, column) ?? grid.value(row, column);
  return { sheet: grid.name, row, column, before, after, ...(numberFormat && { numberFormat }) };
}

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
