import { ClientObject, type Loadable } from "./clientObject";
import { refuse } from "./error";
import type { Members } from "./mirror";
import type { RequestContext } from "./requestContext";

/** Whether a sheet can be written to. */
export class WorksheetProtection
  extends ClientObject
  implements Members<Excel.WorksheetProtection, "protect" | "protected" | "unprotect">
{
  constructor(
    context: RequestContext,
    private readonly sheetId: () => string,
  ) {
    super(context, "WorksheetProtection");
  }

  protected loadable(): Loadable {
    return { properties: { protected: () => this.context.session.protectedSheets.has(this.sheetId()) } };
  }

  get protected(): boolean {
    return this.loadedValue("protected");
  }

  protect(): void {
    this.act("protect", () => {
      const { protectedSheets } = this.context.session;
      if (protectedSheets.has(this.sheetId())) throw refuse("AccessDenied");
      protectedSheets.add(this.sheetId());
    });
  }

  unprotect(): void {
    this.act("unprotect", () => {
      this.context.session.protectedSheets.delete(this.sheetId());
    });
  }
}
