import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fillings } from "./fillings";
import { isDominated } from "./isDominated";
import { type Job, stocksIn, sumOfPieces, sumOver } from "./job";
import { search } from "./search";
import { Steps, StepsSpent } from "./steps";

/** Pieces of 1/3, 1/4 and 1/11: a fractional plan takes 2 stocks, a whole one 3 (worked by hand in the references). */
const job: Job = { capacity: 132, sizes: [44, 33, 12] };
const pieces = [2, 3, 6];

test("finds a plan where there is one, and is certain where there is none", () => {
  expect(search(job, pieces, 2, [], new Steps(1e6))).toBeNull();
  expect(stocksIn(search(job, pieces, 3, [], new Steps(1e6))!)).toBe(3);
});

/** Stocks of 1,000 broken at random into three to five pieces each. */
const broken = fc
  .array(fc.array(fc.integer({ min: 60, max: 450 }), { minLength: 2, maxLength: 4 }), { minLength: 3, maxLength: 7 })
  .map((stocks) => {
    const lengths = stocks.flatMap((parts) => {
      const fitting = parts.filter((_, n) => parts.slice(0, n + 1).reduce((sum, part) => sum + part, 0) < 1000);
      return [...fitting, 1000 - fitting.reduce((sum, part) => sum + part, 0)];
    });
    const sizes = [...new Set(lengths)].sort((a, b) => b - a);
    const pieces = sizes.map((size) => lengths.filter((length) => length === size).length);
    return { job: { capacity: 1000, sizes }, pieces, stocks: stocks.length };
  });

test("puts pieces back together into the stocks that they were broken out of, filled to the brim", () => {
  fc.assert(
    fc.property(broken, ({ job: whole, pieces: all, stocks }) => {
      expect(sumOfPieces(all, whole.sizes)).toBe(1000 * stocks);
      const plan = search(whole, all, stocks, [], new Steps(1e8))!;
      expect(stocksIn(plan)).toBe(stocks);
      for (const { pattern } of plan) expect(sumOver(pattern, whole.sizes)).toBe(1000);
      expect(search(whole, all, stocks - 1, [], new Steps(1e8))).toBeNull();
    }),
  );
});

describe("the fillings of a stock", () => {
  const few = () => new Steps(1e6);
  const relaxed = (worth: number[], most: number) => ({ plan: [], worth, most, value: 0 });

  test("hold the longest piece, as often as it is cut", () => {
    // 4 + 4 + 2 fill 10. One 4 with both 2s would leave room for another 4.
    const [filling, ...others] = fillings({ capacity: 10, sizes: [4, 2] }, [3, 2], 2, relaxed([4, 2], 10), few());
    expect(filling).toEqual({ at: [0, 1], copies: [2, 1] });
    expect(others).toEqual([]);
    // 6 + 4, and no other 6 has room; 3 + 1 in place of the 4 is outdone by it.
    expect(fillings({ capacity: 10, sizes: [6, 4, 3, 1] }, [2, 1, 1, 1], 2, relaxed([6, 4, 3, 1], 10), few())).toEqual([
      { at: [0, 1], copies: [1, 1] },
    ]);
  });

  test("come with the dearest first", () => {
    // The 20 is worth more for its length than the rest.
    const job: Job = { capacity: 100, sizes: [51, 39, 29, 28, 20, 13] };
    const worth = [50, 30, 29, 29, 25, 10];
    const found = fillings(job, [1, 2, 2, 2, 2, 2], 5, relaxed(worth, 100), few());
    const sums = found.map((pattern) => sumOver(pattern, worth));
    expect(found.length).toBeGreaterThan(1);
    expect(sums).toEqual([...sums].sort((a, b) => b - a));
    for (const { at } of found) expect(at).toContain(0);
  });
});

test("stops when its steps are spent", () => {
  expect(() => search(job, [14, 19, 50], 14, [], new Steps(10))).toThrow(StepsSpent);
});

test("a filling is outdone where a longer piece from elsewhere fits in place of one or two of its own", () => {
  const sizes = [9, 8, 6, 5, 3];
  const inTen: Job = { capacity: 10, sizes };
  const six = { at: [2, 4], copies: [1, 1] };
  // 6 + 3 leaves 1: an 8 in place of the 6 does not fit, nor does a 5 in place of the 3; a 9 does in place of both.
  expect(isDominated(inTen, [0, 1, 1, 1, 1], six, 1)).toBe(false);
  expect(isDominated(inTen, [1, 1, 1, 1, 1], six, 1)).toBe(true);
  // 5 + 3 leaves 2: a 6 in place of the 5 fits, and so does an 8 in place of both.
  const five = { at: [3, 4], copies: [1, 1] };
  expect(isDominated(inTen, [0, 0, 1, 1, 1], five, 2)).toBe(true);
  expect(isDominated(inTen, [0, 1, 0, 1, 1], five, 2)).toBe(true);
  expect(isDominated(inTen, [0, 0, 0, 1, 1], five, 2)).toBe(false);
  // Two together do not make way for a piece that is longer than they and what is left over; nor a 5 for another 5.
  expect(isDominated(inTen, [0, 1, 1, 1, 1], five, 0)).toBe(true);
  expect(isDominated(inTen, [1, 0, 1, 1, 1], five, 0)).toBe(false);
  expect(isDominated(inTen, [0, 0, 0, 2, 0], { at: [3], copies: [1] }, 4)).toBe(false);
});
