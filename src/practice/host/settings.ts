import type { Loadable } from "./clientObject";
import { Collection } from "./collection";
import { refuse } from "./error";
import type { Members } from "./mirror";
import { Placed } from "./placed";
import type { RequestContext } from "./requestContext";

/** A small value that an add-in keeps in the workbook. */
export class Setting
  extends Placed<string>
  implements Members<Excel.Setting, "delete" | "isNullObject" | "key" | "value">
{
  constructor(context: RequestContext, location: string, find: () => string | null, isFound = false) {
    super(context, "Setting", location, find, isFound);
  }

  protected loadable(): Loadable {
    const { kept } = this.context.session.grid;
    return { properties: { key: () => this.place, value: () => kept.get(this.place) } };
  }

  get key(): string {
    return this.loadedValue("key");
  }

  get value(): Excel.Setting["value"] {
    return withDates(this.loadedValue("value"));
  }

  set value(given: Excel.Setting["value"]) {
    const value = withoutDates(given);
    this.assign("value", value, () => this.context.session.grid.kept.set(this.place, value));
  }

  delete(): void {
    this.act("delete", () => this.context.session.grid.kept.remove(this.place));
  }
}

/** A value as JSON keeps it, with dates as the host's client library writes them: `Date(0)`. */
export function withoutDates(given: unknown): unknown {
  const text = JSON.stringify(given, function (this: Record<string, unknown>, key, value) {
    const before = this[key];
    return before instanceof Date ? `Date(${before.getTime()})` : value;
  });
  return text === undefined ? undefined : JSON.parse(text);
}

/** A value that was kept, with its dates. */
function withDates(kept: unknown): unknown {
  if (kept === undefined) return undefined;
  return JSON.parse(JSON.stringify(kept), (_, value) => {
    const [, milliseconds] = (typeof value === "string" && /^Date\((.+)\)$/.exec(value)) || [];
    return milliseconds === undefined ? value : new Date(Number.parseInt(milliseconds, 10));
  });
}

/** The values that add-ins keep in the workbook, by key. */
export class SettingCollection
  extends Collection<Setting>
  implements Members<Excel.SettingCollection, "add" | "getCount" | "getItem" | "getItemOrNullObject">
{
  constructor(context: RequestContext) {
    super(context, "SettingCollection");
  }

  protected itemsNow(): Setting[] {
    const keys = this.context.session.grid.kept.keys();
    return keys.map((key) => new Setting(this.context, "SettingCollection.items", () => key, true));
  }

  /** Keeps a value under a key, in place of the one that was kept there. */
  add(...[key, value]: Parameters<Excel.SettingCollection["add"]>): Setting {
    this.act("add", () => this.context.session.grid.kept.set(key, withoutDates(value)));
    return new Setting(this.context, "SettingCollection.add", () => key);
  }

  getItem(key: string): Setting {
    return new Setting(this.context, "SettingCollection.getItem", () => {
      const found = this.find(key);
      if (found === null) throw refuse("ItemNotFound");
      return found;
    });
  }

  getItemOrNullObject(key: string): Setting {
    return new Setting(this.context, "SettingCollection.getItemOrNullObject", () => this.find(key));
  }

  private find(key: string): string | null {
    return this.context.session.grid.kept.keys().includes(key) ? key : null;
  }
}
