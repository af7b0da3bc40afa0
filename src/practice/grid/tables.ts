import type { OpenGrid } from "./library";
import type { SheetTable, TablesPort, WatchPort } from "./port";
import { shiftedArea } from "./shift";

/** The host's tables. The grid has none; they are kept with the workbook, and go with their cells. */
export class GridTables implements TablesPort {
  constructor(
    private readonly grid: OpenGrid,
    private readonly watch: Pick<WatchPort, "cells"> & { tellAnything(): void },
  ) {
    watch.cells((change) => {
      if (change.kind === "edited" || !this.list().some(({ area }) => area.sheetId === change.area.sheetId)) return;
      this.replace(
        this.list().flatMap((table) => {
          const area = shiftedArea(table.area, change);
          return area ? [{ ...table, area }] : [];
        }),
      );
    });
  }

  list(): SheetTable[] {
    const tables = (this.grid.workbook.getCustomMetadata()?.tables ?? []) as SheetTable[];
    return tables.filter(({ area }) => this.grid.workbook.getSheetBySheetId(area.sheetId));
  }

  add(table: Omit<SheetTable, "id">): string {
    const id = String(1 + Math.max(0, ...this.list().map((one) => Number(one.id))));
    this.replace([...this.list(), { ...table, id }]);
    return id;
  }

  change(id: string, change: Partial<Omit<SheetTable, "id">>): void {
    this.replace(this.list().map((table) => (table.id === id ? { ...table, ...change } : table)));
  }

  remove(id: string): void {
    this.replace(this.list().filter((table) => table.id !== id));
  }

  private replace(tables: readonly SheetTable[]): void {
    this.grid.workbook.setCustomMetadata({ ...this.grid.workbook.getCustomMetadata(), tables });
    this.watch.tellAnything();
  }
}
