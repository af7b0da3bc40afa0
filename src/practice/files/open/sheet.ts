import type { IWorksheetData } from "@univerjs/core";
import { toRange } from "../../grid/geometry";
import { newSheet } from "../../grid/practiceOffice";
import { rectangleOf } from "../formula/cellPlace";
import type { SheetPart } from "../package/bookParts";
import { elements, firstElement } from "../package/xml";
import { type CellsReading, type FileCellModel, readCells } from "./cells";
import { type Opening, sheetId, unitId } from "./context";
import { drawingsOf } from "./drawings";
import { readFreeze, readMeasures } from "./measures";
import { readPage } from "./page";
import { readPictures } from "./pictures";
import { readRules } from "./rules";

/** One sheet as the grid keeps it, and what it keeps of it elsewhere. */
export interface ReadSheet {
  readonly data: Partial<IWorksheetData>;
  readonly drawings: object;
  readonly shadings: object[];
  readonly lists: object[];
}

export async function readSheet(
  opening: Opening,
  reading: CellsReading,
  sheet: SheetPart,
  place: number,
  models: readonly FileCellModel[],
): Promise<ReadSheet> {
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
