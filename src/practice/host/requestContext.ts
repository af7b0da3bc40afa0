import { Application } from "./application";
import type { ClientObject } from "./clientObject";
import { atLocation, HostError } from "./error";
import type { HostSession } from "./session";
import { Workbook } from "./workbook";

interface Operation {
  /** The member that was used, such as `Range.values`. */
  readonly location: string;
  readonly run: () => void | Promise<void>;
  readonly changes: boolean;
}

/** Collects what is asked of the host, and has it done at sync, in order. */
export class RequestContext {
  readonly workbook: Workbook;
  readonly application: Application;
  /** While set, formulas are not waited for before the next operation. */
  calculationSuspended = false;
  private pending: Operation[] = [];
  /** What ends with the run that is going on; undefined outside of one. */
  private ofRun: ClientObject[] | undefined;

  /**
   * @param delayForCellEdit Whether its requests wait while a cell is open for typing, in place of failing.
   */
  constructor(
    readonly session: HostSession,
    public delayForCellEdit = false,
  ) {
    this.workbook = new Workbook(this);
    this.application = new Application(this);
  }

  /** Puts a read at the end of the queue; whatever was written before it shows its results first. */
  read(location: string, run: () => void): void {
    this.pending.push({ location, run: () => this.calculated().then(run), changes: false });
  }

  /** Puts a step that only finds something at the end of the queue. */
  find(location: string, run: () => void): void {
    this.pending.push({ location, run, changes: false });
  }

  /** Puts a change at the end of the queue. */
  change(location: string, run: () => void | Promise<void>): void {
    this.pending.push({ location, run: () => this.session.grid.asHost(run), changes: true });
  }

  /**
   * @throws HostError where the object is of another context.
   */
  load(object: ClientObject, properties?: string | string[] | object): void {
    if (object.context !== this) throw new HostError("InvalidRequestContext");
    object.load(properties);
  }

  /** Has an object end with the run that is going on, as all ranges do in the host. */
  endsWithRun(object: ClientObject): void {
    this.ofRun?.push(object);
  }

  /** Runs a batch and syncs what it left; the ranges that it made can't be used after that. */
  async run<T>(batch: (context: RequestContext) => Promise<T>): Promise<T> {
    this.ofRun = [];
    try {
      const promise = batch(this);
      if (typeof promise?.then !== "function") throw new HostError("RunMustReturnPromise");
      const result = await promise;
      await this.sync();
      return result;
    } finally {
      for (const object of this.ofRun) object.release();
      this.ofRun = undefined;
    }
  }

  /**
   * Has everything done that was asked for since the last sync, in order.
   *
   * @throws HostError at the first operation that cannot be done; those before it stay done, the rest are dropped.
   */
  async sync(): Promise<void> {
    const operations = this.pending;
    this.pending = [];
    if (operations.length === 0) return;
    await this.session.editingOver(this.delayForCellEdit);
    await this.session.inTurn(() => this.perform(operations));
  }

  private async perform(operations: Operation[]): Promise<void> {
    const planned = await this.session.countRequest();
    const failAfter = planned?.afterOperations;
    const fail = (location: string) => new HostError(planned?.code ?? "GeneralException", location, planned?.detail);
    let changesDone = 0;
    try {
      for (const { location, run, changes } of operations) {
        if (changes && changesDone === failAfter) throw fail(location);
        try {
          await run();
        } catch (error) {
          throw atLocation(error, location);
        }
        if (changes) changesDone += 1;
      }
      if (failAfter !== undefined) throw fail("RequestContext.sync");
    } finally {
      this.session.changesOfRequests.push(changesDone);
      this.calculationSuspended = false;
      await this.session.grid.settled();
    }
  }

  private async calculated(): Promise<void> {
    if (!this.calculationSuspended) await this.session.grid.settled();
  }
}
