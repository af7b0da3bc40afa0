import { intersection } from "../grid/geometry";
import type { Area, GridPort, SheetTable } from "../grid/port";
import { HostError } from "./error";
import { RequestContext } from "./requestContext";

/** A file that the host gives to the person. */
export interface HandedFile {
  readonly name: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

interface PlannedFailure {
  syncsLeft: number;
  readonly afterOperations: number;
}

/** What all request contexts share: the grid, the protections, and the order in which syncs run. */
export class HostSession {
  /** How many requests reached the host so far; a sync with nothing to do is none. */
  syncCount = 0;
  /** How many workbooks the add-in has asked for so far. */
  workbooksCreated = 0;
  readonly protectedSheets = new Set<string>();
  private last: Promise<unknown> = Promise.resolve();
  private planned: PlannedFailure | undefined;

  /**
   * @param namespace What stands before the dot in the names of the add-in's functions.
   * @param handOver Gives a file to the person, as where the add-in asks for a workbook of its own.
   */
  constructor(
    readonly grid: GridPort,
    private readonly namespace: string,
    readonly handOver: (file: HandedFile) => void,
  ) {}

  newContext(): RequestContext {
    return new RequestContext(this);
  }

  isContext(value: unknown): value is RequestContext {
    return value instanceof RequestContext;
  }

  /** Whether a formula calls one of the add-in's functions. */
  callsFunction(formula: string): boolean {
    return formula.toUpperCase().includes(`${this.namespace.toUpperCase()}.`);
  }

  /** Runs one request after the other, as the host does. */
  inTurn<T>(work: () => Promise<T>): Promise<T> {
    const turn = this.last.then(work);
    this.last = turn.catch(() => undefined);
    return turn;
  }

  /**
   * Makes the n-th request from now fail, for tests of what a caller does then.
   *
   * @param n 1 for the next one.
   * @param afterOperations How many of its operations still take effect.
   */
  failAtSync(n: number, afterOperations = 0): void {
    this.planned = { syncsLeft: n, afterOperations };
  }

  /** Counts a request in. Returns how many of its operations may take effect before it is made to fail, if it is. */
  countRequest(): number | undefined {
    this.syncCount += 1;
    if (!this.planned) return undefined;
    this.planned.syncsLeft -= 1;
    if (this.planned.syncsLeft > 0) return undefined;
    const { afterOperations } = this.planned;
    this.planned = undefined;
    return afterOperations;
  }

  /**
   * Lets a write through, or not.
   *
   * @throws HostError where the sheet is protected.
   */
  checkWritable(sheetId: string): void {
    if (this.protectedSheets.has(sheetId)) throw new HostError("AccessDenied", "", "The sheet is protected.");
  }

  /**
   * Whether a name of the workbook or another table has this name already; the two share their names.
   *
   * @param ownId The table that may have it.
   */
  isNameTaken(name: string, ownId?: string): boolean {
    const tables = this.grid.tables.list().filter(({ id }) => id !== ownId);
    return [...this.grid.names.list(), ...tables].some((one) => one.name.toLowerCase() === name.toLowerCase());
  }

  /** The tables that share at least one cell with the area. */
  tablesIn(area: Area): SheetTable[] {
    return this.grid.tables.list().filter((table) => intersection(table.area, area) !== undefined);
  }
}
