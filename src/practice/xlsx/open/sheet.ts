import type { IColumnData, IFreeze, IRowData, IWorksheetData } from "@univerjs/core";
import { SHEET_COLUMNS, SHEET_ROWS } from "../../../spreadsheet/areas";
import { type Rectangle, rectangleOf } from "../../../xlsx/addresses";
import { colorOf } from "../../../xlsx/colors";
import { mostMerged, widestRule } from "../../../xlsx/limits";
import type { SheetPart } from "../../../xlsx/read/bookParts";
import { attributesOf, elements, firstElement, isTrue, numberIn, type XmlElement } from "../../../xlsx/read/xml";
import type { Steps } from "../../../xlsx/steps";
import { digitPixels, type FileStyle } from "../../../xlsx/style";
import { toRange } from "../../grid/geometry";
import { pointsToPixels } from "../../grid/lengths";
import { newSheet } from "../../grid/practiceOffice";
import { type Opening, sheetId, unitId } from "../context";
import { groupsOf, levelOf } from "../groups";
import { readPage } from "../page";
import { type CellsReading, readCells } from "./cells";
import { drawingsOf, readPictures } from "./pictures";
import { readRules } from "./rules";

/** One sheet as the grid keeps it, and what it keeps of it elsewhere. */
export interface ReadSheet {
  readonly data: Partial<IWorksheetData>;
  readonly drawings: object;
  readonly shadings: object[];
  readonly lists: object[];
}

/** @param ruleStyles the styles that the file has for rules, by their numbers. */
export function* readSheet(
  opening: Opening,
  reading: CellsReading,
  sheet: SheetPart,
  place: number,
  ruleStyles: readonly FileStyle[],
): Steps<ReadSheet> {
  const id = sheetId(place);
  const { book, findings } = opening;
  const measures = readMeasures(sheet, (number) => reading.styleIds[number]);
  const pictures = readPictures(book.zip, sheet, measures, findings);
  const { drawings, words } = drawingsOf(pictures, unitId, id);
  const lastColumn = sheet.cells.reduce((most, { column }) => Math.max(most, column), 0);
  const columnCount = Math.min(SHEET_COLUMNS, Math.max(newSheet.columnCount, lastColumn + margin.columns));
  const lastRow = sheet.cells.reduce((most, { row }) => Math.max(most, row), 0);
  const rowCount = Math.min(SHEET_ROWS, Math.max(newSheet.rowCount, lastRow + margin.rows));
  const narrowed = (area: Rectangle, isLarge = area.columnCount > widestRule): Rectangle => {
    if (!isLarge || area.column >= columnCount || area.row >= rowCount) return area;
    findings.count(
      "merged area or rule across the whole sheet, shown for the cells here",
      1,
      "merged areas or rules across the whole sheet, shown for the cells here",
    );
    return {
      ...area,
      columnCount: Math.min(area.columnCount, columnCount - area.column),
      ...(area.rowCount > rowCount && { rowCount: rowCount - area.row }),
    };
  };
  const { shadings, lists } = readRules(opening, ruleStyles, sheet, id, narrowed);
  const cellData = yield* readCells(
    opening,
    reading,
    { id, name: sheet.name, rows: lastRow + 1, columnStyles: measures.styles },
    sheet.cells,
  );
  const mergeData = [...elements(firstElement(sheet.xml, "mergeCells"), "mergeCell")].flatMap(({ attributes }) => {
    const area = rectangleOf(attributes.ref ?? "");
    // The grid takes merged cells one by one.
    return area ? [toRange({ sheetId: id, ...narrowed(area, area.rowCount * area.columnCount > mostMerged) })] : [];
  });
  const groups = groupsOf(sheet.rows.map(({ row, attributes }) => [row, levelOf(attributes)]));
  const page = readPage(book, sheet, id);
  const tab = opening.colorOf(colorOf(firstElement(sheet.xml, "tabColor")));
  const data: Partial<IWorksheetData> = {
    id,
    name: sheet.name,
    cellData,
    mergeData,
    columnData: measures.columns,
    rowData: measures.rows,
    defaultColumnWidth: measures.plainWidth,
    defaultRowHeight: measures.plainHeight,
    rowCount,
    columnCount,
    freeze: readFreeze(sheet.xml),
    hidden: sheet.hidden ? 1 : 0,
    showGridlines: attributesOf(sheet.xml, "sheetView").showGridLines === "0" ? 0 : 1,
    ...(tab && { tabColor: tab }),
    custom: { pictures: words, ...(page && { page }), ...(groups.length > 0 && { groups }) },
  };
  return { data, drawings, shadings, lists };
}

/** Room to type on, below and beside what the file holds. */
const margin = { rows: 50, columns: 5 } as const;

/** What columns are wide where a file says nothing, in digits with their padding; from memory. */
const plainWidth = 9.140625;
const plainRowPoints = 15;
/** The widest column, in digits, and the highest row, in points, that a file may have: ECMA-376 18.3.1, from memory. */
const widest = 255;
const highest = 409;
/** The grid's own numbers for no and yes. */
const [no, yes] = [0, 1] as const;

/** How wide columns and how high rows are, and what of them does not show; lengths in pixels. */
export interface Measures {
  readonly columns: Record<number, Partial<IColumnData>>;
  /** The numbers of the styles of columns that have one. */
  readonly styles: ReadonlyMap<number, number>;
  readonly rows: Record<number, Partial<IRowData>>;
  readonly plainWidth: number;
  readonly plainHeight: number;
}

/** @param styleId the id of a style by its number in the file. */
function readMeasures({ xml, rows: fileRows }: SheetPart, styleId: (number: number) => string | undefined): Measures {
  const format = attributesOf(xml, "sheetFormatPr");
  const columns: Record<number, Partial<IColumnData>> = {};
  const styles = new Map<number, number>();
  for (const { attributes } of elements(firstElement(xml, "cols"), "col")) {
    const { min = "1", max = min, width, hidden, style = "0" } = attributes;
    const s = Number(style) === 0 ? undefined : styleId(Number(style));
    const column: Partial<IColumnData> = {
      ...(width !== undefined && { w: Math.round(numberIn(width, plainWidth, 0, widest) * digitPixels) }),
      ...(isTrue(hidden) && { hd: yes }),
      ...(s !== undefined && { s }),
    };
    const last = numberIn(max, 0, 0, SHEET_COLUMNS);
    for (let at = numberIn(min, 1, 1, SHEET_COLUMNS); at <= last; at += 1) {
      columns[at - 1] = column;
      if (s !== undefined) styles.set(at - 1, Number(style));
    }
  }
  const rows: Record<number, Partial<IRowData>> = {};
  for (const { row, attributes } of fileRows) {
    const { ht, hidden, customHeight } = attributes;
    if (ht === undefined && !isTrue(hidden)) continue;
    rows[Math.min(row, SHEET_ROWS - 1)] = {
      ...(ht !== undefined && {
        h: pointsToPixels(numberIn(ht, plainRowPoints, 0, highest)),
        ia: isTrue(customHeight) ? no : yes,
      }),
      ...(isTrue(hidden) && { hd: yes }),
    };
  }
  return {
    columns,
    styles,
    rows,
    plainWidth: Math.round(numberIn(format.defaultColWidth, plainWidth, 1, widest) * digitPixels),
    plainHeight: pointsToPixels(numberIn(format.defaultRowHeight, plainRowPoints, 1, highest)),
  };
}

/** The rows and columns that stay in sight. */
function readFreeze(xml: XmlElement): IFreeze {
  const pane = attributesOf(xml, "pane");
  const isFrozen = pane.state === "frozen" || pane.state === "frozenSplit";
  const ySplit = isFrozen ? numberIn(pane.ySplit, 0, 0, SHEET_ROWS) : 0;
  const xSplit = isFrozen ? numberIn(pane.xSplit, 0, 0, SHEET_COLUMNS) : 0;
  return { ySplit, xSplit, startRow: ySplit > 0 ? ySplit : -1, startColumn: xSplit > 0 ? xSplit : -1 };
}
