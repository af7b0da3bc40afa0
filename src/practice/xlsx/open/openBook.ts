import type { IWorkbookData, IWorksheetData } from "@univerjs/core";
import { colorReader } from "../../../xlsx/colors";
import { damaged, FileRefusal } from "../../../xlsx/limits";
import { type BookParts, bookSteps, type SheetPart } from "../../../xlsx/read/bookParts";
import { openPackage, readSettings } from "../../../xlsx/read/package";
import { readStyles } from "../../../xlsx/read/styles";
import { allAtOnce, partOf, type Steps } from "../../../xlsx/steps";
import type { FileStyle } from "../../../xlsx/style";
import type { GridLibrary } from "../../grid/library";
import type { SheetTable } from "../../grid/port";
import { Findings, type Opening, sheetId, unitId } from "../context";
import type { FunctionNames } from "../formulas";
import { styleFromFile } from "../styles";
import type { FileTable } from "../tableReferences";
import type { CellsReading, ShownResult } from "./cells";
import { namesOfSeveral, readNames, readTables } from "./names";
import { type ReadSheet, readSheet } from "./sheet";
import { findInBook, findInSheet } from "./unseenParts";

/** The grid's file of a workbook, as far as a file says it. */
export type GridBook = Pick<IWorkbookData, "id" | "name" | "sheetOrder" | "styles"> &
  Partial<Pick<IWorkbookData, "resources" | "custom">> & {
    readonly sheets: Readonly<Record<string, Partial<IWorksheetData>>>;
  };

/** A file that was read, with what else is needed to save into a copy of it. */
export interface OpenedFile extends OpenedBook {
  readonly parts: BookParts;
  readonly tables: readonly FileTable[];
  /** What of each sheet isn't shown here, and is gone where the sheet has to be written anew. */
  readonly unseenOn: readonly Findings[];
}

/** A file that was read, and what to say before it takes the place of the workbook. */
export interface OpenedBook {
  readonly book: GridBook;
  readonly sheets: number;
  /** The id of the sheet that is in front. */
  readonly front: string;
  readonly cells: number;
  readonly formulas: number;
  /** What isn't shown here, and stays in the file, a line each. */
  readonly unseen: readonly string[];
  /** What no copy of the file will have, a line each. */
  readonly lost: readonly string[];
  /** What may look different from what a person expects, a line each. */
  readonly notes: readonly string[];
  /** What the formulas showed in the file. */
  readonly shown: readonly ShownResult[];
}

/**
 * Reads an .xlsx file; the workbook that is open is not touched.
 *
 * @param name what the workbook is called from now on.
 * @param functions the add-in's functions, which have other names in files.
 * @throws FileRefusal in words where the file cannot be opened: it is no workbook, locked, damaged or too large.
 */
export function openBook(library: GridLibrary, bytes: Uint8Array, name: string, functions: FunctionNames): OpenedFile {
  return allAtOnce(openingSteps(library, bytes, name, functions));
}

/** Reads an .xlsx file in steps, as {@link openBook} does at once. */
export function* openingSteps(
  library: GridLibrary,
  bytes: Uint8Array,
  name: string,
  functions: FunctionNames,
): Steps<OpenedFile> {
  try {
    return yield* read(library, bytes, name, functions);
  } catch (cause) {
    throw cause instanceof FileRefusal ? cause : damaged("its parts don't fit together", cause);
  }
}

function* read(library: GridLibrary, bytes: Uint8Array, name: string, functions: FunctionNames): Steps<OpenedFile> {
  const book = yield* partOf(bookSteps(openPackage(bytes)), 0, PARTS_SHARE);
  refuseTwins(book);
  const [unseen, lost] = [new Findings(), new Findings()];
  const opening: Opening = {
    library,
    functions,
    book,
    findings: unseen,
    tables: readTables(book),
    isSeveral: namesOfSeveral(book),
    colorOf: colorReader(book.theme),
  };
  findInBook(book, unseen, lost);
  const { cells, rules } = readStyles(book.styles);
  const styles = cells.map((style) => styleFromFile(library, style, opening.colorOf));
  const overColumns: Record<string, object> = {};
  const reading: CellsReading = {
    formats: cells.map(({ numFmt = "General" }) => numFmt),
    styleIds: styles.map((style, number) => (isPlain(style) ? undefined : styleId(number))),
    styleOver(number, column) {
      const id = `${styleId(number)}-over-${column}`;
      // What the column's look has and the cell's has not is taken back, one by one.
      const gone = Object.fromEntries(Object.keys(styles[column] ?? {}).map((key) => [key, null]));
      overColumns[id] ??= { ...gone, ...styles[number] };
      return id;
    },
    shown: [],
    cells: 0,
    formulas: 0,
    work: 0,
  };
  const unseenOn = book.sheets.map(() => new Findings());
  const parts: ReadSheet[] = [];
  for (const [place, sheet] of book.sheets.entries()) {
    const findings = unseenOn[place] ?? unseen;
    findInSheet(book, sheet, findings);
    noteLooks(sheet, cells, findings);
    const steps = readSheet({ ...opening, findings }, reading, sheet, place, rules);
    const shareAt = (number: number) => PARTS_SHARE + (number / book.sheets.length) * (1 - PARTS_SHARE);
    parts.push(yield* partOf(steps, shareAt(place), shareAt(place + 1)));
  }
  for (const findings of unseenOn) unseen.add(findings);
  const settings = readSettings(book.zip);
  if (!settings) unseen.fact("add-in data, which is damaged");
  const names = JSON.stringify(readNames(opening));
  return {
    book: {
      id: unitId,
      name,
      sheetOrder: book.sheets.map((_, place) => sheetId(place)),
      sheets: Object.fromEntries(parts.map(({ data }, place) => [sheetId(place), data])),
      styles: {
        ...overColumns,
        ...Object.fromEntries(
          styles.flatMap((style, number) => (isPlain(style) ? [] : [[styleId(number), style] as const])),
        ),
      },
      resources: [
        { name: "SHEET_DRAWING_PLUGIN", data: bySheet(parts.map(({ drawings }) => drawings)) },
        { name: "SHEET_CONDITIONAL_FORMATTING_PLUGIN", data: bySheet(parts.map(({ shadings }) => shadings)) },
        { name: "SHEET_DATA_VALIDATION_PLUGIN", data: bySheet(parts.map(({ lists }) => lists)) },
        { name: "SHEET_DEFINED_NAME_PLUGIN", data: names },
      ],
      custom: { tables: tablesOf(opening), settings: settings ?? {} },
    },
    sheets: book.sheets.length,
    front: sheetId(placeOf(book.sheets, book.sheetAt[book.front])),
    cells: reading.cells,
    formulas: reading.formulas,
    unseen: unseen.lines(),
    lost: lost.lines(),
    notes: notesOf(book),
    shown: reading.shown,
    parts: book,
    tables: opening.tables,
    unseenOn,
  };
}

/** About how much of the work it is to take the file apart; measured. */
const PARTS_SHARE = 0.5;

function refuseTwins({ sheets }: BookParts): void {
  const seen = new Set<string>();
  for (const { name } of sheets) {
    if (seen.has(name.toLowerCase())) throw damaged(`it has two sheets named “${name}”`);
    seen.add(name.toLowerCase());
  }
}

function notesOf(book: BookParts): string[] {
  const hidden = book.sheets.filter((sheet) => sheet.hidden).map(({ name }) => `“${name}”`);
  return [
    ...(hidden.length > 0 ? [`Hidden in the file, and hidden here: ${hidden.join(", ")}`] : []),
    ...(book.startsIn1904 ? ["Dates now count from 1900 instead of 1904; they show the same days"] : []),
  ];
}

const styleId = (number: number) => `style-${number}`;
const isPlain = (style: object) => Object.keys(style).length === 0;

/** Notes what of the looks that cells have isn't shown here. */
function noteLooks(sheet: SheetPart, styles: readonly FileStyle[], findings: Findings): void {
  for (const number of new Set(sheet.cells.map(({ style }) => style))) {
    const { fill, alignment } = styles[number] ?? {};
    if (fill && fill.pattern !== "none" && fill.pattern !== "solid")
      findings.fact("patterns and gradients in cells, shown as one color each");
    if (alignment?.textRotation) findings.fact("rotated text in cells, shown upright");
  }
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

/** The index of a sheet among those that are opened; 0 if it isn't one of them, such as a chart sheet. */
function placeOf<T>(sheets: readonly T[], sheet: T | undefined): number {
  return sheet === undefined ? 0 : Math.max(0, sheets.indexOf(sheet));
}
