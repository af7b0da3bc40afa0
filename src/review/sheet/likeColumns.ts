import { must } from "../../quantities/must";
import type { Book, Cell } from "../book";
import type { Study } from "../study";
import type { HeadingRow } from "./places";

/** A column of typed numbers whose heading stands over formulas in other columns. */
export interface TypedColumn {
  readonly cells: readonly Cell[];
  readonly heading: string;
  /** The columns with the same heading that are worked out. */
  readonly others: readonly number[];
}

/** Fewer columns than this that are worked out make no rule. */
const FEWEST_COLUMNS = 2;
const FEWEST_ROWS = 3;
/** As many of a column's numbers have to be formulas, or typed. */
const NEARLY_ALL = 0.8;

/**
 * Columns that are typed where those with the same heading are worked out, as `Share` of one year among years. Each
 * group of columns has its own: formulas that read the group before it start from a typed one, and say nothing here.
 */
export function* typedColumnsIn(study: Study): Generator<TypedColumn | undefined> {
  const { book } = study;
  for (const grid of book.grids) {
    yield undefined;
    if (!study.isChecked(grid.index)) continue;
    const { headingRows } = must(book.places[grid.index]);
    for (const [place, heading] of headingRows.entries()) {
      const end = headingRows.slice(place + 1).find(({ row }) => row > heading.row + 1)?.row ?? grid.bottom + 1;
      yield* inTable(book, grid.index, heading, end);
    }
  }
}

function* inTable(book: Book, sheet: number, heading: HeadingRow, end: number): Generator<TypedColumn> {
  const grid = must(book.grids[sheet]);
  const byHeading = new Map<string, number[]>();
  for (let column = heading.first; column <= heading.last; column++) {
    const text = String(grid.value(heading.row, column)).trim();
    if (text !== "") byHeading.set(text, [...(byHeading.get(text) ?? []), column]);
  }
  for (const [text, columns] of byHeading) {
    if (columns.length <= FEWEST_COLUMNS) continue;
    const bodies = columns.map((column, at) =>
      bodyOf(book, sheet, heading.row + 1, end, column, columns[at - 1] ?? -1),
    );
    const workedOut = columns.filter((_, at) => must(bodies[at]).isWorkedOut);
    const typed = bodies.filter(({ isTyped }) => isTyped);
    if (workedOut.length < FEWEST_COLUMNS || typed.length >= workedOut.length) continue;
    for (const { numbers } of typed) yield { cells: numbers, heading: text, others: workedOut };
  }
}

/** What is in a column: formulas that read their own group of columns, from right after `before` on, or typed numbers. */
function bodyOf(book: Book, sheet: number, from: number, end: number, column: number, before: number) {
  const grid = must(book.grids[sheet]);
  const numbers: Cell[] = [];
  let formulas = 0;
  for (let row = from; row < end; row++) {
    const cell = { sheet, row, column };
    if (grid.isTypedNumber(row, column)) numbers.push(cell);
    const targets = book.patternAt(sheet, row, column) ? book.targetsOf(cell) : [];
    const isOwn = targets.some((one) => one.sheet === sheet && one.row === row && one.column !== column);
    if (isOwn && targets.every((one) => one.sheet !== sheet || one.row !== row || one.column > before)) formulas++;
  }
  const all = Math.max(FEWEST_ROWS, NEARLY_ALL * (numbers.length + formulas));
  return { numbers, isWorkedOut: formulas >= all, isTyped: numbers.length >= all };
}
