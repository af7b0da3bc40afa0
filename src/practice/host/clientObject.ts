import { HostError, NullObjectError, refuse } from "./error";
import type { RequestContext } from "./requestContext";

/** How one property is read at sync. */
export type Reader = () => unknown;

/** What an object lets one load: its plain properties, and the objects that hang on it. */
export interface Loadable {
  readonly properties: Readonly<Record<string, Reader>>;
  readonly children?: Readonly<Record<string, () => ClientObject>>;
}

/** The host's behavior common to all its objects: a property is there only after it was loaded and synced. */
export abstract class ClientObject {
  private readonly loaded = new Map<string, unknown>();
  /** The objects that hang on this one and were asked for. */
  private readonly children = new Map<string, ClientObject>();
  private isReleased = false;
  /** Whether it turned out to hang on an "or null" object that is not there. */
  private isMissing = false;

  /**
   * @param typeName The host's name for the kind of object, for the place in an error.
   */
  constructor(
    readonly context: RequestContext,
    protected readonly typeName: string,
  ) {}

  protected abstract loadable(): Loadable;

  /**
   * Asks for properties: `"values, format/fill/color"`, `["values", "address"]`, `{ values: true }`, or nothing for
   * all the plain ones. They can be read after the next sync.
   */
  load(properties?: string | string[] | object): this {
    this.checkUsable();
    const paths = pathsOf(properties);
    this.context.read(`${this.typeName}.load`, () => {
      this.isMissing = false;
      try {
        this.readPaths(paths.map((path) => path.split("/")));
      } catch (error) {
        // What hangs on an "or null" object that is not there loads as nothing.
        if (!(error instanceof NullObjectError)) throw error;
        this.isMissing = true;
      }
    });
    return this;
  }

  /** Reads what one load asked for; no path at all stands for the plain properties. */
  protected readPaths(paths: string[][]): void {
    if (paths.length === 0) this.readAll();
    for (const path of paths) this.readPath(path);
  }

  /** Reads one property, by its path, at sync. */
  readPath(path: string[]): void {
    const [head = "", ...rest] = path;
    const { properties, children } = this.loadable();
    const child = children?.[head];
    if (child && rest.length > 0) child().readPath(rest);
    else if (child) child().readAll();
    else if (properties[head] && rest.length === 0) this.keep(head, properties[head]());
    else throw refuse("InvalidArgument", `${this.typeName} has no property ${path.join("/")}.`);
  }

  readAll(): void {
    for (const [name, reader] of Object.entries(this.loadable().properties)) this.keep(name, reader());
  }

  protected keep(name: string, value: unknown): void {
    this.loaded.set(name, value);
  }

  /**
   * @throws HostError where the property was not loaded and synced.
   */
  protected loadedValue<T>(name: string): T {
    if (this.isMissing) return undefined as T;
    if (this.loaded.has(name)) return this.loaded.get(name) as T;
    const advice = `Before reading the property's value, call the load method on the containing object and call "context.sync()" on the associated request context.`;
    // The host names no place for this one.
    const location = name === "isNullObject" ? undefined : `${this.typeName}.${name}`;
    throw new HostError("PropertyNotLoaded", location, `The property '${name}' is not available. ${advice}`);
  }

  /** Ends the use of the object, as the host does with every range of a run once the run is over. */
  release(): void {
    this.isReleased = true;
  }

  /**
   * @throws HostError where the run is over in which the object was made.
   */
  protected checkUsable(): void {
    if (this.isReleased) throw new HostError("InvalidObjectPath", "_reference()");
  }

  /**
   * What is handed to a member of this object: other objects of the host must be of the same context.
   *
   * @throws HostError where they are not, or may not be used any more.
   */
  protected accepted<T>(given: T): T {
    this.checkUsable();
    if (!(given instanceof ClientObject)) return given;
    if (given.context !== this.context) throw new HostError("InvalidRequestContext");
    given.checkUsable();
    return given;
  }

  /** An object that hangs on this one, made when it is first asked for. */
  protected child<T extends ClientObject>(name: string, make: () => T): T {
    const known = this.children.get(name);
    if (known) return known as T;
    this.checkUsable();
    const made = make();
    this.children.set(name, made);
    return made;
  }

  /**
   * Sets several properties at once, also those of objects that hang on this one.
   *
   * @param properties Such as `{ values: [[1]], format: { wrapText: true } }`, or another object of the same kind,
   *   whose loaded properties are taken over.
   * @throws HostError where one of them can't be set.
   */
  set(properties: object, options: OfficeExtension.UpdateOptions = {}): void {
    const isObject = properties instanceof ClientObject;
    const throwOnReadOnly = options.throwOnReadOnly ?? !isObject;
    for (const [name, value] of Object.entries(isObject ? properties.toJSON() : properties)) {
      if (value === undefined) continue;
      if (setterOf(this, name)) Reflect.set(this, name, value);
      else if (this.settableObjects().includes(name)) (Reflect.get(this, name) as ClientObject).set(value, options);
      else if (throwOnReadOnly || !(name in this)) throw cannotSet(this.typeName);
    }
  }

  /** The names of the objects that hang on this one and can be set along with it. */
  protected settableObjects(): readonly string[] {
    return [];
  }

  /** What was loaded so far, with that of the objects that hang on this one, as JSON.stringify asks for it. */
  toJSON(): Record<string, unknown> {
    const { properties } = this.loadable();
    const plain = [...this.loaded].filter(([name]) => name in properties);
    return Object.fromEntries([...plain, ...[...this.children].map(([name, child]) => [name, child.toJSON()])]);
  }

  /** Sets a property: it can be read back at once, and takes effect at sync. */
  protected assign(name: string, value: unknown, apply: () => void | Promise<void>): void {
    this.keep(name, value);
    this.checkUsable();
    this.context.change(`${this.typeName}.${name}`, apply);
  }

  /** Asks for something to be done at sync. */
  protected act(method: string, apply: () => void | Promise<void>): void {
    this.checkUsable();
    this.context.change(`${this.typeName}.${method}`, apply);
  }
}

function cannotSet(typeName: string): HostError {
  const words = "The argument 'properties' doesn't work for this situation, is missing, or isn't in the right format.";
  return new HostError("InvalidArgument", `${typeName}.set`, words);
}

function setterOf(object: object, name: string): unknown {
  for (let one = object; one !== Object.prototype; one = Object.getPrototypeOf(one)) {
    const found = Object.getOwnPropertyDescriptor(one, name);
    if (found) return found.set;
  }
  return undefined;
}

function pathsOf(properties: string | string[] | object | undefined): string[] {
  if (properties === undefined) return [];
  if (typeof properties === "string") return properties.split(",").map((path) => path.trim());
  if (Array.isArray(properties)) return properties.flatMap((path: string) => pathsOf(path));
  return Object.entries(properties).flatMap(([name, value]) => {
    if (typeof value === "object" && value !== null) return pathsOf(value).map((path) => `${name}/${path}`);
    return value ? [name] : [];
  });
}
