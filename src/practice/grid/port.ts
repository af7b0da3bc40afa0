/**
 * What the stand-in host asks of a grid. The host's objects know only these words, so the same host runs on the
 * grid in the browser and on its engine alone in Node.
 */

import type { LooksPort, RulesPort } from "./portLooks";
import type { GroupsPort, PagesPort, TablesPort } from "./portPages";

export type * from "./portLooks";
export type * from "./portPages";

/** A rectangle of cells on one sheet; rows and columns are counted from 0. */
export interface Area {
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
  readonly rowCount: number;
  readonly columnCount: number;
}

export type CellValue = string | number | boolean;

/** What a cell holds. A blank cell holds "". */
export interface CellContent {
  readonly kind: "empty" | "text" | "number" | "truth" | "error";
  readonly value: CellValue;
  /** With its "=", only where the cell itself carries a formula. */
  readonly formula: string | undefined;
  /** The formula shows an error that it didn't show in the file it came from: the grid can't work it out. */
  readonly isBeyond?: true;
}

export interface SheetFacts {
  readonly id: string;
  readonly name: string;
  readonly hidden: boolean;
}

export interface SheetsPort {
  /** In the order of their tabs. */
  list(): SheetFacts[];
  activeId(): string;
  activate(id: string): void;
  add(name: string): string;
  remove(id: string): void;
  rename(id: string, name: string): void;
  /** @param position among all sheets, hidden ones included; 0 is the first. */
  move(id: string, position: number): void;
  hide(id: string, hidden: boolean): void;
  freezeRows(id: string, count: number): void;
  /** Inserts blank rows before a row, as a person does. */
  insertRows(id: string, row: number, count: number): void;
  deleteRows(id: string, row: number, count: number): void;
}

/** What goes into a cell: undefined leaves it alone, "" empties it, text with "=" is a formula. */
export type CellInput = CellValue | undefined;

export type CopyPart = "all" | "formulas" | "values" | "formats";

export interface CellsPort {
  read(area: Area): CellContent[][];
  /** As a person sees it, by the cell's number format. */
  text(area: Area): string[][];
  /** `input` has the shape of `area`; text is taken as if it had been typed. */
  write(area: Area, input: CellInput[][]): void;
  clear(area: Area, part: "all" | "contents" | "formats"): void;
  copy(from: Area, to: Area, part: CopyPart): void;
  /** The smallest rectangle round everything, or nothing on an empty sheet. */
  used(sheetId: string, valuesOnly: boolean): Area | undefined;
  merge(area: Area): void;
  unmerge(area: Area): void;
  merged(sheetId: string): Area[];
  /** Notes that a formula gave a result in the file it came from, and gives an error only here. */
  noteBeyond(sheetId: string, row: number, column: number): void;
  /** What a function said about the error that is in this cell. */
  errorMessage(sheetId: string, row: number, column: number): string | undefined;
}

/** A name for cells or for a formula, which has its "=". */
export interface DefinedName {
  readonly name: string;
  readonly formula: string;
  readonly scope: "Workbook" | "Worksheet";
}

export interface NamesPort {
  list(): DefinedName[];
  /** In any case of its letters. */
  find(name: string): DefinedName | undefined;
  /** `formula` has its "=". */
  add(name: string, formula: string): void;
  change(name: string, formula: string): void;
  remove(name: string): void;
}

/** A picture over the cells; lengths in points from the sheet's corner. */
export interface Picture {
  readonly id: string;
  readonly name: string;
  /** What it shows, for those who cannot see it. */
  readonly altText: string;
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

export interface PicturesPort {
  list(sheetId: string): Picture[];
  /** Puts a picture at the sheet's corner; `dataUrl` holds a PNG. Returns its id. */
  add(sheetId: string, dataUrl: string, size: Pick<Picture, "width" | "height">): Promise<string>;
  update(sheetId: string, id: string, change: Partial<Omit<Picture, "id">>): Promise<void>;
  remove(sheetId: string, id: string): void;
}

export interface SelectionPort {
  /** What is selected on the sheet that is in front. */
  get(): Area;
  set(area: Area): void;
}

/** Small named values kept with the workbook; each must survive JSON. */
export interface KeptPort {
  get(key: string): unknown;
  keys(): string[];
  set(key: string, value: unknown): void;
  remove(key: string): void;
}

export interface CellsChanged {
  readonly kind: "edited" | "rowsInserted" | "rowsDeleted" | "columnsInserted" | "columnsDeleted";
  readonly area: Area;
  /** Whether the host's API made the change, and not a person. */
  readonly byHost: boolean;
}

export interface Stopper {
  stop(): void;
}

export interface WatchPort {
  selection(listener: () => void): Stopper;
  cells(listener: (change: CellsChanged) => void): Stopper;
  /** Rows or columns of a sheet came, went, or changed places. */
  moved(listener: (sheetId: string) => void): Stopper;
  /** Formulas have been worked out again. */
  calculated(listener: () => void): Stopper;
  /** Anything that should be kept has changed. */
  anything(listener: () => void): Stopper;
}

export interface GridPort {
  readonly sheets: SheetsPort;
  readonly cells: CellsPort;
  readonly looks: LooksPort;
  readonly rules: RulesPort;
  readonly names: NamesPort;
  readonly pictures: PicturesPort;
  readonly tables: TablesPort;
  readonly pages: PagesPort;
  readonly groups: GroupsPort;
  readonly selection: SelectionPort;
  readonly kept: KeptPort;
  readonly watch: WatchPort;
  /** Runs what the host's API asks for, so that its changes can be told from a person's. */
  asHost(work: () => void | Promise<void>): Promise<void>;
  /** Resolves once every formula shows its result. */
  settled(): Promise<void>;
  recalculate(): Promise<void>;
  /** Whether a person is typing into a cell just now. */
  isEditing(): boolean;
}
