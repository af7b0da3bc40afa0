import * as statistics from "simple-statistics";
import { describe, expect, test } from "vitest";
import { learn } from "../../src/quantities/history/learn";
import { medianInterval } from "../../src/quantities/history/medianInterval";
import type { PastEntry } from "../../src/quantities/history/pastEntry";
import { randomFrom } from "../cuttingLists";

/** Ratios whose median is planted, some spread and skewed as hours are. */
function ratios(seed: number, planted: number) {
  const random = randomFrom(seed);
  const share = () => (random(0, 999_999) + 0.5) / 1_000_000;
  return () => planted * Math.exp(0.18 * statistics.probit(share()));
}

describe("with planted truth", () => {
  test.each([6, 9, 14, 25])("the interval of %d jobs holds it as often as stated", (count) => {
    const trials = 4000;
    const planted = 1.12;
    const next = ratios(count, planted);
    let held = 0;
    let stated = 0;
    for (let trial = 0; trial < trials; trial++) {
      const { low, high, coverage } = medianInterval(Array.from({ length: count }, next));
      stated = coverage;
      if (low <= planted && planted <= high) held++;
    }
    const oftenOff = Math.sqrt((stated * (1 - stated)) / trials);
    expect(Math.abs(held / trials - stated)).toBeLessThan(3.5 * oftenOff);
  });

  const entries = (seed: number, count: number, planted: number): PastEntry[] => {
    const next = ratios(seed, planted);
    const random = randomFrom(seed + 1000);
    return Array.from({ length: count }, (_, n) => {
      const estimated = random(4, 40) / 2;
      return {
        job: `Job ${n}`,
        date: 46_000 + n,
        measure: "border",
        estimated,
        actual: estimated * next(),
        setThen: 14,
      };
    });
  };
  const proposals = (change: (list: PastEntry[]) => PastEntry[]) =>
    Array.from({ length: 60 }, (_, seed) => {
      const list = change(entries(seed + 1, 25, 1.25));
      const { proposal, jobs } = learn(list, { edgingRate: 14 })[0]!;
      return { proposal: proposal!, mean: 14 / statistics.mean(jobs.map(({ ratio }) => ratio)) };
    });

  // 14 ft/h and jobs that take 1.25 times as long: 11.2 ft/h were worked.
  test("the rate that was really worked is proposed", () => {
    const found = proposals((list) => list);
    expect(statistics.median(found.map(({ proposal }) => proposal.proposed))).toBeCloseTo(11, 9); // by half feet
    expect(found.filter(({ proposal }) => Math.abs(proposal.proposed - 11.2) <= 1).length).toBeGreaterThanOrEqual(54);
    expect(found.filter(({ proposal }) => proposal.isClear).length).toBeGreaterThanOrEqual(54);
  });

  test("three mistakes among twenty-five jobs hardly move it, though they carry the mean away", () => {
    const slips = (list: PastEntry[]) =>
      list.map((entry, n) => (n % 10 === 3 ? { ...entry, actual: entry.actual * 10 } : entry));
    const found = proposals(slips);
    expect(found.filter(({ proposal }) => Math.abs(proposal.proposed - 11.2) <= 1.5).length).toBeGreaterThanOrEqual(54);
    expect(statistics.median(found.map(({ mean }) => mean))).toBeLessThan(7);
  });

  test("where the estimate is right, a change is proposed no more often than the interval misses", () => {
    const trials = 400;
    let changes = 0;
    for (let seed = 1; seed <= trials; seed++)
      if (learn(entries(seed, 12, 1), { edgingRate: 14 })[0]!.verdict === "change") changes++;
    // Twelve jobs: 1 − 0.9614; three and a half times its standard deviation in 400 trials on top.
    expect(changes / trials).toBeLessThan(0.0386 + 3.5 * Math.sqrt((0.0386 * 0.9614) / trials));
  });

  test("four jobs propose nothing, however far off they are", () => {
    expect(learn(entries(3, 4, 3), { edgingRate: 14 })[0]).toMatchObject({ verdict: "too few", proposal: undefined });
  });
});
