import { refuse } from "./error";
import { EventHandlers } from "./events";
import type { Members } from "./mirror";
import { NamedItemCollection } from "./names";
import { Range } from "./range";
import type { RequestContext } from "./requestContext";
import { SettingCollection } from "./settings";
import { StyleCollection } from "./styles";
import { TableCollection } from "./tables";
import { WorkbookProtection } from "./workbookProtection";
import { WorksheetCollection } from "./worksheets";

/** The one workbook that is open. */
export class Workbook implements Members<Excel.Workbook, "getActiveCell" | "getSelectedRange"> {
  readonly worksheets: WorksheetCollection;
  readonly settings: SettingCollection;
  readonly names: NamedItemCollection;
  readonly styles: StyleCollection;
  readonly tables: TableCollection;
  readonly protection: WorkbookProtection;
  readonly onSelectionChanged: EventHandlers<{ readonly workbook: Workbook }>;

  constructor(readonly context: RequestContext) {
    this.worksheets = new WorksheetCollection(context);
    this.settings = new SettingCollection(context);
    this.names = new NamedItemCollection(context);
    this.styles = new StyleCollection(context);
    this.tables = new TableCollection(context, () => context.session.grid.tables.list());
    this.protection = new WorkbookProtection(context);
    this.onSelectionChanged = new EventHandlers(context, "Workbook.onSelectionChanged", (tell) => {
      return context.session.grid.watch.selection(() => tell({ workbook: this }));
    });
  }

  /** The selected cells; a picture or a chart is refused, as the host does (its documentation of getSelectedRange). */
  getSelectedRange(): Range {
    return new Range(this.context, "Workbook.getSelectedRange", () => {
      if (this.context.session.pictureSelected) throw refuse("InvalidSelection");
      return this.context.session.grid.selection.get();
    });
  }

  getActiveCell(): Range {
    return new Range(this.context, "Workbook.getActiveCell", () => {
      return { ...this.context.session.grid.selection.get(), rowCount: 1, columnCount: 1 };
    });
  }
}
