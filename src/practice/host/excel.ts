import { createWorkbook } from "./createWorkbook";
import { enums } from "./enums";
import { HostError } from "./error";
import type { RequestContext } from "./requestContext";
import type { HostSession } from "./session";

type Batch<T> = (context: RequestContext) => Promise<T>;

/** What `Excel.run` takes before the batch. */
export interface RunOptions {
  /** Has each request wait until no one is typing into a cell, in a host with the set DelayForCellEdit. */
  readonly delayForCellEdit?: boolean;
}

/** What `Excel` offers to an add-in. */
export interface ExcelGlobal extends Readonly<typeof enums> {
  createWorkbook(base64?: string): Promise<void>;
  run<T>(batch: Batch<T>): Promise<T>;
  run<T>(options: RunOptions | RequestContext, batch: Batch<T>): Promise<T>;
}

/**
 * Makes the host's `Excel` global.
 *
 * @param session Resolves once the grid is up; a run waits for it.
 */
export function createExcel(session: Promise<HostSession>): ExcelGlobal {
  async function run<T>(first: Batch<T> | object, second?: Batch<T>): Promise<T> {
    const batch = typeof first === "function" ? (first as Batch<T>) : second;
    if (!batch) throw new HostError("InvalidArgument", "Excel.run");
    const given = typeof first === "function" ? {} : first;
    const host = await session;
    const context = host.isContext(given) ? given : host.newContext();
    context.delayForCellEdit = (given as RunOptions).delayForCellEdit === true && hostDelays();
    return context.run(batch);
  }
  return { ...enums, run, createWorkbook: async (base64) => createWorkbook(await session, base64) };
}

/** Only a host that reports this set delays requests; any other ignores the option, and says nothing. */
const hostDelays = () => Office.context.requirements.isSetSupported("DelayForCellEdit");
