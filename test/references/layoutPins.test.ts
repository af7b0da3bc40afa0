import { expect } from "vitest";
import { layOutBed } from "../../src/layout/layOutBed";
import { rectanglePins } from "../../src/layout/pins";
import { outside } from "../outside";

const FIVE_SPOT = "by hand: a five-spot on squares of side s has (L/s + 1)(W/s + 1) corners and (L/s)(W/s) centers";
const WIANT =
  "H. V. Wiant, Tree Planters' Notes 24(3), 1973: superposed squares of side a make one of side √(a²/2), seen";

for (const [length, width, side, count] of [
  [12, 12, 3, 41],
  [24, 12, 3, 77],
  [30, 20, 5, 59],
] as const)
  outside(FIVE_SPOT, `${length} by ${width} ft at ${side} ft: ${count} pins`, () => {
    // A square of side s is two rows of s/2 by one bay of s.
    expect(rectanglePins(length, width, width, 0, side * 6, side)).toHaveLength(count);
    const laid = layOutBed(
      { kind: "rectangle", lengthFt: length, widthFt: width },
      { rollWidthFt: width, overlapIn: 0, pinSpacingIn: side * 6, bayFt: side, directionDegrees: 0 },
    );
    expect(laid.counts.pins).toBe(count);
  });

/** From the first pin to the one nearest to it. */
function nearest(side: number): number {
  const [first, ...others] = rectanglePins(2 * side, 2 * side, 2 * side, 0, side * 6, side);
  return Math.min(...others.map(({ x, y }) => Math.hypot(x - first!.x, y - first!.y)));
}

for (const [source, side, apart] of [
  ["by hand: half the diagonal of a 30 ft square; printed 21.25 in an orchard text, seen", 30, 21.2132],
  [WIANT, 4, 2.8284],
  [WIANT, 3, 2.1213],
] as const)
  outside(source, `the pins on squares of ${side} ft are ${apart} ft apart`, () => {
    expect(nearest(side)).toBeCloseTo(apart, 4);
  });
