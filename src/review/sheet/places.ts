import { type Heading, readHeading, unitIn } from "../../headings/heading";
import { roleOf } from "../../headings/meaning";
import type { Role } from "../../headings/roles";
import { type UnitName, unitNamed } from "../../headings/units";
import { isHeadingWord, isTotalLabel, PARAMETERS } from "../../headings/words";
import { must } from "../../quantities/must";
import type { SheetGrid } from "./grid";

/** A row of headings, and the columns from its first to its last text. */
export interface HeadingRow {
  readonly row: number;
  readonly first: number;
  readonly last: number;
  /** A row of units, or of narrower headings, is below this one: both are read together. */
  readonly above?: HeadingRow;
}

/** How far below a heading its first number may stand. */
const REACH = 3;

/**
 * The rows of a sheet that head columns: at least two texts and no numbers, with numbers below. Right below data
 * a row has to use the words of headings, too, since a row such as "Stone, river rock" is data without numbers.
 */
export function headingRows(grid: SheetGrid): HeadingRow[] {
  const texts = new Map<number, { first: number; last: number; columns: number[] }>();
  for (let row = grid.top; row <= grid.bottom; row++) {
    const found = textsOnly(grid, row);
    if (found) texts.set(row, found);
  }
  const headings: HeadingRow[] = [];
  for (const [row, { first, last, columns }] of texts) {
    if (columns.length < 2 || !headsNumbers(grid, row, first, last)) continue;
    if (hasNumbers(grid, row - 1, first, last) && !soundsLikeHeadings(grid, row, columns)) continue;
    const above = texts.get(row - 1);
    const unitsOnly =
      columns.filter((column) => unitNamed(String(grid.value(row, column)))).length * 2 >= columns.length;
    const group =
      above && (unitsOnly || isMergedAcross(grid, row - 1))
        ? { row: row - 1, first: above.first, last: Math.max(above.last, last) }
        : undefined;
    headings.push({
      row,
      first: Math.min(first, group?.first ?? first),
      last: Math.max(last, group?.last ?? last),
      ...(group && { above: group }),
    });
  }
  return headings;
}

function textsOnly(grid: SheetGrid, row: number) {
  const columns: number[] = [];
  for (let column = grid.left; column <= grid.right; column++) {
    if (grid.isBlank(row, column)) continue;
    if (!grid.isTypedText(row, column)) return undefined;
    columns.push(column);
  }
  const [first, last] = [columns[0], columns.at(-1)];
  return first === undefined || last === undefined ? undefined : { first, last, columns };
}

function headsNumbers(grid: SheetGrid, row: number, first: number, last: number): boolean {
  for (let below = row + 1; below <= Math.min(row + REACH, grid.bottom); below++) {
    if (hasNumbers(grid, below, first, last)) return true;
    // Another row of texts in between is what heads the numbers.
    if ((textsOnly(grid, below)?.columns.length ?? 0) > 1) return false;
  }
  return false;
}

function hasNumbers(grid: SheetGrid, row: number, first: number, last: number): boolean {
  for (let column = first; column <= last; column++) {
    if (grid.number(row, column) !== undefined || grid.formula(row, column) !== undefined) return true;
  }
  return false;
}

function soundsLikeHeadings(grid: SheetGrid, row: number, columns: readonly number[]): boolean {
  const later = columns.slice(1).map((column) => String(grid.value(row, column)));
  const sounding = later.filter((text) => isHeadingWord(text) || (text.length < 30 && unitIn(text) !== undefined));
  return sounding.length >= Math.min(2, later.length) && sounding.length * 2 >= later.length;
}

function isMergedAcross(grid: SheetGrid, row: number): boolean {
  return grid.facts.merged.some((area) => area.row === row && area.rows === 1 && area.columns > 1);
}

/** What stands around a cell and says what it is. */
export interface Described {
  /** The heading of its column, "" where there is none; headings above one another are joined by a space. */
  readonly heading: string;
  /** The label of its row, "" where there is none. */
  readonly label: string;
  readonly unit: UnitName | undefined;
  readonly role: Role | undefined;
  /** Whether the role is told by the heading of the column, so that its record is the row, or by the row's label. */
  readonly roleFrom: "heading" | "label" | undefined;
}

const UNIT_HEADING = /^(units?|u\/m|uom)\.?$/i;

/** Headings, labels and units of the cells of one sheet. */
export class SheetPlaces {
  readonly headingRows: readonly HeadingRow[];
  readonly #mergedFrom = new Map<number, { row: number; column: number }>();
  readonly #headingAt = new Map<number, string>();
  readonly #alone = new Map<number, boolean>();
  readonly #totalRows = new Map<number, boolean>();
  readonly #roles = new Map<string, Role | undefined>();
  readonly #headings = new Map<string, Heading | undefined>();
  readonly #unitNames = new Map<string, UnitName | undefined>();

  constructor(readonly grid: SheetGrid) {
    this.headingRows = headingRows(grid);
    for (const area of grid.facts.merged) {
      // A merge may be as large as the sheet, and only its first row or column can hold a heading or a label.
      const [rows, columns] = [Math.min(area.rows, 200), Math.min(area.columns, 50)];
      for (let row = area.row; row < area.row + rows; row++) {
        for (let column = area.column; column < area.column + columns; column++) {
          this.#mergedFrom.set(placeKey(row, column), { row: area.row, column: area.column });
        }
      }
    }
  }

  describe(row: number, column: number): Described {
    const heading = this.headingOf(row, column);
    const label = this.labelOf(row, column);
    return { heading, label, unit: this.unitOf(row, column), ...this.roleAt(row, column) };
  }

  /** What a cell holds, and whether its column's heading or its row's label says so. */
  roleAt(row: number, column: number): Pick<Described, "role" | "roleFrom"> {
    const heading = this.headingOf(row, column);
    const told = heading === "" ? undefined : this.roleIn(heading);
    if (told && !this.standsAlone(row)) return { role: told, roleFrom: "heading" };
    const label = this.labelOf(row, column);
    const role = label === "" ? undefined : this.roleIn(label);
    // Below a table, “Truck payload, 2.6” is no further line of it.
    if (role && (!told || PARAMETERS.has(role))) return { role, roleFrom: "label" };
    return { role: told, roleFrom: told && "heading" };
  }

  /** Whether a row is no more than a label and one amount, perhaps with its unit. */
  standsAlone(row: number): boolean {
    const known = this.#alone.get(row);
    if (known !== undefined) return known;
    let amounts = 0;
    for (let column = this.grid.left; column <= this.grid.right && amounts < 2; column++) {
      const kind = this.grid.kind(row, column);
      const isAmount = kind === "number" || kind === "error" || this.grid.formula(row, column) !== undefined;
      if (isAmount || (kind === "text" && /^\s*[\d.]/.test(String(this.grid.value(row, column))))) amounts++;
    }
    this.#alone.set(row, amounts < 2);
    return amounts < 2;
  }

  /** The row of headings that a cell is below. */
  headingRowOf(row: number, column: number): HeadingRow | undefined {
    for (let place = this.headingRows.length - 1; place >= 0; place--) {
      const heading = must(this.headingRows[place]);
      if (heading.row < row && heading.first <= column && column <= heading.last + 1) return heading;
    }
    return undefined;
  }

  headingOf(row: number, column: number): string {
    const heading = this.headingRowOf(row, column);
    if (!heading) return "";
    const key = placeKey(heading.row, column);
    const known = this.#headingAt.get(key);
    if (known !== undefined) return known;
    const parts = [heading.above && this.#textAt(heading.above.row, column), this.#textAt(heading.row, column)];
    const text = parts.filter(Boolean).join(" ").trim();
    this.#headingAt.set(key, text);
    return text;
  }

  /** The first text of the row, from the left edge of what the cell belongs to. */
  labelOf(row: number, column: number): string {
    const heading = this.headingRowOf(row, column);
    const from = heading ? Math.min(heading.first, column) : this.grid.left;
    let label = "";
    for (let left = column - 1; left >= from; left--) {
      const text = this.#textAt(row, left);
      if (text === "") {
        // A blank column is where another block may end.
        const isOpen = label !== "" && this.grid.isBlank(row, left) && this.headingOf(row, left) === "";
        if (isOpen) break;
        continue;
      }
      label = text;
    }
    return this.#named(label) && label.length < 4 ? "" : label;
  }

  /** How many spaces the label of a row begins with. */
  indentOf(row: number, column: number): number {
    for (let left = this.grid.left; left < column; left++) {
      if (!this.grid.isTypedText(row, left)) continue;
      const text = String(this.grid.value(row, left));
      return text.length - text.trimStart().length;
    }
    return 0;
  }

  /** The unit of a number, from its heading, from a unit beside it, from its label, or from its format. */
  unitOf(row: number, column: number): UnitName | undefined {
    const heading = this.headingOf(row, column);
    const beside = this.#unitBeside(row, column);
    return (
      // Below a table, “Area | 120 | sq ft” is no further line of it.
      (this.standsAlone(row) ? beside : undefined) ??
      this.#read(heading)?.unit ??
      beside ??
      this.#read(this.labelOf(row, column))?.unit ??
      (this.grid.format(row, column).includes("%") ? unitNamed("%") : undefined)
    );
  }

  /** What a heading or label of this sheet says its cells hold. */
  roleIn(text: string): Role | undefined {
    return kept(this.#roles, text, () => roleOf(must(this.#read(text))));
  }

  /** Whether a row is one of sums, by its label. */
  isTotalRow(row: number, column: number): boolean {
    // The row of a table has one label, whichever of its columns is asked about.
    const key = placeKey(row, this.headingRowOf(row, column)?.first ?? column);
    const known = this.#totalRows.get(key);
    if (known !== undefined) return known;
    const isTotal = isTotalLabel(this.labelOf(row, column));
    this.#totalRows.set(key, isTotal);
    return isTotal;
  }

  /** `Depth | 3 | in` has the unit right of the number, `Depth | in | 3 | 3` left of all of them. */
  #unitBeside(row: number, column: number): UnitName | undefined {
    if (this.grid.isTypedText(row, column + 1)) {
      const right = this.#named(String(this.grid.value(row, column + 1)));
      if (right || UNIT_HEADING.test(this.headingOf(row, column + 1))) return right;
    }
    for (let left = column - 1; left > this.grid.left; left--) {
      if (!this.grid.isTypedText(row, left)) {
        if (this.grid.isBlank(row, left) && this.grid.isBlank(row, left - 1)) return undefined;
        continue;
      }
      const named = this.#named(String(this.grid.value(row, left)));
      return named && this.grid.isTypedText(row, left - 1) ? named : undefined;
    }
    return undefined;
  }

  #read(text: string): Heading | undefined {
    return kept(this.#headings, text, readHeading);
  }

  #named(text: string): UnitName | undefined {
    return text.length > 30 ? undefined : kept(this.#unitNames, text, unitNamed);
  }

  #textAt(row: number, column: number): string {
    const from =
      this.#mergedFrom.size > 0 ? (this.#mergedFrom.get(placeKey(row, column)) ?? { row, column }) : { row, column };
    return this.grid.kind(from.row, from.column) === "text"
      ? String(this.grid.value(from.row, from.column)).trim()
      : "";
  }
}

/** A cell as one number, since a sheet has no more than 16,384 columns. */
const placeKey = (row: number, column: number) => row * 16_384 + column;

/** Reads a text once, since the same headings and labels are asked about for every cell. */
function kept<Read>(known: Map<string, Read | undefined>, text: string, read: (text: string) => Read | undefined) {
  if (text === "") return undefined;
  if (!known.has(text)) known.set(text, read(text));
  return known.get(text);
}
