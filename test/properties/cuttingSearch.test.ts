import { expect, test } from "vitest";
import { dive } from "../../src/quantities/cutting/dive";
import { fillings } from "../../src/quantities/cutting/fillings";
import { improve } from "../../src/quantities/cutting/improve";
import { Incumbent } from "../../src/quantities/cutting/incumbent";
import { type Job, type Pieces, type Plan, stocksIn, sumOver, without } from "../../src/quantities/cutting/job";
import { quickBound } from "../../src/quantities/cutting/quickBound";
import { quickPlan } from "../../src/quantities/cutting/quickPlan";
import { relax } from "../../src/quantities/cutting/relax";
import { search } from "../../src/quantities/cutting/search";
import { Steps } from "../../src/quantities/cutting/steps";
import { brokenStocks, randomFrom } from "../cuttingLists";
import { fewestBySubsets } from "./cuttingBySubsets";

interface Broken {
  readonly job: Job;
  readonly pieces: Pieces;
  readonly lengths: readonly number[];
}

function broken(seed: number, capacity: number, stocks: number, parts: number, trim: number): Broken {
  const lengths = brokenStocks(seed, capacity, stocks, parts, trim);
  const sizes = [...new Set(lengths)].sort((a, b) => b - a);
  const pieces = sizes.map((size) => lengths.filter((length) => length === size).length);
  return { job: { capacity, sizes }, pieces, lengths };
}

function expectCut(plan: Plan, { job, pieces }: Broken): void {
  const cut = pieces.map(() => 0);
  for (const { pattern, times } of plan) {
    expect(sumOver(pattern, job.sizes)).toBeLessThanOrEqual(job.capacity);
    pattern.at.forEach((size, n) => {
      cut[size]! += times * pattern.copies[n]!;
    });
  }
  expect(cut).toEqual(pieces);
}

const unhurried = () => new Steps(1e8);

/** Lists of 9 to 12 pieces, from 3 stocks or fewer, on which longest-first takes 4. */
const trapped = [30, 60, 200].flatMap((capacity) =>
  Array.from({ length: 600 }, (_, seed) => broken(seed + 1, capacity, 3, 3 + (seed % 2), capacity / 30))
    .filter(({ job, pieces }) => stocksIn(quickPlan(job, pieces)) > 3)
    .map((list) => ({ ...list, fewest: fewestBySubsets(list.job.capacity, list.lengths) })),
);

test("the search finds the fewest by all subsets of the pieces, and that one less is too few", () => {
  expect(trapped.length).toBeGreaterThan(50);
  for (const list of trapped) {
    const { job, pieces, fewest } = list;
    const plan = search(job, pieces, fewest, [], unhurried())!;
    expect(stocksIn(plan)).toBe(fewest);
    expectCut(plan, list);
    expect(search(job, pieces, fewest - 1, [], unhurried())).toBeNull();
  }
});

test("if the pieces can be cut from so many stocks, then with one of the fillings that can matter", () => {
  for (let seed = 1; seed <= 300; seed++) {
    const random = randomFrom(seed);
    const capacity = random(20, 40);
    const lengths = Array.from({ length: random(4, 9) }, () => random(3, 0.6 * capacity)).sort((a, b) => b - a);
    const job: Job = { capacity, sizes: [...new Set(lengths)] };
    const pieces = job.sizes.map((size) => lengths.filter((length) => length === size).length);
    const stocks = fewestBySubsets(capacity, lengths);
    // Stopped early by some, so that the worth it goes by is a rough one too.
    const relaxed = relax(job, pieces, [], unhurried(), () => seed % 3 > 0);
    const works = fillings(job, pieces, stocks, relaxed, unhurried()).some((pattern) => {
      expect(pattern.at).toContain(0);
      const rest = without(pieces, pattern).flatMap((count, size) => new Array<number>(count).fill(job.sizes[size]!));
      return fewestBySubsets(capacity, rest) < stocks;
    });
    expect(works, `list ${seed}: ${lengths} from ${capacity}`).toBe(true);
  }
});

test("haggling and diving give whole plans, and prove no more than is true", () => {
  let improved = 0;
  let dived = 0;
  for (let seed = 1; seed <= 10; seed++) {
    const list = broken(seed, 1000, 12, 4, 12);
    const { job, pieces } = list;
    const incumbent = new Incumbent(quickPlan(job, pieces), quickBound(job, pieces));
    const longestFirst = incumbent.stocks;
    improve(job, pieces, 10, incumbent, unhurried());
    expectCut(incumbent.plan, list);
    if (incumbent.stocks < longestFirst) improved += 1;
    for (const roundUp of [0.2, 0.5, 1]) {
      const again = new Incumbent(quickPlan(job, pieces), 1);
      dive(job, pieces, roundUp, [], again, unhurried());
      expectCut(again.plan, list);
      expect(again.atLeast).toBeLessThanOrEqual(12);
      expect(again.atLeast).toBeGreaterThanOrEqual(quickBound(job, pieces));
      if (again.stocks < longestFirst) dived += 1;
    }
  }
  expect(improved).toBeGreaterThan(0);
  expect(dived).toBeGreaterThan(0);
});
