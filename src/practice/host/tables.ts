import type { SheetTable } from "../grid/port";
import { areaAt } from "./areas";
import type { Loadable } from "./clientObject";
import { Collection } from "./collection";
import { refuse } from "./error";
import type { Members } from "./mirror";
import { isNameAllowed } from "./nameRules";
import { Placed } from "./placed";
import { Range } from "./range";
import type { RequestContext } from "./requestContext";
import { makeHeadings } from "./tableHeadings";

type Carried = Members<
  Excel.Table,
  | "convertToRange"
  | "delete"
  | "getDataBodyRange"
  | "getHeaderRowRange"
  | "getRange"
  | "id"
  | "isNullObject"
  | "name"
  | "showHeaders"
  | "showTotals"
  | "style"
>;

/** A table; the practice workbook knows where it lies, and draws none. Its place is its id. */
export class Table extends Placed<string> implements Carried {
  constructor(context: RequestContext, location: string, find: () => string | null, isFound = false) {
    super(context, "Table", location, find, isFound);
  }

  private get tables() {
    return this.context.session.grid.tables;
  }

  private now(): SheetTable {
    const table = this.tables.list().find(({ id }) => id === this.place);
    if (!table) throw refuse("ItemNotFound");
    return table;
  }

  protected loadable(): Loadable {
    return {
      properties: {
        id: () => this.place,
        name: () => this.now().name,
        showHeaders: () => true,
        showTotals: () => false,
        style: () => this.now().style,
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
      const { session } = this.context;
      const { id, area } = this.now();
      session.checkWritable(area.sheetId);
      if (!isNameAllowed(given) || session.isNameTaken(given, id)) throw refuse("InvalidArgument");
      this.tables.change(id, { name: given });
    });
  }

  get showHeaders(): boolean {
    return this.loadedValue("showHeaders");
  }

  /** The tables of the practice workbook always have a heading row. */
  set showHeaders(given: boolean) {
    this.assign("showHeaders", given, () => {
      this.context.session.checkWritable(this.now().area.sheetId);
      if (!given) throw refuse("InvalidArgument", "Tables in the practice workbook always have a heading row.");
    });
  }

  get showTotals(): boolean {
    return this.loadedValue("showTotals");
  }

  /** The tables of the practice workbook never have a totals row. */
  set showTotals(given: boolean) {
    this.assign("showTotals", given, () => {
      this.context.session.checkWritable(this.now().area.sheetId);
      if (given) throw refuse("InvalidArgument", "Tables in the practice workbook can't have a totals row.");
    });
  }

  /** Kept, and not shown: the cells look as they are dressed. */
  get style(): string {
    return this.loadedValue("style");
  }

  set style(given: string) {
    this.assign("style", given, () => this.tables.change(this.now().id, { style: given }));
  }

  getRange(): Range {
    return new Range(this.context, "Table.getRange", () => this.now().area);
  }

  getHeaderRowRange(): Range {
    return new Range(this.context, "Table.getHeaderRowRange", () => ({ ...this.now().area, rowCount: 1 }));
  }

  getDataBodyRange(): Range {
    return new Range(this.context, "Table.getDataBodyRange", () => {
      const { area } = this.now();
      return { ...area, row: area.row + 1, rowCount: area.rowCount - 1 };
    });
  }

  /** The cells stay as they are. */
  convertToRange(): Range {
    const range = this.getRange();
    this.act("convertToRange", () => {
      this.context.session.checkWritable(this.now().area.sheetId);
      this.tables.remove(this.now().id);
    });
    return range;
  }

  /** Its cells are emptied, too. */
  delete(): void {
    this.act("delete", () => {
      const { id, area } = this.now();
      this.context.session.checkWritable(area.sheetId);
      this.context.session.grid.cells.clear(area, "all");
      this.tables.remove(id);
    });
  }
}

/** The tables of a range. */
export class TableScopedCollection
  extends Collection<Table>
  implements Members<Excel.TableScopedCollection, "getCount" | "getItem" | "getItemOrNullObject">
{
  constructor(
    context: RequestContext,
    private readonly list: () => SheetTable[],
    typeName = "TableScopedCollection",
  ) {
    super(context, typeName);
  }

  protected itemsNow(): Table[] {
    return this.list().map(({ id }) => new Table(this.context, `${this.typeName}.items`, () => id, true));
  }

  private find(key: string): string | null {
    return this.list().find(({ id, name }) => id === key || name.toLowerCase() === key.toLowerCase())?.id ?? null;
  }

  getItem(key: string): Table {
    return new Table(this.context, `${this.typeName}.getItem`, () => {
      const found = this.find(key);
      if (found === null) throw refuse("ItemNotFound");
      return found;
    });
  }

  /** By name or id. */
  getItemOrNullObject(key: string): Table {
    return new Table(this.context, `${this.typeName}.getItemOrNullObject`, () => this.find(key));
  }
}

/** The tables of a workbook or of a sheet; of all the collections here, only these know their count. */
export class TableCollection extends TableScopedCollection implements Members<Excel.TableCollection, "count"> {
  constructor(context: RequestContext, list: () => SheetTable[]) {
    super(context, list, "TableCollection");
  }

  protected override readPaths(paths: string[][]): void {
    const ofItems = paths.filter((path) => path.join("/") !== "count");
    if (paths.length === 0 || ofItems.length > 0) super.readPaths(ofItems);
    if (paths.length === 0 || ofItems.length < paths.length) this.keep("count", this.itemsNow().length);
  }

  get count(): number {
    return this.loadedValue("count");
  }
}

/** The host's own style for a new table. */
const usualStyle = "TableStyleMedium2";

/** The tables of a sheet, to which one can add. */
export class SheetTables extends TableCollection implements Members<Excel.TableCollection, "add"> {
  constructor(
    context: RequestContext,
    private readonly sheetId: () => string,
  ) {
    super(context, () => context.session.grid.tables.list().filter(({ area }) => area.sheetId === sheetId()));
  }

  /** Makes a table of the cells at an address of the sheet. */
  add(address: Range | string, hasHeaders: boolean): Table {
    const { session } = this.context;
    let made: string | null = null;
    this.accepted(address);
    this.act("add", () => {
      const given = typeof address === "string" ? areaAt(session, this.sheetId(), address) : address.place;
      // A table without a row of data is given one.
      const area = { ...given, rowCount: Math.max(2, given.rowCount) };
      session.checkWritable(area.sheetId);
      if (!hasHeaders)
        throw refuse("InvalidArgument", "The practice workbook makes tables of cells with headings only.");
      if (session.tablesIn(area).length > 0) throw refuse("InvalidArgument", "A table can't overlap another table.");
      makeHeadings(session.grid.cells, area);
      made = session.grid.tables.add({ name: freeTableName(session), area, style: usualStyle });
    });
    return new Table(this.context, "TableCollection.add", () => made);
  }
}

function freeTableName(session: RequestContext["session"]): string {
  for (let number = 1; ; number += 1) if (!session.isNameTaken(`Table${number}`)) return `Table${number}`;
}
