import { ClientObject, type Loadable } from "./clientObject";
import { ClientResult } from "./clientResult";

/** The host's behavior common to all its collections: `items` is there after load and sync, with what was asked of each. */
export abstract class Collection<T extends ClientObject> extends ClientObject {
  protected abstract itemsNow(): T[];

  protected loadable(): Loadable {
    return { properties: {} };
  }

  protected override readPaths(paths: string[][]): void {
    const items = this.itemsNow();
    this.keep("items", items);
    if (paths.length === 0) for (const item of items) item.readAll();
    for (const path of paths) {
      // The host takes "items/name" and "name" alike for the name of each item.
      const ofItem = path[0] === "items" ? path.slice(1) : path;
      for (const item of items) {
        if (ofItem.length === 0) item.readAll();
        else item.readPath(ofItem);
      }
    }
  }

  override readPath(path: string[]): void {
    this.readPaths([path]);
  }

  override readAll(): void {
    this.readPaths([]);
  }

  get items(): T[] {
    return this.loadedValue("items");
  }

  getCount(): ClientResult<number> {
    return new ClientResult(this.context, `${this.typeName}.getCount`, () => this.itemsNow().length);
  }
}
