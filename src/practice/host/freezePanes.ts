import { ClientObject, type Loadable } from "./clientObject";
import type { Members } from "./mirror";
import type { RequestContext } from "./requestContext";

/** The rows that stay in view while a sheet scrolls. */
export class FreezePanes
  extends ClientObject
  implements Members<Excel.WorksheetFreezePanes, "freezeRows" | "unfreeze">
{
  constructor(
    context: RequestContext,
    private readonly sheetId: () => string,
  ) {
    super(context, "WorksheetFreezePanes");
  }

  protected loadable(): Loadable {
    return { properties: {} };
  }

  freezeRows(count = 1): void {
    this.act("freezeRows", () => this.context.session.grid.sheets.freezeRows(this.sheetId(), count));
  }

  unfreeze(): void {
    this.act("unfreeze", () => this.context.session.grid.sheets.freezeRows(this.sheetId(), 0));
  }
}
