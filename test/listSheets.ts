import type { PracticeOffice } from "../src/practice/grid/practiceOffice";
import { type Filling, type FillOptions, fillList } from "../src/sheets/jobRows/fill";
import { fitList, type ListFit } from "../src/sheets/jobRows/fit";
import type { CellContent, ListSheet } from "../src/sheets/jobRows/listSheet";
import { usualAssumed } from "../src/sheets/jobRows/setting";
import { proposedResults } from "../src/sheets/jobRows/wanted";
import { columnLetters } from "../src/spreadsheet/areas";

/** Rows of a sheet from its corner on; "" is a blank cell. */
export type Rows = readonly (readonly CellContent[])[];

/** A sheet of these rows, as it would be read. Formulas show nothing, since nothing works them out. */
export function listSheet(rows: Rows, more: Partial<ListSheet> = {}): ListSheet {
  const width = Math.max(...rows.map((row) => row.length));
  const formulas = rows.map((row) => Array.from({ length: width }, (_, column) => row[column] ?? ""));
  const values = formulas.map((row) => row.map((content) => (String(content).startsWith("=") ? 1 : content)));
  return {
    name: "List",
    row: 0,
    column: 0,
    formulas,
    values,
    hiddenRows: [],
    merged: [],
    tables: [],
    names: [],
    weighsStone: false,
    ...more,
  };
}

/** A workbook with these rows on its one sheet. Texts stay text. */
export function officeOf(rows: Rows): PracticeOffice {
  const cells: Record<string, string | number | boolean> = {};
  rows.forEach((row, index) => {
    row.forEach((content, column) => {
      if (content === "") return;
      const isPlain = typeof content === "string" && /\d/.test(content) && !content.startsWith("=");
      cells[`${columnLetters(column)}${index + 1}`] = isPlain ? `'${content}` : content;
    });
  });
  return { sheets: [{ name: "List", cells }] };
}

export const CORNER = { row: 0, column: 0, rows: 1, columns: 1 };

/** The fit of a sheet of rows; the sheet has to have a list. */
export function fitOf(sheet: ListSheet): ListFit {
  const fit = fitList(sheet, CORNER);
  if (!fit) throw new Error("No heading row was found.");
  return fit;
}

/** Preview, where nothing is requested for but what is proposed. */
export function fillOf(fit: ListFit, options: Partial<FillOptions> = {}): Filling {
  const corrections = options.corrections ?? new Map();
  return fillList(fit, {
    corrections,
    results: proposedResults(fit, corrections),
    assumed: usualAssumed,
    replace: new Set(),
    ...options,
  });
}
