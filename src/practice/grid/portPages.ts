/** What the stand-in host keeps of a sheet for printing, of grouped rows, and of tables. The grid itself has none of them. */

import type { Area } from "./port";

/** How much of a sheet goes on a page: a share in percent, or so many pages across and down; undefined is as it comes. */
export interface PageZoom {
  readonly scale?: number;
  readonly horizontalFitToPages?: number;
  readonly verticalFitToPages?: number;
}

/** Distances from the edges of the paper, in points. */
export interface PageMargins {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
  readonly header: number;
  readonly footer: number;
}

export type PageTextPlace =
  | "leftHeader"
  | "centerHeader"
  | "rightHeader"
  | "leftFooter"
  | "centerFooter"
  | "rightFooter";

/** How a sheet is printed. */
export interface PageSetup {
  readonly orientation: "Portrait" | "Landscape";
  /** In the host's words: "Letter", "A4" and so on. */
  readonly paperSize: string;
  readonly zoom: PageZoom;
  readonly margins: PageMargins;
  /** Lines at the head and foot of each page, with the host's marks in them (`&P` is the page); "" for none. */
  readonly texts: Readonly<Record<PageTextPlace, string>>;
  /** What is printed; all that is used where left out. */
  readonly printArea?: Area;
  /** Rows that are repeated at the top of each page. */
  readonly titleRows?: { readonly row: number; readonly rowCount: number };
  /** Rows above which a new page begins, from the top. */
  readonly breaksAbove: readonly number[];
}

export interface PagesPort {
  get(sheetId: string): PageSetup;
  set(sheetId: string, setup: PageSetup): void;
}

/** Rows that are collapsed together. Groups may be inside one another. */
export interface RowGroup {
  readonly row: number;
  readonly rowCount: number;
}

export interface GroupsPort {
  list(sheetId: string): readonly RowGroup[];
  add(sheetId: string, group: RowGroup): void;
}

/** A table of the host: the grid draws none, and its cells look as they are dressed. */
export interface SheetTable {
  readonly id: string;
  readonly name: string;
  /** With its row of headings. */
  readonly area: Area;
  /** In the host's words, such as "TableStyleMedium2". */
  readonly style: string;
}

export interface TablesPort {
  list(): SheetTable[];
  /** Gives its id. */
  add(table: Omit<SheetTable, "id">): string;
  change(id: string, change: Partial<Omit<SheetTable, "id">>): void;
  remove(id: string): void;
}
