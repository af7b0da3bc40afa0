import type { IStyleData, IWorkbookData, IWorksheetData } from "@univerjs/core";
import type { Style } from "exceljs";
import { toRange } from "../../grid/geometry";
import type { GridLibrary } from "../../grid/library";
import type { SheetTable } from "../../grid/port";
import { newSheet } from "../../grid/practiceOffice";
import { rectangleOf } from "../formula/cellPlace";
import type { FunctionNames } from "../formula/functionNames";
import { colorReader } from "../look/colors";
import { type MarkedStyles, markStyles, styleNumber } from "../look/formats";
import { styleFromFile } from "../look/fromFile";
import { type BookParts, bookParts, type SheetPart } from "../package/bookParts";
import { openPackage } from "../package/fileKind";
import { paredFile } from "../package/pared";
import { elements, firstElement } from "../package/xml";
import { readSettings } from "../settingsPart";
import { damaged, FileTrouble } from "../trouble";
import { type CellsReading, type FileCellModel, readCells, type ShownResult } from "./cells";
import { type Opening, sheetId } from "./context";
import { drawingsOf } from "./drawings";
import { Findings } from "./findings";
import { findLostParts } from "./lostParts";
import { readFreeze, readMeasures } from "./measures";
import { readNames } from "./names";
import { readPage } from "./page";
import { readPictures } from "./pictures";
import { readRules } from "./rules";
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
  readonly cells: number;
  readonly formulas: number;
  /** What does not come along, a line each. */
  readonly lost: readonly string[];
  /** What comes along otherwise than a person may expect, a line each. */
  readonly notes: readonly string[];
  /** What the formulas showed in the file. */
  readonly shown: readonly ShownResult[];
}

/** The id that the page's workbook has, and its pictures name. */
const unitId = "practice-1";

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
  const dressed = dress(opening, styles, styleModels, models);
  const reading: CellsReading = { formats: styles.formats, styleIds: dressed.ids, shown: [], cells: 0, formulas: 0 };
  const parts = await Promise.all(
    book.sheets.map((sheet, place) => readSheet(opening, reading, sheet, place, models[place] ?? [])),
  );
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
      custom: { tables: tablesOf(opening), settings: await readSettings(book.zip) },
    },
    sheets: book.sheets.length,
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
  try {
    await workbook.xlsx.load(file.buffer);
    // Its published types leave the rows of a sheet's model out.
    const models = workbook.worksheets.map((sheet) => {
      const { rows } = sheet.model as unknown as { rows: { cells: FileCellModel[] }[] };
      return rows.flatMap(({ cells }) => cells);
    });
    return [models.slice(0, -1), models.at(-1) ?? []];
  } catch (cause) {
    throw cause instanceof FileTrouble ? cause : damaged("its cells cannot be read");
  }
}

/** The grid's styles for those of the file, by their numbers; undefined for one that changes nothing. */
function dress(
  { library, colorOf, findings }: Opening,
  { formats }: MarkedStyles,
  styleModels: readonly FileCellModel[],
  models: readonly FileCellModel[][],
) {
  const used = new Set(models.flatMap((cells) => cells.map(({ style }) => styleNumber(style?.numFmt))));
  const ids: (string | undefined)[] = [];
  const styles: Record<string, IStyleData> = {};
  for (const model of styleModels) {
    const number = styleNumber(model.style?.numFmt);
    const style = (model.style ?? {}) as Partial<Style>;
    if (used.has(number)) noteLost(style, findings);
    const made = styleFromFile(library, style, formats[number] ?? "General", colorOf);
    if (Object.keys(made).length === 0) continue;
    ids[number] = `style-${number}`;
    styles[`style-${number}`] = made;
  }
  return { ids, styles };
}

function noteLost({ fill, alignment }: Partial<Style>, findings: Findings): void {
  const isPlain = !fill || (fill.type === "pattern" && (fill.pattern === "none" || fill.pattern === "solid"));
  if (!isPlain) findings.fact("patterns and shades of color in cells, which become one color each");
  if (alignment?.textRotation) findings.fact("turned text in cells, which stands upright here");
}

async function readSheet(
  opening: Opening,
  reading: CellsReading,
  sheet: SheetPart,
  place: number,
  models: readonly FileCellModel[],
) {
  const id = sheetId(place);
  const { book, findings } = opening;
  const measures = readMeasures(sheet.xml, (number) => reading.styleIds[number]);
  const pictures = await readPictures(book.zip, sheet, measures, findings);
  const { drawings, words } = drawingsOf(pictures, unitId, id);
  const { shadings, lists } = readRules(opening, sheet, id);
  const cellData = readCells(opening, reading, { id, name: sheet.name }, models);
  const mergeData = [...elements(firstElement(sheet.xml, "mergeCells")?.inner ?? "", "mergeCell")].flatMap(
    ({ attributes }) => {
      const area = rectangleOf(attributes.ref ?? "");
      return area ? [toRange({ sheetId: id, ...area })] : [];
    },
  );
  const page = readPage(book, sheet, id);
  const tab = opening.colorOf(tabColor(sheet.xml));
  const lastRow = Object.keys(cellData).reduce((most, row) => Math.max(most, Number(row)), 0);
  const lastColumn = models.reduce((most, { address }) => Math.max(most, rectangleOf(address)?.column ?? 0), 0);
  const data: Partial<IWorksheetData> = {
    id,
    name: sheet.name,
    cellData,
    mergeData,
    columnData: measures.columns,
    rowData: measures.rows,
    defaultColumnWidth: measures.plainWidth,
    defaultRowHeight: measures.plainHeight,
    rowCount: Math.max(newSheet.rowCount, lastRow + margin.rows),
    columnCount: Math.max(newSheet.columnCount, lastColumn + margin.columns),
    freeze: readFreeze(sheet.xml),
    hidden: sheet.hidden ? 1 : 0,
    showGridlines: firstElement(sheet.xml, "sheetView")?.attributes.showGridLines === "0" ? 0 : 1,
    ...(tab && { tabColor: tab }),
    custom: { pictures: words, ...(page && { page }) },
  };
  return { data, drawings, shadings, lists };
}

/** Room to type on, below and beside what the file holds. */
const margin = { rows: 50, columns: 5 } as const;

function tabColor(xml: string) {
  const { rgb, theme, tint } = firstElement(xml, "tabColor")?.attributes ?? {};
  if (rgb === undefined && theme === undefined) return undefined;
  return {
    ...(rgb !== undefined && { argb: rgb }),
    ...(theme !== undefined && { theme: Number(theme) }),
    ...(tint !== undefined && { tint: Number(tint) }),
  };
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
