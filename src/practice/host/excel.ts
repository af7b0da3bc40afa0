import { createWorkbook } from "./createWorkbook";
import { enums } from "./enums";
import { HostError } from "./error";
import type { RequestContext } from "./requestContext";
import type { HostSession } from "./session";

type Batch<T> = (context: RequestContext) => Promise<T>;

/** What `Excel.run` takes before the batch. */
export interface RunOptions {
  /** Has each request wait until nobody is typing into a cell, in place of failing. */
  readonly delayForCellEdit?: boolean;
}

/** What `Excel` offers to an add-in. */
export interface ExcelGlobal extends Readonly<typeof enums> {
  createWorkbook(base64?: string): Promise<void>;
  run<T>(batch: Batch<T>): Promise<T>;
  run<T>(options: RunOptions | { readonly context: RequestContext } | RequestContext, batch: Batch<T>): Promise<T>;
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
    const context = contextOf(host, given) ?? host.newContext((given as RunOptions).delayForCellEdit);
    const result = await batch(context);
    await context.sync();
    return result;
  }
  return { ...enums, run, createWorkbook: async (base64) => createWorkbook(await session, base64) };
}

function contextOf(host: HostSession, given: object): RequestContext | undefined {
  if (host.isContext(given)) return given;
  return "context" in given && host.isContext(given.context) ? given.context : undefined;
}
