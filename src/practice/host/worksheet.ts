import { writeAddress } from "../grid/a1";
import type { CellsChanged } from "../grid/port";
import { areaAt, onSheet, wholeSheet } from "./areas";
import { BesideCellsCollection } from "./besideCells";
import type { Loadable } from "./clientObject";
import { refuse } from "./error";
import { EventHandlers } from "./events";
import { FreezePanes } from "./freezePanes";
import type { Members } from "./mirror";
import { HorizontalPageBreaks } from "./pageBreaks";
import { PageLayout } from "./pageLayout";
import { Placed } from "./placed";
import { WorksheetProtection } from "./protection";
import { Range } from "./range";
import type { RequestContext } from "./requestContext";
import { ShapeCollection } from "./shapes";
import { checkSheetName } from "./sheetName";
import { SheetTables } from "./tables";

type Carried = Members<
  Excel.Worksheet,
  | "activate"
  | "delete"
  | "getCell"
  | "getRange"
  | "getRangeByIndexes"
  | "getUsedRange"
  | "getUsedRangeOrNullObject"
  | "id"
  | "isNullObject"
  | "name"
  | "position"
  | "visibility"
>;

/** What the host tells of a change on a sheet. */
export interface WorksheetChange
  extends Pick<
    Excel.WorksheetChangedEventArgs,
    "address" | "changeType" | "source" | "triggerSource" | "type" | "worksheetId"
  > {}

const changeTypes = {
  edited: "RangeEdited",
  rowsInserted: "RowInserted",
  rowsDeleted: "RowDeleted",
  columnsInserted: "ColumnInserted",
  columnsDeleted: "ColumnDeleted",
} as const;

/** One sheet of the workbook; its place is its id. */
export class Worksheet extends Placed<string> implements Carried {
  readonly tables: SheetTables;
  readonly shapes: ShapeCollection;
  readonly charts: BesideCellsCollection;
  readonly comments: BesideCellsCollection;
  readonly protection: WorksheetProtection;
  readonly freezePanes: FreezePanes;
  readonly pageLayout: PageLayout;
  readonly horizontalPageBreaks: HorizontalPageBreaks;
  readonly onChanged: EventHandlers<WorksheetChange>;

  constructor(context: RequestContext, location: string, find: () => string | null, isFound = false) {
    super(context, "Worksheet", location, find, isFound);
    this.shapes = new ShapeCollection(context, () => this.facts().id);
    this.charts = new BesideCellsCollection(context, "Chart", () => context.session.chartedSheets.has(this.facts().id));
    this.comments = new BesideCellsCollection(context, "Comment", () =>
      context.session.commentedSheets.has(this.facts().id),
    );
    this.tables = new SheetTables(context, () => this.place);
    this.protection = new WorksheetProtection(context, () => this.place);
    this.freezePanes = new FreezePanes(context, () => this.place);
    this.pageLayout = new PageLayout(context, () => this.facts().id);
    this.horizontalPageBreaks = new HorizontalPageBreaks(context, () => this.facts().id);
    this.onChanged = new EventHandlers(context, "Worksheet.onChanged", (tell) => {
      const sheetId = this.place;
      return context.session.grid.watch.cells((change) => {
        if (change.area.sheetId === sheetId) tell(changeArgs(change));
      });
    });
  }

  private facts() {
    const sheets = this.context.session.grid.sheets.list();
    const position = sheets.findIndex(({ id }) => id === this.place);
    const sheet = sheets[position];
    if (!sheet) throw refuse("ItemNotFound");
    return { ...sheet, position };
  }

  protected loadable(): Loadable {
    return {
      properties: {
        id: () => this.facts().id,
        name: () => this.facts().name,
        position: () => this.facts().position,
        visibility: () => (this.facts().hidden ? "Hidden" : "Visible"),
      },
      children: {
        pageLayout: () => this.pageLayout,
        protection: () => this.protection,
        shapes: () => this.shapes,
        tables: () => this.tables,
      },
    };
  }

  get id(): string {
    return this.loadedValue("id");
  }

  get name(): string {
    return this.loadedValue("name");
  }

  set name(given: string) {
    this.assign("name", given, () => {
      this.context.session.checkStructure();
      checkSheetName(this.context.session, given, this.place);
      this.context.session.grid.sheets.rename(this.place, given);
    });
  }

  get position(): number {
    return this.loadedValue("position");
  }

  /** Moves the sheet among the others; 0 is the first place. */
  set position(given: number) {
    this.assign("position", given, () => {
      const { session } = this.context;
      session.checkStructure();
      const isPlace = Number.isInteger(given) && given >= 0 && given < session.grid.sheets.list().length;
      if (!isPlace) throw refuse("InvalidArgument");
      session.grid.sheets.move(this.place, given);
    });
  }

  get visibility(): Excel.Worksheet["visibility"] {
    return this.loadedValue("visibility");
  }

  set visibility(given: Excel.Worksheet["visibility"]) {
    this.assign("visibility", given, () => {
      this.context.session.checkStructure();
      this.context.session.grid.sheets.hide(this.place, given !== "Visible");
    });
  }

  /** Brings the sheet to the front. */
  activate(): void {
    this.act("activate", () => this.context.session.grid.sheets.activate(this.facts().id));
  }

  delete(): void {
    this.act("delete", () => {
      this.context.session.checkStructure();
      const visible = this.context.session.grid.sheets.list().filter(({ hidden }) => !hidden);
      if (visible.length === 1 && visible[0]?.id === this.place) throw refuse("GeneralException");
      this.context.session.grid.sheets.remove(this.facts().id);
    });
  }

  /** Cells by address or name; the whole sheet where none is given. */
  getRange(address?: string): Range {
    return new Range(this.context, "Worksheet.getRange", () => {
      const { id } = this.facts();
      return address === undefined ? wholeSheet(id) : areaAt(this.context.session, id, address);
    });
  }

  getRangeByIndexes(row: number, column: number, rowCount: number, columnCount: number): Range {
    return new Range(this.context, "Worksheet.getRangeByIndexes", () => {
      return onSheet({ sheetId: this.facts().id, row, column, rowCount, columnCount });
    });
  }

  getCell(row: number, column: number): Range {
    return new Range(this.context, "Worksheet.getCell", () => {
      return onSheet({ sheetId: this.facts().id, row, column, rowCount: 1, columnCount: 1 });
    });
  }

  /** What is used of the sheet; its first cell where nothing is. */
  getUsedRange(valuesOnly = false): Range {
    return new Range(this.context, "Worksheet.getUsedRange", () => {
      const sheetId = this.facts().id;
      const first = { sheetId, row: 0, column: 0, rowCount: 1, columnCount: 1 };
      return this.context.session.grid.cells.used(sheetId, valuesOnly) ?? first;
    });
  }

  getUsedRangeOrNullObject(valuesOnly = false): Range {
    return new Range(this.context, "Worksheet.getUsedRangeOrNullObject", () => {
      return this.context.session.grid.cells.used(this.facts().id, valuesOnly) ?? null;
    });
  }
}

/** A change of cells in the host's words. */
export function changeArgs({ kind, area, byHost }: CellsChanged): WorksheetChange {
  return {
    address: writeAddress(undefined, area),
    changeType: changeTypes[kind],
    source: "Local",
    triggerSource: byHost ? "ThisLocalAddin" : "Unknown",
    type: "WorksheetChanged",
    worksheetId: area.sheetId,
  };
}
