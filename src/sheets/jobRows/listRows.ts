import { isUnitAlone, readHeading } from "../../headings/heading";
import { meaningOf } from "../../headings/meaning";
import { isTotalLabel } from "../../headings/words";
import { must } from "../../quantities/must";
import type { Area } from "../../spreadsheet/areas";
import { isMeasure, type ListCells, type ListTable } from "./listSheet";
import { listTaken } from "./products";
import { NAME_ROLES, type Role } from "./roles";

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
const NAMES: ReadonlySet<Role> = new Set<Role>(NAME_ROLES);
/** So many blank headings side by side part a list from what is beside it. */
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

/** The heading as it is read: with the unit from the row below, where one is there. */
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
    // Sizes and prices of products head the office's lists as well.
    roles.push(meaningOf(readHeading(text)).roles.filter((role) => !listTaken(role)));
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

/** What a row of a list is: a bed with what it takes to calculate, or why it is none. */
export interface ListRow {
  readonly row: number;
  readonly kind: "bed" | "blank" | "total" | "note" | "short";
  /** For what is skipped: why, in a few words. */
  readonly why: string;
  readonly hidden: boolean;
}

/** The columns that a bed must have filled, any of these sets of them. */
export type NeededColumns = readonly (readonly {
  readonly column: number;
  readonly label: string;
  readonly reads: "length" | "number" | "name";
}[])[];

/** The first and the last row below the headings that may hold beds. */
export function rowsBelow(
  cells: ListCells,
  heading: HeadingRow,
  others: readonly HeadingRow[],
): { first: number; last: number } {
  const first = heading.row + (heading.hasUnitsBelow ? 2 : 1);
  const { table } = heading;
  if (table) return { first, last: table.area.row + table.area.rows - 1 - (table.totalsRow ? 1 : 0) };
  const next = others.find(
    (other) => other.row > heading.row && other.first <= heading.last && heading.first <= other.last,
  );
  return { first, last: next ? next.row - 1 : cells.bottom };
}

/** Rows that are surely no beds, whatever the columns hold: blank ones and totals. */
export function isApart(cells: ListCells, row: number, { first, last }: HeadingRow): "blank" | "total" | undefined {
  let [blank, sums, label] = [true, 0, ""];
  for (let column = first; column <= last; column += 1) {
    if (cells.isBlank(row, column)) continue;
    blank = false;
    if (SUM.test(cells.formula(row, column) ?? "")) sums += 1;
    const text = cells.typedText(row, column);
    if (label === "" && text !== undefined && !isMeasure(text)) label = text.trim();
  }
  if (blank) return "blank";
  return isTotalLabel(label) || (sums > 0 && !hasTypedNumbers(cells, row, first, last)) ? "total" : undefined;
}

/** Judges the rows of a list, given the columns that a bed must have filled. */
export function judgeRows(
  cells: ListCells,
  heading: HeadingRow,
  { first, last }: { readonly first: number; readonly last: number },
  needed: NeededColumns,
): ListRow[] {
  const hidden = new Set(cells.sheet.hiddenRows);
  const rows: ListRow[] = [];
  for (let row = first; row <= last; row += 1) {
    rows.push({ row, hidden: hidden.has(row), ...judge(cells, row, heading, needed) });
  }
  return rows;
}

function judge(
  cells: ListCells,
  row: number,
  heading: HeadingRow,
  needed: NeededColumns,
): Pick<ListRow, "kind" | "why"> {
  const apart = isApart(cells, row, heading);
  if (apart === "blank") return { kind: "blank", why: "blank" };
  if (apart === "total") return { kind: "total", why: "a row of totals" };
  const missing = needed.map((columns) => columns.map((one) => lack(cells, row, one)).filter((text) => text !== ""));
  if (missing.some((lacks) => lacks.length === 0)) return { kind: "bed", why: "" };
  if (
    !hasNumbers(cells, row, heading) &&
    missing.every((lacks, index) => lacks.length === must(needed[index]).length)
  ) {
    return { kind: "note", why: "a note, without measurements" };
  }
  const fewest = [...missing].sort((one, other) => one.length - other.length)[0];
  return { kind: "short", why: fewest?.join(", ") ?? "no size" };
}

/** What is wrong with a measurement; "" where it can be used. */
function lack(cells: ListCells, row: number, { column, label, reads }: NeededColumns[number][number]): string {
  const value = cells.value(row, column);
  if (typeof value === "number") return value > 0 ? "" : `${label} is ${value}`;
  if (cells.isBlank(row, column) || value === "") return `no ${label.toLowerCase()}`;
  if (reads === "name" && typeof value === "string" && !value.startsWith("#")) return "";
  if (reads === "length" && typeof value === "string" && isMeasure(value)) return "";
  return `${label} can't be read: ${String(value).slice(0, 30)}`;
}

const SUM = /^=\s*\+?(SUM|SUBTOTAL|AGGREGATE|AVERAGE|SUMIFS?)\(/i;

function hasTypedNumbers(cells: ListCells, row: number, first: number, last: number): boolean {
  for (let column = first; column <= last; column += 1) {
    if (typeof cells.content(row, column) === "number") return true;
  }
  return false;
}

function hasNumbers(cells: ListCells, row: number, { first, last }: HeadingRow): boolean {
  for (let column = first; column <= last; column += 1) {
    if (cells.number(row, column) !== undefined) return true;
  }
  return false;
}
