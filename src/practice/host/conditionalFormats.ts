import type { Area } from "../grid/port";
import { Collection } from "./collection";
import { ConditionalFormat } from "./conditionalFormat";
import { refuse } from "./error";
import type { Members } from "./mirror";
import type { RequestContext } from "./requestContext";

let rulesMade = 0;

/** The rules by which a range's cells are dressed. */
export class ConditionalFormats
  extends Collection<ConditionalFormat>
  implements Members<Excel.ConditionalFormatCollection, "clearAll" | "getCount">
{
  constructor(
    context: RequestContext,
    private readonly area: () => Area,
  ) {
    super(context, "ConditionalFormatCollection");
  }

  protected itemsNow(): ConditionalFormat[] {
    const all = this.context.session.grid.rules.shadings(this.area());
    const location = "ConditionalFormatCollection.items";
    return all.map((shading) => new ConditionalFormat(this.context, location, () => shading, true));
  }

  /**
   * Adds a rule; it takes effect once it is given its formula.
   *
   * @param type The practice workbook carries rules by formula, `Excel.ConditionalFormatType.custom`.
   */
  add(type: Parameters<Excel.ConditionalFormatCollection["add"]>[0]): ConditionalFormat {
    return new ConditionalFormat(this.context, "ConditionalFormatCollection.add", () => {
      if (type !== "Custom") throw refuse("InvalidArgument", "The practice workbook carries rules by formula only.");
      rulesMade += 1;
      const rule = { formula: "", fill: undefined, fontColor: undefined, bold: undefined };
      // The time keeps the id apart from those of a workbook that was kept.
      return { id: `rule-${Date.now()}-${rulesMade}`, area: this.area(), rule };
    });
  }

  clearAll(): void {
    this.act("clearAll", () => {
      this.context.session.checkWritable(this.area().sheetId);
      this.context.session.grid.rules.clearShadings(this.area());
    });
  }
}
