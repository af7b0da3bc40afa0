import type { DefinedName } from "../grid/port";
import { addressOf, areaOfReference } from "./areas";
import type { Loadable } from "./clientObject";
import { Collection } from "./collection";
import { refuse } from "./error";
import type { Members } from "./mirror";
import { isNameAllowed } from "./nameRules";
import { Placed } from "./placed";
import { Range } from "./range";
import type { RequestContext } from "./requestContext";

/** A name for cells or for a formula. */
export class NamedItem
  extends Placed<DefinedName>
  implements
    Members<
      Excel.NamedItem,
      "delete" | "formula" | "getRange" | "getRangeOrNullObject" | "isNullObject" | "name" | "scope"
    >
{
  constructor(context: RequestContext, location: string, find: () => DefinedName | null, isFound = false) {
    super(context, "NamedItem", location, find, isFound);
  }

  protected loadable(): Loadable {
    return {
      properties: {
        name: () => this.place.name,
        formula: () => this.now().formula,
        scope: () => this.place.scope,
      },
    };
  }

  private now(): DefinedName {
    const found = this.context.session.grid.names.find(this.place.name);
    if (!found) throw refuse("ItemNotFound");
    return found;
  }

  get name(): string {
    return this.loadedValue("name");
  }

  get formula(): Excel.NamedItem["formula"] {
    return this.loadedValue("formula");
  }

  set formula(given: Excel.NamedItem["formula"]) {
    this.assign("formula", given, () => {
      if (typeof given !== "string" || !/^=./.test(given)) throw refuse("InvalidArgument");
      this.context.session.grid.names.change(this.now().name, given);
    });
  }

  get scope(): Excel.NamedItem["scope"] {
    return this.loadedValue("scope");
  }

  private area() {
    return areaOfReference(this.context.session, this.now().formula);
  }

  getRange(): Range {
    return new Range(this.context, "NamedItem.getRange", () => {
      const area = this.area();
      if (!area) throw refuse("InvalidArgument");
      return area;
    });
  }

  getRangeOrNullObject(): Range {
    return new Range(this.context, "NamedItem.getRangeOrNullObject", () => this.area() ?? null);
  }

  delete(): void {
    this.act("delete", () => this.context.session.grid.names.remove(this.now().name));
  }
}

/** The workbook's names. */
export class NamedItemCollection
  extends Collection<NamedItem>
  implements Members<Excel.NamedItemCollection, "add" | "getCount" | "getItem" | "getItemOrNullObject">
{
  constructor(context: RequestContext) {
    super(context, "NamedItemCollection");
  }

  protected itemsNow(): NamedItem[] {
    const all = this.context.session.grid.names.list();
    return all.map((item) => new NamedItem(this.context, "NamedItemCollection.items", () => item, true));
  }

  private find(name: string): DefinedName | null {
    return this.context.session.grid.names.find(name) ?? null;
  }

  add(name: string, reference: Range | string): NamedItem {
    const { session } = this.context;
    this.accepted(reference);
    this.act("add", () => {
      if (!isNameAllowed(name)) throw refuse("InvalidArgument");
      if (session.isNameTaken(name)) throw refuse("ItemAlreadyExists");
      session.grid.names.add(name, typeof reference === "string" ? reference : absolute(session, reference));
    });
    return new NamedItem(this.context, "NamedItemCollection.add", () => this.find(name));
  }

  getItem(name: string): NamedItem {
    return new NamedItem(this.context, "NamedItemCollection.getItem", () => {
      const found = this.find(name);
      if (!found) throw refuse("ItemNotFound");
      return found;
    });
  }

  getItemOrNullObject(name: string): NamedItem {
    return new NamedItem(this.context, "NamedItemCollection.getItemOrNullObject", () => this.find(name));
  }
}

function absolute(session: RequestContext["session"], range: Range): string {
  const [sheet = "", cells = ""] = splitAtLast(addressOf(session, range.place), "!");
  return `=${sheet}!${cells.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2")}`;
}

function splitAtLast(text: string, mark: string): [string, string] {
  const place = text.lastIndexOf(mark);
  return [text.slice(0, place), text.slice(place + 1)];
}
