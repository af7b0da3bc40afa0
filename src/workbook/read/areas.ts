import { type Anchor, type Area, isOnSheet, overlap } from "../../spreadsheet/areas";

/**
 * The free place nearest to a wanted one: straight below it or straight to its right, with a blank row and
 * column around it.
 *
 * @param taken areas that are in use.
 * @param wanted the area that was wanted.
 * @returns its new top left cell, or undefined where the sheet has no room.
 */
export function nearestFreePlace(taken: readonly Area[], wanted: Area): Anchor | undefined {
  const below = firstFree(taken, wanted, (area, by) => ({ ...area, row: by.row + by.rows + 1 }));
  const right = firstFree(taken, wanted, (area, by) => ({ ...area, column: by.column + by.columns + 1 }));
  const fits = [below, right].filter(isOnSheet);
  const distance = (area: Area) => area.row - wanted.row + (area.column - wanted.column);
  const [nearest] = fits.sort((one, other) => distance(one) - distance(other));
  return nearest && { row: nearest.row, column: nearest.column };
}

function firstFree(taken: readonly Area[], wanted: Area, moveBehind: (area: Area, by: Area) => Area): Area {
  let area = wanted;
  for (;;) {
    const inTheWay = taken.find((other) => overlap(area, other, 1));
    if (!inTheWay) return area;
    area = moveBehind(area, inTheWay);
  }
}

/**
 * The cells of a read range that hold something, as few areas: runs of cells with contents side by side, joined with the
 * run right above where that is as wide.
 *
 * @param formulas what was read; "" is a blank cell.
 * @param at where the read range begins.
 */
export function filledAreas(formulas: readonly (readonly unknown[])[], at: Anchor): Area[] {
  const areas: Area[] = [];
  let above = new Map<number, number>();
  formulas.forEach((cells, row) => {
    const here = new Map<number, number>();
    for (const { column, columns } of filledRuns(cells, at.column)) {
      const index = above.get(column) ?? -1;
      const joined = areas[index];
      if (joined?.columns === columns) {
        areas[index] = { ...joined, rows: joined.rows + 1 };
        here.set(column, index);
      } else {
        here.set(column, areas.push({ row: at.row + row, column, rows: 1, columns }) - 1);
      }
    }
    above = here;
  });
  return areas;
}

function* filledRuns(cells: readonly unknown[], firstColumn: number): Generator<{ column: number; columns: number }> {
  let start = 0;
  while (start < cells.length) {
    let end = start;
    while (end < cells.length && cells[end] !== "") end += 1;
    if (end > start) yield { column: firstColumn + start, columns: end - start };
    start = end + 1;
  }
}

/** The first cell of a range whose place was loaded. */
export function anchorOf(range: Excel.Range): Anchor {
  return { row: range.rowIndex, column: range.columnIndex };
}

/** The area of a range whose place and size were loaded. */
export function areaOf(range: Excel.Range): Area {
  return { ...anchorOf(range), rows: range.rowCount, columns: range.columnCount };
}

/** Asks which part of a sheet is in use; readable after the request, and undefined for a blank sheet. */
export function queueUsed(worksheet: Excel.Worksheet, valuesOnly: boolean): () => Area | undefined {
  const used = worksheet.getUsedRangeOrNullObject(valuesOnly);
  used.load("rowIndex,columnIndex,rowCount,columnCount");
  return () => (used.isNullObject ? undefined : areaOf(used));
}

/** The cells of an area that is counted from the first cell of a range. */
export function rangeInside(range: Excel.Range, { row, column, rows, columns }: Area): Excel.Range {
  return range.getCell(row, column).getResizedRange(rows - 1, columns - 1);
}

/** The cells of an area of a sheet. */
export function rangeAt(worksheet: Excel.Worksheet, { row, column, rows, columns }: Area): Excel.Range {
  return worksheet.getRangeByIndexes(row, column, rows, columns);
}
