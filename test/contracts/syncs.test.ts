import { describe, expect, test } from "vitest";
import { createProductHost } from "../productHost";
import { countRequests } from "../syncs/count";
import { LARGE, TINY } from "../syncs/workbooks";

/*
 * A request to the host is the unit of cost: beside its way there and back, what is asked for in it hardly counts. So
 * an operation takes as many in a large workbook as in a tiny one.
 */
describe("the requests that an operation takes", () => {
  test("are few, and as few in a workbook of 100 sheets, 10,000 rows and 50 drawings as in a tiny one", async () => {
    const counts = [];
    for (const sized of [TINY, LARGE]) {
      const host = await createProductHost(sized.office);
      counts.push(await countRequests(host, sized));
      host.dispose();
    }
    const [tiny, large] = counts;
    expect(large).toEqual(tiny);
    expect(tiny!.length).toBeGreaterThan(20);
    const over = tiny!.filter(({ requests, most }) => requests > most || requests === 0);
    expect(over).toEqual([]);
  }, 300_000);
});
