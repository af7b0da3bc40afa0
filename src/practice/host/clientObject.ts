import { HostError, NullObjectError, refuse } from "./error";
import type { RequestContext } from "./requestContext";

/** How one property is read at sync. */
export type Reader = () => unknown;

/** What an object lets one load: its plain properties, and the objects that hang on it. */
export interface Loadable {
  readonly properties: Readonly<Record<string, Reader>>;
  readonly children?: Readonly<Record<string, () => ClientObject>>;
}

/** The host's manner common to all its objects: a property is there only after it was loaded and synced. */
export abstract class ClientObject {
  private readonly loaded = new Map<string, unknown>();

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
    const paths = pathsOf(properties);
    this.context.read(`${this.typeName}.load`, () => {
      try {
        this.readPaths(paths.map((path) => path.split("/")));
      } catch (error) {
        // What hangs on an "or null" object that is not there loads as nothing.
        if (!(error instanceof NullObjectError)) throw error;
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
    if (this.loaded.has(name)) return this.loaded.get(name) as T;
    const advice = `Before reading the property's value, call the load method on the containing object and call "context.sync()" on the associated request context.`;
    const location = `${this.typeName}.${name}`;
    throw new HostError("PropertyNotLoaded", location, `The property '${name}' is not available. ${advice}`);
  }

  /** Sets a property: it can be read back at once, and takes effect at sync. */
  protected assign(name: string, value: unknown, apply: () => void | Promise<void>): void {
    this.keep(name, value);
    this.context.change(`${this.typeName}.${name}`, apply);
  }

  /** Asks for something to be done at sync. */
  protected act(method: string, apply: () => void | Promise<void>): void {
    this.context.change(`${this.typeName}.${method}`, apply);
  }
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
