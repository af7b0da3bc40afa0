import type { Workbook, Worksheet } from "exceljs";
import { Problem } from "../../quantities/problem";
import { type Anchor, areaAddress, cellAddress } from "../../spreadsheet/areas";
import { contentValue, isFormula, type Shown, shownValue } from "../../spreadsheet/fileCell";
import { fileFormula } from "../../spreadsheet/fileFormula";
import type { Plan } from "../plan";
import { tooLong } from "../tooLong";
import { stylesOf } from "./fileLooks";
import { setPage } from "./filePage";
import { addRules, corners, placed } from "./fileRules";
import { inLines } from "./lines";
import { SheetNames } from "./sheetNames";

/** One sheet of a file. */
export interface FileSheet {
  readonly sheetName: string;
  readonly plan: Plan;
  /** Where the plan stands; its formulas must have been made for it. A1 where left out. */
  readonly at?: Anchor;
  /**
   * What the plan's cells show, row by row: kept beside the formulas, so that a program shows it before it works
   * anything out, and taken in their place where only values are wanted.
   */
  readonly results?: readonly (readonly Shown[])[];
  /** Formulas that are to be array formulas, by their cell or, where they give a list, by its cells: `C4`, `C4:D9`. */
  readonly arrays?: readonly string[];
}

export interface FileOptions {
  /** No formula, name, list to choose from or rule is in the file: nothing but what is seen, and how it is printed. */
  readonly valuesOnly?: boolean;
  /** The document's title among its properties. */
  readonly title?: string;
}

/** What stands as the author of every file; never a person or a machine. */
const AUTHOR = "Bedrow";
/** Columns of a file count their padding, too: 5 px of it to 7 px a character. */
const PADDING = 5 / 7;

/**
 * Makes an .xlsx file of plans, one a sheet, with their formulas and results, looks, widths, merged cells, rules,
 * lists, names, pictures and page. Nothing in it is hidden and nothing tells who made it where. Tables of plans are
 * ordinary cells in a file. The library for it is fetched when it is first wanted.
 *
 * @param sheets in order; at least one.
 * @returns the file.
 * @throws Problem for what no cell would hold.
 * @throws {RangeError} for no sheet, or where only values are wanted and a formula has no result: a fault of this program.
 * @example await workbookFile([{ sheetName: "Price", plan }], { valuesOnly: true })
 */
export async function workbookFile(sheets: readonly FileSheet[], options: FileOptions = {}): Promise<Uint8Array> {
  if (sheets.length === 0) throw new RangeError("A file needs a sheet.");
  const trouble = sheets.map(({ plan }) => tooLong(plan)).find((words) => words !== undefined);
  if (trouble) throw new Problem("value", `No file was made. ${trouble}`);
  const { default: library } = await import(/* webpackChunkName: "exceljs" */ "exceljs");
  const book = new library.Workbook();
  book.creator = AUTHOR;
  book.lastModifiedBy = AUTHOR;
  book.created = new Date();
  book.modified = book.created;
  if (options.title) book.title = options.title;
  const names = new SheetNames(sheets.map(({ sheetName }) => sheetName));
  const lacksResults = sheets.map((sheet, index) => addSheet(book, sheet, names.inFile[index]!, names, options));
  // Programs show what the file holds; they have to work out what it does not hold.
  if (lacksResults.includes(true)) book.calcProperties.fullCalcOnLoad = true;
  return new Uint8Array(await book.xlsx.writeBuffer());
}

/** Adds a sheet; gives whether a formula has no result yet. */
function addSheet(book: Workbook, file: FileSheet, name: string, names: SheetNames, options: FileOptions): boolean {
  const { plan, at = { row: 0, column: 0 } } = file;
  const { valuesOnly = false } = options;
  const sheet = book.addWorksheet(name);
  const lacksResults = addCells(sheet, file, at, names, valuesOnly);
  growRows(sheet, plan, at);
  plan.widths.forEach((characters, index) => {
    if (characters > 0) sheet.getColumn(at.column + index + 1).width = characters + PADDING;
  });
  for (const area of plan.merged ?? []) sheet.mergeCells(areaAddress(placed(area, at)));
  if (!valuesOnly) addRules(book, sheet, plan, at, names.references);
  for (const { area, png } of plan.pictures ?? []) {
    const picture = book.addImage({ base64: png, extension: "png" });
    sheet.addImage(picture, corners(placed(area, at)).map(cellAddress).join(":"));
  }
  if (plan.page) setPage(sheet, plan.page, { ...at, rows: plan.rows, columns: plan.columns });
  return lacksResults;
}

/** A line of text in the file's font, in points. */
const LINE_POINTS = 15;

/** Rows as high as the text that breaks into lines in them: not every program works that out when it opens a file. */
function growRows(sheet: Worksheet, plan: Plan, at: Anchor): void {
  plan.formulas.forEach((contents, row) => {
    const lines = contents.map((content, column) => {
      const wraps = sheet.getCell(at.row + row + 1, at.column + column + 1).alignment?.wrapText === true;
      const width = plan.widths[column] ?? 0;
      return wraps && width > 0 && typeof content === "string" ? inLines(content, width).length : 1;
    });
    const most = Math.max(1, ...lines);
    if (most > 1) sheet.getRow(at.row + row + 1).height = most * LINE_POINTS;
  });
}

function addCells(
  sheet: Worksheet,
  { plan, results, arrays = [] }: FileSheet,
  at: Anchor,
  names: SheetNames,
  valuesOnly: boolean,
): boolean {
  const styleAt = stylesOf(plan);
  const arrayAt = new Map(arrays.map((address) => [address.split(":")[0], address]));
  let lacksResults = false;
  plan.formulas.forEach((contents, row) => {
    contents.forEach((content, column) => {
      const cell = sheet.getCell(at.row + row + 1, at.column + column + 1);
      const style = styleAt(row, column);
      const shown = results?.[row]?.[column];
      cell.style = style;
      if (!isFormula(content)) {
        // Beside an array formula stand the further values of its list.
        cell.value = content === "" && shown !== undefined && shown !== "" ? shownValue(shown) : contentValue(content);
      } else if (valuesOnly) {
        if (shown === undefined) throw new RangeError(`The formula in ${cell.address} has no result to stand for it.`);
        cell.value = shownValue(shown);
      } else {
        lacksResults ||= shown === undefined;
        const ref = arrayAt.get(cellAddress({ row: at.row + row, column: at.column + column }));
        cell.value = {
          formula: fileFormula(content, names.references),
          ...(shown !== undefined && { result: shownValue(shown) }),
          ...(ref && { shareType: "array", ref }),
        };
      }
    });
  });
  return lacksResults;
}
