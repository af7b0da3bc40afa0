import { describe, expect, it } from "vitest";
import { points } from "../../test/planBeds";
import { between, boundsOf, cross, distance, type Frame, signedArea, toFrame, toPlan } from "./plane";

describe("measuring in plan", () => {
  it("uses the 3-4-5 triangle's long side for a distance", () => {
    expect(distance({ x: 1, y: 2 }, { x: 4, y: 6 })).toBe(5);
  });

  it("finds the place a share of the way along", () => {
    expect(between({ x: 2, y: 10 }, { x: 6, y: 2 }, 0.25)).toEqual({ x: 3, y: 8 });
  });

  it("is positive for a point to the left of the way, negative to the right", () => {
    // 4 · 4 − 1 · 2, twice the area of the triangle.
    const [a, b, left] = points([1, 1], [5, 2], [3, 5]);
    expect(cross(a!, b!, left!)).toBe(14);
    expect(cross(b!, a!, left!)).toBe(-14);
  });

  it("finds the area of a ring, positive counterclockwise", () => {
    // An L of 20 by 6 and 8 by 6: 120 + 48.
    const ring = points([0, 0], [20, 0], [20, 6], [8, 6], [8, 12], [0, 12]);
    expect(signedArea(ring)).toBe(168);
    expect(signedArea([...ring].reverse())).toBe(-168);
    expect(signedArea([])).toBe(0);
  });

  it("keeps the area of a bed a long way from its zero point", () => {
    const ring = points([1e6, 1e6], [1e6 + 3, 1e6], [1e6 + 3, 1e6 + 0.5], [1e6, 1e6 + 0.5]);
    expect(signedArea(ring)).toBe(1.5);
  });

  it("finds the upright rectangle around points", () => {
    expect(boundsOf(points([3, -2], [-1, 5], [2, 7]))).toEqual({ minX: -1, maxX: 3, minY: -2, maxY: 7 });
  });
});

describe("the frame of the strips", () => {
  const frame: Frame = { along: { x: 0.6, y: 0.8 }, flipU: 1, flipV: 1 };
  const place = { x: 5, y: 10 };

  it.each([
    // u = 5 · 0.6 + 10 · 0.8 = 11 along the strips, v = 10 · 0.6 − 5 · 0.8 = 2 across them.
    [1, 1, 11, 2],
    [-1, 1, -11, 2],
    [1, -1, 11, -2],
    [-1, -1, -11, -2],
  ] as const)("with flips %s and %s puts x 5, y 10 at %s along and %s across, and back", (flipU, flipV, u, v) => {
    const flipped = { ...frame, flipU, flipV };
    const { x, y } = toFrame(flipped, place);
    expect([x, y]).toEqual([expect.closeTo(u, 12), expect.closeTo(v, 12)]);
    const back = toPlan(flipped, { x: u, y: v });
    expect([back.x, back.y]).toEqual([expect.closeTo(5, 12), expect.closeTo(10, 12)]);
  });
});
