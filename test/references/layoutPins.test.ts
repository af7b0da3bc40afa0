import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { layOutBed } from "../../src/layout/layOutBed";
import { rectanglePins } from "../../src/layout/pinPattern";
import { pins } from "../../src/quantities/pins";
import { anyRectangle } from "../layoutShapes";

describe("the dice-five pattern", () => {
  // Five-spot on a square of side s: (L/s + 1)(W/s + 1) + (L/s)(W/s), worked in whole numbers. A square of side s is
  // two rows of s/2 by one bay of s.
  it.each([
    [12, 12, 3, 41],
    [24, 12, 3, 77],
    [30, 20, 5, 59],
  ])("over %s by %s at %s is the published five-spot of %s", (length, width, side, count) => {
    const placed = rectanglePins(length, width, width, 0, side * 6, side);
    expect(placed).toHaveLength(count);
    const bed = { kind: "rectangle" as const, lengthFt: length, widthFt: width };
    const laid = layOutBed(bed, {
      rollWidthFt: width,
      overlapIn: 0,
      pinSpacingIn: side * 6,
      bayFt: side,
      directionDegrees: 0,
    });
    expect(laid.counts.pins).toBe(count);
  });

  it("puts the nearest neighbor of a pin on a 30 ft square 21.2132 ft away", () => {
    // Half the diagonal of the square (printed 21.25 in the source of references.md, section 10).
    const placed = rectanglePins(60, 60, 60, 0, 15 * 12, 30);
    const [first, ...others] = placed;
    const nearest = Math.min(...others.map(({ x, y }) => Math.sqrt((x - first!.x) ** 2 + (y - first!.y) ** 2)));
    expect(nearest).toBeCloseTo(21.2132, 4);
  });

  it("has no two pins in one place, and as many as BED.PINS counts", () => {
    fc.assert(
      fc.property(
        anyRectangle,
        fc.constantFrom(3, 4, 6, 12),
        fc.constantFrom(0, 6, 18),
        (bed, rollWidthFt, overlapIn) => {
          const placed = rectanglePins(bed.lengthFt, bed.widthFt, rollWidthFt, overlapIn);
          expect(placed).toHaveLength(pins(bed.lengthFt, bed.widthFt, rollWidthFt, overlapIn));
          expect(new Set(placed.map(({ x, y }) => `${x.toFixed(9)} ${y.toFixed(9)}`)).size).toBe(placed.length);
          const layout = layOutBed(bed, { rollWidthFt, overlapIn });
          const [along, across] =
            layout.directionDegrees === 0 ? [bed.lengthFt, bed.widthFt] : [bed.widthFt, bed.lengthFt];
          expect(layout.counts.pins).toBe(pins(along, across, rollWidthFt, overlapIn));
        },
      ),
      { numRuns: 100, seed: 7 },
    );
  });
});
