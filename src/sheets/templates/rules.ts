import type { Area } from "../../spreadsheet/areas";

/** Lists and rules of cells, as they were read from a sheet. */
export interface RegionRules {
  /** Lists to choose from. The source is what the host tells: names with commas, or a reference with "=". */
  readonly lists: readonly { readonly area: Area; readonly source: string }[];
  /** Cells that stand out while a formula holds, written for the first cell of the area. */
  readonly warnings: readonly { readonly area: Area; readonly formula: string }[];
  /** Rules of other kinds, which templates do not hold. */
  readonly others: number;
}
