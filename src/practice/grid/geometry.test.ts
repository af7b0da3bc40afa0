import { describe, expect, test } from "vitest";
import { difference, intersection, isWithinSheet, union } from "./geometry";

const area = (row: number, column: number, rowCount: number, columnCount: number) => ({
  sheetId: "jobs",
  row,
  column,
  rowCount,
  columnCount,
});
const cells = ({ rowCount, columnCount }: { rowCount: number; columnCount: number }) => rowCount * columnCount;

describe("two areas", () => {
  test("share the cells that both hold", () => {
    expect(intersection(area(0, 0, 3, 3), area(2, 1, 5, 5))).toEqual(area(2, 1, 1, 2));
  });

  test("that only touch, or lie on different sheets, share nothing", () => {
    expect(intersection(area(0, 0, 2, 2), area(2, 0, 1, 1))).toBeUndefined();
    expect(intersection(area(0, 0, 2, 2), { ...area(0, 0, 2, 2), sheetId: "other" })).toBeUndefined();
  });

  test("have a smallest area round both", () => {
    expect(union(area(0, 4, 1, 1), area(3, 1, 2, 2))).toEqual(area(0, 1, 5, 4));
  });
});

describe("an area without the cells of another", () => {
  test.each([
    ["in its middle", area(1, 1, 1, 1), 4],
    ["at its corner", area(0, 0, 1, 1), 2],
    ["along its top", area(0, 0, 1, 3), 1],
    ["over all of it", area(0, 0, 3, 3), 0],
    ["beside it", area(5, 5, 1, 1), 1],
  ])("%s is left in parts that do not overlap", (_, taken, count) => {
    const whole = area(0, 0, 3, 3);
    const parts = difference(whole, taken);
    expect(parts).toHaveLength(count);
    const shared = intersection(whole, taken);
    const left = parts.reduce((sum, part) => sum + cells(part), 0);
    expect(left).toBe(9 - (shared ? cells(shared) : 0));
    for (const part of parts) expect(intersection(part, taken)).toBeUndefined();
  });
});

test("a sheet ends at row 1,048,576 and column XFD, as the host's does", () => {
  expect(isWithinSheet(area(1_048_575, 16_383, 1, 1))).toBe(true);
  expect(isWithinSheet(area(1_048_575, 0, 2, 1))).toBe(false);
  expect(isWithinSheet(area(0, 16_384, 1, 1))).toBe(false);
  expect(isWithinSheet(area(0, 0, 1, 0))).toBe(false);
});
