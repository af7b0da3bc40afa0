import { ClientObject, type Loadable } from "./clientObject";
import { lookDefaults } from "./lookDefaults";
import type { Members } from "./mirror";
import { Placed } from "./placed";
import type { RequestContext } from "./requestContext";

/** The letters of cells that no one has dressed. */
class StyleFont extends ClientObject implements Members<Excel.RangeFont, "color" | "name" | "size"> {
  constructor(context: RequestContext) {
    super(context, "RangeFont");
  }

  protected loadable(): Loadable {
    const { fontColor: color, fontName: name, fontSize: size } = lookDefaults;
    return { properties: { color: () => color, name: () => name, size: () => size } };
  }

  get color(): string {
    return this.loadedValue("color");
  }

  get name(): string {
    return this.loadedValue("name");
  }

  get size(): number {
    return this.loadedValue("size");
  }
}

/** A named style; the practice workbook has the one that every cell begins with. */
export class Style extends Placed<string> implements Members<Excel.Style, "isNullObject" | "name"> {
  readonly font: StyleFont;

  constructor(context: RequestContext, location: string, find: () => string | null) {
    super(context, "Style", location, find);
    this.font = new StyleFont(context);
  }

  protected loadable(): Loadable {
    return { properties: { name: () => this.place }, children: { font: () => this.font } };
  }

  get name(): string {
    return this.loadedValue("name");
  }
}

/** The workbook's named styles. */
export class StyleCollection implements Members<Excel.StyleCollection, "getItemOrNullObject"> {
  constructor(readonly context: RequestContext) {}

  getItemOrNullObject(name: string): Style {
    const find = () => (name === "Normal" ? name : null);
    return new Style(this.context, "StyleCollection.getItemOrNullObject", find);
  }
}
