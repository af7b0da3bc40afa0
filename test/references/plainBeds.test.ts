import { describe, expect } from "vitest";
import { drawPlan } from "../../src/layout/drawing/drawPlan";
import { planOfEstimate } from "../../src/layout/planOfEstimate";
import { estimateBed } from "../../src/quantities/bed/estimate";
import { blankForm } from "../../src/quantities/bed/form";
import { readForm } from "../../src/quantities/bed/read";
import { must } from "../../src/quantities/must";
import { outside } from "../outside";

/*
 * Two plain beds along a wall, by hand, in figures and in the drawing: edging along the front and both ends, in pieces of
 * 8 ft that lap 2 in, so that each next one reaches 7' 10" further; stakes 30 in apart or less, so 4 to such a length,
 * 23 1/2 in apart; a roll of 6 ft, pin rows 12 in apart or less, bays of 4 ft.
 */
const beds = [
  {
    size: [`18' 6"`, "5"],
    // 28 1/2 ft; (28.5 − 1/6) ÷ 7 5/6 = 3.62.
    pieces: 4,
    // 3 × 4, and 2 on the last 5 ft; 1 at the end. The corner at 23 1/2 ft is at the third joint; the one at 5 ft is 10 1/2
    // in from the nearest stake, so it takes one.
    stakes: 16,
    // 19 spaces: rows 0, 2, … 18, and 19 in pairs, 11 rows with 2 on the edges and 1 between the bays; 9 rows of 2 singles.
    pins: 51,
  },
  {
    size: [`32' 6 1/2"`, "3"],
    // 38' 6 1/2"; (38.54 − 0.17) ÷ 7.83 = 4.9.
    pieces: 5,
    // 4 × 4, and 3 on the last 7' 2 1/2"; 1 at the end; both corners are 3 ft from an end of the run, and take one each.
    stakes: 22,
    // 33 spaces: rows 0, 2, … 32, and 33 in pairs, 18 rows of 2; 16 single rows of 1 in the one bay.
    pins: 52,
  },
] as const;

describe("a plain bed along a wall", () => {
  for (const { size, ...byHand } of beds) {
    const [length, width] = size;
    outside("by hand", `of ${length} × ${width} ft has its pieces, stakes, and pins, in figures and drawn`, () => {
      const bed = must(readForm({ ...blankForm(), typed: { length, width } }).bed);
      expect(estimateBed(bed).amounts).toMatchObject(byHand);
      const plan = must(planOfEstimate(bed));
      expect(plan.counts).toMatchObject(byHand);
      const svg = drawPlan(plan, { widthPx: 720, theme: "light", id: "bed" });
      expect(svg.match(/M[\d.-]+ [\d.-]+h0/g)).toHaveLength(byHand.pins);
      // The legend has one stake of either kind.
      expect(svg.match(/stroke-width="1.1"/g)).toHaveLength(byHand.stakes + 2);
    });
  }
});
