import fc from "fast-check";
import { expect, test } from "vitest";
import { type Job, stocksIn, sumOver } from "./job";
import { quickBound } from "./quickBound";
import { quickPlan } from "./quickPlan";

const jobs = fc
  .uniqueArray(fc.tuple(fc.integer({ min: 5, max: 100 }), fc.integer({ min: 1, max: 30 })), {
    minLength: 1,
    maxLength: 9,
    selector: ([size]) => size,
  })
  .map((rows) => {
    const falling = [...rows].sort((a, b) => b[0] - a[0]);
    const job: Job = { capacity: 100, sizes: falling.map(([size]) => size) };
    return { job, pieces: falling.map(([, count]) => count) };
  });

/** The rules piece by piece, as they are told: into the first stock with room, or into the fullest of those. */
function pieceByPiece({ capacity, sizes }: Job, pieces: readonly number[], fullest: boolean): number {
  const rooms: number[] = [];
  sizes.forEach((length, size) => {
    for (let piece = 0; piece < pieces[size]!; piece++) {
      const fitting = rooms.map((room, stock) => ({ room, stock })).filter(({ room }) => room >= length);
      if (fullest) fitting.sort((a, b) => a.room - b.room);
      if (fitting[0]) rooms[fitting[0].stock]! -= length;
      else rooms.push(capacity - length);
    }
  });
  return rooms.length;
}

test("takes as many stocks as the better of first-fit and best-fit, piece by piece", () => {
  fc.assert(
    fc.property(jobs, ({ job, pieces }) => {
      const plan = quickPlan(job, pieces);
      expect(stocksIn(plan)).toBe(Math.min(pieceByPiece(job, pieces, false), pieceByPiece(job, pieces, true)));
      const cut = pieces.map(() => 0);
      for (const { pattern, times } of plan) {
        expect(sumOver(pattern, job.sizes)).toBeLessThanOrEqual(job.capacity);
        pattern.at.forEach((size, n) => {
          cut[size]! += times * pattern.copies[n]!;
        });
      }
      expect(cut).toEqual(pieces);
    }),
  );
});

/** The bound as the book states it, with every length as the cut-off. */
function asStated({ capacity, sizes }: Job, pieces: readonly number[]): number {
  const lengths = sizes.flatMap((length, size) => new Array<number>(pieces[size]!).fill(length));
  const sum = (list: readonly number[]) => list.reduce((total, length) => total + length, 0);
  const bounds = Array.from({ length: Math.floor(capacity / 2) + 1 }, (_, cutOff) => {
    const first = lengths.filter((length) => length > capacity - cutOff);
    const second = lengths.filter((length) => length <= capacity - cutOff && 2 * length > capacity);
    const third = lengths.filter((length) => 2 * length <= capacity && length >= cutOff);
    const over = sum(third) - (second.length * capacity - sum(second));
    return first.length + second.length + Math.max(0, Math.ceil(over / capacity));
  });
  return Math.max(...bounds);
}

test("the quick bound is bound L2 of Martello and Toth, from memory, over all cut-offs", () => {
  fc.assert(
    fc.property(jobs, ({ job, pieces }) => {
      expect(quickBound(job, pieces)).toBe(asStated(job, pieces));
    }),
  );
});

test("pieces over half a stock need one each, though all of them are shorter than so many stocks", () => {
  expect(quickBound({ capacity: 100, sizes: [51] }, [10])).toBe(10);
  // 60 leaves room for 40 at most: the five of 45 share stocks by twos.
  expect(quickBound({ capacity: 100, sizes: [60, 45] }, [4, 5])).toBe(7);
});

test.each([
  // Into the first stock with room these take one more; found by trying lists at random.
  ["the fullest stock", [42, 42, 41, 37, 30, 27, 27, 26, 24, 24, 24, 15, 14, 10, 9], 5, 4],
  ["the first stock", [44, 42, 41, 34, 33, 32, 30, 28, 27, 26, 16, 12, 10, 9, 8], 4, 5],
])("where only %s with room is right, the quick plan has it", (_, lengths, first, fullest) => {
  const sizes = [...new Set(lengths)];
  const pieces = sizes.map((size) => lengths.filter((length) => length === size).length);
  const job: Job = { capacity: 100, sizes };
  expect([pieceByPiece(job, pieces, false), pieceByPiece(job, pieces, true)]).toEqual([first, fullest]);
  expect(stocksIn(quickPlan(job, pieces))).toBe(4);
});
