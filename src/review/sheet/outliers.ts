import { must } from "../../quantities/must";
import { type Book, type Cell, cellKey, type Target } from "../book";
import { sumsItsOwnLine } from "../formula/sums";
import { alongOf, cellOf, type Family, isRolling, readBy } from "./family";

/** A cell in the line of a family that does not hold the family's formula, though it has all that it reads. */
export interface Outlier {
  readonly family: Family;
  readonly cell: Cell;
  readonly holds: "number" | "formula" | "blank" | "text";
}

/** Members are looked at up to this many, to learn which cells their formulas need. */
const SAMPLE = 40;
/** As many members have to read something in a place for it to count as needed. */
const USUALLY = 0.8;
/** The family has to be this much of the line's numbers and formulas, or its formula is no rule there. */
const LEAST_SHARE = 0.6;
/** Blanks among the members may be this many, as a share, and still be gaps. */
const MOST_BLANKS = 0.25;
/** How many rows without what the formula reads are passed over, to look behind a note. */
const PASSED_OVER = 2;

/**
 * Blanks beyond the ends of a line across are gaps only where other lines across reach as far: a column of averages
 * beside the months is none. Asked of all outliers, once all families are known.
 */
export function withoutOpenEnds(outliers: readonly Outlier[], families: readonly Family[]): Outlier[] {
  const reached = new Set<string>();
  for (const { line, members } of families) {
    if (line.direction === "across") for (const { column } of members) reached.add(`${line.sheet}:${column}`);
  }
  return outliers.filter(({ family, cell, holds }) => {
    if (holds !== "blank" || family.line.direction !== "across") return true;
    const columns = family.members.map(({ column }) => column);
    const isWithin = cell.column > Math.min(...columns) && cell.column < Math.max(...columns);
    return isWithin || reached.has(`${cell.sheet}:${cell.column}`);
  });
}

/** The outliers of a family, from one cell before its first member to one behind its last, or a few. */
export function outliersOf(book: Book, family: Family, totalRows: ReadonlySet<number>): Outlier[] {
  const { line, members } = family;
  const member = new Set(members.map((cell) => alongOf(line, cell)));
  const needs = needsOf(book, family);
  if (needs.length === 0) return [];
  const found: Outlier[] = [];
  let others = 0;
  const keys = new Set(members.map(cellKey));
  const readsMember = (cell: Cell) =>
    readBy(book, family, cell).some(
      (target) => target && target.rows * target.columns === 1 && keys.has(cellKey(target)),
    );
  // Where amounts and their shares take turns, a share of a share is no share.
  const isBuiltOn = (cell: Cell) => readsMember(cell) && !members.some(readsMember);
  // Asked at each step, since a few formulas far apart may have thousands of others between them.
  const isRule = () => members.length >= LEAST_SHARE * (members.length + others);
  const [first, last] = [alongOf(line, must(members[0])), alongOf(line, must(members.at(-1)))];
  const look = (along: number, isCutOff = false): "seen" | "passed" | "ended" => {
    const cell = cellOf(line, along);
    const pattern = book.patternAt(cell.sheet, cell.row, cell.column);
    const isTotal =
      (pattern && sumsItsOwnLine(book, cell, pattern, line.direction)) ||
      must(book.places[cell.sheet]).isTotalRow(cell.row, cell.column);
    if (isTotal || !isRule()) return "ended";
    if (!hasNeeds(book, family, needs, cell)) return "passed";
    const holds = holdsOf(book, cell);
    // A running balance ends where it ends, and a blank row ends a table; what is blank in a row of totals has no total.
    const isOpenEnd = (along > last && isRolling(family)) || isCutOff || totalRows.has(cell.row);
    if (holds !== undefined && !(holds === "blank" && isOpenEnd) && !isBuiltOn(cell))
      found.push({ family, cell, holds });
    if (holds === "number" || holds === "formula") others++;
    return "seen";
  };
  // A running balance has to begin with something else.
  if (!isRolling(family)) outwards(book, line, first - 1, -1, look);
  for (let along = first; along <= last && isRule(); along++) if (!member.has(along)) look(along);
  outwards(book, line, last + 1, 1, look);

  const blanks = found.filter(({ holds }) => holds === "blank").length;
  if (!isRule()) return [];
  // Where blanks are common, the formula stands only where someone wanted it.
  const blanksStand = blanks <= MOST_BLANKS * members.length;
  const isGap = (cell: Cell) =>
    blanksStand && !(line.direction === "down" && readsAnotherUnit(book, family, needs, cell));
  return found.filter(({ holds, cell }) => holds !== "blank" || isGap(cell));
}

/** Looks on beyond the first or the last member, past a note or two, to where a total ends the line. */
function outwards(
  book: Book,
  line: Family["line"],
  from: number,
  step: 1 | -1,
  look: (along: number, isCutOff: boolean) => "seen" | "passed" | "ended",
): void {
  const to = step === 1 ? line.to : line.from;
  const grid = must(book.grids[line.sheet]);
  let passed = 0;
  let isCutOff = false;
  for (let along = from; (to - along) * step >= 0 && passed <= PASSED_OVER; along += step) {
    isCutOff ||= line.direction === "down" && grid.isRowBlank(along);
    const found = look(along, isCutOff);
    if (found === "ended") return;
    if (found === "passed") passed++;
  }
}

function holdsOf(book: Book, { sheet, row, column }: Cell): Outlier["holds"] | undefined {
  const grid = must(book.grids[sheet]);
  if (grid.formula(row, column) !== undefined) return "formula";
  const kind = grid.kind(row, column);
  return kind === "truth" || kind === "error" || kind === "unknown" ? undefined : kind;
}

/** Which of the family's references need something to be there: single cells that go along and are mostly filled. */
function needsOf(book: Book, family: Family): number[] {
  const step = Math.max(1, Math.floor(family.members.length / SAMPLE));
  const sample = family.members.filter((_, place) => place % step === 0).map((cell) => readBy(book, family, cell));
  const isGiven = (target: (typeof sample)[number][number]) => target?.moves === true && !isBlankAt(book, target);
  // Spare lines, in which nothing is typed yet, tell nothing of what a line needs.
  const isTyped = (target: (typeof sample)[number][number]) =>
    isGiven(target) && book.patternAt(must(target).sheet, must(target).row, must(target).column) === undefined;
  const used = sample.filter((read) => read.some(isTyped));
  const counted = used.length > 0 ? used : sample;
  return family.slots.flatMap((_, place) =>
    counted.filter((read) => isGiven(read[place])).length >= USUALLY * counted.length ? [place] : [],
  );
}

/** Whether a cell would read what is in another unit than all that the family reads: a count among lengths is none. */
function readsAnotherUnit(book: Book, family: Family, needs: readonly number[], cell: Cell): boolean {
  const unitsRead = (of: Cell) => {
    const read = readBy(book, family, of);
    return needs.map((place) => {
      const { sheet, row, column } = must(read[place]);
      return must(book.places[sheet]).unitOf(row, column);
    });
  };
  const usual = unitsRead(must(family.members[0]));
  const all = family.members.every((member) => unitsRead(member).every((unit, i) => unit === usual[i]));
  return all && unitsRead(cell).some((unit, i) => usual[i] !== undefined && unit !== usual[i]);
}

function hasNeeds(book: Book, family: Family, needs: readonly number[], cell: Cell): boolean {
  const read = readBy(book, family, cell);
  const usual = readBy(book, family, must(family.members[0]));
  return needs.every((place) => {
    const target = read[place];
    return target !== undefined && !isBlankAt(book, target) && !(isWords(book, target) && !isWords(book, usual[place]));
  });
}

/** Text without a digit where the family reads numbers is a heading or a note, and no line. */
function isWords(book: Book, target: Target | undefined): boolean {
  if (!target || target.rows * target.columns > 1) return false;
  const { sheet, row, column } = target;
  const grid = must(book.grids[sheet]);
  return grid.isTypedText(row, column) && !/\d/.test(String(grid.value(row, column)));
}

/** Longer ranges are looked at where they begin and end. */
const MOST_LOOKED_AT = 200;

function isBlankAt(book: Book, { sheet, row, column, rows, columns }: Target): boolean {
  const grid = must(book.grids[sheet]);
  const count = rows * columns;
  const at = (place: number) => grid.isBlank(row + Math.floor(place / columns), column + (place % columns));
  if (count > MOST_LOOKED_AT) return at(0) && at(count - 1);
  for (let place = 0; place < count; place++) if (!at(place)) return false;
  return true;
}
