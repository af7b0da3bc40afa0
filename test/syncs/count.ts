import type { HeadlessHost } from "../headlessHost";
import { type Operation, operations } from "./operations";
import { layDrawings, type Sized } from "./workbooks";

/** An operation, and how many requests it took. */
export interface Counted extends Pick<Operation, "what" | "most"> {
  readonly requests: number;
}

/**
 * Does one operation after the other in a workbook, and counts the requests that each takes.
 *
 * @param host with the workbook in it.
 */
export async function countRequests(host: HeadlessHost, sized: Sized): Promise<Counted[]> {
  await host.grid.settled();
  await layDrawings(sized);
  const counted: Counted[] = [];
  for (const { what, most, ready, run } of operations()) {
    await ready?.();
    const before = host.syncCount;
    await run();
    counted.push({ what, most, requests: host.syncCount - before });
  }
  return counted;
}
