import { Collection } from "./collection";
import { refuse } from "./error";
import { EventHandlers } from "./events";
import type { Members } from "./mirror";
import type { RequestContext } from "./requestContext";
import { checkSheetName, freeSheetName } from "./sheetName";
import { changeArgs, Worksheet, type WorksheetChange } from "./worksheet";

type Carried = Members<
  Excel.WorksheetCollection,
  "add" | "getActiveWorksheet" | "getItem" | "getItemOrNullObject" | "items"
>;

/** The workbook's sheets. */
export class WorksheetCollection extends Collection<Worksheet> implements Omit<Carried, "items"> {
  /** Cells have changed on any sheet, also on one that is added later. */
  readonly onChanged: EventHandlers<WorksheetChange>;

  constructor(context: RequestContext) {
    super(context, "WorksheetCollection");
    this.onChanged = new EventHandlers(context, "WorksheetCollection.onChanged", (tell) => {
      return context.session.grid.watch.cells((change) => tell(changeArgs(change)));
    });
  }

  protected itemsNow(): Worksheet[] {
    const sheets = this.context.session.grid.sheets.list();
    return sheets.map(({ id }) => new Worksheet(this.context, "WorksheetCollection.items", () => id, true));
  }

  private find(key: string): string | null {
    const sheets = this.context.session.grid.sheets.list();
    return sheets.find(({ id, name }) => id === key || name.toLowerCase() === key.toLowerCase())?.id ?? null;
  }

  getActiveWorksheet(): Worksheet {
    return new Worksheet(this.context, "WorksheetCollection.getActiveWorksheet", () => {
      return this.context.session.grid.sheets.activeId();
    });
  }

  /** A sheet by name, in capitals or not, or by id. */
  getItem(key: string): Worksheet {
    return new Worksheet(this.context, "WorksheetCollection.getItem", () => {
      const found = this.find(key);
      if (found === null) throw refuse("ItemNotFound");
      return found;
    });
  }

  getItemOrNullObject(key: string): Worksheet {
    return new Worksheet(this.context, "WorksheetCollection.getItemOrNullObject", () => this.find(key));
  }

  /** Adds a sheet behind the others, without bringing it to the front. */
  add(name?: string): Worksheet {
    const { session } = this.context;
    let made: string | null = null;
    this.act("add", () => {
      session.checkStructure();
      if (name !== undefined) checkSheetName(session, name);
      made = session.grid.sheets.add(name ?? freeSheetName(session));
    });
    return new Worksheet(this.context, "WorksheetCollection.add", () => made);
  }
}
