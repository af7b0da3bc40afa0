import type { CustomData } from "@univerjs/core";
import type { OpenGrid } from "./library";
import type { WatchPort } from "./port";
import { sheetOf } from "./sheetOf";

/**
 * Marks each sheet on which rows or columns came, went, or changed places. What of its file isn't shown here then isn't
 * where it belongs any more.
 */
export function markMoved(grid: OpenGrid, watch: Pick<WatchPort, "moved">): void {
  watch.moved((sheetId) => {
    const sheet = sheetOf(grid, sheetId);
    if (!hasMoved(sheet.getCustomMetadata())) sheet.setCustomMetadata({ ...sheet.getCustomMetadata(), moved: true });
  });
}

/** Whether rows or columns of a sheet moved, by what is kept with it. */
export function hasMoved(custom: CustomData | undefined): boolean {
  return custom?.moved === true;
}
