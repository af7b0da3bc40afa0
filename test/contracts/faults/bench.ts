import type { Area } from "../../../src/practice/grid/port";
import { must } from "../../../src/quantities/must";
import type { HeadlessHost } from "../../headlessHost";
import { createProductHost } from "../../productHost";
import type { Operation } from "./operation";
import { difference, type Snapshot, sheetsAdded, snapshotOf, withoutIds } from "./snapshot";

/** What a person is told, and whether it was done. */
export interface Report {
  readonly done: boolean;
  readonly text: string;
}

/** A action tried once. */
export interface Try extends Report {
  /** What differs from how the workbook was, for a message; "" for nothing. */
  readonly changed: string;
  /** Where it is said to be done, what differs from all of it done, in each order in which it can be; "" for nothing. */
  readonly lacking: readonly string[];
  /** Names of sheets that were not there before. */
  readonly newSheets: readonly string[];
}

/** The action done where nothing is in its way. */
export interface Clean {
  readonly syncs: number;
  /** How many changes each of its requests made. */
  readonly changes: readonly number[];
}

type Happening = (host: HeadlessHost) => void | Promise<void>;

/** What goes wrong. */
export interface Situation {
  /** Brings it about before the workbook is looked at. */
  readonly arrange?: Happening;
  /** What to bring about before the action for a workbook in which all of it is done; as arranged where left out. */
  readonly arrangeDone?: Happening;
  /** Plans what goes wrong later; the workbook itself stays as it is. */
  readonly plan?: (host: HeadlessHost) => void;
  /** What happens to the workbook while the action runs; it is part of how the workbook is to be then. */
  readonly meanwhile?: {
    readonly beforeSync: number;
    readonly happens: Happening;
  };
}

/** The workbook of an operation, made ready once; a new copy of it is opened after each change. */
export class Bench {
  /** A copy that nothing was changed in, where there is one. */
  private host: HeadlessHost | undefined;
  private initial: Snapshot | undefined;
  private readonly known = new Map<string, Snapshot>();
  private readonly keys = new Map<unknown, number>();
  /** The workbook in which the action was done with nothing in its way. */
  private done: { readonly kept: ReturnType<HeadlessHost["save"]>; readonly snapshot: Snapshot } | undefined;
  private readonly selection: { address: string; sheet: string };

  private constructor(
    private readonly operation: Operation,
    private readonly kept: ReturnType<HeadlessHost["save"]>,
    private readonly action: () => Promise<Report>,
    front: { address: string; sheet: string },
  ) {
    this.selection = front;
  }

  static async of(operation: Operation): Promise<Bench> {
    const host = await createProductHost(operation.office);
    try {
      const action = await operation.ready(host);
      return new Bench(operation, host.save(), action, { sheet: operation.front, address: operation.selected });
    } finally {
      host.dispose();
    }
  }

  /** The workbook as it was made ready, with nothing in the way. */
  async fresh(): Promise<HeadlessHost> {
    this.host ??= await createProductHost(undefined, structuredClone(this.kept), true);
    const { session } = this.host;
    session.planNothing();
    session.protectedSheets.clear();
    session.structureProtected = false;
    session.pictureSelected = false;
    await select(this.selection.sheet, this.selection.address);
    return this.host;
  }

  discard(): void {
    this.host?.dispose();
    this.host = undefined;
  }

  /** Does the action once, in trouble. */
  async play({ arrange, arrangeDone = arrange, plan, meanwhile }: Situation): Promise<Try> {
    const expected = meanwhile && (await this.after([meanwhile.happens]));
    const host = await this.fresh();
    await arrange?.(host);
    if (!arrange) this.initial ??= snapshotOf(host);
    const before = expected ?? (arrange ? snapshotOf(host) : this.initial);
    plan?.(host);
    if (meanwhile) host.session.beforeSync(meanwhile.beforeSync, () => meanwhile.happens(host));
    const told = await this.action().catch((error: Error): Report => ({ done: false, text: textOf(error) }));
    host.session.planNothing();
    await host.grid.settled();
    const now = snapshotOf(host);
    const changed = difference(before, now);
    if (changed || meanwhile) this.discard();
    const newSheets = sheetsAdded(before!, now);
    if (!told.done || !changed) return { ...told, changed, lacking: [""], newSheets };
    // What happened meanwhile may as well have happened before it, or after it.
    const after = await this.lacks(now, [arrangeDone, "action", meanwhile?.happens]);
    const otherwise = after && meanwhile ? await this.lacks(now, [arrangeDone, meanwhile.happens, "action"]) : after;
    return { ...told, changed, lacking: [after, otherwise], newSheets };
  }

  /** What differs from a workbook in which only these steps were taken, one after the other. */
  private async lacks(now: Snapshot, steps: readonly (Happening | "action" | undefined)[]): Promise<string> {
    return difference(withoutIds(await this.after(steps)), withoutIds(now));
  }

  /** The workbook after these steps alone; played once. */
  private async after(steps: readonly (Happening | "action" | undefined)[]): Promise<Snapshot> {
    const key = this.keyOfAll(steps);
    const known = this.known.get(key);
    if (known) return known;
    const [first, ...rest] = steps.filter((step) => step !== undefined);
    const done = first === "action" ? await this.openDone() : undefined;
    const host = done ?? (await this.fresh());
    for (const step of done ? rest : steps) {
      if (step === "action") await this.action().catch(() => undefined);
      else await step?.(host);
    }
    await host.grid.settled();
    const snapshot = snapshotOf(host);
    this.known.set(key, snapshot);
    this.discard();
    return snapshot;
  }

  /** A copy of the workbook in which the action was done, at once; undefined where a copy doesn't open just as it was. */
  private async openDone(): Promise<HeadlessHost | undefined> {
    if (!this.done) return undefined;
    this.discard();
    this.host = await createProductHost(undefined, structuredClone(this.done.kept), true);
    const { grid } = this.host;
    const { front, selection } = this.done.snapshot as { front: string; selection: Area };
    const { id } = must(grid.sheets.list().find(({ name }) => name === front));
    grid.sheets.activate(id);
    grid.selection.set({ ...selection, sheetId: id });
    if (difference(this.done.snapshot, snapshotOf(this.host)) === "") return this.host;
    this.discard();
    this.done = undefined;
    return undefined;
  }

  private keyOfAll(steps: readonly unknown[]): string {
    return steps.map((step) => this.keyOf(step)).join(" ");
  }

  private keyOf(step: unknown): number {
    const key = this.keys.get(step) ?? this.keys.size;
    this.keys.set(step, key);
    return key;
  }

  /** Sheets of the workbook as it was made ready. */
  get sheetNames(): readonly string[] {
    return Object.values(this.kept.sheets).map(({ name = "" }) => name);
  }

  /** Does the action where nothing is in its way. */
  async clean(): Promise<Clean> {
    const host = await this.fresh();
    const before = host.syncCount;
    const { done, text } = await this.action();
    if (!done) throw new Error(`${this.operation.title} is not done where nothing is in its way: ${text}`);
    const syncs = host.syncCount - before;
    const changes = host.session.changesOfRequests.slice(-syncs);
    await host.grid.settled();
    this.done = { kept: host.save(), snapshot: snapshotOf(host) };
    this.known.set(this.keyOfAll([undefined, "action", undefined]), this.done.snapshot);
    this.discard();
    return { syncs, changes };
  }
}

/** Only what is made for people may reach them. */
function textOf(error: Error): string {
  if (error.name === "WorkbookFailure" || error.name === "Problem") return error.message;
  throw error;
}

export function select(sheet: string, address: string): Promise<void> {
  return Excel.run(async (context) => {
    context.workbook.worksheets.getItem(sheet).getRange(address).select();
    await context.sync();
  });
}
