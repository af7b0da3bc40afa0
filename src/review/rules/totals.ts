import { must } from "../../quantities/must";
import { type Cell, cellKey, contains, type Target } from "../book";
import { addendsOf, isPlainSum, type Sum, targetOfTree } from "../formula/sums";
import { isBinary, isReference } from "../formula/tree";
import type { Study, SummingCell } from "../study";
import { addressFrom, counted, list, short } from "../words";
import { change, eachSum, type Observation, offBy, type Rule } from "./rule";
import { touches } from "./shortSum";

export const doubleCount: Rule = {
  id: "double-count",
  title: "Something is counted twice in a total",
  level: "error",
  rank: 60,
  matters: "You charge the same lines twice and lose the job.",
  covers: ["unlike-neighbors", "short-sum"],
  *look(study) {
    const subtotals = new Map(
      study.summing.filter(({ pattern }) => isPlainSum(pattern)).map((one) => [cellKey(one.cell), one] as const),
    );
    const byColumn = new Map<string, SummingCell[]>();
    for (const one of subtotals.values()) {
      const key = `${one.cell.sheet}:${one.cell.column}`;
      const list = byColumn.get(key);
      if (list) list.push(one);
      else byColumn.set(key, [one]);
    }
    yield* eachSum(study, function* (summing) {
      const takenOff = takenOffBy(study, summing);
      // A sum of several parts may be twice too large in one part, or between them.
      const whole = addendsOf(study.book, summing.cell, summing.pattern);
      for (const sum of whole ? [whole] : summing.sums.filter(({ takesAll }) => takesAll)) {
        const inner = [...subtotalsIn(sum, byColumn), ...followed(study, sum, subtotals)];
        const twice = inner
          .filter(({ subtotal }) => isTwice(summing, sum, subtotal))
          .map(({ place }) => place)
          .filter((place) => !takenOff.has(cellKey(place)));
        const again = takenAgain(study, sum).filter((place) => !takenOff.has(cellKey(place)));
        if (twice.length > 0) yield observeDoubleCount(study, summing, sum, twice, "subtotal");
        else if (again.length > 0) yield observeDoubleCount(study, summing, sum, again, "again");
      }
    });
  },
};

interface Inner {
  readonly subtotal: SummingCell;
  /** The cell among those taken that holds the subtotal, or a reference to it. */
  readonly place: Cell;
}

function* subtotalsIn(sum: Sum, byColumn: ReadonlyMap<string, readonly SummingCell[]>): Generator<Inner> {
  for (const target of sum.targets) {
    for (let column = target.column; column < target.column + Math.min(target.columns, 500); column++) {
      const list = byColumn.get(`${target.sheet}:${column}`) ?? [];
      for (let place = firstFrom(list, target.row); place < list.length; place++) {
        const subtotal = must(list[place]);
        if (!contains(target, subtotal.cell)) break;
        yield { subtotal, place: subtotal.cell };
      }
    }
  }
}

/** The place of the first subtotal at or below a row; they are in the order of the sheet. */
function firstFrom(list: readonly SummingCell[], row: number): number {
  let [low, high] = [0, list.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (must(list[middle]).cell.row < row) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Single cells among what is taken that only repeat a subtotal, as `=E14` does. */
function* followed(study: Study, sum: Sum, subtotals: ReadonlyMap<string, SummingCell>): Generator<Inner> {
  for (const target of sum.targets) {
    if (target.rows !== 1 || target.columns !== 1) continue;
    const place: Cell = target;
    const pattern = study.book.patternAt(place.sheet, place.row, place.column);
    if (!pattern?.tree || !isReference(pattern.tree)) continue;
    const [to] = study.book.targetsOf(place);
    const subtotal = to && subtotals.get(cellKey(to));
    if (subtotal) yield { subtotal, place };
  }
}

/** Whether a sum takes a cell that a subtotal among its cells takes, too. */
function isTwice(
  { cell, pattern }: SummingCell,
  sum: Sum,
  { cell: inner, sums, pattern: innerPattern }: SummingCell,
): boolean {
  if (cellKey(cell) === cellKey(inner)) return false;
  // Each of a series builds on the one before it, as a running balance does.
  if (pattern === innerPattern) return false;
  if (sum.skipsNested && sums.every(({ skipsNested }) => skipsNested)) return false;
  return sums.some(({ targets }) => targets.some((target) => sum.targets.some((taken) => touches(taken, target))));
}

/** Single cells that the formula takes off again, as `SUM(E4:E20)-E9` does. */
function takenOffBy({ book }: Study, { cell, pattern }: SummingCell): Set<string> {
  const found = new Set<string>();
  for (let tree = pattern.tree ?? null; isBinary(tree); tree = tree.arguments[0] ?? null) {
    const target = tree.operator === "-" ? targetOfTree(book, cell, pattern, tree.arguments[1] ?? null) : undefined;
    if (target) found.add(cellKey(target));
  }
  return found;
}

/** Cells with a number that two parts of one sum both take: `SUM(E4:E9)+E7`. */
function takenAgain({ book }: Study, { targets }: Sum): Cell[] {
  const found = new Map<string, Cell>();
  for (const [index, one] of targets.entries()) {
    for (const other of targets.slice(index + 1)) {
      if (!touches(one, other)) continue;
      const [top, left] = [Math.max(one.row, other.row), Math.max(one.column, other.column)];
      const bottom = Math.min(one.row + one.rows, other.row + other.rows);
      const right = Math.min(one.column + one.columns, other.column + other.columns);
      for (let row = top; row < Math.min(bottom, top + 200); row++) {
        for (let column = left; column < right; column++) {
          const cell = { sheet: one.sheet, row, column };
          if (must(book.grids[one.sheet]).number(row, column)) found.set(cellKey(cell), cell);
        }
      }
    }
  }
  return [...found.values()];
}

function observeDoubleCount(
  study: Study,
  { cell, pattern }: SummingCell,
  sum: Sum,
  twice: readonly Cell[],
  how: "subtotal" | "again",
): Observation {
  const { book } = study;
  const grid = must(book.grids[cell.sheet]);
  const places = [...new Map(twice.map((place) => [cellKey(place), place])).values()];
  const amount = places.reduce(
    (total, { sheet, row, column }) => total + (must(book.grids[sheet]).number(row, column) ?? 0),
    0,
  );
  const total = grid.number(cell.row, cell.column);
  const addresses = places.map((place) => addressFrom(book, cell, place));
  const formula = must(grid.formula(cell.row, cell.column));
  // Taking once off again what is in twice is right whatever else is in the sum.
  const isSum = sum.name === "SUM" || sum.name === "+";
  const isPlain = isSum && isPlainSum(pattern) && places.length <= 5 && !/^=ROUND/i.test(formula);
  const which = how === "again" ? "twice" : `, plus the lines already in ${places.length === 1 ? "it" : "them"}`;
  return {
    cell,
    more: places,
    group: `${cell.sheet}:${pattern.id}`,
    about: formula,
    seen: `adds ${list(addresses)}${how === "again" ? " " : ""}${which}:` + ` ${short(amount)} too much.`,
    todo: how === "again" ? "Add each cell once." : "Add up either the lines or the subtotals, not both.",
    rank: Math.max(10, offBy(total, (total ?? 0) - amount, doubleCount.rank)),
    ...(isPlain && { fix: [change(study, cell, addresses.reduce(takenOnce, formula))] }),
  };
}

/** A sum without one of the two: `SUM(E4:E9)+E7` loses its `+E7`, any other has the cell taken off again. */
function takenOnce(formula: string, address: string): string {
  const added = formula.search(new RegExp(`\\+${address.replaceAll(/[$.()[\]]/g, "\\$&")}(?![\\w:])`));
  return added < 0 ? `${formula}-${address}` : formula.slice(0, added) + formula.slice(added + 1 + address.length);
}

/** SUBTOTAL and AGGREGATE have their own way with hidden rows, which whoever chose them knows. */
const COUNTS_HIDDEN = new Set(["SUM", "AVERAGE", "SUMPRODUCT", "SUMIF", "SUMIFS", "AVERAGEIF"]);

export const hiddenInTotal: Rule = {
  id: "hidden-in-total",
  title: "Hidden rows are in a total",
  level: "warning",
  rank: 25,
  matters: "Anyone who reads or prints the sheet can't see what's in the total.",
  look: (study) =>
    eachSum(study, ({ cell, sums }) => {
      const grid = must(study.book.grids[cell.sheet]);
      // A hidden total belongs to hidden helpers.
      if (grid.isRowHidden(cell.row) || grid.isColumnHidden(cell.column)) return undefined;
      return sums
        .filter(({ name }) => COUNTS_HIDDEN.has(name))
        .flatMap((sum) => observeHiddenInTotal(study, cell, sum) ?? []);
    }),
};

function observeHiddenInTotal(study: Study, cell: Cell, sum: Sum): Observation | undefined {
  const { book } = study;
  const hidden: Cell[] = [];
  let showing = false;
  for (const target of sum.targets) {
    if (target.sheet !== cell.sheet) return undefined;
    hidden.push(...hiddenIn(study, target));
    showing ||= showsANumber(study, target);
  }
  if (hidden.length === 0 || !showing) return undefined;
  const amount = hidden.reduce(
    (sum, { sheet, row, column }) => sum + must(must(book.grids[sheet]).number(row, column)),
    0,
  );
  const total = must(book.grids[cell.sheet]).number(cell.row, cell.column);
  const rows = [...new Set(hidden.map(({ row }) => row + 1))];
  const isRows = rows.every((row) => must(book.grids[cell.sheet]).isRowHidden(row - 1));
  const what = isRows ? `${counted(rows.length, "hidden row")} (${list(rows.map(String))})` : "hidden columns";
  return {
    cell,
    more: hidden,
    group: `${cell.sheet}:${isRows ? rows.join(",") : "columns"}`,
    about: `${hidden.length}`,
    seen: `includes ${what}: ${short(amount)} of ${short(total ?? 0)}.`,
    todo: "Unhide the rows, take them out of the total, or ignore this and say why.",
    rank: Math.max(10, offBy((total ?? 0) - amount, total, hiddenInTotal.rank)),
  };
}

/** The numbers of a range that do not show: in hidden rows of one that goes down, in hidden columns of one across. */
function* hiddenIn({ book }: Study, { sheet, row, column, rows, columns }: Target): Generator<Cell> {
  const grid = must(book.grids[sheet]);
  const within = (at: number, from: number, count: number) => at >= from && at < from + count;
  const [left, right] = [Math.max(column, grid.left), Math.min(column + columns - 1, grid.right)];
  const [top, bottom] = [Math.max(row, grid.top), Math.min(row + rows - 1, grid.bottom)];
  const hiddenRows = rows > 1 ? grid.facts.hiddenRows.filter((at) => within(at, row, rows)) : [];
  for (const r of hiddenRows)
    for (let c = left; c <= right; c++) if (grid.number(r, c)) yield { sheet, row: r, column: c };
  const hiddenColumns = columns > 1 ? grid.facts.hiddenColumns.filter((at) => within(at, column, columns)) : [];
  for (const c of hiddenColumns) {
    for (let r = top; r <= bottom; r++) {
      if (grid.number(r, c) && !(rows > 1 && grid.isRowHidden(r))) yield { sheet, row: r, column: c };
    }
  }
}

function showsANumber({ book }: Study, { sheet, row, column, rows, columns }: Target): boolean {
  const grid = must(book.grids[sheet]);
  for (let r = Math.max(row, grid.top); r < row + rows && r <= grid.bottom; r++) {
    if (rows > 1 && grid.isRowHidden(r)) continue;
    for (let c = Math.max(column, grid.left); c < column + columns && c <= grid.right; c++) {
      if (!(columns > 1 && grid.isColumnHidden(c)) && grid.number(r, c)) return true;
    }
  }
  return false;
}
