import { type Cell, cellKey, contains, type Target } from "../book";
import { isPlainSum, type Sum } from "../formula/sums";
import { isReference } from "../formula/tree";
import type { Study, SummingCell } from "../study";
import { addressFrom, list, localAddress, nameOf, short } from "../words";
import { touches } from "./leftOut";
import { change, type Observation, offBy, type Rule } from "./rule";

export const doubleCount: Rule = {
  id: "double-count",
  title: "A subtotal is counted again with its own lines",
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
      byColumn.set(key, [...(byColumn.get(key) ?? []), one]);
    }
    for (const summing of study.summing) {
      if (!study.isChecked(summing.cell.sheet)) continue;
      for (const sum of summing.sums) {
        if (!sum.takesAll) continue;
        const inner = [...subtotalsIn(sum, byColumn), ...followed(study, sum, subtotals)];
        const twice = inner.filter(({ subtotal, place }) => isTwice(summing, sum, subtotal, place));
        if (twice.length > 0) yield observe(study, summing, sum, twice);
      }
    }
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
      for (const subtotal of byColumn.get(`${target.sheet}:${column}`) ?? []) {
        if (contains(target, subtotal.cell)) yield { subtotal, place: subtotal.cell };
      }
    }
  }
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

function isTwice({ cell }: SummingCell, sum: Sum, { cell: inner, sums }: SummingCell, place: Cell): boolean {
  if (cellKey(cell) === cellKey(inner)) return false;
  if (sum.skipsNested && sums.every(({ skipsNested }) => skipsNested)) return false;
  const isPlace = (target: Target) => target.rows === 1 && target.columns === 1 && contains(target, place);
  return sums.some(({ targets }) =>
    targets.some((target) => sum.targets.some((taken) => !isPlace(taken) && touches(taken, target))),
  );
}

function observe(study: Study, { cell, pattern }: SummingCell, sum: Sum, twice: readonly Inner[]): Observation {
  const { book } = study;
  const grid = book.grids[cell.sheet]!;
  const places = [...new Map(twice.map(({ place }) => [cellKey(place), place])).values()];
  const amount = places.reduce(
    (total, { sheet, row, column }) => total + (book.grids[sheet]!.number(row, column) ?? 0),
    0,
  );
  const total = grid.number(cell.row, cell.column);
  const addresses = places.map((place) => addressFrom(book, cell, place));
  const formula = grid.formula(cell.row, cell.column) ?? "";
  // Taking the subtotals off again is right whatever else is in the range.
  const alone = sum.name === "SUM" && /^=SUM\([^()]*\)$/i.test(formula);
  const verb = places.length === 1 ? "is itself the sum of lines" : "are themselves sums of lines";
  return {
    cell,
    more: places,
    group: `${cell.sheet}:${pattern.id}`,
    about: formula,
    seen:
      `${localAddress(cell)} (${nameOf(book, cell)}) takes ${list(addresses)}, which ${verb} that it takes, too:` +
      ` ${short(amount)} is counted twice.`,
    todo: "Add up either the lines or the subtotals, not both.",
    rank: Math.max(10, offBy(total, (total ?? 0) - amount, doubleCount.rank)),
    ...(alone && { fix: [change(study, cell, formula + addresses.map((one) => `-${one}`).join(""))] }),
  };
}
