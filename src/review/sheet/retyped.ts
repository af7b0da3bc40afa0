import { must } from "../../quantities/must";
import { type Cell, cellKey, contains, type Target } from "../book";
import type { Pattern } from "../formula/pattern";
import { shifted } from "../formula/reference";
import { isPlainSum } from "../formula/sums";
import { calledName, isCall, isReference, walk } from "../formula/tree";
import { asNumber, type Study } from "../study";
import type { SheetGrid } from "./grid";

/** A typed number that is what the formula next to it would give in its place. */
export interface Retyped {
  readonly cell: Cell;
  readonly typed: number;
  /** The neighbor's formula, moved here. */
  readonly formula: string;
  readonly direction: "down" | "across";
}

/** Blank columns between the months, their units and notes, or a rule above a total separate neighbors no further than this. */
const MOST_BETWEEN = 4;
const TELLING_DIGITS = 3;
/** A typed number is rounded as it shows, and then not off by more than this. */
const ROUNDED_BY = 0.005;

/** Working a formula out takes time, and a workbook in which no formula is like the next one has no end of them. */
const MOST_TRIED = 5000;

const WAYS = [
  { down: 0, across: 1 },
  { down: 0, across: -1 },
  { down: 1, across: 0 },
  { down: -1, across: 0 },
] as const;

/**
 * Typed numbers that agree with the formula to their left or right, above or below: where only one or two formulas are
 * left of a row of totals, that the number is the same is what tells that it was a formula once. A step between is a place to pause.
 */
export function* retypedIn(study: Study): Generator<Retyped | undefined> {
  const { book } = study;
  let count = 0;
  const tries = { left: MOST_TRIED };
  for (const grid of book.grids) {
    if (!study.isChecked(grid.index)) continue;
    for (const { pattern, ...cell } of book.formulaCells(grid.index)) {
      if (count++ % 500 === 0) yield undefined;
      if (!isArithmetic(pattern) || !worksOut(pattern)) continue;
      for (const way of WAYS) {
        // A formula that is filled down a column says nothing of what is beside it.
        const side = (by: 1 | -1) =>
          book.patternAt(cell.sheet, cell.row + by * Math.abs(way.across), cell.column + by * Math.abs(way.down));
        if (side(1) === pattern || side(-1) === pattern) continue;
        yield* along(study, grid, cell, pattern, way, tries);
      }
    }
  }
}

const CALLS = new Set(["SUM", "AVERAGE", "MAX", "MIN", "PRODUCT", "ROUND"]);

/** A formula that chooses or looks up gives many a number, and agrees by chance. */
function isArithmetic({ tree }: Pattern): boolean {
  if (tree === undefined) return false;
  for (const { part } of walk(tree)) if (isCall(part) && !CALLS.has(calledName(part))) return false;
  return true;
}

/** Whether a formula works anything out; one that shows a cell, or counts on from the one before, agrees with anything. */
function worksOut({ tree = null, references }: Pattern): boolean {
  const inner = tree?.type === "UnaryExpression" ? (tree.arguments[0] ?? null) : tree;
  const isNext = references.every(
    ({ edges }) =>
      edges &&
      Math.abs(edges.top?.at ?? 0) + Math.abs(edges.left?.at ?? 0) <= 1 &&
      edges.top?.at === edges.bottom?.at &&
      edges.left?.at === edges.right?.at,
  );
  return references.length > 0 && !isReference(inner) && !(references.length === 1 && isNext);
}

function* along(
  study: Study,
  grid: SheetGrid,
  from: Cell,
  pattern: Pattern,
  { down, across }: (typeof WAYS)[number],
  tries: { left: number },
): Generator<Retyped> {
  const formula = must(grid.formula(from.row, from.column));
  const isTotal = across !== 0 && isPlainSum(pattern);
  let between = 0;
  for (let step = 1; between <= MOST_BETWEEN; step++) {
    const cell = { sheet: from.sheet, row: from.row + step * down, column: from.column + step * across };
    if (cell.row < grid.top || cell.row > grid.bottom || cell.column < grid.left || cell.column > grid.right) return;
    if (grid.isBlank(cell.row, cell.column) || grid.isTypedText(cell.row, cell.column)) {
      between++;
      continue;
    }
    if (!grid.isTypedNumber(cell.row, cell.column) || tries.left-- <= 0) return;
    const typed = must(grid.number(cell.row, cell.column));
    const by = { top: step * down, bottom: step * down, left: step * across, right: step * across };
    const moved = shifted(formula, pattern.references, ({ edges }) => {
      const { top, left } = edges ?? {};
      return edges && { ...by, ...(top?.fixed && { top: 0, bottom: 0 }), ...(left?.fixed && { left: 0, right: 0 }) };
    });
    if (moved === undefined || !agrees(study, cell, typed, moved, isTotal)) return;
    yield { cell, typed, formula: moved, direction: down === 0 ? "across" : "down" };
    between = 0;
  }
}

function agrees(study: Study, cell: Cell, typed: number, formula: string, isTotal: boolean): boolean {
  const would = asNumber(study.wouldGive(cell, formula));
  // A sum of nothing is 0 everywhere.
  if (would === undefined || would === 0) return false;
  const digits = String(Math.abs(typed))
    .replace(/^0\.?0*|\./g, "")
    .replace(/0+$/, "").length;
  const decimals = String(typed).split(".")[1]?.length ?? 0;
  const isSame =
    Math.abs(typed - would) <= Math.min(0.5 * 10 ** -decimals, ROUNDED_BY * Math.abs(would)) + 1e-9 * Math.abs(would);
  if (!isSame) return false;
  const read = study.readBy(cell, formula);
  // In a row of totals what adds up is a total, however small; elsewhere small numbers agree by chance.
  if (read === undefined || !(isTotal ? read.count > 1 : digits >= TELLING_DIGITS && read.count > 0)) return false;
  return !comesFrom(study, read.targets, cell);
}

/** Whether cells come from a cell, through other formulas as well: what is worked out from a number is no formula for it. */
export function comesFrom({ book }: Pick<Study, "book">, targets: readonly Target[], cell: Cell): boolean {
  const open = [...targets];
  const seen = new Set<string>();
  for (let next = open.pop(); next; next = open.pop()) {
    if (next.sheet === cell.sheet && contains(next, cell)) return true;
    for (let at = 0; at < next.rows * next.columns; at++) {
      const [row, column] = [next.row + Math.floor(at / next.columns), next.column + (at % next.columns)];
      const source = { sheet: next.sheet, row, column };
      if (seen.has(cellKey(source)) || !book.patternAt(source.sheet, row, column)) continue;
      seen.add(cellKey(source));
      // So much is more than a row of totals rests on.
      if (seen.size > MOST_SOURCES) return true;
      open.push(...book.targetsOf(source));
    }
  }
  return false;
}

const MOST_SOURCES = 2000;
