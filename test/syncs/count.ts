import type { HeadlessHost } from "../headlessHost";
import { type Operation, operations } from "./operations";
import { layDrawings, type Sized } from "./workbooks";

/** An operation, and how many requests it took that it waits for. */
export interface Counted extends Pick<Operation, "what" | "most"> {
  readonly requests: number;
}

/** On the client library they are counted as they come over the wire, and in the stand-in as it does them. */
const awaitedBy = ({ wire, syncCount }: HeadlessHost) => wire?.awaited ?? syncCount;

/**
 * Does one operation after the other in a workbook, and counts the awaited requests that each takes.
 *
 * @param host with the workbook in it.
 */
export async function countRequests(host: HeadlessHost, sized: Sized): Promise<Counted[]> {
  await host.grid.settled();
  await layDrawings(sized);
  const counted: Counted[] = [];
  for (const { what, most, ready, run } of operations()) {
    await ready?.();
    const before = awaitedBy(host);
    await run();
    counted.push({ what, most, requests: awaitedBy(host) - before });
  }
  return counted;
}
