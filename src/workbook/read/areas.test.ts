import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { overlap, SHEET_ROWS } from "../../spreadsheet/areas";
import { filledAreas, nearestFreePlace } from "./areas";

const area = (row: number, column: number, rows: number, columns: number) => ({ row, column, rows, columns });

describe("the nearest free place", () => {
  test("leaves a blank row or column to what is there", () => {
    expect(nearestFreePlace([area(0, 0, 3, 2)], area(0, 0, 5, 2))).toEqual({ row: 0, column: 3 });
    expect(nearestFreePlace([area(0, 0, 1, 9)], area(0, 0, 5, 2))).toEqual({ row: 2, column: 0 });
  });

  test("stays where it was wanted when nothing is there", () => {
    expect(nearestFreePlace([area(20, 0, 1, 1)], area(0, 0, 5, 2))).toEqual({ row: 0, column: 0 });
  });

  test("says so when the sheet has no room", () => {
    expect(nearestFreePlace([area(0, 0, SHEET_ROWS, 16_384)], area(0, 0, 5, 2))).toBeUndefined();
  });

  test("never lies over anything", () => {
    const some = fc.record({
      row: fc.nat(40),
      column: fc.nat(15),
      rows: fc.integer({ min: 1, max: 9 }),
      columns: fc.integer({ min: 1, max: 9 }),
    });
    fc.assert(
      fc.property(fc.array(some, { maxLength: 12 }), some, (taken, wanted) => {
        const free = nearestFreePlace(taken, wanted)!;
        expect(taken.some((other) => overlap({ ...wanted, ...free }, other))).toBe(false);
      }),
    );
  });
});

test("cells with contents side by side and below one another are one area", () => {
  expect(
    filledAreas(
      [
        ["a", "b", "", "c"],
        [1, "=A1", "", ""],
      ],
      { row: 2, column: 1 },
    ),
  ).toEqual([area(2, 1, 2, 2), area(2, 4, 1, 1)]);
});
