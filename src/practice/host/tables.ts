import { areaAt } from "./areas";
import type { Loadable } from "./clientObject";
import { Collection } from "./collection";
import { refuse } from "./error";
import type { Members } from "./mirror";
import { Placed } from "./placed";
import { Range } from "./range";
import type { RequestContext } from "./requestContext";
import type { HostTable } from "./session";

/** A table; the practice workbook knows where it lies, and draws none. */
export class Table
  extends Placed<HostTable>
  implements Members<Excel.Table, "delete" | "getRange" | "isNullObject" | "name" | "showHeaders" | "showTotals">
{
  constructor(context: RequestContext, location: string, find: () => HostTable | null, isFound = false) {
    super(context, "Table", location, find, isFound);
  }

  protected loadable(): Loadable {
    return { properties: { name: () => this.place.name, showHeaders: () => true, showTotals: () => false } };
  }

  get name(): string {
    return this.loadedValue("name");
  }

  /** The tables of the practice workbook have a heading row and no row of totals. */
  get showHeaders(): boolean {
    return this.loadedValue("showHeaders");
  }

  get showTotals(): boolean {
    return this.loadedValue("showTotals");
  }

  getRange(): Range {
    return new Range(this.context, "Table.getRange", () => this.place.area);
  }

  delete(): void {
    this.act("delete", () => {
      const { tables } = this.context.session;
      tables.splice(tables.indexOf(this.place), 1);
    });
  }
}

/** The tables of a workbook, a sheet or a range. */
export class TableCollection
  extends Collection<Table>
  implements Members<Excel.TableCollection, "count" | "getCount" | "getItemOrNullObject">
{
  constructor(
    context: RequestContext,
    private readonly list: () => HostTable[],
  ) {
    super(context, "TableCollection");
  }

  protected itemsNow(): Table[] {
    return this.list().map((table) => new Table(this.context, "TableCollection.items", () => table, true));
  }

  getItemOrNullObject(key: string): Table {
    return new Table(this.context, "TableCollection.getItemOrNullObject", () => {
      return this.list().find(({ name }) => name.toLowerCase() === key.toLowerCase()) ?? null;
    });
  }
}

/** The tables of a sheet, to which one can add. */
export class SheetTables extends TableCollection implements Members<Excel.TableCollection, "add"> {
  constructor(
    context: RequestContext,
    private readonly sheetId: () => string,
  ) {
    super(context, () => context.session.tables.filter(({ area }) => area.sheetId === sheetId()));
  }

  /** Makes a table of the cells at an address of the sheet. */
  add(address: Range | string, _hasHeaders: boolean): Table {
    const { session } = this.context;
    let made: HostTable | undefined;
    this.act("add", () => {
      const area = typeof address === "string" ? areaAt(session, this.sheetId(), address) : address.place;
      if (session.tablesIn(area).length > 0) throw refuse("InvalidArgument", "A table can't overlap another table.");
      made = { name: `Table${session.tables.length + 1}`, area };
      session.tables.push(made);
    });
    return new Table(this.context, "TableCollection.add", () => made ?? null);
  }
}
