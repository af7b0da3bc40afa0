import { expect, test } from "vitest";
import { dive } from "./dive";
import { eachPattern } from "./eachPattern";
import { fewestStocks } from "./fewestStocks";
import { fillings } from "./fillings";
import { improve } from "./improve";
import { Incumbent } from "./incumbent";
import { type Job, type Pattern, type Pieces, stocksIn } from "./job";
import { quickBound } from "./quickBound";
import { quickPlan } from "./quickPlan";
import { relax } from "./relax";
import { search } from "./search";
import { Steps } from "./steps";

/*
 * The solver counts its work in steps, so a list takes the same steps on every machine. These were measured, not worked
 * out by hand: they hold the solver to its speed and to the way it goes about a list. Whoever changes how it works
 * measures them again, and sees whether it has become slower.
 */

const listOf = (capacity: number, lengths: readonly number[]): { job: Job; pieces: Pieces } => {
  const sizes = [...new Set(lengths)].sort((a, b) => b - a);
  return { job: { capacity, sizes }, pieces: sizes.map((size) => lengths.filter((one) => one === size).length) };
};
const lists = {
  // 8 + 6 + 2 and 7 + 5 + 4 fill two stocks; longest first takes three.
  trap: listOf(16, [8, 7, 6, 5, 4, 2]),
  // Pieces of 1/3, 1/4 and 1/11 of a stock.
  thirds: { job: { capacity: 132, sizes: [44, 33, 12] }, pieces: [14, 19, 50] },
  // Chvátal, Linear Programming (1983), chapter 13: from memory.
  chvatal: { job: { capacity: 100, sizes: [45, 36, 31, 14] }, pieces: [97, 610, 395, 211] },
  mixed: listOf(
    152,
    Array.from({ length: 40 }, (_, n) => 20 + ((n * 37) % 61)),
  ),
  many: listOf(
    1000,
    Array.from({ length: 33 }, (_, n) => 120 + ((n * 173) % 331)),
  ),
  // Rounding one fractional plan up gives 30, another 29.
  several: {
    job: { capacity: 100, sizes: [55, 49, 46, 45, 44, 34, 20, 17, 11] },
    pieces: [12, 7, 11, 2, 9, 13, 11, 9, 6],
  },
  // Only the search tells that the 14 of the bound are too few.
  tight: { job: { capacity: 100, sizes: [51, 49, 39, 33, 32, 23, 21] }, pieces: [3, 8, 7, 5, 1, 9, 8] },
  uneven: {
    job: { capacity: 997, sizes: [611, 503, 487, 401, 353, 331, 283, 251, 211, 197, 149, 101] },
    pieces: [2, 1, 4, 3, 5, 2, 7, 4, 6, 3, 8, 5],
  },
};
type Name = keyof typeof lists;

const unhurried = () => new Steps(1e8);
const start = ({ job, pieces }: (typeof lists)[Name]) => new Incumbent(quickPlan(job, pieces), quickBound(job, pieces));

/** By what is measured; the comment says what the numbers are. */
const expected: Record<string, Record<Name, readonly (number | undefined)[]>> = {
  // Stocks of the quick plan, and the bound.
  quick: {
    several: [30, 29],
    tight: [15, 14],
    uneven: [15, 14],
    trap: [3, 2],
    thirds: [15, 14],
    chvatal: [485, 416],
    mixed: [14, 13],
    many: [10, 9],
  },
  // Patterns found, the worth of the last, and steps.
  patterns: {
    several: [1, 98, 39],
    tight: [1, 98, 35],
    uneven: [2, 987, 234],
    trap: [1, 14, 12],
    thirds: [1, 126, 15],
    chvatal: [1, 98, 21],
    mixed: [2, 147, 523],
    many: [4, 994, 632],
  },
  // Value proven, patterns in the plan and in the pool, and steps.
  relax: {
    several: [28.888882, 8, 11, 1640.875],
    tight: [13.999997, 6, 5, 734.375],
    uneven: [13.949997, 12, 17, 4516.5],
    trap: [2, 2, 5, 454.25],
    thirds: [13.962118, 3, 0, 71],
    chvatal: [452.249892, 4, 2, 175],
    mixed: [12.934207, 38, 69, 69261.5],
    many: [8.932329, 33, 50, 72903],
  },
  // Fillings of the first stock, and steps.
  fillings: {
    several: [2, 131],
    tight: [1, 39],
    uneven: [3, 147],
    trap: [1, 35],
    thirds: [2, 29],
    chvatal: [2, 43],
    mixed: [2, 4468],
    many: [11, 12710],
  },
  // Stocks, what is proven, patterns in the pool, and steps.
  dive: {
    several: [29, 29, 9, 1101.125],
    tight: [15, 14, 7, 690.75],
    uneven: [14, 14, 14, 1728.5],
    trap: [2, 2, 2, 148],
    thirds: [15, 14, 0, 112],
    chvatal: [453, 453, 2, 155],
    mixed: [13, 13, 63, 41025.625],
    many: [9, 9, 38, 25545.75],
  },
  // Stocks, and steps.
  improve: {
    several: [29, 1382],
    tight: [15, 13489],
    uneven: [14, 1040],
    trap: [2, 53],
    thirds: [15, 4570],
    chvatal: [453, 14989],
    mixed: [13, 2333],
    many: [9, 2146],
  },
  // Stocks found where the bound is enough, patterns in the pool, and steps.
  search: {
    several: [29, 14, 4350.625],
    tight: [undefined, 6, 1333.375],
    uneven: [14, 17, 4536.25],
    trap: [2, 2, 148],
    thirds: [undefined, 2, 508],
    chvatal: [undefined, 1, 49],
    mixed: [13, 95, 92821],
    many: [9, 48, 36357.5],
  },
  // Stocks, and what is proven: in plenty of steps, in 3,000 and in 300.
  fewest: {
    several: [29, 29, 29, 29, 30, 29],
    tight: [15, 15, 15, 15, 15, 14],
    uneven: [14, 14, 14, 14, 15, 14],
    trap: [2, 2, 2, 2, 3, 2],
    thirds: [15, 15, 15, 15, 15, 14],
    chvatal: [453, 453, 453, 453, 453, 453],
    mixed: [13, 13, 13, 13, 14, 13],
    many: [9, 9, 9, 9, 10, 9],
  },
};

const measured: Record<string, (name: Name) => (number | undefined)[]> = {
  quick: (name) => {
    const { job, pieces } = lists[name];
    return [stocksIn(quickPlan(job, pieces)), quickBound(job, pieces)];
  },
  patterns: (name) => {
    const { job, pieces } = lists[name];
    const steps = unhurried();
    let [count, last] = [0, 0];
    const options = { room: job.capacity, worth: job.sizes.map((size) => size - (size % 7)), least: 1 };
    eachPattern(job, pieces, { ...options, want: "dearest" }, steps, (_, sum) => {
      count++;
      last = sum;
      return sum + 1;
    });
    return [count, last, steps.taken];
  },
  relax: (name) => {
    const { job, pieces } = lists[name];
    const steps = unhurried();
    const pool: Pattern[] = [];
    const { value, plan } = relax(job, pieces, pool, steps, () => false);
    return [Number(value.toFixed(6)), plan.length, pool.length, steps.taken];
  },
  fillings: (name) => {
    const { job, pieces } = lists[name];
    const relaxed = relax(job, pieces, [], unhurried(), () => false);
    const steps = unhurried();
    return [fillings(job, pieces, Math.ceil(relaxed.value), relaxed, steps).length, steps.taken];
  },
  dive: (name) => {
    const incumbent = start(lists[name]);
    const steps = unhurried();
    const pool: Pattern[] = [];
    for (const roundUp of [0.5, 1]) dive(lists[name].job, lists[name].pieces, roundUp, pool, incumbent, steps);
    return [incumbent.stocks, incumbent.atLeast, pool.length, steps.taken];
  },
  improve: (name) => {
    const incumbent = start(lists[name]);
    const steps = unhurried();
    improve(lists[name].job, lists[name].pieces, 20, incumbent, steps);
    return [incumbent.stocks, steps.taken];
  },
  search: (name) => {
    const { job, pieces } = lists[name];
    const steps = unhurried();
    const pool: Pattern[] = [];
    const plan = search(job, pieces, start(lists[name]).atLeast, pool, steps);
    return [plan ? stocksIn(plan) : undefined, pool.length, steps.taken];
  },
  fewest: (name) => {
    const { job, pieces } = lists[name];
    return [1e7, 3000, 300].flatMap((steps) => {
      const { stocks, atLeast } = fewestStocks(job, pieces, steps);
      return [stocks, atLeast];
    });
  },
};

const cases = Object.keys(measured).flatMap((what) =>
  (Object.keys(lists) as Name[]).map((name) => [what, name] as const),
);
test.each(cases)("%s of %s takes its measured steps", (what, name) => {
  expect(measured[what]!(name)).toEqual(expected[what]![name]);
});
