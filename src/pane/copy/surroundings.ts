import type { WorkbookFacts } from "../../review/facts";
import type { CellContent, Surroundings } from "../../sheets/plain/region";

/** What a copy has to know of the workbook around its cells. */
export function surroundingsOf({ sheets, names, tables }: WorkbookFacts): Surroundings {
  const bySheet = new Map(sheets.map((one) => [one.name.toLowerCase(), one.used]));
  return {
    valueAt: (sheetName, row, column): CellContent | undefined => {
      const used = bySheet.get(sheetName.toLowerCase());
      return used?.values[row - used.row]?.[column - used.column];
    },
    names: Object.fromEntries(names.map(({ name, formula }) => [name, formula.replace(/^=/, "")])),
    tables: tables.map(({ name, sheet, area, columnNames, headingRow, totalsRow }) => ({
      name,
      headings: columnNames,
      data: {
        sheetName: sheet,
        row: area.row + (headingRow ? 1 : 0),
        column: area.column,
        rows: area.rows - (headingRow ? 1 : 0) - (totalsRow ? 1 : 0),
        columns: area.columns,
      },
    })),
  };
}
