import { toCol } from "@borgar/fx";
import { unitIn } from "../../headings/heading";
import { must } from "../../quantities/must";
import { areaAddress, overlap, quotedSheet } from "../../spreadsheet/areas";
import { type Cell, cellKey, contains, type Target } from "../book";
import { usesOf } from "../formula/readers";
import { isPlainSum, type Sum } from "../formula/sums";
import { calledName, isBinary, isCall, type Tree } from "../formula/tree";
import type { SheetGrid } from "../sheet/grid";
import type { Study, SummingCell } from "../study";
import { list, short } from "../words";
import { change, eachSum, type Observation, offBy, type Rule } from "./rule";

export const shortSum: Rule = {
  id: "short-sum",
  title: "A total leaves out cells next to the ones it adds",
  level: "error",
  rank: 30,
  matters: "You do the work and buy the material but don't charge for it.",
  covers: ["unlike-neighbors"],
  look: (study) => eachSum(study, (summing) => summing.sums.flatMap((sum) => observe(study, summing, sum) ?? [])),
};

function observe(study: Study, summing: SummingCell, sum: Sum): Observation | undefined {
  const { book } = study;
  const { cell, pattern } = summing;
  const left = leftOutOf(study, summing, sum);
  if (left.length === 0 || isPartOfWhole(summing, sum, left) || isChosen(study, summing, sum, left)) return undefined;
  const grid = must(book.grids[must(left[0]).sheet]);
  const amount = left.reduce((total, { row, column }) => total + (grid.number(row, column) ?? 0), 0);
  const isKnown = left.every(({ row, column }) => grid.number(row, column) !== undefined);
  const total = must(book.grids[cell.sheet]).number(cell.row, cell.column);
  const takes = list(sum.targets.map((target) => areaAddress(target)));
  const fixed = sum.name === "SUM" || sum.name === "AVERAGE" ? wholeRange(study, cell, sum, left) : undefined;
  return {
    cell,
    more: left,
    group: `${cell.sheet}:${pattern.id}`,
    about: takes,
    seen:
      `adds ${takes} but not ${list(left.map((one) => areaAddress(one)))}` +
      ` next to it${isKnown ? ` (${left.length > 1 ? "total " : ""}${short(amount)})` : ""}.`,
    todo: left.length > 1 ? "Include them, or ignore this and say why." : "Include it, or ignore this and say why.",
    rank: Math.max(10, offBy((total ?? 0) - amount, total, shortSum.rank)),
    ...(fixed !== undefined && { fix: [change(study, cell, fixed)] }),
  };
}

/** A share is a part beside its whole: another sum of the formula takes all of both. */
function isPartOfWhole({ sums }: SummingCell, sum: Sum, left: readonly Cell[]): boolean {
  const takes = ({ targets }: Sum, cell: Cell) => targets.some((target) => contains(target, cell));
  return sums.some((whole) => whole.takesAll && [...left, ...sum.targets].every((cell) => takes(whole, cell)));
}

/** Whether cells were picked one by one, or more are left out than taken: then the rest is left out on purpose. */
function isChosen({ book }: Study, { cell, pattern }: SummingCell, sum: Sum, left: readonly Cell[]): boolean {
  const stretch = stretchOf(sum.targets);
  if (!stretch) return false;
  const isOnLine = cell.sheet === stretch.sheet && sideways(stretch, cell) === stretch.at;
  if (left.length > mostLeft(sum, isOnLine)) return true;
  if (sum.targets.some(({ rows, columns }) => rows * columns > 1)) return false;
  // The next line picks the same cells, or these are far from their sum.
  const isLikeNext = AROUND.some(
    ([down, across]) => book.patternAt(cell.sheet, cell.row + down, cell.column + across) === pattern,
  );
  return isLikeNext || !isOnLine || left.some((one) => lengthwise(stretch, one) < stretch.from);
}

/** As many may be left out of a sum of one or two. */
const FEW = 2;

/** More than a sum takes isn't left out by mistake; at its end a total may be short of a few more. */
const mostLeft = ({ targets }: Sum, isOnLine: boolean) =>
  Math.max(FEW, (isOnLine ? 2 : 1) * targets.reduce((count, { rows, columns }) => count + rows * columns, 0));

const AROUND = [
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
] as const;

/** The formula with one range over all that is taken and all that is left out, where the call is nothing else. */
function wholeRange(study: Study, cell: Cell, sum: Sum, left: readonly Cell[]): string | undefined {
  const formula = must(must(study.book.grids[cell.sheet]).formula(cell.row, cell.column));
  const read = /^(=.*?\b(?:SUM|AVERAGE)\()([^()]*)(\).*)$/i.exec(formula);
  const [, before, inside, after] = read ?? [];
  if (!inside || /\bSUM\(|\bAVERAGE\(/i.test(must(after))) return undefined;
  const hull = hullOf([...sum.targets, ...left.map((one) => ({ ...one, rows: 1, columns: 1 }))]);
  // A "$" that was there stays where it was.
  const [, startColumn = "", startRow = ""] = /(?:^|!)(\$?)[A-Z]+(\$?)\d/i.exec(inside.trim()) ?? [];
  const at = (column: number, row: number) => `${startColumn}${toCol(column)}${startRow}${row + 1}`;
  const sheet = hull.sheet === cell.sheet ? "" : `${quotedSheet(must(study.book.grids[hull.sheet]).name)}!`;
  const range = `${at(hull.column, hull.row)}:${at(hull.column + hull.columns - 1, hull.row + hull.rows - 1)}`;
  return `${before}${sheet}${range}${after}`;
}

/** The area from the first to the last of some cells, all on one sheet. */
function hullOf(targets: readonly Target[]): Target {
  const row = Math.min(...targets.map((target) => target.row));
  const column = Math.min(...targets.map((target) => target.column));
  const bottom = Math.max(...targets.map((target) => target.row + target.rows));
  const right = Math.max(...targets.map((target) => target.column + target.columns));
  return { sheet: must(targets[0]).sheet, row, column, rows: bottom - row, columns: right - column };
}

/** Years are in headings as numbers. */
const isYear = (value: number) => Number.isInteger(value) && value >= 1990 && value <= 2100;
/** Left out in larger numbers than this, they are not left out by mistake; the first are told. */
const MOST = 200;

const SAMPLE = 60;

/** Which way a sum goes, and from where to where. */
interface Stretch {
  readonly direction: "down" | "across";
  readonly at: number;
  readonly sheet: number;
  readonly from: number;
  readonly to: number;
}

/** What is looked up once of a sum, for all cells that it may leave out. */
interface Taking {
  readonly summing: SummingCell;
  readonly sum: Sum;
  readonly stretch: Stretch;
  /** Cells with a number that it takes; of many the first. */
  readonly taken: readonly Cell[];
  /** What its formula adds or takes off besides, and what the cells that it takes add. */
  readonly added: readonly Target[];
}

/** The cells that a sum leaves out: in gaps between what it takes, or right before or behind it. */
export function leftOutOf(study: Study, summing: SummingCell, sum: Sum): Cell[] {
  const stretch = stretchOf(sum.targets);
  if (!stretch || isRepeated(study, summing, stretch.direction)) return [];
  const { cell } = summing;
  const beside = sumsByPart(study).get(partOf(stretch, stretch.from)) ?? [];
  if (beside.length >= MOST_SUMS) return [];
  const taken = takenOf(study, stretch, sum);
  const added = [cell, ...taken].flatMap((one) => addedBy(study, one));
  const taking: Taking = { summing, sum, stretch, taken, added };
  const left: Cell[] = [];
  const isOut = (at: Cell, isNear: boolean) => isLeftOut(study, taking, at, isNear);
  const { bottom, right } = must(study.book.grids[stretch.sheet]);
  const last = Math.min(stretch.to, stretch.direction === "down" ? bottom : right);
  for (let along = stretch.from; along <= last; along++) {
    const at = cellAt(stretch, along);
    if (!sum.targets.some((target) => contains(target, at)) && isOut(at, true)) left.push(at);
  }
  // Between the range and a sum at its end everything is looked at, otherwise only what adjoins it.
  const isOnLine = cell.sheet === stretch.sheet && sideways(stretch, cell) === stretch.at;
  const isAtEnd = isOnLine && lengthwise(stretch, cell) > stretch.to;
  const end = isAtEnd ? lengthwise(stretch, cell) : Number.POSITIVE_INFINITY;
  const most = Math.min(MOST, mostLeft(sum, isOnLine) + 1);
  for (let along = stretch.to + 1; along < end && left.length < most; along++) {
    const at = cellAt(stretch, along);
    if (isOut(at, isAtEnd)) left.push(at);
    else if (!isAtEnd || isEnd(study, stretch, along)) break;
  }
  for (let along = stretch.from - 1; left.length < most; along--) {
    const at = cellAt(stretch, along);
    if (!isOut(at, false)) break;
    left.unshift(at);
  }
  return left;
}

function stretchOf(targets: readonly Target[]): Stretch | undefined {
  const first = must(targets[0]);
  if (targets.some(({ sheet }) => sheet !== first.sheet)) return undefined;
  const sameColumn = targets.every(({ column, columns }) => column === first.column && columns === 1);
  const sameRow = targets.every(({ row, rows }) => row === first.row && rows === 1);
  // A single cell is both, a block is neither.
  if (sameColumn === sameRow) return undefined;
  const starts = targets.map(({ row, column }) => (sameColumn ? row : column));
  const ends = targets.map(({ row, column, rows, columns }) => (sameColumn ? row + rows : column + columns) - 1);
  return {
    direction: sameColumn ? "down" : "across",
    at: sameColumn ? first.column : first.row,
    sheet: first.sheet,
    from: Math.min(...starts),
    to: Math.max(...ends),
  };
}

const lengthwise = ({ direction }: Stretch, { row, column }: Cell) => (direction === "down" ? row : column);
const sideways = ({ direction }: Stretch, { row, column }: Cell) => (direction === "down" ? column : row);
const cellAt = ({ direction, at, sheet }: Stretch, along: number): Cell =>
  direction === "down" ? { sheet, row: along, column: at } : { sheet, row: at, column: along };

/** Moving averages and running totals are beside one another along their own range, and take parts on purpose. */
function isRepeated({ book }: Study, { cell, pattern }: SummingCell, direction: Stretch["direction"]): boolean {
  const [down, across] = direction === "down" ? [1, 0] : [0, 1];
  return [-1, 1].some(
    (step) => book.patternAt(cell.sheet, cell.row + step * down, cell.column + step * across) === pattern,
  );
}

/** A row of headings ends what a sum can be meant to take. */
function isEnd({ book }: Study, { direction, sheet, at }: Stretch, along: number): boolean {
  return (
    direction === "down" &&
    must(book.places[sheet]).headingRows.some(({ row, first, last }) => row === along && first <= at && at <= last)
  );
}

function isLeftOut(study: Study, taking: Taking, at: Cell, isNear: boolean): boolean {
  const { stretch, sum, taken, added } = taking;
  const { cell } = taking.summing;
  const { book } = study;
  const grid = must(book.grids[at.sheet]);
  if (!isAmount(grid, at) || cellKey(at) === cellKey(cell)) return false;
  const pattern = book.patternAt(at.sheet, at.row, at.column);
  // A subtotal is no line, unless lines are subtotals themselves.
  if (
    pattern &&
    isPlainSum(pattern) &&
    !taken.some((one) => book.patternAt(one.sheet, one.row, one.column) === pattern)
  )
    return false;
  if (stretch.direction === "down" && must(book.places[at.sheet]).isTotalRow(at.row, at.column)) return false;
  // What is worked out from the cells that are taken is no further item beside them.
  const reads = book.targetsOf(at);
  if (reads.some((target) => target.sheet === cell.sheet && contains(target, cell))) return false;
  // Neither is what the formula adds or takes off elsewhere, as in `SUM(F4:F5)-F6`, or what a cell that is taken adds.
  if (added.some((target) => target.sheet === at.sheet && contains(target, at))) return false;
  const ranges = reads.filter(({ rows, columns }) => rows * columns > 1);
  if (ranges.some((target) => sum.targets.some((taken) => touches(taken, target)))) return false;
  return isLike(study, taking, at, isNear) && !isTakenElsewhere(study, cell, sum, stretch, at);
}

/** What the formula of a cell adds or takes off, and nothing else. */
function addedBy({ book }: Study, cell: Cell): Target[] {
  const pattern = book.patternAt(cell.sheet, cell.row, cell.column);
  if (!pattern) return [];
  return usesOf(pattern).flatMap(({ reference, around }) => {
    const target = around.every(isAdding) ? book.targetOf(reference, cell) : undefined;
    return target ? [target] : [];
  });
}

const isAdding = (part: Tree) =>
  (isBinary(part) && "+-".includes(part.operator)) ||
  part?.type === "UnaryExpression" ||
  (isCall(part) && ["SUM", "ROUND"].includes(calledName(part)));

/** A number, or a formula that would give one if nothing were wrong with what it reads. */
function isAmount(grid: SheetGrid, { row, column }: Cell): boolean {
  const kind = grid.kind(row, column);
  return kind === "number" || ((kind === "error" || kind === "unknown") && grid.formula(row, column) !== undefined);
}

/** Cells with a number that a sum takes; of many the first. */
function takenOf({ book }: Pick<Study, "book">, stretch: Stretch, sum: Sum): Cell[] {
  const grid = must(book.grids[stretch.sheet]);
  const taken: Cell[] = [];
  for (let along = stretch.from; along <= stretch.to && taken.length < SAMPLE; along++) {
    const inside = cellAt(stretch, along);
    const isTaken = sum.targets.some((target) => contains(target, inside));
    if (isTaken && isAmount(grid, inside)) taken.push(inside);
  }
  return taken;
}

/** Whether a cell is of the kind of those that are taken: worked out alike, or typed like them, and the same measure. */
function isLike({ book }: Study, { stretch, taken }: Taking, at: Cell, isNear: boolean): boolean {
  const grid = must(book.grids[at.sheet]);
  const [sample] = taken;
  if (!sample) return false;
  const pattern = book.patternAt(at.sheet, at.row, at.column);
  const patterns = taken.map(({ sheet, row, column }) => book.patternAt(sheet, row, column));
  const typed = patterns.filter((one) => one === undefined).length;
  const skeletons = new Set(patterns.map((one) => one?.skeleton));
  const areDifferent = skeletons.size > patterns.length / 2 && !patterns.some((one) => one && isPlainSum(one));
  const alike = pattern ? skeletons.has(pattern.skeleton) || areDifferent : typed > 0 || isNear;
  if (!alike || (!pattern && isYear(grid.number(at.row, at.column) ?? 0))) return false;
  const places = must(book.places[at.sheet]);
  // Lines of a group are set in below its name.
  if (stretch.direction === "down" && places.indentOf(at.row, at.column) < places.indentOf(sample.row, sample.column))
    return false;
  const [one, other] = [places.describe(at.row, at.column), places.describe(sample.row, sample.column)];
  // A heading that says what its column holds speaks for the whole of it.
  const isTold = one.roleFrom === "heading" || unitIn(one.heading) !== undefined;
  const isSameColumn = one.heading !== "" && one.heading === other.heading;
  if (isSameColumn && (isTold || isNear || (pattern && skeletons.has(pattern.skeleton)))) return true;
  const isSameFormat = grid.format(at.row, at.column) === grid.format(sample.row, sample.column);
  return one.unit === other.unit && one.role === other.role && isSameFormat;
}

/** Whether another sum along the same line, that shares nothing with this one, takes the cell: then both are parts on purpose. */
function isTakenElsewhere(study: Study, own: Cell, sum: Sum, stretch: Stretch, at: Cell): boolean {
  return (sumsByPart(study).get(partOf(stretch, lengthwise(stretch, at))) ?? []).some(
    ({ cell, targets }) =>
      cellKey(cell) !== cellKey(own) &&
      targets.some((target) => contains(target, at)) &&
      !targets.some((target) => sum.targets.some((taken) => touches(taken, target))),
  );
}

/** Lines are looked up in parts of so many cells, so that a sum is compared with those near it only. */
const PART = 64;
/** So many sums over one part of a line take different stretches of it on purpose, as moving averages do. */
const MOST_SUMS = 40;

const partOf = ({ direction, sheet, at }: Stretch, along: number) =>
  `${direction} ${sheet} ${at} ${Math.floor(along / PART)}`;

function sumsByPart(study: Study) {
  return study.once("sums by the parts of lines that they take", () => {
    const found = new Map<string, { cell: Cell; targets: readonly Target[] }[]>();
    for (const { cell, sums } of study.summing) {
      for (const { targets } of sums) {
        const stretch = stretchOf(targets);
        if (!stretch) continue;
        const { bottom, right } = must(study.book.grids[stretch.sheet]);
        const last = Math.floor(Math.min(stretch.to, stretch.direction === "down" ? bottom : right) / PART);
        for (let part = Math.floor(stretch.from / PART); part <= last; part++) {
          const key = partOf(stretch, part * PART);
          const list = found.get(key);
          if (!list) found.set(key, [{ cell, targets }]);
          else if (list.length < MOST_SUMS) list.push({ cell, targets });
        }
      }
    }
    return found;
  });
}

/** Whether two areas share a cell. */
export function touches(one: Target, other: Target): boolean {
  return one.sheet === other.sheet && overlap(one, other);
}
