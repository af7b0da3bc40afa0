import type { Area, ListRule } from "../grid/port";
import { addressOf } from "./areas";
import { ClientObject, type Loadable } from "./clientObject";
import { refuse } from "./error";
import type { Members } from "./mirror";
import type { Range } from "./range";
import type { RequestContext } from "./requestContext";

/** The host takes no list longer than this that is written out. */
const longestSource = 255;

/** A rule as the host writes it; the practice workbook carries lists. */
export interface DataValidationRule {
  list?: { inCellDropDown: boolean; source: string | Range };
}

/** What may be typed into a range's cells. */
export class DataValidation
  extends ClientObject
  implements Members<Excel.DataValidation, "clear" | "errorAlert" | "ignoreBlanks" | "type">
{
  constructor(
    context: RequestContext,
    private readonly area: () => Area,
  ) {
    super(context, "DataValidation");
  }

  private get rules() {
    return this.context.session.grid.rules;
  }

  protected loadable(): Loadable {
    return {
      properties: {
        type: () => this.typeNow(),
        ignoreBlanks: () => this.rules.lists(this.area())[0]?.rule.ignoreBlanks ?? true,
        errorAlert: () => this.alertNow(),
        rule: () => this.ruleNow(),
      },
    };
  }

  private alertNow(): Excel.DataValidationErrorAlert {
    const isStrict = this.rules.lists(this.area())[0]?.rule.strict ?? true;
    return { showAlert: isStrict, style: isStrict ? "Stop" : "Information", title: "", message: "" };
  }

  private typeNow(): "None" | "List" | "Inconsistent" {
    const lists = this.rules.lists(this.area());
    if (lists.length === 0) return "None";
    const covered = lists.reduce((cells, { area }) => cells + area.rowCount * area.columnCount, 0);
    const isWhole = covered === this.area().rowCount * this.area().columnCount;
    const isOne = new Set(lists.map(({ rule }) => JSON.stringify(rule))).size === 1;
    return isWhole && isOne ? "List" : "Inconsistent";
  }

  private ruleNow(): DataValidationRule {
    const [first] = this.rules.lists(this.area());
    return first ? { list: { inCellDropDown: first.rule.dropDown, source: first.rule.source } } : {};
  }

  get type(): Excel.DataValidation["type"] {
    return this.loadedValue("type");
  }

  get rule(): DataValidationRule {
    return this.loadedValue("rule");
  }

  set rule(given: DataValidationRule) {
    this.accepted(given.list?.source);
    this.assign("rule", given, () => {
      this.context.session.checkWritable(this.area().sheetId);
      if (!given.list) throw refuse("InvalidArgument", "The practice workbook carries lists only.");
      const { inCellDropDown, source } = given.list;
      const text = typeof source === "string" ? source : `=${addressOf(this.context.session, source.place)}`;
      if (!text.startsWith("=") && text.length > longestSource) throw refuse("InvalidArgument");
      this.put({ source: text, dropDown: inCellDropDown, ignoreBlanks: true, strict: true });
    });
  }

  private put(rule: ListRule): void {
    // The host replaces what was there.
    this.rules.clearLists(this.area());
    this.rules.putList(this.area(), rule);
  }

  private change(part: Partial<ListRule>): void {
    for (const { area, rule } of this.rules.lists(this.area())) {
      this.rules.clearLists(area);
      this.rules.putList(area, { ...rule, ...part });
    }
  }

  get ignoreBlanks(): boolean {
    return this.loadedValue("ignoreBlanks");
  }

  set ignoreBlanks(given: boolean) {
    this.assign("ignoreBlanks", given, () => this.change({ ignoreBlanks: given }));
  }

  get errorAlert(): Excel.DataValidation["errorAlert"] {
    return this.loadedValue("errorAlert");
  }

  /** Only an alert that stops keeps other values out. */
  set errorAlert(given: Excel.DataValidation["errorAlert"]) {
    this.assign("errorAlert", given, () => this.change({ strict: given.showAlert && given.style === "Stop" }));
  }

  clear(): void {
    this.act("clear", () => {
      this.context.session.checkWritable(this.area().sheetId);
      this.rules.clearLists(this.area());
    });
  }
}
