import { writeAddress } from "../grid/a1";
import type { GridPort } from "../grid/port";
import { element } from "./element";

/** Shows what a function said about the error in the selected cell, as the host does. */
export function showReasons(grid: GridPort): void {
  const line = element("practice-reason");
  const show = () => {
    const { sheetId, row, column } = grid.selection.get();
    const message = grid.cells.errorMessage(sheetId, row, column);
    line.hidden = message === undefined;
    line.textContent =
      message === undefined
        ? ""
        : `${writeAddress(undefined, { row, column, rowCount: 1, columnCount: 1 })}: ${message}`;
  };
  grid.watch.selection(show);
  grid.watch.calculated(show);
}
