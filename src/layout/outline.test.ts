import { describe, expect, it } from "vitest";
import { pad, points } from "../../test/planBeds";
import { isCorner, netArea, ringArea, ringLength, ringOf, ringsOf } from "./outline";
import { outlineOf } from "./outlineOf";
import type { Point } from "./plane";
import { straightRuns } from "./ringPoints";
import type { Run } from "./runs";

const ring = (...pairs: readonly (readonly [number, number])[]) => ringOf(straightRuns(points(...pairs), true), 1);

describe("a ring", () => {
  it("is turned to run counterclockwise for a bed and clockwise for a cut-out", () => {
    const walked = straightRuns(points([0, 0], [0, 3], [4, 3], [4, 0]), false);
    expect(ringOf(walked, 1).points).toEqual(points([0, 0], [4, 0], [4, 3], [0, 3]));
    expect(ringOf(walked, -1).points).toEqual(points([0, 0], [0, 3], [4, 3], [4, 0]));
    expect(ringOf(walked, 1).runs.map(({ side }) => side)).toEqual([4, 3, 2, 1]);
  });

  it("leaves out sides without length, and says which side each straight piece belongs to", () => {
    const quarter: Run = {
      kind: "arc",
      center: { x: 0, y: 0 },
      radius: 4,
      startAngle: 0,
      sweep: Math.PI / 2,
      border: false,
    };
    const [bottom, none, , left] = straightRuns(points([0, 0], [4, 0], [4, 0], [0, 4]), false);
    const { runs, points: drawn, runOf } = ringOf([bottom!, none!, quarter, left!], 1);
    expect(runs).toHaveLength(3);
    // One piece along the bottom, 90° in chords of 2°, and one piece back down.
    expect(runOf).toEqual([0, ...Array(45).fill(1), 2]);
    expect(drawn).toHaveLength(47);
  });

  it("has the area and length of its sides as measured", () => {
    expect(ringArea(ring([0, 0], [0, 3], [4, 0]))).toBe(6);
    expect(ringLength(ring([0, 0], [0, 3], [4, 0]))).toBe(12);
  });
});

it("takes every cut-out off the net area, and lists the outer ring first", () => {
  const outline = outlineOf({
    kind: "rectangle",
    lengthFt: 20,
    widthFt: 10,
    cutOuts: [pad(2, 2, 3, 2), pad(8, 2, 1, 4)],
  });
  // 20 · 10 − 3 · 2 − 1 · 4
  expect(netArea(outline)).toBe(190);
  expect(ringsOf(outline).map(ringArea)).toEqual([200, 6, 4]);
});

describe("a corner", () => {
  const onward = (degrees: number): Point => {
    const turn = (degrees * Math.PI) / 180;
    return { x: 2 + 5 * Math.cos(turn), y: 5 * Math.sin(turn) };
  };
  it.each([
    [0, false],
    [29, false],
    [-29, false],
    [31, true],
    [-31, true],
    [90, true],
    [150, true],
    [180, true],
  ])("at a turn of %s°: %s", (degrees, is) => {
    expect(isCorner({ x: 0, y: 0 }, { x: 2, y: 0 }, onward(degrees))).toBe(is);
    // The same turn farther out: the second side begins at x 10, y 7 and runs on from there.
    const [a, b, c] = [{ x: 0, y: 0 }, { x: 2, y: 0 }, onward(degrees)].map(({ x, y }) => ({ x: x + 8, y: y + 7 }));
    expect(isCorner(a!, b!, c!)).toBe(is);
    expect(isCorner(c!, b!, a!)).toBe(is);
  });
});
