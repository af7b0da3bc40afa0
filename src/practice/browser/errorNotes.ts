import type { CellAlertManagerService } from "@univerjs/preset-sheets-core";
import type { Grid } from "../grid/grid";

/** The grid's own note at an error names only its kind; here the reason that the function gave takes its place. */
export function giveReasons(notes: CellAlertManagerService, grid: Grid): void {
  const show = notes.showAlert.bind(notes);
  notes.showAlert = (note) => {
    const { subUnitId, row, col } = note.location;
    const reason = grid.cells.errorMessage(subUnitId, row, col);
    show(reason === undefined ? note : { ...note, message: reason, width: 320 });
  };
}
