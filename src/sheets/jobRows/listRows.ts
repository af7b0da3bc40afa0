import type { HeadingRow } from "./headingRows";
import { isMeasure } from "./headingRows";
import type { ListCells } from "./listSheet";

/** What a row of a list is: a bed with what it takes to reckon, or why it is none. */
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
  return TOTAL.test(label) || (sums > 0 && !hasTypedNumbers(cells, row, first, last)) ? "total" : undefined;
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
  if (!hasNumbers(cells, row, heading) && missing.every((lacks, index) => lacks.length === needed[index]!.length)) {
    return { kind: "note", why: "a note, without measurements" };
  }
  const fewest = [...missing].sort((one, other) => one.length - other.length)[0];
  return { kind: "short", why: fewest?.join(", ") ?? "nothing says how large it is" };
}

/** What is wrong with a measurement; "" where it can be used. */
function lack(cells: ListCells, row: number, { column, label, reads }: NeededColumns[number][number]): string {
  const value = cells.value(row, column);
  if (typeof value === "number") return value > 0 ? "" : `${label} is ${value}`;
  if (cells.isBlank(row, column) || value === "") return `no ${label.toLowerCase()}`;
  if (reads === "name" && typeof value === "string" && !value.startsWith("#")) return "";
  if (reads === "length" && typeof value === "string" && isMeasure(value)) return "";
  return `${label} cannot be read: ${String(value).slice(0, 30)}`;
}

const SUM = /^=\s*\+?(SUM|SUBTOTAL|AGGREGATE|AVERAGE|SUMIFS?)\(/i;
const TOTAL =
  /^((sub|grand|job|over)?[\s-]*total(s|ed)?\b|sums?\b|together\b|all beds\b|all together\b|altogether\b|averages?\b)/i;

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
