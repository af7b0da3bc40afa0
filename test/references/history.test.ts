import fc from "fast-check";
import * as statistics from "simple-statistics";
import { expect } from "vitest";
import { FEWEST_FOR_USUAL_COVERAGE, medianInterval } from "../../src/quantities/history/medianInterval";
import { outside } from "../outside";

const values = fc.array(fc.double({ min: 0.1, max: 10, noNaN: true }), { minLength: 1, maxLength: 60 });

outside("simple-statistics", "the median is the same, and the interval holds the quantile of one half", () => {
  fc.assert(
    fc.property(values, (list) => {
      const { median, low, high } = medianInterval(list);
      expect(median).toBeCloseTo(statistics.median(list), 12);
      expect(low).toBeLessThanOrEqual(statistics.quantile(list, 0.5));
      expect(high).toBeGreaterThanOrEqual(statistics.quantile(list, 0.5));
    }),
  );
});

outside(
  "simple-statistics",
  "the coverage is that of the binomial distribution, and no narrower interval reaches 95 %",
  () => {
    for (let count = 2; count <= 200; count++) {
      const list = Array.from({ length: count }, (_, n) => n);
      const { low, high, coverage } = medianInterval(list);
      const chances = statistics.binomialDistribution(count, 0.5)!;
      // Its table ends where what is left is under its epsilon of 0.0001.
      const heldFrom = (fromEnd: number) =>
        chances.slice(fromEnd + 1, count - fromEnd).reduce((sum, chance) => sum + chance, 0);
      expect(Math.abs(coverage - heldFrom(low))).toBeLessThan(2e-4);
      expect(high).toBe(count - 1 - low);
      if (count >= FEWEST_FOR_USUAL_COVERAGE) expect(coverage).toBeGreaterThanOrEqual(0.95);
      else expect(coverage).toBeLessThan(0.95);
      if (low + 1 < count - 2 - low) expect(heldFrom(low + 1)).toBeLessThan(0.95 + 2e-4);
    }
  },
);
