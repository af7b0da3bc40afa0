import type { IWorksheetData } from "@univerjs/core";
import { addressOf } from "../../../xlsx/addresses";
import { digitPixels } from "../../../xlsx/style";
import type { NewSheet } from "../../../xlsx/write/sheet";
import { fromRange } from "../../grid/geometry";
import { rowGroupsIn } from "../../grid/groups";
import { pixelsToPoints } from "../../grid/lengths";
import type { GridLibrary } from "../../grid/library";
import type { PageSetup } from "../../grid/port";
import type { Saving } from "../context";
import { withGroups } from "../groups";
import { pageToFile } from "../page";
import { styleToFile } from "../styles";
import { cellsToFile, numbered } from "./cells";
import { picturesToFile } from "./pictures";
import { listsToFile, shadingsToFile } from "./rules";

/** A sheet for the file, without its tables. */
export function sheetToFile(saving: Saving, id: string, data: Partial<IWorksheetData>): NewSheet {
  const { mergeData = [], freeze, defaultColumnWidth = 88, defaultRowHeight = 20 } = data;
  const tab = /^#([\da-f]{6})$/i.exec(data.tabColor ?? "")?.[1];
  const page = pageOf(data);
  return {
    name: data.name ?? "",
    hidden: data.hidden === 1,
    ...(tab && { tabColor: `FF${tab.toUpperCase()}` }),
    hidesGridLines: data.showGridlines === 0,
    frozen: { rows: Math.max(0, freeze?.ySplit ?? 0), columns: Math.max(0, freeze?.xSplit ?? 0) },
    columnWidth: defaultColumnWidth / digitPixels,
    rowHeight: pixelsToPoints(defaultRowHeight),
    columns: columnsOf(saving, data),
    rows: withGroups(rowsOf(saving, data), rowGroupsIn(data.custom)),
    cells: cellsToFile(saving, id),
    merged: mergeData.map((range) => addressOf(fromRange("", range))),
    shadings: shadingsToFile(saving, id),
    lists: listsToFile(saving, id),
    ...(page && { page: pageToFile(page) }),
    pictures: picturesToFile(saving, id, data),
  };
}

/** How a sheet is printed, if someone set that up. */
export function pageOf(data: Partial<IWorksheetData>): PageSetup | undefined {
  return data.custom?.page as PageSetup | undefined;
}

function columnsOf({ grid, kept }: Saving, { columnData }: Partial<IWorksheetData>): NonNullable<NewSheet["columns"]> {
  return new Map(
    numbered(columnData).map(([place, { w, hd, s }]) => [
      place,
      {
        ...(w !== undefined && { width: w / digitPixels }),
        hidden: hd === 1,
        ...(s && { style: styleOf(grid.library, kept.styles, s) }),
      },
    ]),
  );
}

function rowsOf({ grid, kept }: Saving, { rowData }: Partial<IWorksheetData>): NonNullable<NewSheet["rows"]> {
  return new Map(
    numbered(rowData).map(([place, { h, ia, ah, hd, s }]) => [
      place,
      {
        // A height that fits the text is left to the program that opens the file.
        ...(h !== undefined && (ia === 0 || ah === undefined) && { height: pixelsToPoints(h) }),
        hidden: hd === 1,
        ...(s && { style: styleOf(grid.library, kept.styles, s) }),
      },
    ]),
  );
}

function styleOf(library: GridLibrary, styles: Saving["kept"]["styles"], style: object | string) {
  const found = typeof style === "string" ? styles[style] : style;
  return styleToFile(library, found ?? {}, false);
}
