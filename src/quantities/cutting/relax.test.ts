import fc from "fast-check";
import { expect, test } from "vitest";
import { eachPattern } from "./eachPattern";
import { fewestStocks } from "./fewestStocks";
import { type Job, type Pattern, sumOfPieces } from "./job";
import { quickBound } from "./quickBound";
import { relax } from "./relax";
import { Steps } from "./steps";

const unhurried = () => new Steps(1e9);
const toTheEnd = () => false;

test("cuts in fractions as the worked plan of Chvátal does: 452.25 raws", () => {
  // Chvátal, Linear Programming (1983), chapter 13: from memory. By hand: 48.5 of (45, 45), 197.5 of (36, 31, 31), 105.5
  // of (36, 36, 14, 14) and 100.75 of (36, 36, 14) cut 97, 610 and 395, and more than enough of 14.
  const job: Job = { capacity: 100, sizes: [45, 36, 31, 14] };
  const costs: number[] = [];
  const { value, plan } = relax(job, [97, 610, 395, 211], [], unhurried(), (_, cost) => costs.push(cost) < 0);
  expect(costs.at(-1)).toBeCloseTo(452.25, 3);
  expect(costs).toEqual([...costs].sort((a, b) => b - a));
  expect(value).toBeCloseTo(452.25, 3);
  expect(plan.reduce((sum, { times }) => sum + times, 0)).toBeCloseTo(452.25, 6);
});

const jobs = fc
  .uniqueArray(fc.tuple(fc.integer({ min: 5, max: 60 }), fc.integer({ min: 1, max: 4 })), {
    minLength: 1,
    maxLength: 7,
    selector: ([size]) => size,
  })
  .map((rows) => {
    const falling = [...rows].sort((a, b) => b[0] - a[0]);
    return { job: { capacity: 60, sizes: falling.map(([size]) => size) }, pieces: falling.map(([, count]) => count) };
  });

test("no pattern is worth more than it says, so the bound holds whatever the prices are", () => {
  fc.assert(
    fc.property(jobs, fc.integer({ min: 0, max: 8 }), ({ job, pieces }, rounds) => {
      let left = rounds;
      const { worth, most, value } = relax(job, pieces, [], unhurried(), () => left-- <= 0);
      let dearest = 0;
      const options = { room: job.capacity, worth, least: 0, want: "all" } as const;
      eachPattern(job, pieces, options, unhurried(), (_, sum) => {
        dearest = Math.max(dearest, sum);
        return 0;
      });
      expect(worth.every(Number.isInteger)).toBe(true);
      expect(dearest).toBeLessThanOrEqual(most);
      expect(value).toBe(sumOfPieces(pieces, worth) / most);
    }),
  );
});

test("proves no less than the quick bound, no more than the best plan takes, and cuts what is asked for", () => {
  fc.assert(
    fc.property(jobs, ({ job, pieces }) => {
      const pool: Pattern[] = [];
      const { value, plan } = relax(job, pieces, pool, unhurried(), toTheEnd);
      expect(Math.ceil(value)).toBeGreaterThanOrEqual(quickBound(job, pieces));
      expect(Math.ceil(value)).toBeLessThanOrEqual(fewestStocks(job, pieces, 1e7).stocks);
      const cut = pieces.map(() => 0);
      for (const { pattern, times } of plan)
        pattern.at.forEach((size, n) => {
          cut[size]! += times * pattern.copies[n]!;
        });
      for (const [size, count] of pieces.entries()) expect(cut[size]!).toBeGreaterThan(count - 1e-4);
    }),
  );
});
