import type { Shading, ShadingRule } from "../grid/port";
import { ClientObject, type Loadable } from "./clientObject";
import { hostColor } from "./color";
import { refuse } from "./error";
import type { Members } from "./mirror";
import { Placed } from "./placed";
import { RangeAreas } from "./rangeAreas";
import type { RequestContext } from "./requestContext";

type Change = (location: string, part: Partial<ShadingRule>) => void;

/** The formula of a rule. */
class Rule extends ClientObject implements Members<Excel.ConditionalFormatRule, "formula"> {
  constructor(
    context: RequestContext,
    private readonly now: () => ShadingRule,
    private readonly change: Change,
  ) {
    super(context, "ConditionalFormatRule");
  }

  protected loadable(): Loadable {
    return { properties: { formula: () => this.now().formula } };
  }

  get formula(): string {
    return this.loadedValue("formula");
  }

  set formula(given: string) {
    this.keep("formula", given);
    this.change("ConditionalFormatRule.formula", { formula: given });
  }
}

/** The ground that a rule gives. */
class Fill extends ClientObject implements Members<Excel.ConditionalRangeFill, "color"> {
  constructor(
    context: RequestContext,
    private readonly now: () => ShadingRule,
    private readonly change: Change,
  ) {
    super(context, "ConditionalRangeFill");
  }

  protected loadable(): Loadable {
    return { properties: { color: () => hostColor(this.now().fill ?? "") } };
  }

  get color(): string {
    return this.loadedValue("color");
  }

  set color(given: string) {
    this.keep("color", given);
    this.change("ConditionalRangeFill.color", { fill: given });
  }
}

/** The letters that a rule gives. */
class Font extends ClientObject implements Members<Excel.ConditionalRangeFont, "bold" | "color"> {
  constructor(
    context: RequestContext,
    private readonly now: () => ShadingRule,
    private readonly change: Change,
  ) {
    super(context, "ConditionalRangeFont");
  }

  protected loadable(): Loadable {
    return { properties: { color: () => hostColor(this.now().fontColor ?? ""), bold: () => this.now().bold ?? false } };
  }

  get color(): string {
    return this.loadedValue("color");
  }

  set color(given: string) {
    this.keep("color", given);
    this.change("ConditionalRangeFont.color", { fontColor: given });
  }

  get bold(): boolean {
    return this.loadedValue("bold");
  }

  set bold(given: boolean) {
    this.keep("bold", given);
    this.change("ConditionalRangeFont.bold", { bold: given });
  }
}

/** A rule by which cells are dressed where a formula holds. */
export class ConditionalFormat
  extends Placed<Shading>
  implements Members<Excel.ConditionalFormat, "delete" | "getRanges" | "id" | "isNullObject">
{
  readonly custom: { readonly rule: Rule; readonly format: { readonly fill: Fill; readonly font: Font } };
  private current: ShadingRule | undefined;

  constructor(context: RequestContext, location: string, find: () => Shading | null, isFound = false) {
    super(context, "ConditionalFormat", location, find, isFound);
    const now = () => this.current ?? this.place.rule;
    const change: Change = (where, part) => context.change(where, () => this.put({ ...now(), ...part }));
    this.custom = {
      rule: new Rule(context, now, change),
      format: { fill: new Fill(context, now, change), font: new Font(context, now, change) },
    };
  }

  private put(rule: ShadingRule): void {
    const { session } = this.context;
    session.checkWritable(this.place.area.sheetId);
    if (session.callsFunction(rule.formula)) {
      throw refuse("InvalidArgument", "An add-in's functions can't be used in a conditional format.");
    }
    this.current = rule;
    if (rule.formula !== "") session.grid.rules.putShading({ ...this.place, rule });
  }

  protected loadable(): Loadable {
    return { properties: { id: () => this.place.id, type: () => "Custom" } };
  }

  get id(): string {
    return this.loadedValue("id");
  }

  get type(): "Custom" {
    return this.loadedValue("type");
  }

  /** The cells that the rule dresses. */
  getRanges(): RangeAreas {
    return new RangeAreas(this.context, "ConditionalFormat.getRanges", () => [this.place.area]);
  }

  delete(): void {
    this.act("delete", () => this.context.session.grid.rules.removeShading(this.place.area.sheetId, this.place.id));
  }
}
