import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type CutList, planCuts } from "../../src/quantities/cutting/planCuts";
import { randomFrom } from "../cuttingLists";
import { fewestBySubsets } from "./cuttingBySubsets";

const STOCK = 240;

/** Lists of up to 40 pieces in whole inches, a few lengths often and others once, from stock of 20 ft. */
const lists = fc
  .array(fc.tuple(fc.integer({ min: 12, max: STOCK }), fc.integer({ min: 0, max: 4 })), { minLength: 1, maxLength: 14 })
  .chain((rows) =>
    fc.record({
      lengths: fc.constant(rows.map(([length]) => length)),
      counts: fc.constant(rows.map(([, count]) => count)),
      loss: fc.constantFrom(0, 0, 0.125, 3),
    }),
  )
  .map((list): Required<CutList> => ({ stockLength: STOCK, ...list }));

const few = (numRuns: number) => ({ numRuns });
const piecesOf = ({ lengths, counts }: Required<CutList>) =>
  lengths.flatMap((length, place) => new Array<number>(counts[place]!).fill(length));

test("each piece is cut once, and no stock is longer than it is", () => {
  fc.assert(
    fc.property(lists, (list) => {
      const { stocks, count } = planCuts(list);
      expect(stocks.length).toBe(count);
      const cut = list.lengths.map(
        (_, place) => stocks.flatMap(({ cuts }) => cuts).filter((one) => one === place).length,
      );
      expect(cut).toEqual(list.counts);
      for (const { cuts, leftOver } of stocks) {
        const used = cuts.reduce((sum, place) => sum + list.lengths[place]!, 0);
        expect(used + (cuts.length - 1) * list.loss).toBeLessThanOrEqual(STOCK);
        expect(leftOver).toBeCloseTo(Math.max(0, STOCK - used - cuts.length * list.loss), 9);
      }
    }),
    few(200),
  );
});

test("no fewer stocks than the total length needs, and no more than first-fit-decreasing takes", () => {
  fc.assert(
    fc.property(lists, (list) => {
      const { count, atLeast, proven } = planCuts(list);
      const pieces = piecesOf(list).sort((a, b) => b - a);
      const total = pieces.reduce((sum, length) => sum + length, 0);
      expect(count).toBeGreaterThanOrEqual(Math.ceil(total / STOCK));
      const rooms: number[] = [];
      for (const length of pieces) {
        const stock = rooms.findIndex((room) => room >= length);
        if (stock < 0) rooms.push(STOCK - length - list.loss);
        else rooms[stock]! -= length + list.loss;
      }
      expect(count).toBeLessThanOrEqual(rooms.length);
      expect(proven).toBe(true);
      expect(atLeast).toBe(count);
    }),
    few(300),
  );
});

test("the order of the list does not change the count, nor does writing equal lengths in several rows", () => {
  fc.assert(
    fc.property(lists, fc.infiniteStream(fc.nat()), (list, keys) => {
      const { count } = planCuts(list);
      const pieces = piecesOf(list)
        .map((length) => ({ length, key: keys.next().value as number }))
        .sort((a, b) => a.key - b.key);
      const { stockLength, loss } = list;
      expect(planCuts({ stockLength, loss, lengths: pieces.map(({ length }) => length) }).count).toBe(count);
    }),
    few(200),
  );
});

test("splitting a list in two never lowers the count; one piece more never does either", () => {
  fc.assert(
    fc.property(lists, fc.nat(), (list, n) => {
      const whole = planCuts(list).count;
      const at = n % (list.lengths.length + 1);
      const part = (from: number, to?: number) =>
        planCuts({ ...list, lengths: list.lengths.slice(from, to), counts: list.counts.slice(from, to) }).count;
      expect(part(0, at) + part(at)).toBeGreaterThanOrEqual(whole);
      expect(part(0, at)).toBeLessThanOrEqual(whole);
    }),
    few(200),
  );
});

test("the same list gives the same plan, and more steps never a worse one", () => {
  fc.assert(
    fc.property(lists, fc.integer({ min: 0, max: 20_000 }), (list, steps) => {
      const best = planCuts(list);
      expect(planCuts(list)).toEqual(best);
      const hurried = planCuts(list, steps);
      expect(planCuts(list, steps)).toEqual(hurried);
      expect(hurried.count).toBeGreaterThanOrEqual(best.count);
      expect(hurried.atLeast).toBeLessThanOrEqual(best.count);
      expect(hurried.proven).toBe(hurried.atLeast === hurried.count);
    }),
    few(200),
  );
});

describe("the fewest by trying every order over all subsets of the pieces", () => {
  test("is what the plan takes", () => {
    const pieces = fc.array(fc.integer({ min: 3, max: 60 }), { minLength: 1, maxLength: 11 });
    fc.assert(
      fc.property(fc.integer({ min: 60, max: 100 }), pieces, (stockLength, lengths) => {
        expect(planCuts({ stockLength, lengths })).toMatchObject({
          count: fewestBySubsets(stockLength, lengths),
          proven: true,
        });
      }),
      few(400),
    );
  });

  test("with a loss: a stock and each piece count as longer by one loss", () => {
    const pieces = fc.array(fc.integer({ min: 3, max: 60 }), { minLength: 1, maxLength: 10 });
    fc.assert(
      fc.property(pieces, fc.integer({ min: 0, max: 8 }), (lengths, loss) => {
        const fewest = fewestBySubsets(
          60 + loss,
          lengths.map((length) => length + loss),
        );
        expect(planCuts({ stockLength: 60, lengths, loss }).count).toBe(fewest);
      }),
      few(300),
    );
  });
});

test("pieces that were broken out of whole stocks go back into as many, in any unit", () => {
  const breaks = fc.array(fc.array(fc.double({ min: 0.05, max: 1, noNaN: true }), { minLength: 1, maxLength: 4 }), {
    minLength: 1,
    maxLength: 3,
  });
  fc.assert(
    fc.property(breaks, fc.constantFrom(1, 20, 1 / 3, Math.PI, 0.1, 1e-6, 6096), (stocks, stockLength) => {
      const lengths = stocks.flatMap((shares) => {
        const total = shares.reduce((sum, share) => sum + share, 0);
        return shares.map((share) => (share / total) * stockLength);
      });
      expect(planCuts({ stockLength, lengths })).toMatchObject({ count: stocks.length, proven: true });
    }),
    few(300),
  );
});

describe("lists of the sizes that jobs have are planned and proven within the usual steps", () => {
  const feet = (sixteenths: number) => sixteenths / 192;

  test("60 pieces of 15 lengths from 20 ft, cut with a saw", () => {
    for (let seed = 1; seed <= 40; seed++) {
      const random = randomFrom(seed);
      const lengths = Array.from({ length: 15 }, () => feet(random(2 * 192, 12 * 192)));
      const counts = lengths.map(() => 4);
      expect(planCuts({ stockLength: 20, lengths, counts, loss: feet(2) }).proven).toBe(true);
    }
  });

  test("120 pieces, all of different lengths", () => {
    for (let seed = 1; seed <= 8; seed++) {
      const random = randomFrom(seed);
      const lengths = Array.from({ length: 120 }, () => feet(random(2 * 192, 10 * 192)));
      expect(planCuts({ stockLength: 20, lengths }).proven).toBe(true);
    }
  });

  test("200 pieces of a dozen lengths", () => {
    for (let seed = 1; seed <= 20; seed++) {
      const random = randomFrom(seed);
      const lengths = Array.from({ length: 12 }, () => feet(random(192, 12 * 192)));
      const counts = lengths.map((_, n) => (n < 8 ? 17 : 16));
      expect(planCuts({ stockLength: 20, lengths, counts }).proven).toBe(true);
    }
  });
});
