import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fabricArea, fabricStrips } from "./fabric";
import { fabricCuts, fabricRolls } from "./fabricRolls";

describe("strips", () => {
  test("cover the width with laps between them", () => {
    expect(fabricStrips(5, 6, 6)).toBe(1);
    expect(fabricStrips(6, 6, 6)).toBe(1);
    expect(fabricStrips(11, 6, 12)).toBe(2); // 6 + 5 exactly
    expect(fabricStrips(11.01, 6, 12)).toBe(3);
    expect(fabricStrips(12, 6, 0)).toBe(2);
    expect(fabricStrips(0.4, 6, 6)).toBe(1); // narrower than the overlap
  });

  test("cannot lap by their whole width", () => {
    expect(() => fabricStrips(5, 6, 72)).toThrow(/overlap_in is 72 in, but roll_width is 72 in/);
  });
});

describe("fabric in the bed", () => {
  test("counts laps twice, between strips and between pieces", () => {
    expect(fabricArea(30, 5, 6, 12)).toBe(150);
    expect(fabricArea(30, 11, 6, 12)).toBe((11 + 1) * 30);
    // Rolls of 20 ft with 1 ft end lap: 2 pieces a strip, ⌈29/19⌉
    expect(fabricArea(30, 11, 6, 12, 20, 12)).toBe((11 + 1) * (30 + 1));
    expect(fabricArea(20, 11, 6, 12, 20, 12)).toBe((11 + 1) * 20);
    expect(fabricArea(39, 5, 6, 12, 20, 12)).toBe(5 * 40);
    // Laps of half a foot: 2 strips, ⌈(11 − 0.5) ÷ 5.5⌉; 4 pieces a strip, ⌈(60 − 0.5) ÷ 19.5⌉.
    expect(fabricArea(60, 11, 6, 6, 20, 6)).toBe((11 + 0.5) * (60 + 3 * 0.5));
    expect(fabricArea(149, 6, 6, 6, 50, 12)).toBe(6 * (149 + 3)); // ⌈148 ÷ 49⌉ = 4
    expect(fabricArea(30, 5, 6, 12, 20)).toBe(5 * 31); // pieces lap by a foot, where no one says otherwise
    expect(fabricArea(0.5, 6, 6, 6, 50, 12)).toBe(3); // shorter than the end lap
  });

  test("cannot lap a roll by its whole length", () => {
    expect(() => fabricArea(30, 5, 6, 6, 1, 12)).toThrow(/end_lap_in is 12 in, but roll_length is 12 in/);
  });
});

describe("rolls", () => {
  test("that are nearly as short as their lap are counted to a limit", () => {
    // 150,000 ft by 1 ft a piece.
    expect(() => fabricRolls(150_000, 6, 6, 2, 6, 12)).toThrow(/100,000 pieces/);
  });

  test("are used up one after another", () => {
    expect(fabricRolls(30, 11, 6, 50, 12)).toBe(2);
    expect(fabricRolls(25, 11, 6, 50, 12)).toBe(1); // 2 strips of 25 ft
    expect(fabricRolls(50, 5, 6, 50, 12)).toBe(1);
    expect(fabricRolls(51, 5, 6, 50, 12)).toBe(2);
    expect(fabricRolls(99, 5, 6, 50, 12)).toBe(2); // 50 + 50 − 1
    expect(fabricRolls(99.01, 5, 6, 50, 12)).toBe(3);
  });

  test("leave a remnant as scrap that is no longer than the end lap", () => {
    // 49.2 ft of a 50 ft roll leave 0.8 ft: the second strip begins on a fresh roll.
    expect(fabricCuts(49.2, 11, 6, 50, 12).map(({ strip, roll }) => [strip, roll])).toEqual([
      [1, 1],
      [2, 2],
    ]);
  });

  test("are cut into pieces that lap each other", () => {
    expect(fabricCuts(30, 11, 6, 50, 12)).toEqual([
      { strip: 1, piece: 1, roll: 1, startsAtFt: 0, lengthFt: 30 },
      { strip: 2, piece: 1, roll: 1, startsAtFt: 0, lengthFt: 20 },
      { strip: 2, piece: 2, roll: 2, startsAtFt: 19, lengthFt: 11 },
    ]);
  });

  test("are not counted on for ever where a unit is wrong", () => {
    expect(() => fabricRolls(1e9, 11, 6, 50, 12)).toThrow(/100,000 pieces/);
    expect(() => fabricRolls(30, 1e300, 6, 50, 12)).toThrow(/100,000 pieces/);
  });

  test("cover every strip from end to end, no roll giving more than it has", () => {
    const feet = (min: number, max: number) =>
      fc.integer({ min: min * 12, max: max * 12 }).map((inches) => inches / 12);
    fc.assert(
      fc.property(
        feet(1, 200),
        feet(1, 40),
        feet(3, 12),
        feet(10, 300),
        feet(0, 2),
        (long, wide, rollWide, rollLong, lapFt) => {
          const cuts = fabricCuts(long, wide, rollWide, rollLong, 6, lapFt * 12);
          const used = new Map<number, number>();
          let reached = 0;
          for (const cut of cuts) {
            used.set(cut.roll, (used.get(cut.roll) ?? 0) + cut.lengthFt);
            if (cut.piece === 1) {
              if (cut.strip > 1) expect(reached).toBeCloseTo(long, 6);
              expect(cut.startsAtFt).toBe(0);
            } else expect(cut.startsAtFt).toBeCloseTo(reached - lapFt, 6);
            reached = cut.startsAtFt + cut.lengthFt;
          }
          expect(reached).toBeCloseTo(long, 6);
          expect(cuts.at(-1)?.strip).toBe(fabricStrips(wide, rollWide, 6));
          for (const feetUsed of used.values()) expect(feetUsed).toBeLessThanOrEqual(rollLong + 1e-6);
          expect(fabricRolls(long, wide, rollWide, rollLong, 6, lapFt * 12)).toBe(used.size);
        },
      ),
    );
  });
});
