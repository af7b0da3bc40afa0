import { isUnitAlone, readHeading } from "../../headings/heading";
import { meaningOf } from "../../headings/meaning";
import { readTape } from "../../quantities/tape";
import type { Area } from "../../spreadsheet/areas";
import type { ListCells, ListTable } from "./listSheet";
import type { Role } from "./roles";

/** A row that heads the columns of a list of beds. */
export interface HeadingRow {
  readonly row: number;
  /** The first and the last column of the list. */
  readonly first: number;
  readonly last: number;
  /** Whether the row below it names the units. */
  readonly hasUnitsBelow: boolean;
  readonly table?: ListTable;
}

/** Texts longer than this are sentences. */
const LONGEST_HEADING = 60;
/** Roles that rows of data name as well as headings do. */
const NAMES: ReadonlySet<Role> = new Set<Role>(["job", "bed", "stone"]);
/** So many blank headings side by side part a list from what stands beside it. */
const PARTING_BLANKS = 2;

/** All rows that head a list of beds, from the top; two lists side by side are two. */
export function headingRows(cells: ListCells): HeadingRow[] {
  const found: HeadingRow[] = [];
  for (let row = cells.top; row <= cells.bottom; row += 1) {
    for (const run of runsOf(cells, row)) if (headsBeds(cells, row, run)) found.push(headingRow(cells, row, run));
  }
  // A row of units below headings, or of narrower headings, is none of its own.
  return found.filter(({ row, first, last }) => {
    return !found.some(
      (other) => other.hasUnitsBelow && other.row === row - 1 && other.first <= last && first <= other.last,
    );
  });
}

/**
 * The heading row of the list that the selection is in: the nearest above it, else the first below it.
 *
 * @param rows from {@link headingRows}.
 */
export function headingRowAt(rows: readonly HeadingRow[], selection: Area): HeadingRow | undefined {
  const inColumns = rows.filter(({ first, last }) => first <= selection.column && selection.column <= last);
  for (const some of [inColumns, rows]) {
    const above = some.filter(({ row }) => row <= selection.row).at(-1);
    const one = above ?? some[0];
    if (one) return one;
  }
  return undefined;
}

/** The heading as it is read: with the unit from the row below, where one stands there. */
export function headingAt(cells: ListCells, { row, hasUnitsBelow }: HeadingRow, column: number): string {
  const heading = cells.typedText(row, column)?.trim() ?? "";
  const below = hasUnitsBelow ? (cells.typedText(row + 1, column)?.trim() ?? "") : "";
  return below === "" ? heading : `${heading} (${below.replace(/[()[\]]/g, "")})`;
}

interface Run {
  readonly first: number;
  readonly last: number;
}

/** Texts of a row that stand together, where the row holds nothing but texts there. */
function runsOf(cells: ListCells, row: number): Run[] {
  const runs: { first: number; last: number }[] = [];
  let blanks = PARTING_BLANKS;
  for (let column = cells.left; column <= cells.right; column += 1) {
    if (cells.isBlank(row, column)) {
      blanks += isBlankBelow(cells, row, column) ? PARTING_BLANKS : 1;
      continue;
    }
    const run = runs.at(-1);
    if (run && blanks < PARTING_BLANKS) run.last = column;
    else runs.push({ first: column, last: column });
    blanks = 0;
  }
  return runs;
}

function isBlankBelow(cells: ListCells, row: number, column: number): boolean {
  for (let below = row + 1; below <= Math.min(cells.bottom, row + 30); below += 1) {
    if (!cells.isBlank(below, column)) return false;
  }
  return true;
}

function headsBeds(cells: ListCells, row: number, { first, last }: Run): boolean {
  const roles: Role[][] = [];
  for (let column = first; column <= last; column += 1) {
    if (cells.isBlank(row, column)) continue;
    const text = cells.typedText(row, column);
    if (text === undefined || text.length > LONGEST_HEADING || isMeasure(text)) return false;
    roles.push([...meaningOf(readHeading(text)).roles]);
  }
  const known = roles.filter((some) => some.length > 0);
  const measured = known.filter((some) => some.some((role) => !NAMES.has(role)));
  return roles.length >= 2 && known.length >= 2 && measured.length >= 1 && known.length * 3 >= roles.length;
}

function headingRow(cells: ListCells, row: number, { first, last }: Run): HeadingRow {
  const table = cells.sheet.tables.find(
    ({ area, headingRow }) =>
      headingRow && area.row === row && area.column <= last && first < area.column + area.columns,
  );
  return {
    row,
    first,
    last,
    hasUnitsBelow: !table && namesUnits(cells, row + 1, first, last),
    ...(table && { table }),
  };
}

/** At least two units, and nothing else. */
function namesUnits(cells: ListCells, row: number, first: number, last: number): boolean {
  let units = 0;
  for (let column = first; column <= last; column += 1) {
    if (cells.isBlank(row, column)) continue;
    if (!isUnitAlone(cells.typedText(row, column) ?? "")) return false;
    units += 1;
  }
  return units >= 2;
}

/** Whether a text is a length off the tape, which heads nothing. */
export function isMeasure(text: string): boolean {
  try {
    return Number.isFinite(readTape(text, "ft"));
  } catch {
    return false;
  }
}
