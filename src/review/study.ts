import { must } from "../quantities/must";
import { Book, type CallFunction, type Cell, cellKey, MOST_CELLS, type Target } from "./book";
import type { WorkbookFacts } from "./facts";
import { type Pattern, PatternReader } from "./formula/pattern";
import { Readers } from "./formula/readers";
import { type Sum, sumsOf } from "./formula/sums";
import type { Single, Value } from "./formula/values";
import type { Knowledge } from "./knowledge";
import { type Family, familiesOf, linesAcross, linesDown } from "./sheet/family";
import { findMeasures, type Measure } from "./sheet/measures";
import { type Outlier, outliersOf, withoutOpenEnds } from "./sheet/outliers";
import { totalRowsOf } from "./sheet/totalRows";

/** A cell whose formula adds something up. */
export interface SummingCell {
  readonly cell: Cell;
  readonly pattern: Pattern;
  readonly sums: readonly Sum[];
}

/** Everything that is worked out once about a workbook, for all rules. */
export class Study {
  readonly #outlierCells: ReadonlySet<string>;
  readonly #kept = new Map<string, unknown>();
  #measures: readonly Measure[] = [];

  private constructor(
    readonly book: Book,
    readonly knowledge: Knowledge,
    readonly readers: Readers,
    readonly families: readonly Family[],
    readonly outliers: readonly Outlier[],
    /** Every cell that adds something up, with what it adds. */
    readonly summing: readonly SummingCell[],
    readonly call: CallFunction,
  ) {
    this.#outlierCells = new Set(outliers.map(({ cell }) => cellKey(cell)));
  }

  /** Studies a workbook in slices; each step says how much of the way is done, 0 to 1. */
  static *of(
    facts: WorkbookFacts,
    knowledge: Knowledge,
    call: CallFunction = () => undefined,
  ): Generator<number, Study> {
    const book = yield* part(Book.read(facts), 0, 0.5);
    const readers = yield* part(Readers.read(book), 0.5, 0.6);
    const summing = yield* part(readSumming(book), 0.6, 0.6);
    const totalRows = totalRowsOf(book, summing);
    const families: Family[] = [];
    const outliers: Outlier[] = [];
    for (const grid of book.grids) {
      for (const lines of [linesDown(book, grid.index), linesAcross(book, grid.index)]) {
        let count = 0;
        for (const line of lines) {
          // A line across is short, a line down may be the whole sheet long.
          if (line.direction === "down" || count++ % 200 === 0)
            yield 0.6 + (0.4 * (grid.index + 0.5)) / book.grids.length;
          for (const family of familiesOf(book, line)) {
            families.push(family);
            outliers.push(...outliersOf(book, family, must(totalRows[grid.index])));
          }
        }
      }
    }
    const study = new Study(book, knowledge, readers, families, withoutOpenEnds(outliers, families), summing, call);
    study.#measures = yield* part(findMeasures(study), 1, 1);
    return study;
  }

  /** All numbers that say what they measure. */
  get measures(): readonly Measure[] {
    return this.#measures;
  }

  /** Works something out the first time it is asked for, and keeps it. */
  once<Result>(what: string, work: () => Result): Result {
    if (!this.#kept.has(what)) this.#kept.set(what, work());
    return this.#kept.get(what) as Result;
  }

  /** Whether a cell stands out of the formulas around it. */
  isOutlier(cell: Cell): boolean {
    return this.#outlierCells.has(cellKey(cell));
  }

  /** Whether a sheet is looked at; a very hidden or a protected one is not, and the review says so. */
  isChecked(sheet: number): boolean {
    const { visibility, protected: isProtected } = must(this.book.grids[sheet]).facts;
    return visibility !== "VeryHidden" && !isProtected;
  }

  /** What a formula would give in a cell, with the values as they stand; undefined where that is not known here. */
  wouldGive(cell: Cell, formula: string): Value | undefined {
    const pattern = new PatternReader().read(formula, cell.row, cell.column);
    return pattern.tree === undefined ? undefined : this.valueOf(cell, pattern, pattern.tree);
  }

  /** What a formula would read in a cell, and how many numbers there are in it; undefined where that is not known. */
  readBy(cell: Cell, formula: string): { readonly targets: readonly Target[]; readonly count: number } | undefined {
    const { references } = new PatternReader().read(formula, cell.row, cell.column);
    const targets = references.flatMap((reference) => this.book.targetOf(reference, cell) ?? []);
    if (targets.length < references.length || targets.some(({ rows, columns }) => rows * columns > MOST_CELLS))
      return undefined;
    const values = targets.flatMap((target) => [this.valuesAt(target)].flat(2));
    return { targets, count: values.filter((value) => typeof value === "number").length };
  }

  /** The value of a part of a formula. */
  valueOf(cell: Cell, pattern: Pattern, tree: NonNullable<Pattern["tree"]> | null): Value | undefined {
    return this.book.valueOf(cell, pattern, tree, this.call);
  }

  /** What is in cells: one value, or rows of them. */
  valuesAt(target: Target): Value | undefined {
    return this.book.valuesAt(target);
  }

  valueAt(cell: Cell): Single {
    return this.book.valueAt(cell);
  }
}

export const asNumber = (value: Value | undefined): number | undefined =>
  typeof value === "number" && Number.isFinite(value) ? value : undefined;

function* readSumming(book: Book): Generator<undefined, SummingCell[]> {
  const summing: SummingCell[] = [];
  // Most patterns add nothing up, and then none of their cells does.
  const never = new Set<Pattern>();
  let count = 0;
  for (const grid of book.grids) {
    for (const { pattern, ...cell } of book.formulaCells(grid.index)) {
      if (count++ % 2000 === 0) yield undefined;
      if (never.has(pattern)) continue;
      const sums = sumsOf(book, cell, pattern);
      if (sums.length > 0) summing.push({ cell, pattern, sums });
      else never.add(pattern);
    }
  }
  return summing;
}

/** Runs one part of the way, which counts from `from` to `to` of the whole. */
function* part<Result>(
  steps: Generator<number | undefined, Result>,
  from: number,
  to: number,
): Generator<number, Result> {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    yield from + (to - from) * (step.value ?? 0);
  }
}
