import { isUnitOf } from "../../headings/meaning";
import type { UnitName } from "../../headings/units";
import type { Area } from "../../spreadsheet/areas";
import { type FittedColumn, fitColumns } from "./fitColumns";
import { type HeadingRow, headingRowAt, headingRows } from "./headingRows";
import { rowsBelow } from "./listRows";
import { ListCells, type ListSheet } from "./listSheet";
import { ownUnit, type Role } from "./roles";

/** A list of beds as it was found on a sheet, and what its columns are taken for. */
export interface ListFit {
  readonly cells: ListCells;
  readonly heading: HeadingRow;
  /** All rows that head a list on this sheet, to choose another. */
  readonly headings: readonly HeadingRow[];
  /** The first and the last row below the headings. */
  readonly rows: { readonly first: number; readonly last: number };
  readonly columns: readonly FittedColumn[];
}

/** What the estimator says that a column holds. */
export interface Correction {
  readonly role: Role | "none";
  /** Left out, it stays what it was. */
  readonly unit?: UnitName;
}
export type Corrections = ReadonlyMap<number, Correction>;

/**
 * Finds the list of beds around the selection, and proposes what its columns hold.
 *
 * @param chosen a heading row that was chosen by hand, of those in `headings`.
 * @returns undefined where no row of the sheet reads like the headings of a list of beds.
 */
export function fitList(sheet: ListSheet, selection: Area, chosen?: HeadingRow): ListFit | undefined {
  const cells = new ListCells(sheet);
  const headings = headingRows(cells);
  const heading =
    headings.find(({ row, first }) => row === chosen?.row && first === chosen.first) ??
    headingRowAt(headings, selection);
  if (!heading) return undefined;
  const rows = rowsBelow(cells, heading, headings);
  return { cells, heading, headings, rows, columns: fitColumns(cells, heading, rows) };
}

/** The columns with what the estimator said of them: a role that was given to one column goes away from any other. */
export function settleColumns(columns: readonly FittedColumn[], corrections: Corrections): FittedColumn[] {
  const given = new Map<Role, number>();
  for (const [column, { role }] of corrections) if (role !== "none") given.set(role, column);
  return columns.map((fitted) => {
    const { role: _, unit, ...rest } = fitted;
    const said = corrections.get(fitted.column);
    const isMoved = fitted.role !== undefined && given.has(fitted.role) && given.get(fitted.role) !== fitted.column;
    if (!said) return isMoved ? { ...rest, sure: "none", asks: [], why: "you gave this to another column" } : fitted;
    if (said.role === "none" || given.get(said.role) !== fitted.column)
      return { ...rest, sure: "none", asks: [], why: "you said so" };
    const wanted = said.unit ?? unit;
    const taken = wanted && isUnitOf(said.role, wanted) ? wanted : ownUnit(said.role);
    return { ...rest, role: said.role, ...(taken && { unit: taken }), sure: "sure", asks: [], why: "you said so" };
  });
}
