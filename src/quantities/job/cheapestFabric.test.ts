import fc from "fast-check";
import { expect, test } from "vitest";
import { type BedToCover, cheapestFabric, type FabricRoll, MOST_BEDS_SHARED_OUT } from "./cheapestFabric";
import { rollsTogether } from "./together";

const short: FabricRoll = { name: "6 ft × 50 ft", lengthFt: 50, cost: 64 };
const long: FabricRoll = { name: "4 ft × 100 ft", lengthFt: 100, cost: 80 };
const bed = (name: string, ...stripsFt: BedToCover["stripsFt"]): BedToCover => ({ bed: name, endLapIn: 12, stripsFt });

// By hand: one strip of 30 ft each takes two rolls of 50 ft with a lap, 128, or one of 100 ft, 80.
test("beds share the roll that costs less for both", () => {
  const beds = [bed("Front", [30], [30]), bed("Side", [30], [30])];
  expect(cheapestFabric([short, long], beds)).toEqual({
    cost: 80,
    shares: [{ roll: long, rolls: 1, beds: ["Front", "Side"] }],
  });
});

// By hand: Front is 6 ft wide: 1 strip of 50 ft off a roll of 6 ft, or 2 off one of 4 ft. Side, 4 ft wide, takes 1 of 90 ft
// either way: two rolls of 50 ft, or one of 100 ft. So 64 + 80, against 3 × 64 or 2 × 80 alone.
test("each bed has its own roll where that costs less than one kind for all", () => {
  const beds = [bed("Front", [50], [50, 50]), bed("Side", [90], [90])];
  expect(cheapestFabric([short, long], beds)?.cost).toBe(144);
  expect(cheapestFabric([short], beds)?.cost).toBe(192);
  expect(cheapestFabric([long], beds)?.cost).toBe(160);
});

test("a roll that can't be laid in a bed isn't taken for it, and without any there is no answer", () => {
  const beds = [bed("Front", [30], undefined), bed("Side", [30], [30])];
  expect(cheapestFabric([short, { ...long, cost: 1 }], beds)?.shares).toEqual([
    { roll: short, rolls: 1, beds: ["Front"] },
    { roll: { ...long, cost: 1 }, rolls: 1, beds: ["Side"] },
  ]);
  expect(cheapestFabric([long], [bed("Front", undefined)])).toBeUndefined();
});

test("nothing that gives each bed one kind of roll costs less", () => {
  const strips = fc.array(fc.integer({ min: 3, max: 45 }), { minLength: 1, maxLength: 3 });
  const rolls = [short, long, { name: "3 ft × 60 ft", lengthFt: 60, cost: 41 }];
  const beds = fc.array(fc.tuple(strips, strips, strips), { minLength: 1, maxLength: 4 });
  fc.assert(
    fc.property(beds, (given) => {
      const all = given.map((own, n) => bed(`Bed ${n}`, ...own));
      const ways = all.reduce<number[][]>((some, _) => some.flatMap((way) => rolls.map((_, at) => [...way, at])), [[]]);
      const costs = ways.map((way) =>
        rolls.reduce((sum, { lengthFt, cost }, at) => {
          const own = all.filter((_, n) => way[n] === at).flatMap(({ stripsFt }) => stripsFt[at] ?? []);
          return own.length === 0 ? sum : sum + cost * rollsTogether(own, lengthFt, 12);
        }, 0),
      );
      expect(cheapestFabric(rolls, all)?.cost).toBe(Math.min(...costs));
    }),
    { numRuns: 30 },
  );
});

test("of more beds than can be shared out, all get the roll that is cheapest for all", () => {
  const beds = Array.from({ length: MOST_BEDS_SHARED_OUT + 1 }, (_, n) => bed(`Bed ${n}`, [30], [30]));
  // By hand: 7 × 30 ft and laps off rolls of 50 ft is 5, 320; off rolls of 100 ft 3, 240.
  expect(cheapestFabric([short, long], beds)).toMatchObject({ cost: 240, shares: [{ roll: long, rolls: 3 }] });
});
