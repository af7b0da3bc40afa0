import type { ICellData, Nullable } from "@univerjs/core";
import { union } from "./geometry";
import type { OpenGrid } from "./library";
import type { Area } from "./port";
import { worksheetOf } from "./sheetOf";

/**
 * The smallest area round everything on a sheet: values, formulas and what they spill, and, unless only values
 * count, formats and merged cells too. Nothing on an empty sheet.
 */
export function usedArea(grid: OpenGrid, sheetId: string, valuesOnly: boolean): Area | undefined {
  const sheet = worksheetOf(grid, sheetId);
  let used: Area | undefined;
  const take = (row: number, column: number) => {
    const one = { sheetId, row, column, rowCount: 1, columnCount: 1 };
    used = used ? union(used, one) : one;
  };
  sheet.getCellMatrix().forValue((row, column, cell) => {
    if (hasContent(cell) || (!valuesOnly && cell?.s)) take(row, column);
  });
  const formulas = grid.injector.get(grid.library.sheets.FormulaDataModel);
  const spilled = formulas.getArrayFormulaCellData()[grid.workbook.getId()]?.[sheetId] ?? {};
  for (const [row, cells] of Object.entries(spilled)) {
    for (const column of Object.keys(cells ?? {})) take(Number(row), Number(column));
  }
  return used;
}

function hasContent(cell: Nullable<ICellData>): boolean {
  if (!cell) return false;
  return Boolean(cell.f || cell.si || cell.p) || (cell.v !== undefined && cell.v !== null && cell.v !== "");
}
