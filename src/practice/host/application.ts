import type { Members } from "./mirror";
import type { RequestContext } from "./requestContext";

/** The spreadsheet program itself. */
export class Application
  implements
    Members<
      Excel.Application,
      "calculate" | "suspendApiCalculationUntilNextSync" | "suspendScreenUpdatingUntilNextSync"
    >
{
  constructor(readonly context: RequestContext) {}

  /** Reads in this batch do not wait for formulas; they show their results after the sync. */
  suspendApiCalculationUntilNextSync(): void {
    this.context.find("Application.suspendApiCalculationUntilNextSync", () => {
      this.context.calculationSuspended = true;
    });
  }

  /** The grid draws once after a batch anyway. */
  suspendScreenUpdatingUntilNextSync(): void {
    this.context.find("Application.suspendScreenUpdatingUntilNextSync", () => undefined);
  }

  calculate(): void {
    this.context.change("Application.calculate", () => this.context.session.grid.recalculate());
  }
}
