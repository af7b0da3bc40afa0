import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { pinGrid, pins } from "./pins";

describe("pins", () => {
  test("are at the corners of a bed too short for more", () => {
    expect(pins(1, 4, 6, 6)).toBe(4);
  });

  test("go in pairs and singles in turn", () => {
    expect(pins(2, 4, 6, 6)).toBe(5); // 2, 1, 2
    expect(pins(4, 4, 6, 6)).toBe(8); // 2, 1, 2, 1, 2
    expect(pins(3, 4, 6, 6)).toBe(7); // 2, 1, 2, 2: the last row has its corners
  });

  test("are in rows a foot apart, where no one says otherwise", () => {
    // 13 ft: 13 intervals, 14 rows; 8 of them in pairs, and 6 singles between.
    expect(pinGrid(13, 4, 6, 6).intervals).toBe(13);
    expect(pins(13, 4, 6, 6)).toBe(2 * 8 + 6);
  });

  test("hold every overlap at each row, through both layers", () => {
    // Two strips of one bay each over 2 ft: edges 2 + 2, centers 1 + 1, the seam at 3 rows.
    expect(pins(2, 7, 4, 12)).toBe(4 + 2 + 3);
  });

  test("hold the edge of what the fabric is cut around at the same spacing", () => {
    expect(pins(2, 4, 6, 6, 12, 6)).toBe(5 + 6);
    expect(pins(2, 4, 6, 6, 18, 6.1)).toBe(pins(2, 4, 6, 6, 18) + 5);
  });

  test("are in bays no wider than asked", () => {
    expect(pinGrid(12, 6, 6, 6).bays).toBe(2);
    expect(pinGrid(12, 6, 6, 6, 12, 3).bays).toBe(2);
    expect(pinGrid(12, 6, 6, 6, 12, 2.9).bays).toBe(3);
  });

  test("are as many as there are places, looked at one by one", () => {
    const feet = (max: number) => fc.integer({ min: 12, max: max * 12 }).map((inches) => inches / 12);
    fc.assert(
      fc.property(feet(40), feet(30), feet(12), fc.integer({ min: 6, max: 24 }), (long, wide, rollWide, spacing) => {
        const { strips, bays, intervals } = pinGrid(long, wide, rollWide, 6, spacing);
        let places = 0;
        for (let row = 0; row <= intervals; row++) {
          const pairs = row % 2 === 0 || row === intervals;
          places += pairs ? 2 + strips * (bays - 1) : strips * bays;
          places += strips - 1;
        }
        expect(pins(long, wide, rollWide, 6, spacing)).toBe(places);
        expect((long * 12) / intervals).toBeLessThanOrEqual(spacing + 1e-6);
      }),
    );
  });
});
