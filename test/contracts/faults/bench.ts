import type { HeadlessHost } from "../../headlessHost";
import { createProductHost } from "../../productHost";
import type { Operation } from "./operation";
import { difference, type Snapshot, snapshotOf } from "./snapshot";

/** What a person is told, and whether it was done. */
export interface Told {
  readonly done: boolean;
  readonly text: string;
}

/** A deed tried once. */
export interface Try extends Told {
  /** What differs from how the workbook was, for a message; "" for nothing. */
  readonly changed: string;
}

/** What goes wrong. */
export interface Situation {
  /** Brings it about before the workbook is looked at. */
  readonly arrange?: (host: HeadlessHost) => void | Promise<void>;
  /** Plans what goes wrong later; the workbook itself stays as it is. */
  readonly plan?: (host: HeadlessHost) => void;
  /** What happens to the workbook while the deed runs; it is part of how the workbook is to be then. */
  readonly meanwhile?: {
    readonly beforeSync: number;
    readonly happens: (host: HeadlessHost) => void | Promise<void>;
  };
}

/** The workbook of an operation, made ready once; a new copy of it is opened after each change. */
export class Bench {
  private host: HeadlessHost | undefined;
  private initial: Snapshot | undefined;
  private readonly expected = new Map<unknown, Snapshot>();
  private readonly selection: { address: string; sheet: string };

  private constructor(
    private readonly operation: Operation,
    private readonly kept: ReturnType<HeadlessHost["save"]>,
    private readonly deed: () => Promise<Told>,
    front: { address: string; sheet: string },
  ) {
    this.selection = front;
  }

  static async of(operation: Operation): Promise<Bench> {
    const host = await createProductHost(operation.office);
    try {
      const deed = await operation.ready(host);
      return new Bench(operation, host.save(), deed, { sheet: operation.front, address: operation.selected });
    } finally {
      host.dispose();
    }
  }

  /** The workbook as it was made ready, with nothing in the way. */
  async fresh(): Promise<HeadlessHost> {
    this.host ??= await createProductHost(undefined, structuredClone(this.kept));
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

  /** Does the deed once, in trouble. */
  async play({ arrange, plan, meanwhile }: Situation): Promise<Try> {
    const expected = meanwhile && (await this.expectedAfter(meanwhile.happens));
    const host = await this.fresh();
    await arrange?.(host);
    if (!arrange) this.initial ??= snapshotOf(host);
    const before = expected ?? (arrange ? snapshotOf(host) : this.initial);
    plan?.(host);
    if (meanwhile) host.session.beforeSync(meanwhile.beforeSync, () => meanwhile.happens(host));
    const told = await this.deed().catch((error: Error): Told => ({ done: false, text: textOf(error) }));
    host.session.planNothing();
    await host.grid.settled();
    const changed = difference(before, snapshotOf(host));
    if (changed || meanwhile) this.discard();
    return { ...told, changed };
  }

  /** How the workbook is where only that happens. */
  private async expectedAfter(happens: (host: HeadlessHost) => void | Promise<void>): Promise<Snapshot> {
    const known = this.expected.get(happens);
    if (known) return known;
    const host = await this.fresh();
    await happens(host);
    await host.grid.settled();
    const snapshot = snapshotOf(host);
    this.expected.set(happens, snapshot);
    this.discard();
    return snapshot;
  }

  /** How many requests the deed takes where nothing is in its way. */
  async syncs(): Promise<number> {
    const host = await this.fresh();
    const before = host.syncCount;
    const { done, text } = await this.deed();
    if (!done) throw new Error(`${this.operation.title} is not done where nothing is in its way: ${text}`);
    const count = host.syncCount - before;
    this.discard();
    return count;
  }
}

/** Only what is made for people may reach them. */
function textOf(error: Error): string {
  if (error.name === "WorkbookTrouble" || error.name === "Problem") return error.message;
  throw error;
}

export function select(sheet: string, address: string): Promise<void> {
  return Excel.run(async (context) => {
    context.workbook.worksheets.getItem(sheet).getRange(address).select();
    await context.sync();
  });
}
