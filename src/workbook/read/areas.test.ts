import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { areaIn, areasOfAddresses, filledAreas, nearestFreePlace, overlap, SHEET_ROWS } from "./areas";

const A1_B1 = { row: 0, column: 0, rows: 1, columns: 2 };
const D4 = { row: 3, column: 3, rows: 1, columns: 1 };

test.each([
  ["Jobs!A1:B1,Jobs!D4"],
  ["A1:B1,D4"],
  ["'Smith, front walk'!A1:B1,'Smith, front walk'!D4"],
  ["'Smith''s, 3!'!A1:B1,'Smith''s, 3!'!D4"],
  ["'A1, B2'!$A$1:$B$1,'A1, B2'!$D$4"],
])("%s has two areas", (address) => {
  expect(areasOfAddresses(address)).toEqual([A1_B1, D4]);
});

test("whole columns, numbers and formulas are no area of cells", () => {
  expect(["Rates!$B:$B", "0.5", "Rates!$B$2*2", "#REF!", "Rates!$B$2,Rates!$B$3"].map(areaIn)).toEqual(
    Array(5).fill(undefined),
  );
});

const area = (row: number, column: number, rows: number, columns: number) => ({ row, column, rows, columns });

describe("the nearest free place", () => {
  test("leaves a blank row or column to what stands there", () => {
    expect(nearestFreePlace([area(0, 0, 3, 2)], area(0, 0, 5, 2))).toEqual({ row: 0, column: 3 });
    expect(nearestFreePlace([area(0, 0, 1, 9)], area(0, 0, 5, 2))).toEqual({ row: 2, column: 0 });
  });

  test("stays where it was wanted when nothing stands there", () => {
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

test("filled cells side by side and below one another are one area", () => {
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
