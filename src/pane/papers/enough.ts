import { wouldBeEnough } from "../../quantities/history/enough";
import type { PastEntry } from "../../quantities/history/pastEntry";
import type { Job } from "./makePapers";

/** How the job's stone orders would have fared on the office's past jobs, a sentence each; none without enough of those. */
export function enoughOf({ order, beds }: Job, entries: readonly PastEntry[]): string[] {
  // The order goes by the terms of the first bed, as it does for everything that is ordered together.
  const terms = beds[0]?.worked?.bed.numbers;
  if (!terms) return [];
  return order.lines.flatMap((line) => {
    const { supplier, weightTons: orderTons, order: ordered } = line;
    if (supplier !== "stone yard" || orderTons === undefined || ordered === 0) return [];
    // Past jobs are compared in tons, whatever their stone was sold by.
    const tonsEach = orderTons / ordered;
    const netTons = (line.needed - line.allowance) * tonsEach;
    const said = wouldBeEnough(entries, terms.waste, { netTons, orderTons, stepTons: terms.orderStep * tonsEach });
    return said === undefined ? [] : [`${line.item}: ${said}`];
  });
}
