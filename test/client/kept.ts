import type { StandIn } from "./wire";

/** The kinds of objects that the library knows by an id it shows to no one. */
const PRIVATE_ID = new Set(["NamedItem", "Setting"]);

/** What the library may ask for again by an id: ranges that it holds on to, and the items of collections. */
export class KeptObjects {
  private readonly byId = new Map<string, StandIn>();
  private readonly ids = new WeakMap<StandIn, string>();
  private readonly items = new WeakMap<StandIn, readonly StandIn[]>();
  private made = 0;

  /** An id for an object that is to be found by nothing else. */
  reference(object: StandIn): string {
    const known = this.ids.get(object);
    const id = known ?? `reference ${++this.made}`;
    this.ids.set(object, id);
    this.byId.set(id, object);
    return id;
  }

  /** What identifies an object in an answer; nothing where its path does. */
  identity(object: StandIn): Record<string, unknown> {
    const kind = object.constructor.name;
    if (PRIVATE_ID.has(kind)) return { _Id: this.reference(object) };
    const id = object.loadable?.().properties.id?.();
    if (typeof id !== "string") return {};
    this.byId.set(id, object);
    return { Id: id };
  }

  /** The items of a collection as they were sent: those without an id are asked for again by their place. */
  rememberItems(collection: StandIn, items: readonly StandIn[]): void {
    this.items.set(collection, items);
  }

  itemAt(collection: StandIn, place: unknown): StandIn | undefined {
    return this.items.get(collection)?.[Number(place)];
  }

  find(id: unknown): StandIn | undefined {
    return this.byId.get(String(id));
  }

  forget(id: unknown): void {
    this.byId.delete(String(id));
  }
}
