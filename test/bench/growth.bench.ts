import { standInForCustomFunctions } from "../fakeCustomFunctions";
import type { Growing, Work } from "./growth/growing";
import { ofJobs } from "./growth/jobs";
import { ofLayouts } from "./growth/layouts";
import { endReads, ofReads } from "./growth/reads";
import { ofSheets } from "./growth/sheets";
import { median, short, type Table } from "./table";

const TIMES = [1, 10, 100] as const;
/** An exponent of 1 is in step with the size; a fifth more is what sorting and the collector of garbage take. */
const MOST = 1.2;
/** A time is the middle one of so many; each of them holds as many runs as this long takes. */
const ROUNDS = 5;
const LEAST_MS = 20;

async function timed(work: Work, runs: number): Promise<number> {
  const start = performance.now();
  for (let n = 0; n < runs; n++) await work();
  return (performance.now() - start) / runs;
}

async function millisecondsOf(work: Work): Promise<number> {
  const once = await timed(work, 1);
  const runs = Math.max(1, Math.ceil(LEAST_MS / once));
  const times: number[] = [];
  for (let n = 0; n < ROUNDS; n++) times.push(await timed(work, runs));
  return median(times);
}

async function grow({ what, of, least, isPuzzle, ready }: Growing) {
  // Once over, so that the first size does not pay for the compiler.
  const small = await ready(least);
  for (let n = 0; n < 20; n++) await small();
  const times: number[] = [];
  for (const size of TIMES) times.push(await millisecondsOf(await ready(least * size)));
  const exponent = (from: number, to: number) => Number(Math.log10(times[to]! / times[from]!).toFixed(2));
  const row = {
    what,
    "at 1×": `${least} ${of}`,
    ...Object.fromEntries(TIMES.map((size, i) => [`${size}×, ms`, short(times[i]!)] as const)),
    "exponent to 10×": exponent(0, 1),
    "to 100×": exponent(1, 2),
  };
  return { row, isPuzzle, worst: Math.max(exponent(0, 1), exponent(1, 2)) };
}

/** How the time of all whose work can run away grows at 1×, 10× and 100× its size. */
export async function bench(): Promise<Table> {
  standInForCustomFunctions();
  const grown: Awaited<ReturnType<typeof grow>>[] = [];
  for (const growing of [...ofSheets, ...ofLayouts, ...ofJobs, ...ofReads]) grown.push(await grow(growing));
  endReads();
  return {
    title: "Growth: time ~ size to the exponent",
    rows: grown.map(({ row }) => row),
    claims: grown
      .filter(({ isPuzzle }) => !isPuzzle)
      .map(({ row: { what }, worst }) => ({
        what: `${what}: growth exponent`,
        measured: worst,
        most: MOST,
        unit: "",
        how: "the worse of 1× to 10× and 10× to 100×; 1 is in step with the size",
      })),
  };
}
