import type { IWorksheetData } from "@univerjs/core";
import { fromRange } from "../../grid/geometry";
import type { OpenGrid } from "../../grid/library";
import type { CellsPort, PageSetup } from "../../grid/port";
import { addressOf } from "../formula/cellPlace";
import type { FunctionNames } from "../formula/functionNames";
import { Findings } from "../open/findings";
import { FileTrouble } from "../trouble";
import { writeCells } from "./cells";
import type { Saving } from "./context";
import { writeMeasures } from "./measures";
import { namesXml } from "./names";
import { writePage } from "./page";
import { type Additions, patched } from "./patched";
import { writePictures } from "./pictures";
import { listsXml, writeShadings } from "./rules";
import { tableParts } from "./tables";

/** A workbook's file, and what it does not hold. */
export interface SavedBook {
  readonly bytes: Uint8Array<ArrayBuffer>;
  /** A line each. */
  readonly lost: readonly string[];
}

/** What stands as the author of every file; never a person or a machine. */
const author = "Practice workbook";
const longestName = 31;

/**
 * Makes an .xlsx file of the workbook: values, formulas with their results, looks, widths, names, rules, pictures, pages,
 * tables, and what the add-in keeps with the workbook. The workbook itself is left as it is.
 *
 * @param functions the add-in's functions, which files name otherwise.
 * @throws FileTrouble in words for a sheet whose name no file may hold.
 */
export async function saveBook(
  grid: OpenGrid,
  cells: Pick<CellsPort, "read">,
  functions: FunctionNames,
): Promise<SavedBook> {
  const saving: Saving = { grid, cells, functions, kept: grid.workbook.save(), findings: new Findings() };
  const sheets = saving.kept.sheetOrder.map((id) => ({ id, data: saving.kept.sheets[id] ?? {} }));
  checkNames(sheets.map(({ data }) => data.name ?? ""));
  const { default: library } = await import(/* webpackChunkName: "exceljs" */ "exceljs");
  const book = new library.Workbook();
  Object.assign(book, { creator: author, lastModifiedBy: author, created: new Date(), modified: new Date() });
  book.title = saving.kept.name;
  const front = saving.kept.sheetOrder.indexOf(grid.workbook.getActiveSheet().getSheetId());
  book.views = [
    { x: 0, y: 0, width: 24_000, height: 12_000, firstSheet: 0, activeTab: Math.max(0, front), visibility: "visible" },
  ];
  const made = sheets.map(({ id, data }) => {
    const file = book.addWorksheet(data.name);
    writeMeasures(saving, data, file);
    writeCells(saving, id, file);
    writeShadings(saving, id, file);
    const page = pageOf(data);
    if (page) writePage(page, file);
    const pictures = writePictures(saving, id, data, book, file);
    return { id, mergesXml: mergesXml(data), listsXml: listsXml(saving, id), pictures };
  });
  const additions: Additions = {
    namesXml: namesXml(
      saving,
      sheets.map(({ data }) => pageOf(data)),
    ),
    settings: (saving.kept.custom?.settings ?? {}) as Record<string, unknown>,
    sheets: made,
    tables: tableParts(saving),
  };
  const file = new Uint8Array(await book.xlsx.writeBuffer());
  return { bytes: await patched(file, additions), lost: saving.findings.lines() };
}

function pageOf(data: Partial<IWorksheetData>): PageSetup | undefined {
  return data.custom?.page as PageSetup | undefined;
}

function mergesXml({ mergeData = [] }: Partial<IWorksheetData>): string {
  const marks = mergeData.map((range) => `<mergeCell ref="${addressOf(fromRange("", range))}"/>`);
  return marks.length > 0 ? `<mergeCells count="${marks.length}">${marks.join("")}</mergeCells>` : "";
}

/** What a file forbids in the names of sheets. */
function checkNames(names: readonly string[]): void {
  for (const name of names) {
    const isFree = names.filter((other) => other.toLowerCase() === name.toLowerCase()).length === 1;
    if (name.length <= longestName && !/[[\]:*?/\\]|^'|'$|^$/.test(name) && name.toLowerCase() !== "history" && isFree)
      continue;
    throw new FileTrouble(
      `A file cannot hold a sheet called “${name}”: names have at most ${longestName} letters, none of [ ] : * ? / \\, and no two are alike. Rename it, then save.`,
    );
  }
}
