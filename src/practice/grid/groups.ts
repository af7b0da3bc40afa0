import type { CustomData } from "@univerjs/core";
import type { OpenGrid } from "./library";
import type { GroupsPort, RowGroup, WatchPort } from "./port";
import { sheetOf } from "./sheetOf";
import { shiftedArea } from "./shift";

/** Rows that can be collapsed together. The grid has no groups; they are kept with each sheet. */
export class GridGroups implements GroupsPort {
  constructor(
    private readonly grid: OpenGrid,
    private readonly watch: Pick<WatchPort, "cells"> & { tellAnything(): void },
  ) {
    watch.cells((change) => {
      if (!change.kind.startsWith("rows")) return;
      const { sheetId } = change.area;
      const before = this.list(sheetId);
      if (before.length === 0) return;
      const shifted = before.flatMap(({ row, rowCount }) => {
        const area = shiftedArea({ sheetId, row, rowCount, column: 0, columnCount: 1 }, change);
        return area ? [{ row: area.row, rowCount: area.rowCount }] : [];
      });
      this.set(sheetId, shifted);
    });
  }

  list(sheetId: string): readonly RowGroup[] {
    return rowGroupsIn(sheetOf(this.grid, sheetId).getCustomMetadata());
  }

  add(sheetId: string, group: RowGroup): void {
    this.set(sheetId, [...this.list(sheetId), group]);
  }

  private set(sheetId: string, groups: readonly RowGroup[]): void {
    const sheet = sheetOf(this.grid, sheetId);
    sheet.setCustomMetadata({ ...sheet.getCustomMetadata(), groups });
    this.watch.tellAnything();
  }
}

/** The groups of rows among what is kept with a sheet. */
export function rowGroupsIn(custom: CustomData | undefined): readonly RowGroup[] {
  return (custom?.groups as readonly RowGroup[] | undefined) ?? [];
}
