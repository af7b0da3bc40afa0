import { describe, expect, test } from "vitest";
import { listOf, pairsOf, tiedPoint } from "./typedList";

describe("a list in one field", () => {
  test.each([
    [`3', 4' 6", 5`, ["3'", `4' 6"`, "5"]],
    ["3\n4-6\n5", ["3", "4-6", "5"]],
    ["3\r\n4 6\r\n", ["3", "4 6"]],
    ["3\t4.5\t5", ["3", "4.5", "5"]],
    ["3; 4; 0", ["3", "4", "0"]],
    ["3,4,5", ["3", "4", "5"]],
    [" , ,", []],
    ["", []],
  ])("%j has its measures apart", (text, measures) => {
    expect(listOf(text)).toEqual(measures);
  });

  test.each([
    [
      `0,0; 12' 6", 0; 12-6, 4`,
      [
        ["0", "0"],
        [`12' 6"`, "0"],
        ["12-6", "4"],
      ],
    ],
    [
      "0\t0\n12\t-4",
      [
        ["0", "0"],
        ["12", "-4"],
      ],
    ],
    [
      "(0, 0), (12, 4)",
      [
        ["0", "0"],
        ["12", "4"],
      ],
    ],
    ["12", [["12", ""]]],
    ["", []],
  ])("%j has its pairs apart", (text, pairs) => {
    expect(pairsOf(text)).toEqual(pairs);
  });
});

describe("a corner taped from two points", () => {
  test("is where the two distances meet", () => {
    // 3-4-5 triangles: 3 ft along from each of two points 6 ft apart, and 4 ft out.
    expect(tiedPoint(["5", "5"], 6, "Corner 1")).toEqual([3, 4]);
    expect(tiedPoint(["4", "5"], 3, "Corner 1")).toEqual([0, 4]);
    expect(tiedPoint([`5'`, "4"], 3, "Corner 1")).toEqual([3, 4]);
    expect(tiedPoint(["2", "4"], 6, "Corner 1")).toEqual([2, 0]);
    // Left of the first point: 13 and 20 over a base of 11 (the triangle 11-13-20 has an area of 66, so it is 12 high).
    expect(tiedPoint(["13", "20"], 11, "Corner 1")).toEqual([-5, 12]);
  });

  test("is refused where they don't meet, in one line", () => {
    expect(() => tiedPoint(["2", "3"], 6, "Corner 2")).toThrow(
      "Corner 2: 2 and 3 don't meet. Tape both distances again, and the one between the fixed points.",
    );
    expect(() => tiedPoint(["20", "3"], 6, "Corner 2")).toThrow(/don't meet/);
    expect(() => tiedPoint(["x", "3"], 6, "Corner 2")).toThrow(
      "Corner 2, from the first point: can't read “x” as a length",
    );
    expect(() => tiedPoint(["5", ""], 6, "Corner 2")).toThrow("Corner 2, from the second point is blank.");
    expect(() => tiedPoint(["5", "-5"], 6, "Corner 2")).toThrow(/less than 0/);
  });
});
