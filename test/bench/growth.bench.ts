import type { Bed } from "../../src/layout/bed";
import { layOutBed } from "../../src/layout/layOutBed";
import { planCuts } from "../../src/quantities/cutting/planCuts";
import type { CellValue } from "../../src/review/facts";
import { reviewAtOnce } from "../../src/review/review";
import { callFunction } from "../callFunction";
import { factsOf, knowledge } from "../reviewWorkbook";

const TIMES = [1, 10, 100] as const;
const REPEATS = 3;

/** Something whose work grows: what it is made of, how many at 1×, and a way to make so many ready. */
interface Growing {
  readonly what: string;
  readonly of: string;
  readonly least: number;
  /** Gives the work itself, so that what only prepares it is not measured. */
  readonly ready: (size: number) => () => unknown;
}

const workbook = (rows: number) => {
  const headings: CellValue[] = [
    "Bed",
    "Length (ft)",
    "Width (ft)",
    "Depth (in)",
    "Area (sq ft)",
    "Stone (tons)",
    "Cost",
  ];
  const beds = Array.from({ length: rows }, (_, place): CellValue[] => {
    const r = place + 2;
    return [
      `Bed ${place + 1}`,
      20 + (place % 30),
      4 + (place % 3),
      2.5,
      `=B${r}*C${r}`,
      `=BED.STONE_TONS(E${r},D${r},"river rock")`,
      `=F${r}*62`,
    ];
  });
  return factsOf({ sheets: [{ name: "Jobs", rows: [headings, ...beds] }] });
};

/** A bed of one size and shape, with bays and spurs, given by more and more points. */
const bedOf = (corners: number): Bed => ({
  kind: "points",
  points: Array.from({ length: corners }, (_, i) => {
    const angle = (2 * Math.PI * i) / corners;
    const radius = 15 + 4 * Math.sin(3 * angle) + Math.cos(5 * angle);
    return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
  }),
});

const rules = {
  rollWidthFt: 6,
  rollLengthFt: 50,
  overlapIn: 6,
  border: { pieceLengthFt: 8, lapIn: 2, stakeSpacingIn: 30 },
};

const GROWING: readonly Growing[] = [
  {
    what: "Check of a job list",
    of: "rows",
    least: 100,
    ready: (rows) => {
      const facts = workbook(rows);
      return () => reviewAtOnce(facts, knowledge, { call: callFunction });
    },
  },
  {
    what: "A bed laid out",
    of: "corners",
    least: 12,
    ready: (corners) => {
      const bed = bedOf(corners);
      return () => layOutBed(bed, rules);
    },
  },
  {
    what: "Pieces fitted into stocks",
    of: "pieces",
    least: 12,
    ready: (pieces) => {
      const lengths = Array.from({ length: 12 }, (_, n) => 1 + ((n * 7) % 23) / 2);
      const counts = lengths.map((_, n) => Math.floor((pieces + n) / lengths.length));
      return () => planCuts({ stockLength: 20, lengths, counts, loss: 0 });
    },
  },
];

function millisecondsOf(work: () => unknown): number {
  let least = Number.POSITIVE_INFINITY;
  for (let n = 0; n < REPEATS; n++) {
    const start = performance.now();
    work();
    least = Math.min(least, performance.now() - start);
  }
  return least;
}

/** How the time of the three things whose work can run away grows at 1×, 10× and 100× their size. */
export async function bench(): Promise<{ title: string; rows: Record<string, string | number>[] }> {
  const rows = GROWING.map(({ what, of, least, ready }) => {
    // Once over, so that the first size does not pay for the compiler.
    for (let n = 0; n < 20; n++) ready(least)();
    const times = TIMES.map((size) => millisecondsOf(ready(least * size)));
    const exponent = (from: number, to: number) => Number(Math.log10(times[to]! / times[from]!).toFixed(2));
    const entries = TIMES.map((size, i) => [`${size}×, ms`, Number(times[i]!.toPrecision(3))] as const);
    return {
      what,
      "at 1×": `${least} ${of}`,
      ...Object.fromEntries(entries),
      "exponent to 10×": exponent(0, 1),
      "to 100×": exponent(1, 2),
    };
  });
  return { title: "Growth: time ~ size to the exponent", rows };
}
