import type { GridPort, RowGroup } from "../grid/port";
import { element } from "./element";
import { sayInBar } from "./say";

/** Lets a person collapse the grouped rows of the sheet in front: the grid shows no buttons of its own beside them. */
export function offerRowGroups(grid: GridPort): void {
  const button = element("practice-groups");
  const sheetId = () => grid.sheets.activeId();
  const areaOf = ({ row, rowCount }: RowGroup) => ({ sheetId: sheetId(), row, rowCount, column: 0, columnCount: 1 });
  const isExpanded = () => grid.groups.list(sheetId()).some(({ row }) => !grid.looks.rowHidden(sheetId(), row));
  const show = () => {
    button.hidden = grid.groups.list(sheetId()).length === 0;
    button.textContent = isExpanded() ? "Collapse rows" : "Expand rows";
  };
  button.addEventListener("click", () => {
    const collapse = isExpanded();
    const groups = grid.groups.list(sheetId());
    for (const group of groups) grid.looks.setRowsHidden(areaOf(group), collapse);
    const rows = groups.map(({ row, rowCount }) => `${row + 1}–${row + rowCount}`).join(", ");
    sayInBar(collapse ? `Rows ${rows} are collapsed.` : `Rows ${rows} are expanded.`);
    show();
  });
  grid.watch.selection(show);
  grid.watch.anything(show);
  show();
}
