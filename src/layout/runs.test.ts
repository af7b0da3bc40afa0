import { describe, expect, it } from "vitest";
import type { Point } from "./plane";
import {
  type ArcRun,
  flattened,
  heading,
  headingAt,
  pointOnRun,
  type Run,
  reversed,
  runArea,
  runEnd,
  runLength,
} from "./runs";

const near = ({ x, y }: Point) => ({ x: expect.closeTo(x, 12), y: expect.closeTo(y, 12) });
const side: Run = { kind: "straight", side: 1, from: { x: 1, y: 1 }, to: { x: 4, y: 5 }, border: true };
/** A quarter of a circle of radius 2 round x 10, y 20, from its right to its top. */
const quarter: ArcRun = {
  kind: "arc",
  center: { x: 10, y: 20 },
  radius: 2,
  startAngle: 0,
  sweep: Math.PI / 2,
  border: false,
};
const circle = (sweep: number): ArcRun => ({ ...quarter, center: { x: 5, y: -2 }, radius: 3, sweep });

describe("a straight side", () => {
  it("has the length, middle and direction of a 3-4-5 triangle's long side", () => {
    expect(runLength(side)).toBe(5);
    expect(pointOnRun(side, 2.5)).toEqual({ x: 2.5, y: 3 });
    expect(runEnd(side)).toEqual({ x: 4, y: 5 });
    expect(headingAt(side, 1)).toEqual({ x: 0.6, y: 0.8 });
    expect(flattened(side)).toEqual([{ x: 1, y: 1 }]);
  });

  it("adds the triangle between it and the zero point to the area", () => {
    // (1 · 5 − 4 · 1)/2
    expect(runArea(side)).toBe(0.5);
    expect(runArea(reversed(side))).toBe(-0.5);
  });

  it("stays where it is when it has no length", () => {
    expect(pointOnRun({ ...side, to: side.from }, 0)).toEqual({ x: 1, y: 1 });
  });

  it("keeps its number and border when walked the other way", () => {
    expect(reversed(side)).toEqual({ ...side, from: { x: 4, y: 5 }, to: { x: 1, y: 1 } });
  });
});

describe("an arc", () => {
  it("is as long as its share of the circle, whichever way it runs", () => {
    expect(runLength(quarter)).toBeCloseTo(Math.PI, 12);
    expect(runLength(reversed(quarter))).toBeCloseTo(Math.PI, 12);
  });

  it("starts and ends exactly at the circle's farthest points", () => {
    expect(pointOnRun(quarter, 0)).toEqual({ x: 12, y: 20 });
    expect(runEnd(quarter)).toEqual({ x: 10, y: 22 });
    expect(runEnd({ ...quarter, sweep: Math.PI })).toEqual({ x: 8, y: 20 });
    expect(runEnd({ ...quarter, sweep: -Math.PI / 2 })).toEqual({ x: 10, y: 18 });
    expect(runEnd({ ...quarter, sweep: 2 * Math.PI })).toEqual({ x: 12, y: 20 });
  });

  it("has its middle at 45°", () => {
    expect(pointOnRun(quarter, Math.PI / 2)).toEqual(near({ x: 10 + Math.SQRT2, y: 20 + Math.SQRT2 }));
  });

  it("leaves its start and reaches its end square to the radius", () => {
    expect(heading(quarter, false)).toEqual(near({ x: 0, y: 1 }));
    expect(heading(quarter, true)).toEqual(near({ x: -1, y: 0 }));
    expect(headingAt(quarter, Math.PI / 2)).toEqual(near({ x: -Math.SQRT1_2, y: Math.SQRT1_2 }));
    expect(heading(reversed(quarter), false)).toEqual(near({ x: 1, y: 0 }));
    expect(heading(reversed(quarter), true)).toEqual(near({ x: 0, y: -1 }));
  });

  it.each([
    [90, 45],
    [360, 180],
    [2.5, 2],
    [2, 1],
    [0.5, 1],
  ])("of %s° is drawn as %s chords of at most 2°, the last point left out", (degrees, chords) => {
    const drawn = flattened({ ...quarter, sweep: (degrees * Math.PI) / 180 });
    expect(drawn).toHaveLength(chords);
    expect(drawn[0]).toEqual({ x: 12, y: 20 });
    const step = (degrees / chords) * (chords - 1) * (Math.PI / 180);
    expect(drawn.at(-1)).toEqual(near({ x: 10 + 2 * Math.cos(step), y: 20 + 2 * Math.sin(step) }));
  });

  it("adds the area of its wedge from the zero point", () => {
    // The triangle 0, 0 – 12, 20 – 10, 22 is (12 · 22 − 10 · 20)/2 = 32; the segment beyond its chord is π − 2.
    expect(runArea(quarter)).toBeCloseTo(30 + Math.PI, 12);
    expect(runArea(reversed(quarter))).toBeCloseTo(-30 - Math.PI, 12);
    expect(runArea(circle(2 * Math.PI))).toBeCloseTo(9 * Math.PI, 12);
    expect(runArea(circle(-2 * Math.PI))).toBeCloseTo(-9 * Math.PI, 12);
  });
});
