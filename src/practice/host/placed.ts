import { ClientObject } from "./clientObject";
import { NullObjectError, refuse } from "./error";
import type { RequestContext } from "./requestContext";

/** An object that has to be found first: where it is comes out at sync, in the order of the calls. */
export abstract class Placed<P> extends ClientObject {
  private found: P | null | undefined;

  /**
   * @param location The member that asked for the object, such as `Worksheet.getRange`.
   * @param find Finds it; null for an "or null" object that is not there.
   * @param isFound Whether it can be found at once, as the items of a collection that is being read.
   */
  constructor(context: RequestContext, typeName: string, location: string, find: () => P | null, isFound = false) {
    super(context, typeName);
    const search = () => {
      this.found = orNull(find);
    };
    if (isFound) search();
    else context.find(location, search);
  }

  /**
   * Where the object is, for use at sync.
   *
   * @throws HostError where it is not there, or was never found.
   */
  get place(): P {
    this.checkUsable();
    if (this.found === undefined) throw refuse("InvalidObjectPath");
    if (this.found === null) throw new NullObjectError();
    return this.found;
  }

  /** Whether it has been looked for. */
  protected get isPlaced(): boolean {
    return this.found !== undefined;
  }

  /** Whether an "or null" object is not there. Needs a sync, but no load. */
  get isNullObject(): boolean {
    if (this.found === undefined) return this.loadedValue<boolean>("isNullObject");
    return this.found === null;
  }

  /** What is asked of an "or null" object that is not there is nothing, whether it was loaded or not. */
  protected override loadedValue<T>(name: string): T {
    return this.found === null ? (undefined as T) : super.loadedValue(name);
  }

  override readPath(path: string[]): void {
    if (this.found === null || path[0] === "isNullObject") return;
    super.readPath(path);
  }

  override readAll(): void {
    if (this.found === null) return;
    super.readAll();
  }
}

/** What is reached from an "or null" object that is not there is not there either. */
function orNull<P>(find: () => P | null): P | null {
  try {
    return find();
  } catch (error) {
    if (error instanceof NullObjectError) return null;
    throw error;
  }
}
