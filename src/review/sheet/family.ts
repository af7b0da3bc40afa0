import { must } from "../../quantities/must";
import type { Book, Cell, Target } from "../book";
import type { Pattern } from "../formula/pattern";
import { shifted } from "../formula/reference";

/** Cells of a sheet that belong together in one direction: the body of a column below its heading, or of a row. */
export interface Line {
  readonly sheet: number;
  readonly direction: "down" | "across";
  /** The column of a line down, the row of a line across. */
  readonly at: number;
  /** From this row or column to that one, both included. */
  readonly from: number;
  readonly to: number;
}

/** The cell of a line at a row or column. */
export function cellOf({ sheet, direction, at }: Line, along: number): Cell {
  return direction === "down" ? { sheet, row: along, column: at } : { sheet, row: at, column: along };
}

/** Where on a line a cell stands. */
export const alongOf = ({ direction }: Line, { row, column }: Cell): number => (direction === "down" ? row : column);

/** How many blank rows end the body of a column; a single one is air between the lines of one job. */
const ENDING_BLANK_ROWS = 2;

/** The bodies of all columns of a sheet. */
export function* linesDown(book: Book, sheet: number): Generator<Line> {
  const grid = must(book.grids[sheet]);
  const blank: boolean[] = [];
  for (let row = grid.top; row <= grid.bottom; row++) blank.push(grid.isRowBlank(row));
  const breaks = (row: number) => {
    for (let ahead = 0; ahead < ENDING_BLANK_ROWS; ahead++) if (!blank[row - grid.top + ahead]) return false;
    return true;
  };
  for (let column = grid.left; column <= grid.right; column++) {
    const heads = new Set(
      must(book.places[sheet])
        .headingRows.filter(({ first, last }) => first <= column && column <= last)
        .map(({ row }) => row),
    );
    let from = grid.top;
    for (let row = grid.top; row <= grid.bottom + 1; row++) {
      if (row <= grid.bottom && !heads.has(row) && !breaks(row)) continue;
      if (row > from) yield { sheet, direction: "down", at: column, from, to: row - 1 };
      from = row + 1;
    }
  }
}

/** The bodies of all rows of a sheet; two columns without anything end them, and one is air between months or years. */
export function* linesAcross(book: Book, sheet: number): Generator<Line> {
  const grid = must(book.grids[sheet]);
  const stretches: { from: number; to: number }[] = [];
  let from = grid.left;
  for (let column = grid.left; column <= grid.right + 1; column++) {
    const isOver =
      column > grid.right || (grid.isColumnBlank(column) && (column === from || grid.isColumnBlank(column + 1)));
    if (!isOver) continue;
    if (column - from > 3) stretches.push({ from, to: column - 1 });
    from = column + 1;
  }
  const heads = new Set(must(book.places[sheet]).headingRows.map(({ row }) => row));
  for (let row = grid.top; row <= grid.bottom; row++) {
    if (heads.has(row)) continue;
    for (const stretch of stretches) yield { sheet, direction: "across", at: row, ...stretch };
  }
}

/** One reference of a family: what is the same for all members, and which ends go along with them. */
interface Slot {
  /** Sheet, and the rows or columns across the line, as one string to compare. */
  readonly across: string;
  /** The sheet and the first row or column across the line; undefined where the reference cannot be followed. */
  readonly sheet: number | undefined;
  readonly side: number;
  readonly start: { readonly moves: boolean; readonly at: number };
  readonly end: { readonly moves: boolean; readonly at: number };
}

/**
 * Formulas of one line that are alike: the same but for references, and each end of a reference either goes
 * along with the formula or stays where it is. That is the comparison in R1C1 notation, and besides takes in
 * formulas that were written one by one, without "$", to one fixed cell.
 */
export interface Family {
  readonly line: Line;
  readonly skeleton: string;
  readonly members: readonly Cell[];
  readonly slots: readonly Slot[];
}

/** Fewer formulas make no rule that another could break. */
export const FEWEST_MEMBERS = 3;

/** The families of a line, the largest first. */
export function familiesOf(book: Book, line: Line): Family[] {
  const bySkeleton = new Map<string, { cell: Cell; pattern: Pattern }[]>();
  for (let along = line.from; along <= line.to; along++) {
    const cell = cellOf(line, along);
    const pattern = book.patternAt(cell.sheet, cell.row, cell.column);
    if (!pattern?.tree || pattern.references.length === 0) continue;
    const group = bySkeleton.get(pattern.skeleton);
    if (group) group.push({ cell, pattern });
    else bySkeleton.set(pattern.skeleton, [{ cell, pattern }]);
  }
  const families: Family[] = [];
  for (const [skeleton, group] of bySkeleton) {
    if (group.length < FEWEST_MEMBERS) continue;
    const family = familyOf(book, line, skeleton, group);
    if (family.members.length >= FEWEST_MEMBERS) families.push(family);
  }
  return families.sort((one, other) => other.members.length - one.members.length);
}

function familyOf(
  book: Book,
  line: Line,
  skeleton: string,
  group: readonly { cell: Cell; pattern: Pattern }[],
): Family {
  const first = must(group[0]);
  // Formulas filled down share their pattern, and then the first speaks for all.
  const alike = group.every(({ pattern }) => pattern === first.pattern);
  const counted = alike ? [first, must(group.at(-1))] : group;
  const slots = first.pattern.references.map((_, place) =>
    slotOf(counted.map(({ cell, pattern }) => reachOf(book, line, cell, pattern, place))),
  );
  const members = alike
    ? group.map(({ cell }) => cell)
    : group.flatMap(({ cell, pattern }) => (fits(book, line, slots, cell, pattern) ? [cell] : []));
  return { line, skeleton, members, slots };
}

/** Whether a formula belongs to a family. */
function fits(book: Book, line: Line, slots: readonly Slot[], cell: Cell, pattern: Pattern): boolean {
  const along = alongOf(line, cell);
  return slots.every(({ across, start, end }, place) => {
    const reach = reachOf(book, line, cell, pattern, place);
    const holds = (edge: Slot["start"], at: number) => edge.at === (edge.moves ? at - along : at);
    return reach.across === across && holds(start, reach.start) && holds(end, reach.end);
  });
}

interface Reach {
  readonly across: string;
  readonly sheet: number | undefined;
  readonly side: number;
  readonly start: number;
  readonly end: number;
  readonly own: number;
}

function reachOf(book: Book, line: Line, cell: Cell, pattern: Pattern, place: number): Reach {
  const reference = must(pattern.references[place]);
  const own = alongOf(line, cell);
  const target = book.targetOf(reference, cell);
  if (!target) return { across: reference.text.toLowerCase(), sheet: undefined, side: 0, start: 0, end: 0, own };
  const { sheet, row, column, rows, columns } = target;
  return line.direction === "down"
    ? { across: `${sheet}:${column}:${columns}`, sheet, side: column, start: row, end: row + rows - 1, own }
    : { across: `${sheet}:${row}:${rows}`, sheet, side: row, start: column, end: column + columns - 1, own };
}

function slotOf(reaches: readonly Reach[]): Slot {
  const edge = (at: (reach: Reach) => number) => {
    const moving = commonest(reaches.map((reach) => at(reach) - reach.own));
    const staying = commonest(reaches.map(at));
    return moving.count >= staying.count ? { moves: true, at: moving.value } : { moves: false, at: staying.value };
  };
  const { value: across } = commonest(reaches.map((reach) => reach.across));
  const { sheet, side } = must(reaches.find((reach) => reach.across === across));
  return {
    across,
    sheet,
    side,
    start: edge(({ start }) => start),
    end: edge(({ end }) => end),
  };
}

function commonest<Value>(values: readonly Value[]): { readonly value: Value; readonly count: number } {
  const counts = new Map<Value, number>();
  let best = { value: values[0] as Value, count: 0 };
  for (const value of values) {
    const count = (counts.get(value) ?? 0) + 1;
    counts.set(value, count);
    if (count > best.count) best = { value, count };
  }
  return best;
}

/** What a formula of the family would read if it was in a cell, reference by reference; undefined where unknown. */
export function readBy(
  book: Book,
  { line, members, slots }: Family,
  cell: Cell,
): ((Target & { readonly moves: boolean }) | undefined)[] {
  const along = alongOf(line, cell);
  const first = must(members[0]);
  const pattern = must(book.patternAt(first.sheet, first.row, first.column));
  return slots.map(({ start, end }, place) => {
    const target = book.targetOf(must(pattern.references[place]), first);
    if (!target) return undefined;
    const from = start.moves ? start.at + along : start.at;
    const to = end.moves ? end.at + along : end.at;
    const moves = start.moves && end.moves;
    return line.direction === "down"
      ? { ...target, row: from, rows: to - from + 1, moves }
      : { ...target, column: from, columns: to - from + 1, moves };
  });
}

/** Whether each formula of the family builds on the one before it, as a running balance does. */
export function isRolling({ line, slots }: Family): boolean {
  const own = `${line.sheet}:${line.at}:1`;
  return slots.some(({ across, end }) => across === own && end.moves && end.at === -1);
}

/** The formula that the family would have in a cell. */
export function formulaFor(book: Book, { line, members, slots }: Family, cell: Cell): string | undefined {
  const along = alongOf(line, cell);
  const distance = (member: Cell) => Math.abs(alongOf(line, member) - along);
  const nearest = members.reduce((best, member) => (distance(member) < distance(best) ? member : best));
  const formula = must(book.grids[nearest.sheet]).formula(nearest.row, nearest.column);
  const pattern = book.patternAt(nearest.sheet, nearest.row, nearest.column);
  if (formula === undefined || !pattern) return undefined;
  const by = along - alongOf(line, nearest);
  return shifted(formula, pattern.references, (reference, place) => {
    if (!reference.edges) return undefined;
    const [start, end] = [must(slots[place]).start.moves ? by : 0, must(slots[place]).end.moves ? by : 0];
    return line.direction === "down"
      ? { top: start, bottom: end, left: 0, right: 0 }
      : { top: 0, bottom: 0, left: start, right: end };
  });
}
