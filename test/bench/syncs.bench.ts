import { countRequests } from "../syncs/count";
import { LARGE, type Sized, TINY } from "../syncs/workbooks";
import { benchHost } from "./benchHost";
import type { Claim, Table } from "./table";

/** What the operations that are promised something stand for in the words of the promise. */
const PROMISED = ["Insert an estimate at a cell", "Read the workbook for a check", "Redraw a bed"];

async function counted(sized: Sized) {
  const host = await benchHost(sized.office);
  const counts = await countRequests(host, sized);
  host.dispose();
  return counts;
}

/** The requests that each operation takes of the host, in a tiny workbook and in a large one. */
export async function bench(): Promise<Table> {
  const [tiny, large] = [await counted(TINY), await counted(LARGE)];
  const rows = tiny.map(({ what, most, requests }, place) => ({
    what,
    [TINY.words]: requests,
    [LARGE.words]: large[place]!.requests,
    "may be": most,
  }));
  const claims = large.flatMap(({ what, most, requests }): Claim[] =>
    PROMISED.includes(what)
      ? [{ what, measured: requests, most, unit: "requests", how: `counted in a workbook of ${LARGE.words}` }]
      : [],
  );
  return { title: "Requests to the spreadsheet program", rows, claims };
}
