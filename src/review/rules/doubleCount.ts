import { areaAddress } from "../../spreadsheet/areas";
import { type Cell, cellKey, contains } from "../book";
import { addendsOf, isPlainSum, type Sum, targetOfTree } from "../formula/sums";
import { isBinary, isReference } from "../formula/tree";
import type { Study, SummingCell } from "../study";
import { addressFrom, list, nameOf, short } from "../words";
import { eachSum } from "./each";
import { touches } from "./leftOut";
import { change, type Observation, offBy, type Rule } from "./rule";

export const doubleCount: Rule = {
  id: "double-count",
  title: "Something is counted twice in a total",
  level: "slip",
  rank: 60,
  matters: "The same lines are charged twice, and the job goes to somebody else.",
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
        if (twice.length > 0) yield observe(study, summing, sum, twice, "subtotal");
        else if (again.length > 0) yield observe(study, summing, sum, again, "again");
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
        const subtotal = list[place]!;
        if (!contains(target, subtotal.cell)) break;
        yield { subtotal, place: subtotal.cell };
      }
    }
  }
}

/** The place of the first subtotal at or below a row; they stand in the order of the sheet. */
function firstFrom(list: readonly SummingCell[], row: number): number {
  let [low, high] = [0, list.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (list[middle]!.cell.row < row) low = middle + 1;
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
function isTwice({ cell }: SummingCell, sum: Sum, { cell: inner, sums }: SummingCell): boolean {
  if (cellKey(cell) === cellKey(inner)) return false;
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
          if (book.grids[one.sheet]!.number(row, column)) found.set(cellKey(cell), cell);
        }
      }
    }
  }
  return [...found.values()];
}

function observe(
  study: Study,
  { cell, pattern }: SummingCell,
  sum: Sum,
  twice: readonly Cell[],
  how: "subtotal" | "again",
): Observation {
  const { book } = study;
  const grid = book.grids[cell.sheet]!;
  const places = [...new Map(twice.map((place) => [cellKey(place), place])).values()];
  const amount = places.reduce(
    (total, { sheet, row, column }) => total + (book.grids[sheet]!.number(row, column) ?? 0),
    0,
  );
  const total = grid.number(cell.row, cell.column);
  const addresses = places.map((place) => addressFrom(book, cell, place));
  const formula = grid.formula(cell.row, cell.column)!;
  // Taking once off again what is in twice is right whatever else is in the sum.
  const isSum = sum.name === "SUM" || sum.name === "+";
  const isPlain = isSum && isPlainSum(pattern) && places.length <= 5 && !/^=ROUND/i.test(formula);
  const which =
    how === "again"
      ? "twice"
      : `, which ${places.length === 1 ? "is itself the sum of lines" : "are themselves sums of lines"} that it takes, too`;
  return {
    cell,
    more: places,
    group: `${cell.sheet}:${pattern.id}`,
    about: formula,
    seen:
      `${areaAddress(cell)} (${nameOf(book, cell)}) takes ${list(addresses)}${how === "again" ? " " : ""}${which}:` +
      ` ${short(amount)} too much.`,
    todo: how === "again" ? "Take each cell once." : "Add up either the lines or the subtotals, not both.",
    rank: Math.max(10, offBy(total, (total ?? 0) - amount, doubleCount.rank)),
    ...(isPlain && { fix: [change(study, cell, addresses.reduce(takenOnce, formula))] }),
  };
}

/** A sum without one of the two: `SUM(E4:E9)+E7` loses its `+E7`, any other has the cell taken off again. */
function takenOnce(formula: string, address: string): string {
  const added = formula.search(new RegExp(`\\+${address.replaceAll(/[$.()[\]]/g, "\\$&")}(?![\\w:])`));
  return added < 0 ? `${formula}-${address}` : formula.slice(0, added) + formula.slice(added + 1 + address.length);
}
