import fc from "fast-check";
import { expect, test } from "vitest";
import { eachPattern } from "./eachPattern";
import { type Job, type Pieces, sumOver } from "./job";
import { Steps } from "./steps";

/** Every way to take from the pieces, as counts of each size. */
function allWays(pieces: Pieces): number[][] {
  return pieces.reduce<number[][]>(
    (ways, count) => ways.flatMap((way) => Array.from({ length: count + 1 }, (_, taken) => [...way, taken])),
    [[]],
  );
}

const jobs = fc
  .uniqueArray(
    fc.tuple(fc.integer({ min: 2, max: 30 }), fc.integer({ min: 0, max: 3 }), fc.integer({ min: 0, max: 40 })),
    {
      minLength: 1,
      maxLength: 6,
      selector: ([size]) => size,
    },
  )
  .map((rows) => {
    const falling = [...rows].sort((a, b) => b[0] - a[0]);
    const job: Job = { capacity: 30, sizes: falling.map(([size]) => size) };
    return { job, pieces: falling.map(([, count]) => count), worth: falling.map(([, , worth]) => worth) };
  });

const sumOf = (way: readonly number[], amounts: readonly number[]) =>
  way.reduce((sum, count, size) => sum + count * amounts[size]!, 0);

test("the last of the dearest patterns is worth as much as the best of all ways", () => {
  fc.assert(
    fc.property(jobs, ({ job, pieces, worth }) => {
      let best = 0;
      const options = { room: job.capacity, worth, least: 1, want: "dearest" } as const;
      eachPattern(job, pieces, options, new Steps(1e6), (pattern, sum, room) => {
        expect(sum).toBe(sumOver(pattern, worth));
        expect(sum).toBeGreaterThan(best);
        expect(room).toBe(job.capacity - sumOver(pattern, job.sizes));
        best = sum;
        return sum + 1;
      });
      const fitting = allWays(pieces).filter((way) => sumOf(way, job.sizes) <= job.capacity);
      expect(best).toBe(Math.max(...fitting.map((way) => sumOf(way, worth))));
    }),
  );
});

test("so it is where there are many ways to the same length, which are not all walked", () => {
  const many = fc.array(fc.tuple(fc.integer({ min: 1, max: 3 }), fc.integer({ min: 1, max: 60 })), {
    minLength: 14,
    maxLength: 14,
  });
  fc.assert(
    fc.property(many, fc.integer({ min: 20, max: 60 }), (rows, capacity) => {
      const job: Job = { capacity, sizes: rows.map((_, size) => rows.length + 1 - size) };
      const pieces = rows.map(([count]) => count);
      const worth = rows.map(([, each]) => each);
      let best = 0;
      const options = { room: capacity, worth, least: 1, want: "dearest" } as const;
      eachPattern(job, pieces, options, new Steps(1e7), (_, sum) => {
        best = sum;
        return sum + 1;
      });
      expect(best).toBe(dearestByTable(job, pieces, worth));
    }),
  );
});

/** The same by a table over all lengths, piece by piece: the textbook way. */
function dearestByTable({ capacity, sizes }: Job, pieces: Pieces, worth: readonly number[]): number {
  const table = new Array<number>(capacity + 1).fill(0);
  sizes.forEach((length, size) => {
    for (let piece = 0; piece < pieces[size]!; piece++)
      for (let room = capacity; room >= length; room--)
        table[room] = Math.max(table[room]!, table[room - length]! + worth[size]!);
  });
  return table[capacity]!;
}

test("all full patterns are those ways to which no piece at hand can be added", () => {
  fc.assert(
    fc.property(jobs, fc.integer({ min: 0, max: 60 }), ({ job, pieces, worth }, least) => {
      const found: string[] = [];
      const options = { room: job.capacity, worth, least, want: "all" } as const;
      eachPattern(job, pieces, options, new Steps(1e6), ({ at, copies }) => {
        const way = pieces.map(() => 0);
        at.forEach((size, n) => {
          way[size] = copies[n]!;
        });
        found.push(way.join());
        return least;
      });
      const full = allWays(pieces).filter((way) => {
        const left = job.capacity - sumOf(way, job.sizes);
        const noneFits = job.sizes.every((size, n) => way[n] === pieces[n] || size > left);
        return left >= 0 && noneFits && sumOf(way, worth) >= least;
      });
      expect(found.sort()).toEqual(full.map((way) => way.join()).sort());
    }),
  );
});
