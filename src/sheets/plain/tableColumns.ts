import { parseStructRef, type RangeA1 } from "@borgar/fx";
import type { SheetArea, TableFacts } from "./region";

/**
 * The cells that a reference to columns of a table means, such as `Jobs[Length]` or `[@Length]`.
 *
 * @param text the reference as it is in a formula.
 * @param at the formula's cell, for a table's "this row".
 * @returns undefined for a table or column that is not known, and for its headings and totals.
 */
export function tableColumns(
  text: string,
  tables: readonly TableFacts[],
  at: SheetArea,
): { readonly sheetName: string; readonly range: RangeA1 } | undefined {
  const reference = parseStructRef(text);
  if (!reference) return undefined;
  const table = tables.find((one) => isMeant(one, reference.table, at));
  const [first, last, ...more] = reference.columns ?? [];
  if (!table || first === undefined || more.length > 0) return undefined;
  const placeOf = (heading: string) => table.headings.findIndex((one) => one.toLowerCase() === heading.toLowerCase());
  const [left, right] = [placeOf(first), placeOf(last ?? first)];
  const sections = reference.sections ?? [];
  const thisRow = sections.includes("this row");
  if (left < 0 || right < 0) return undefined;
  if (!thisRow && sections.some((section) => section !== "data")) return undefined;
  const { data } = table;
  return {
    sheetName: data.sheetName,
    range: {
      top: thisRow ? at.row : data.row,
      bottom: thisRow ? at.row : data.row + data.rows - 1,
      left: data.column + Math.min(left, right),
      right: data.column + Math.max(left, right),
    },
  };
}

function isMeant(table: TableFacts, name: string | undefined, at: SheetArea): boolean {
  if (name) return table.name.toLowerCase() === name.toLowerCase();
  const { sheetName, row, column, rows, columns } = table.data;
  const isIn = at.row >= row && at.row < row + rows && at.column >= column && at.column < column + columns;
  return isIn && at.sheetName === sheetName;
}
