import { type CutList, planCuts } from "../../src/quantities/cutting/planCuts";
import { brokenStocks, randomFrom } from "../cuttingLists";
import { fewestByHighs } from "../references/cuttingHighs";
import type { Table } from "./table";

const STOCK_FT = 20;
/** Lists of each size, so that one odd list does not stand for all. */
const LISTS = 5;
const REPEATS = 3;
/** Runs longer than this need no repeating. */
const LONG_MS = 100;

interface Series {
  readonly lengths: string;
  readonly partsPerFoot: number;
  readonly pieces: readonly number[];
  /** The arc-flow model has a row for each part of the stock: fine parts keep the general solver busy for minutes. */
  readonly mostForHighs: number;
  readonly lengthsOf: (pieces: number, seed: number) => readonly number[];
}

/** Lengths from 1 to 12 ft. */
const lengthsTo = (partsPerFoot: number, count: number, seed: number) => {
  const random = randomFrom(seed);
  return Array.from({ length: count }, () => random(partsPerFoot, 12 * partsPerFoot));
};

const SERIES: readonly Series[] = [
  {
    lengths: "15, to 6 in",
    partsPerFoot: 2,
    pieces: [15, 30, 60, 120, 240],
    mostForHighs: 240,
    lengthsOf: (_, seed) => lengthsTo(2, 15, seed),
  },
  {
    lengths: "12, to 1/16 in",
    partsPerFoot: 192,
    pieces: [25, 50, 100, 200, 400],
    mostForHighs: 0,
    lengthsOf: (_, seed) => lengthsTo(192, 12, seed),
  },
  {
    lengths: "all different, to 1/16 in",
    partsPerFoot: 192,
    pieces: [15, 30, 60, 120, 240],
    mostForHighs: 0,
    lengthsOf: (pieces, seed) => lengthsTo(192, pieces, seed),
  },
  {
    lengths: "stocks in 3, no waste, to 1/2 in",
    partsPerFoot: 24,
    pieces: [15, 30, 60, 120],
    mostForHighs: 0,
    lengthsOf: (pieces, seed) => brokenStocks(seed, STOCK_FT * 24, pieces / 3, 3, 0),
  },
];

function listOf({ partsPerFoot, lengthsOf }: Series, pieces: number, seed: number): Required<CutList> {
  const lengths = lengthsOf(pieces, seed).map((parts) => parts / partsPerFoot);
  const counts = lengths.map((_, n) => Math.floor((pieces + n) / lengths.length));
  return { stockLength: STOCK_FT, lengths, counts, loss: 0 };
}

/** The least of a few runs, since everything else that runs on the machine only ever adds. */
function millisecondsOf(list: CutList): number {
  let least = Number.POSITIVE_INFINITY;
  for (let n = 0; n < REPEATS && (n === 0 || least < LONG_MS); n++) {
    const start = performance.now();
    planCuts(list);
    least = Math.min(least, performance.now() - start);
  }
  return least;
}

async function byHighs({ stockLength, lengths, counts }: Required<CutList>, partsPerFoot: number) {
  const sizes = [...new Set(lengths)];
  const countOf = (size: number) => counts.reduce((total, count, n) => total + (lengths[n] === size ? count : 0), 0);
  const parts = sizes.map((size) => Math.round(size * partsPerFoot));
  const start = performance.now();
  const fewest = await fewestByHighs(stockLength * partsPerFoot, parts, sizes.map(countOf));
  return { fewest, ms: performance.now() - start };
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const rounded = (value: number, digits = 2) => Number(value.toPrecision(digits));

/** How the time to plan cuts grows with the pieces, and beside it a general solver on the same lists. */
export async function bench(): Promise<Table> {
  const rows: Record<string, string | number>[] = [];
  for (const series of SERIES) {
    // Once over, so that no row pays for the compiler.
    for (const pieces of series.pieces) planCuts(listOf(series, pieces, LISTS + 1));
    await fewestByHighs(3, [2, 1], [1, 1]);
    let before: { pieces: number; ms: number } | undefined;
    for (const pieces of series.pieces) {
      const lists = Array.from({ length: LISTS }, (_, seed) => listOf(series, pieces, seed + 1));
      const times = lists.map(millisecondsOf);
      const plans = lists.map((list) => planCuts(list));
      const ms = sum(times) / LISTS;
      const withHighs = pieces <= series.mostForHighs;
      const others: Awaited<ReturnType<typeof byHighs>>[] = [];
      for (const list of withHighs ? lists : []) others.push(await byHighs(list, series.partsPerFoot));
      const highsMs = sum(others.map((other) => other.ms)) / LISTS;
      rows.push({
        lengths: series.lengths,
        pieces,
        "stocks, 5 lists": sum(plans.map(({ count }) => count)),
        proven: `${plans.filter(({ proven }) => proven).length} of ${LISTS}`,
        "ms a list": rounded(ms),
        "longest, ms": rounded(Math.max(...times)),
        "growth exponent": before ? rounded(Math.log(ms / before.ms) / Math.log(pieces / before.pieces)) : "",
        "HiGHS stocks": withHighs ? sum(others.map(({ fewest }) => fewest)) : "",
        "HiGHS ms": withHighs ? rounded(highsMs) : "",
        "HiGHS ÷ ours": withHighs ? rounded(highsMs / ms) : "",
      });
      before = { pieces, ms };
    }
  }
  return { title: "Cuts from 20 ft stock, by number of pieces (time ~ pieces to the growth exponent)", rows };
}
