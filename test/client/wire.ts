import type { Loadable } from "../../src/practice/host/clientObject";

/*
 * What the library sends and takes, as far as the add-in has it sent. It was read off the wire, and off the library's
 * own handling of the answers; the publisher does not document it.
 */

/** How the library says which object it means: by a step from another object, or by an id that it was given. */
export interface ObjectPath {
  readonly Id: number;
  readonly ObjectPathType: PathType;
  readonly Name: string;
  readonly ParentObjectPathId?: number;
  readonly ArgumentInfo?: ArgumentInfo;
}

export interface ArgumentInfo {
  readonly Arguments?: readonly unknown[];
  /** In the place of each argument that is an object, the id of its path; 0 for any other. */
  readonly ReferencedObjectPathIds?: readonly (number | readonly number[] | null)[];
}

export enum PathType {
  Workbook = 1,
  Service = 2,
  Method = 3,
  Property = 4,
  ItemById = 5,
  ReferenceId = 6,
  NullObject = 7,
}

/** One thing that a request asks for. */
export interface Action {
  readonly Id: number;
  readonly ActionType: ActionType;
  readonly Name: string;
  readonly ObjectPathId: number;
  readonly ArgumentInfo?: ArgumentInfo;
  readonly QueryInfo?: { readonly Select?: readonly string[]; readonly Expand?: readonly string[] };
}

export enum ActionType {
  /** Find the object, and say by which id it can be asked for again. */
  Instantiate = 1,
  /** Load properties. */
  Query = 2,
  Method = 3,
  SetProperty = 4,
  /** Say that the request got this far. */
  Trace = 5,
}

/** The body of a request. */
export interface RequestBody {
  readonly Actions: readonly Action[];
  readonly ObjectPaths: Readonly<Record<string, ObjectPath>>;
}

/** The body of an answer. */
export interface AnswerBody {
  readonly Results: readonly ActionResult[];
  readonly TraceIds: readonly number[];
  readonly Error?: AnswerError;
}

export interface ActionResult {
  readonly ActionId: number;
  readonly Value: unknown;
}

export interface AnswerError {
  readonly Code: string;
  readonly Message: string;
  readonly Location: string;
  readonly ActionIndex: number;
  readonly HttpStatusCode: number;
}

/** Whether the request waits until no one is editing a cell: one bit of the flags that go with it. */
export const DELAY_FOR_CELL_EDIT = 64;

/** An object of the stand-in, reached by its names as they come over the wire. */
export interface StandIn {
  readonly [member: string]: unknown;
  load(paths?: readonly string[]): unknown;
  loadable(): Loadable;
}

/** `RowCount`, a name on the wire, is `rowCount` in the host's interface. */
export const memberOf = (wireName: string) => wireName.charAt(0).toLowerCase() + wireName.slice(1);
export const wireNameOf = (member: string) => member.charAt(0).toUpperCase() + member.slice(1);
