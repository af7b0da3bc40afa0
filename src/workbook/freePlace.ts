import type { Anchor, Area } from "../sheets/plan";

/** Rows and columns of a worksheet. */
export const SHEET_ROWS = 1_048_576;
export const SHEET_COLUMNS = 16_384;

/**
 * The free place nearest to a wanted one: straight below it or straight to its right, with a blank row and
 * column around it.
 *
 * @param taken areas that something stands in.
 * @param wanted the area that was wanted.
 * @returns its new top left cell, or undefined where the sheet has no room.
 */
export function nearestFreePlace(taken: readonly Area[], wanted: Area): Anchor | undefined {
  const below = firstFree(taken, wanted, (area, by) => ({ ...area, row: by.row + by.rows + 1 }));
  const right = firstFree(taken, wanted, (area, by) => ({ ...area, column: by.column + by.columns + 1 }));
  const fits = [below, right].filter(
    (area) => area.row + area.rows <= SHEET_ROWS && area.column + area.columns <= SHEET_COLUMNS,
  );
  const distance = (area: Area) => area.row - wanted.row + (area.column - wanted.column);
  const [nearest] = fits.sort((one, other) => distance(one) - distance(other));
  return nearest && { row: nearest.row, column: nearest.column };
}

/** Whether two areas overlap, or touch when `apart` cells must stay blank between them. */
export function overlap(one: Area, other: Area, apart = 0): boolean {
  return (
    one.row < other.row + other.rows + apart &&
    other.row < one.row + one.rows + apart &&
    one.column < other.column + other.columns + apart &&
    other.column < one.column + one.columns + apart
  );
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
 * The cells of a read range that hold something, as areas one row high: runs of filled cells side by side.
 *
 * @param formulas what was read; "" is a blank cell.
 * @param at where the read range begins.
 */
export function filledAreas(formulas: readonly (readonly unknown[])[], at: Anchor): Area[] {
  const areas: Area[] = [];
  formulas.forEach((cells, row) => {
    let start = -1;
    for (let column = 0; column <= cells.length; column += 1) {
      const filled = column < cells.length && cells[column] !== "";
      if (filled && start < 0) start = column;
      if (!filled && start >= 0) {
        areas.push({ row: at.row + row, column: at.column + start, rows: 1, columns: column - start });
        start = -1;
      }
    }
  });
  return areas;
}
