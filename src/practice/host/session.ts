import { intersection } from "../grid/geometry";
import type { Area, GridPort, SheetTable } from "../grid/port";
import { type ErrorCode, HostError } from "./error";
import { RequestContext } from "./requestContext";

/** A file that the host gives to the person. */
export interface HandedFile {
  readonly name: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

interface PlannedFailure {
  readonly afterOperations: number;
  readonly code: ErrorCode;
  readonly detail: string | undefined;
}

/** How often the grid is asked whether someone is still typing into a cell. */
const editPollMs = 100;

/** What all request contexts share: the grid, the protections, and the order in which syncs run. */
export class HostSession {
  /** How many requests reached the host so far; a sync with nothing to do is none. */
  syncCount = 0;
  /** How many changes each request made so far. */
  readonly changesOfRequests: number[] = [];
  /** How many workbooks the add-in has asked for so far. */
  workbooksCreated = 0;
  readonly protectedSheets = new Set<string>();
  /** Sheets on which someone has put a chart, or a comment: the grid has none, so that only a test puts them there. */
  readonly chartedSheets = new Set<string>();
  readonly commentedSheets = new Set<string>();
  private last: Promise<unknown> = Promise.resolve();
  /** Whether sheets can be neither added, taken away nor renamed. */
  structureProtected = false;
  /** Whether a picture or a chart is selected, and no cells. */
  pictureSelected = false;
  private readonly failures = new Map<number, PlannedFailure>();
  private readonly meanwhile = new Map<number, () => void | Promise<void>>();

  /**
   * @param namespace What is before the dot in the names of the add-in's functions.
   * @param handOver Gives a file to the person, as where the add-in asks for a workbook of its own.
   */
  constructor(
    readonly grid: GridPort,
    private readonly namespace: string,
    readonly handOver: (file: HandedFile) => void,
  ) {}

  newContext(delayForCellEdit = false): RequestContext {
    return new RequestContext(this, delayForCellEdit);
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
   * @param afterOperations How many of its changes still take effect.
   * @param code What the host says then.
   * @param detail Its words; those that go with the code where left out.
   */
  failAtSync(n: number, afterOperations = 0, code: ErrorCode = "GeneralException", detail?: string): void {
    this.failures.set(this.syncCount + n, { afterOperations, code, detail });
  }

  /**
   * Has something happen in the workbook right before the n-th request from now, for tests of what a caller does then.
   *
   * @param n 1 for the next one.
   */
  beforeSync(n: number, happens: () => void | Promise<void>): void {
    this.meanwhile.set(this.syncCount + n, happens);
  }

  /** Forgets all that was planned for tests and has not come up. */
  planNothing(): void {
    this.failures.clear();
    this.meanwhile.clear();
  }

  /** Counts a request in. Returns how it is made to fail, if it is. */
  async countRequest(): Promise<PlannedFailure | undefined> {
    this.syncCount += 1;
    await this.meanwhile.get(this.syncCount)?.();
    return this.failures.get(this.syncCount);
  }

  /**
   * Resolves when no one is typing into a cell.
   *
   * @throws HostError where someone is, and the request does not wait.
   */
  async editingOver(waits: boolean): Promise<void> {
    if (!this.grid.isEditing()) return;
    if (!waits) throw new HostError("InvalidOperationInCellEditMode", "Excel.run");
    while (this.grid.isEditing()) await new Promise((resolve) => setTimeout(resolve, editPollMs));
  }

  /**
   * Lets a sheet be added, taken away or renamed, or not.
   *
   * @throws HostError where the workbook's structure is protected. The code is from memory.
   */
  checkStructure(): void {
    if (this.structureProtected) throw new HostError("AccessDenied", "", "The workbook's structure is protected.");
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
