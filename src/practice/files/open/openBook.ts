import type { IWorkbookData, IWorksheetData } from "@univerjs/core";
import type { GridLibrary } from "../../grid/library";
import type { SheetTable } from "../../grid/port";
import type { FunctionNames } from "../formula/functionNames";
import { colorReader } from "../look/colors";
import { type MarkedStyles, markStyles } from "../look/formats";
import { type BookParts, bookParts } from "../package/bookParts";
import { openPackage } from "../package/fileKind";
import { paredFile } from "../package/pared";
import { readSettings } from "../settingsPart";
import { damaged, FileTrouble } from "../trouble";
import type { CellsReading, FileCellModel, ShownResult } from "./cells";
import { type Opening, sheetId, unitId } from "./context";
import { Findings } from "./findings";
import { findLostParts } from "./lostParts";
import { readNames } from "./names";
import { readSheet } from "./sheet";
import { readStyles } from "./styles";
import { readTables } from "./tables";

/** The grid's file of a workbook, as far as a file says it. */
export type GridBook = Pick<IWorkbookData, "id" | "name" | "sheetOrder" | "styles"> &
  Partial<Pick<IWorkbookData, "resources" | "custom">> & {
    readonly sheets: Readonly<Record<string, Partial<IWorksheetData>>>;
  };

/** A file that was read, and what to say before it takes the place of the workbook. */
export interface OpenedBook {
  readonly book: GridBook;
  readonly sheets: number;
  /** The id of the sheet that is in front. */
  readonly front: string;
  readonly cells: number;
  readonly formulas: number;
  /** What does not come along, a line each. */
  readonly lost: readonly string[];
  /** What comes along otherwise than a person may expect, a line each. */
  readonly notes: readonly string[];
  /** What the formulas showed in the file. */
  readonly shown: readonly ShownResult[];
}

/**
 * Reads an .xlsx file; the workbook that is open is not touched.
 *
 * @param name what the workbook is called from now on.
 * @param functions the add-in's functions, which files name otherwise.
 * @throws FileTrouble in words where the file cannot be opened: it is no workbook, locked, damaged or too large.
 */
export async function openBook(
  library: GridLibrary,
  bytes: Uint8Array<ArrayBuffer>,
  name: string,
  functions: FunctionNames,
): Promise<OpenedBook> {
  try {
    return await read(library, bytes, name, functions);
  } catch (cause) {
    throw cause instanceof FileTrouble ? cause : damaged("what is in it does not hold together", cause);
  }
}

async function read(
  library: GridLibrary,
  bytes: Uint8Array<ArrayBuffer>,
  name: string,
  functions: FunctionNames,
): Promise<OpenedBook> {
  const book = await bookParts(openPackage(bytes));
  refuseTwins(book);
  const findings = new Findings();
  const opening: Opening = {
    library,
    functions,
    book,
    findings,
    tables: await readTables(book),
    colorOf: colorReader(book.themeXml),
  };
  await findLostParts(book, findings);
  const styles = markStyles(book.stylesXml);
  const [models, styleModels] = await cellModels(book, styles);
  const dressed = readStyles(opening, styles, styleModels, models);
  const reading: CellsReading = { formats: styles.formats, styleIds: dressed.ids, shown: [], cells: 0, formulas: 0 };
  const parts = await Promise.all(
    book.sheets.map((sheet, place) => readSheet(opening, reading, sheet, place, models[place] ?? [])),
  );
  const settings = await readSettings(book.zip, findings);
  return {
    book: {
      id: unitId,
      name,
      sheetOrder: book.sheets.map((_, place) => sheetId(place)),
      sheets: Object.fromEntries(parts.map(({ data }, place) => [sheetId(place), data])),
      styles: dressed.styles,
      resources: [
        { name: "SHEET_DRAWING_PLUGIN", data: bySheet(parts.map(({ drawings }) => drawings)) },
        { name: "SHEET_CONDITIONAL_FORMATTING_PLUGIN", data: bySheet(parts.map(({ shadings }) => shadings)) },
        { name: "SHEET_DATA_VALIDATION_PLUGIN", data: bySheet(parts.map(({ lists }) => lists)) },
        { name: "SHEET_DEFINED_NAME_PLUGIN", data: JSON.stringify(readNames(opening)) },
      ],
      custom: { tables: tablesOf(opening), settings },
    },
    sheets: book.sheets.length,
    front: sheetId(placeOf(book.sheets, book.sheetAt[book.front])),
    cells: reading.cells,
    formulas: reading.formulas,
    lost: findings.lines(),
    notes: notesOf(book),
    shown: reading.shown,
  };
}

function refuseTwins({ sheets }: BookParts): void {
  const seen = new Set<string>();
  for (const { name } of sheets) {
    if (seen.has(name.toLowerCase())) throw damaged(`it has two sheets called “${name}”`);
    seen.add(name.toLowerCase());
  }
}

function notesOf(book: BookParts): string[] {
  const hidden = book.sheets.filter((sheet) => sheet.hidden).map(({ name }) => `“${name}”`);
  return [
    ...(hidden.length > 0 ? [`Hidden in the file, and hidden here: ${hidden.join(", ")}`] : []),
    ...(book.startsIn1904
      ? ["Dates were counted from 1904 and are now counted from 1900; they show the same days"]
      : []),
  ];
}

/** Has the library read the cells; by sheet, as it models them, and a cell of each style. */
async function cellModels(book: BookParts, styles: MarkedStyles): Promise<[FileCellModel[][], FileCellModel[]]> {
  const { default: library } = await import(/* webpackChunkName: "exceljs" */ "exceljs");
  const file = await paredFile(book, styles);
  const workbook = new library.Workbook();
  await workbook.xlsx.load(file.buffer);
  // Its published types leave the rows of a sheet's model out.
  const models = workbook.worksheets.map((sheet) => {
    const { rows } = sheet.model as unknown as { rows: { cells: FileCellModel[] }[] };
    return rows.flatMap(({ cells }) => cells);
  });
  return [models.slice(0, -1), models.at(-1) ?? []];
}

function bySheet(parts: readonly object[]): string {
  return JSON.stringify(Object.fromEntries(parts.map((part, place) => [sheetId(place), part])));
}

function tablesOf({ tables, book }: Opening): SheetTable[] {
  return tables.map(({ name, sheetName, area, style }, place) => {
    const id = sheetId(book.sheets.findIndex((sheet) => sheet.name === sheetName));
    return { id: String(place + 1), name, area: { sheetId: id, ...area }, style };
  });
}

/** Where a sheet stands among those that are opened; the first where it is not one of them, such as a chart's. */
function placeOf<T>(sheets: readonly T[], sheet: T | undefined): number {
  return sheet === undefined ? 0 : Math.max(0, sheets.indexOf(sheet));
}
