import { ClientObject, type Loadable } from "./clientObject";
import { refuse } from "./error";
import type { Members } from "./mirror";

/** Whether sheets can be added, taken away and renamed. */
export class WorkbookProtection
  extends ClientObject
  implements Members<Excel.WorkbookProtection, "protect" | "protected" | "unprotect">
{
  constructor(context: ClientObject["context"]) {
    super(context, "WorkbookProtection");
  }

  protected loadable(): Loadable {
    return { properties: { protected: () => this.context.session.structureProtected } };
  }

  get protected(): boolean {
    return this.loadedValue("protected");
  }

  protect(): void {
    this.act("protect", () => {
      if (this.context.session.structureProtected) throw refuse("AccessDenied");
      this.context.session.structureProtected = true;
    });
  }

  unprotect(): void {
    this.act("unprotect", () => {
      this.context.session.structureProtected = false;
    });
  }
}
