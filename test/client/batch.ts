import { atLocation, HostError } from "../../src/practice/host/error";
import type { RequestContext } from "../../src/practice/host/requestContext";
import type { KeptObjects } from "./kept";
import { isNull, propertiesOf } from "./shown";
import { methodsOfTheLibrary } from "./specials";
import {
  type Action,
  type ActionResult,
  ActionType,
  type AnswerBody,
  type AnswerError,
  type ArgumentInfo,
  memberOf,
  type ObjectPath,
  PathType,
  type RequestBody,
  type StandIn,
} from "./wire";

/** An object that is not there, and of which nothing may be asked. */
const NOTHING = Symbol("nothing");
type Found = StandIn | typeof NOTHING;

/** Starts to pass on an event of an object. */
export type Listen = (object: StandIn) => void;

/**
 * One request of the library, done on the stand-in's objects: a name on the wire is the name of their member. All of it
 * is queued, and then done in one sync of the stand-in, so that a request of the library is one request there, too.
 */
export class Batch {
  private readonly objects = new Map<number, Found>();
  private readonly results: ActionResult[] = [];
  private readonly traces: number[] = [];
  /** The action that is being done, for the error that it may end in. */
  private current = 0;
  /** The ranges that the library wants to hold on to. */
  private readonly held: ReadonlySet<number>;

  constructor(
    private readonly context: RequestContext,
    private readonly body: RequestBody,
    private readonly kept: KeptObjects,
    private readonly listen: Listen,
  ) {
    const keeps = body.Actions.filter(({ Name }) => Name === "_KeepReference");
    this.held = new Set(keeps.map(({ ObjectPathId }) => ObjectPathId));
  }

  async run(): Promise<AnswerBody> {
    try {
      for (const [index, action] of this.body.Actions.entries()) {
        this.step(() => {
          this.current = index;
        });
        this.queue(action);
      }
    } catch (error) {
      // Nothing of it was done yet; what was queued must not be done with the next request.
      this.step(() => {
        throw error;
      });
    }
    try {
      await this.context.sync();
    } catch (error) {
      const told = atLocation(error, "");
      if (told.cause instanceof TypeError) console.error("A mistake of the server, or of the grid:", told.cause);
      return { Results: this.results, TraceIds: this.traces, Error: answerOf(told, this.current) };
    }
    return { Results: this.results, TraceIds: this.traces };
  }

  /** Queues a step of the server's own, in its place among what the request asks for. */
  private step(run: () => void): void {
    this.context.find("server", run);
  }

  private result({ Id }: Action, value: () => unknown): void {
    this.step(() => void this.results.push({ ActionId: Id, Value: value() ?? null }));
  }

  private queue(action: Action): void {
    if (action.ActionType === ActionType.Trace) {
      this.step(() => void this.traces.push(action.Id));
      this.result(action, () => null);
      return;
    }
    const object = this.objectOf(action.ObjectPathId);
    switch (action.ActionType) {
      case ActionType.Instantiate:
        this.result(action, () => (this.isMissing(action) ? null : this.identity(object, action.ObjectPathId)));
        break;
      case ActionType.Query:
        this.query(action, object);
        break;
      case ActionType.Method:
        this.call(action, object);
        break;
      case ActionType.SetProperty:
        this.set(action, object);
        break;
      default:
        throw new Error(`The server does not know actions of type ${action.ActionType}.`);
    }
  }

  /** Whether an action is for an "or null" object that is not there, or for what is reached from one. */
  private isMissing({ ObjectPathId }: Action): boolean {
    let path = this.body.ObjectPaths[ObjectPathId];
    while (path) {
      const object = this.objectOf(path.Id);
      if (object === NOTHING || isNull(object)) return true;
      path = this.body.ObjectPaths[path.ParentObjectPathId ?? Number.NaN];
    }
    return false;
  }

  private identity(object: Found, pathId: number): unknown {
    if (object === NOTHING) return null;
    return this.held.has(pathId) ? { _ReferenceId: this.kept.reference(object) } : this.kept.identity(object);
  }

  private query(action: Action, object: Found): void {
    const { Select = [], Expand = [] } = action.QueryInfo ?? {};
    const asked = [...Select, ...Expand];
    const plain = asked.filter((path) => !["*", "$all", "$none"].includes(path));
    const asksForNothing = plain.length === 0 && asked.includes("$none");
    if (object === NOTHING || typeof object.load !== "function") {
      this.result(action, () => null);
    } else if (asksForNothing) {
      this.result(action, () => (this.isMissing(action) ? null : {}));
    } else {
      object.load(plain.length > 0 ? plain : undefined);
      this.result(action, () => (this.isMissing(action) ? null : propertiesOf(object, plain, this.kept)));
    }
  }

  private call(action: Action, object: Found): void {
    const { Name } = action;
    // A range that is to be kept was noted beforehand. Events go on being told; the library drops what no one wants.
    if (Name === "_KeepReference" || Name.startsWith("_Unregister")) return;
    if (Name === "_RemoveReference") this.kept.forget(action.ArgumentInfo?.Arguments?.[0]);
    else if (object === NOTHING) this.refuseNothing();
    else if (Name.startsWith("_Register")) this.listen(object);
    else {
      const made = this.invoke(object, Name, action.ArgumentInfo);
      if (isClientResult(made)) this.result(action, () => made.value);
    }
  }

  private set(action: Action, object: Found): void {
    const member = memberOf(action.Name);
    if (object === NOTHING) this.refuseNothing();
    else if (!setterOf(object, member)) throw missing(object, `${member}=`);
    else Reflect.set(object, member, this.arguments(action.ArgumentInfo)[0]);
  }

  private refuseNothing(): void {
    this.step(() => {
      throw new HostError("ItemNotFound", "");
    });
  }

  private objectOf(pathId: number): Found {
    const known = this.objects.get(pathId);
    if (known) return known;
    const found = this.find(this.body.ObjectPaths[pathId]!);
    this.objects.set(pathId, found);
    return found;
  }

  private find(path: ObjectPath): Found {
    switch (path.ObjectPathType) {
      case PathType.Workbook:
        return this.context.workbook as unknown as StandIn;
      case PathType.NullObject:
        return NOTHING;
      case PathType.ReferenceId: {
        const held = this.kept.find(path.Name);
        if (!held) throw new HostError("ItemNotFound", "");
        return held;
      }
    }
    const parent = this.objectOf(path.ParentObjectPathId!);
    if (parent === NOTHING) return NOTHING;
    switch (path.ObjectPathType) {
      case PathType.ItemById:
        return this.kept.find(path.ArgumentInfo?.Arguments?.[0]) ?? this.invoke(parent, "getItem", path.ArgumentInfo);
      case PathType.Property:
        return this.property(parent, memberOf(path.Name));
      case PathType.Method: {
        const place = path.ArgumentInfo?.Arguments?.[0];
        const item = path.Name === "GetItemAt" ? this.kept.itemAt(parent, place) : undefined;
        return item ?? this.invoke(parent, path.Name, path.ArgumentInfo);
      }
      default:
        throw new Error(`The server does not know paths of type ${path.ObjectPathType}.`);
    }
  }

  private property(object: StandIn, member: string): StandIn {
    // The stand-in has the program itself beside the workbook, the library inside it.
    if (member === "application") return this.context.application as unknown as StandIn;
    if (!(member in object)) throw missing(object, member);
    return object[member] as StandIn;
  }

  private invoke(object: StandIn, wireName: string, info: ArgumentInfo | undefined): StandIn {
    const given = this.arguments(info);
    // What the add-in left out comes as null.
    while (given.length > 0 && (given.at(-1) ?? undefined) === undefined) given.pop();
    const member = memberOf(wireName);
    const method = methodsOfTheLibrary[wireName] ?? object[member];
    if (typeof method !== "function") throw missing(object, `${member}()`);
    return method.apply(object, given) as StandIn;
  }

  private arguments(info: ArgumentInfo | undefined): unknown[] {
    const paths = info?.ReferencedObjectPathIds ?? [];
    return (info?.Arguments ?? []).map((argument, index) => {
      const path = paths[index];
      return typeof path === "number" && path > 0 ? this.objectOf(path) : argument;
    });
  }
}

/** The error of the host as the server sends it. */
export function answerOf({ code, message, debugInfo }: HostError, actionIndex: number): AnswerError {
  const location = debugInfo.errorLocation ?? "";
  return { Code: code, Message: message, Location: location, ActionIndex: actionIndex, HttpStatusCode: 400 };
}

function isClientResult(made: unknown): made is { readonly value: unknown } {
  return typeof made === "object" && made?.constructor.name === "ClientResult";
}

function setterOf(object: object, member: string): unknown {
  for (let one: object | null = object; one; one = Object.getPrototypeOf(one)) {
    const found = Object.getOwnPropertyDescriptor(one, member);
    if (found) return found.set;
  }
  return undefined;
}

/** The add-in asked the library for something that the stand-in lacks. */
const missing = (object: StandIn, member: string) =>
  new HostError("GeneralException", "", `The stand-in has no ${object.constructor.name}.${member}.`);
