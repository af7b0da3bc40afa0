import type { CustomData } from "@univerjs/core";
import type { OpenGrid } from "./library";
import type { CellsChanged, PageSetup, PagesPort, WatchPort } from "./port";
import { sheetOf } from "./sheetOf";
import { shiftedArea } from "./shift";

/** What a sheet has that no one has set up: the host's own "normal" margins, 0.75, 0.7 and 0.3 in, from memory. */
const plain: PageSetup = {
  orientation: "Portrait",
  paperSize: "Letter",
  zoom: { scale: 100 },
  margins: { top: 54, bottom: 54, left: 50.4, right: 50.4, header: 21.6, footer: 21.6 },
  texts: { leftHeader: "", centerHeader: "", rightHeader: "", leftFooter: "", centerFooter: "", rightFooter: "" },
  breaksAbove: [],
};

/** How sheets are printed. The grid prints nothing; this is kept with each sheet, for files that are made of it. */
export class GridPages implements PagesPort {
  constructor(
    private readonly grid: OpenGrid,
    private readonly watch: Pick<WatchPort, "cells"> & { tellAnything(): void },
  ) {
    watch.cells((change) => {
      if (change.kind !== "edited" && this.kept(change.area.sheetId)) this.shift(change);
    });
  }

  private kept(sheetId: string): PageSetup | undefined {
    const kept = sheetOf(this.grid, sheetId).getCustomMetadata()?.page;
    return kept as PageSetup | undefined;
  }

  get(sheetId: string): PageSetup {
    return this.kept(sheetId) ?? plain;
  }

  set(sheetId: string, page: PageSetup): void {
    const sheet = sheetOf(this.grid, sheetId);
    const custom: CustomData = { ...sheet.getCustomMetadata(), page };
    sheet.setCustomMetadata(custom);
    this.watch.tellAnything();
  }

  private shift(change: CellsChanged): void {
    const { sheetId } = change.area;
    const { printArea, titleRows, breaksAbove, ...rest } = this.get(sheetId);
    const rowsNow = (row: number, rowCount: number) =>
      shiftedArea({ sheetId, row, rowCount, column: 0, columnCount: 1 }, change);
    const area = printArea && shiftedArea(printArea, change);
    const titles = titleRows && change.kind.startsWith("rows") ? rowsNow(titleRows.row, titleRows.rowCount) : titleRows;
    const breaks = change.kind.startsWith("rows")
      ? breaksAbove.flatMap((row) => rowsNow(row, 1)?.row ?? [])
      : breaksAbove;
    this.set(sheetId, {
      ...rest,
      breaksAbove: breaks,
      ...(area && { printArea: area }),
      ...(titles && { titleRows: { row: titles.row, rowCount: titles.rowCount } }),
    });
  }
}
