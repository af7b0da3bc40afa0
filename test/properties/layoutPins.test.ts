import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { layOutBed } from "../../src/layout/layOutBed";
import { rectanglePins } from "../../src/layout/pins";
import { pins } from "../../src/quantities/pins";
import { anyRectangle } from "../layoutShapes";

describe("the dice-five pattern", () => {
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
