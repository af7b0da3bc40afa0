import type { ICellData, IStyleData, IWorkbookData, IWorksheetData } from "@univerjs/core";
import { readAddress } from "./a1";
import { writeCellData } from "./cellData";
import { eachCell } from "./geometry";
import { pointsToPixels } from "./lengths";
import type { GridLibrary } from "./library";
import type { CellLook } from "./port";
import { styleFrom } from "./styles";

/**
 * How a stretch of cells looks: `bold`, `italic`, `wrap`, `fill` and `fontColor` (HTML colors, such as #EEF3E6),
 * `horizontal`, `numberFormat` (in the spreadsheet's own notation, such as `#,##0.00`) and so on.
 */
export interface OfficeLook extends Partial<Readonly<CellLook>> {
  /** One cell or a range, such as `A1:H1`. */
  readonly range: string;
}

/** One sheet of the office that the practice workbook opens on. */
export interface OfficeSheet {
  readonly name: string;
  /** By address, such as `B2`: a number, a truth, text as it would be typed, or a formula with its "=". */
  readonly cells: Readonly<Record<string, string | number | boolean>>;
  /** By column letter, in points. */
  readonly columnWidths?: Readonly<Record<string, number>>;
  readonly looks?: readonly OfficeLook[];
  readonly frozenRows?: number;
}

/** The office that the practice workbook opens on: plain data, `practice-office.json` beside the page. */
export interface PracticeOffice {
  readonly sheets: readonly OfficeSheet[];
}

export const emptyOffice: PracticeOffice = { sheets: [{ name: "Sheet1", cells: {} }] };

/**
 * How large a new sheet is, and how high its rows are, in pixels; a sheet grows when something is written beyond. The
 * height is the host's own, 15 points.
 */
export const newSheet = { rowCount: 200, columnCount: 26, defaultRowHeight: 20 };

/**
 * The grid's own file for an office.
 *
 * @param id The workbook's id, different for each workbook that is opened.
 * @throws RangeError for an address in the office that is none.
 */
export function workbookOf(library: GridLibrary, office: PracticeOffice, id: string): Partial<IWorkbookData> {
  const sheets = office.sheets.map((sheet, place) => ({ ...sheetOf(library, sheet), id: `sheet-${place + 1}` }));
  return {
    id,
    name: "Practice",
    sheetOrder: sheets.map((sheet) => sheet.id),
    sheets: Object.fromEntries(sheets.map((sheet) => [sheet.id, sheet])),
  };
}

function sheetOf(library: GridLibrary, sheet: OfficeSheet): Partial<IWorksheetData> {
  const cellData: Record<number, Record<number, ICellData>> = {};
  const put = (row: number, column: number, data: ICellData) => {
    const before = cellData[row]?.[column];
    const style = { ...styleOf(before), ...styleOf(data) };
    const merged = { ...before, ...data, ...(Object.keys(style).length > 0 ? { s: style } : {}) };
    cellData[row] = { ...cellData[row], [column]: merged };
  };
  for (const [address, input] of Object.entries(sheet.cells)) {
    const { row, column } = rectangleOf(address);
    put(row, column, writeCellData(library, input, false));
  }
  for (const { range, ...look } of sheet.looks ?? []) {
    const s = styleFrom(library, look);
    eachCell({ sheetId: "", ...rectangleOf(range) }, (row, column) => put(row, column, { s }));
  }
  const columnData = Object.fromEntries(
    Object.entries(sheet.columnWidths ?? {}).map(([letters, points]) => {
      return [rectangleOf(`${letters}1`).column, { w: pointsToPixels(points) }];
    }),
  );
  const frozen = sheet.frozenRows ?? 0;
  const freeze = { startRow: frozen > 0 ? frozen : -1, startColumn: -1, ySplit: frozen, xSplit: 0 };
  return {
    name: sheet.name,
    cellData,
    columnData,
    freeze,
    ...newSheet,
    rowCount: Math.max(newSheet.rowCount, ...Object.keys(cellData).map((row) => Number(row) + 50)),
  };
}

function styleOf(cell: ICellData | undefined): IStyleData {
  return typeof cell?.s === "object" && cell.s !== null ? cell.s : {};
}

function rectangleOf(address: string) {
  const read = readAddress(address);
  if (!read) throw new RangeError(`The practice office names ${address}, which is no address.`);
  return read.rectangle;
}
