import type { IWorksheetData } from "@univerjs/core";
import type { Worksheet } from "exceljs";
import { pixelsToPoints } from "../../grid/lengths";
import type { GridLibrary } from "../../grid/library";
import { styleToFile } from "../look/toFile";
import { digitPixels } from "../open/measures";
import { numbered } from "./cells";
import type { Saving } from "./context";

/** Gives a sheet of the file its widths, heights, hidden rows and columns, frozen panes and tab. */
export function writeMeasures({ grid, kept }: Saving, data: Partial<IWorksheetData>, file: Worksheet): void {
  const { defaultColumnWidth = 88, defaultRowHeight = 20 } = data;
  file.properties.defaultColWidth = defaultColumnWidth / digitPixels;
  file.properties.defaultRowHeight = pixelsToPoints(defaultRowHeight);
  for (const [place, { w, hd, s }] of numbered(data.columnData)) {
    const column = file.getColumn(place + 1);
    column.width = (w ?? defaultColumnWidth) / digitPixels;
    if (hd === 1) column.hidden = true;
    if (s) column.style = styleOf(grid.library, kept.styles, s);
  }
  for (const [place, { h, ia, ah, hd, s }] of numbered(data.rowData)) {
    const row = file.getRow(place + 1);
    // A height that fits the text is left to the program that opens the file.
    if (h !== undefined && (ia === 0 || ah === undefined)) row.height = pixelsToPoints(h);
    if (hd === 1) row.hidden = true;
    if (s) Object.assign(row, { style: styleOf(grid.library, kept.styles, s) });
  }
  const { ySplit = 0, xSplit = 0 } = data.freeze ?? {};
  const showGridLines = data.showGridlines !== 0;
  file.views = [
    ySplit > 0 || xSplit > 0 ? { state: "frozen", ySplit, xSplit, showGridLines } : { state: "normal", showGridLines },
  ];
  const tab = /^#([\da-f]{6})$/i.exec(data.tabColor ?? "")?.[1];
  if (tab) file.properties.tabColor = { argb: `FF${tab.toUpperCase()}` };
  if (data.hidden === 1) file.state = "hidden";
}

function styleOf(library: GridLibrary, styles: Saving["kept"]["styles"], style: object | string) {
  const found = typeof style === "string" ? styles[style] : style;
  return styleToFile(library, found ?? {}, false);
}
