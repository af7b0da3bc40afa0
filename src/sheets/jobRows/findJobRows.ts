import { type UnitName, units } from "../../headings/units";
import { must } from "../../quantities/must";
import { readTape } from "../../quantities/tape";
import { cellAddress, quotedSheet } from "../../spreadsheet/areas";
import { fitColumns } from "./fit";
import { headingRows, judgeRows, rowsBelow } from "./listRows";
import { isMeasure, ListCells, type ListSheet } from "./listSheet";
import {
  type InputRole,
  isResult,
  measureOf,
  NAME_ROLES,
  ownUnit,
  type ResultRole,
  type Role,
  roleLabel,
} from "./roles";

/** One bed of a list, as its row is on the sheet. */
export interface JobRow {
  /** Counted from 0, on the sheet. */
  readonly row: number;
  readonly job: string;
  readonly bed: string;
  readonly stone: string;
  /** Left out where the row doesn't say it. */
  readonly edgingKind?: string;
  readonly edgingProduct?: string;
  readonly fabricProduct?: string;
  readonly soldBy?: string;
  /** Lengths in feet, depths in inches, waste as a share. Absent where no column holds it or the cell cannot be read. */
  readonly measured: Readonly<Partial<Record<InputRole, number>>>;
  /** What is in the columns of results, in the units of {@link ResultRole}: square feet, feet, short tons, pieces. */
  readonly quantities: Readonly<Partial<Record<ResultRole, number>>>;
  /** The same values as formulas on their cells, in the same units. */
  readonly formulas: Readonly<Partial<Record<Role, string>>>;
}

interface JobList {
  readonly sheet: string;
  readonly headingRow: number;
  readonly beds: readonly JobRow[];
}

/**
 * Recognises the lists of beds on a sheet, and reads their rows: names and quantities, for what is made of several beds
 * together. Columns that would have to be asked about are left out, as are rows of totals, notes and rows without
 * measurements.
 *
 * @param sheet as it was read; what the selection is does not matter.
 * @returns every list with at least one bed, from the top; none where the sheet has no such list.
 * @example findJobRows(sheet)[0]?.beds[0]?.quantities.tons // 1.05
 */
export function findJobRows(sheet: ListSheet): JobList[] {
  const cells = new ListCells(sheet);
  const headings = headingRows(cells);
  return headings.flatMap((heading) => {
    const rows = rowsBelow(cells, heading, headings);
    const columns = new Map(
      fitColumns(cells, heading, rows).flatMap(({ role, column, unit }) =>
        role ? [[role, { column, unit }] as const] : [],
      ),
    );
    const needed = [["length", "width"], ["area"]]
      .filter((roles) => roles.every((role) => columns.has(role as Role)))
      .map((roles) => roles.map((role) => neededColumn(role as Role, must(columns.get(role as Role)).column)));
    if (needed.length === 0) return [];
    const beds = judgeRows(cells, heading, rows, needed).filter(({ kind }) => kind === "bed");
    const read = beds.map(({ row }) => readRow(cells, sheet.name, row, columns));
    return read.length > 0 ? [{ sheet: sheet.name, headingRow: heading.row, beds: read }] : [];
  });
}

function neededColumn(role: Role, column: number) {
  return { column, label: roleLabel(role), reads: role === "area" ? ("number" as const) : ("length" as const) };
}

/** Names that are taken for something else where they are left out. */
const OTHER_NAMES = ["edgingKind", "edgingProduct", "fabricProduct", "soldBy"] as const;
const NAMES: readonly Role[] = NAME_ROLES;

function readRow(
  cells: ListCells,
  sheet: string,
  row: number,
  columns: ReadonlyMap<Role, { readonly column: number; readonly unit: UnitName | undefined }>,
): JobRow {
  const text = (role: Role) => {
    const column = columns.get(role)?.column;
    return column === undefined ? "" : String(cells.value(row, column)).trim();
  };
  const measured: Partial<Record<InputRole, number>> = {};
  const quantities: Partial<Record<ResultRole, number>> = {};
  const formulas: Partial<Record<Role, string>> = {};
  for (const [role, { column, unit }] of columns) {
    const value = amount(cells, row, column, role, unit);
    if (value === undefined) continue;
    formulas[role] = formulaOf(cells, sheet, row, column, role, unit);
    if (isResult(role)) quantities[role] = value;
    else if (!NAMES.includes(role)) measured[role] = value;
  }
  for (const role of ["stone", "edgingProduct", "fabricProduct"] as const) {
    const column = columns.get(role);
    if (column && text(role)) formulas[role] = cellOn(sheet, row, column.column);
  }
  const others = Object.fromEntries(OTHER_NAMES.flatMap((role) => (text(role) ? [[role, text(role)]] : [])));
  const names = { job: text("job"), bed: text("bed"), stone: text("stone") };
  return {
    row,
    ...names,
    ...others,
    measured,
    quantities,
    formulas,
  };
}

/** A cell's number in the role's own unit; tape text by its own unit. */
function amount(
  cells: ListCells,
  row: number,
  column: number,
  role: Role,
  unit: UnitName | undefined,
): number | undefined {
  const own = ownUnit(role);
  const number = cells.number(row, column);
  if (number === undefined) {
    const text = cells.value(row, column);
    const isLength = !isResult(role) && measureOf(role) === "length";
    if (!isLength || typeof text !== "string" || !isMeasure(text)) return undefined;
    return readTape(text, own === "in" ? "in" : "ft");
  }
  if (role === "waste") return number >= 1 ? number / 100 : number;
  return own && unit ? inUnit(number, unit, own) : number;
}

const cellOn = (sheet: string, row: number, column: number) => `${quotedSheet(sheet)}!${cellAddress({ row, column })}`;

/** What {@link amount} gives, as a formula on the cell. */
function formulaOf(
  cells: ListCells,
  sheet: string,
  row: number,
  column: number,
  role: Role,
  unit: UnitName | undefined,
): string {
  const cell = cellOn(sheet, row, column);
  const number = cells.number(row, column);
  const own = ownUnit(role);
  if (number === undefined) return cell;
  if (role === "waste") return number >= 1 ? `${cell}/100` : cell;
  if (!own || !unit || own === unit) return cell;
  const [toBase, by] = units[unit].toBase;
  const [fromBase, factor] = units[own].toBase;
  return `${cell}${toBase}${by}${fromBase === "*" ? "/" : "*"}${factor}`;
}

function inUnit(amount: number, from: UnitName, to: UnitName): number {
  if (from === to) return amount;
  const base = applied(amount, units[from].toBase);
  const [sign, factor] = units[to].toBase;
  return applied(base, [sign === "*" ? "/" : "*", factor]);
}

function applied(amount: number, [sign, factor]: readonly ["*" | "/", number]): number {
  return sign === "*" ? amount * factor : amount / factor;
}
