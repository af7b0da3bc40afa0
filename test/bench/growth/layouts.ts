import type { Bed } from "../../../src/layout/bed";
import { drawPlan } from "../../../src/layout/drawing/drawPlan";
import { layOutBed } from "../../../src/layout/layOutBed";
import { planCuts } from "../../../src/quantities/cutting/planCuts";
import type { Growing } from "./growing";

/** A bed of one size and shape, with bays and spurs, given by more and more points. */
const bedOf = (corners: number): Bed => ({
  kind: "points",
  points: Array.from({ length: corners }, (_, i) => {
    const angle = (2 * Math.PI * i) / corners;
    const radius = 15 + 4 * Math.sin(3 * angle) + Math.cos(5 * angle);
    return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
  }),
});

const rules = {
  rollWidthFt: 6,
  rollLengthFt: 50,
  overlapIn: 6,
  border: { pieceLengthFt: 8, lapIn: 2, stakeSpacingIn: 30 },
};

/** What is laid out, drawn and cut, by its corners and pieces. */
export const ofLayouts: readonly Growing[] = [
  {
    what: "Lay out a bed",
    of: "corners",
    least: 12,
    ready: (corners) => {
      const bed = bedOf(corners);
      return () => layOutBed(bed, rules);
    },
  },
  {
    what: "Draw a bed",
    of: "corners",
    least: 12,
    ready: (corners) => {
      const layout = layOutBed(bedOf(corners), rules);
      return () => drawPlan(layout, { widthPx: 300, title: "Front walk", id: "plan" });
    },
  },
  {
    what: "Fit pieces into stock",
    of: "pieces",
    least: 12,
    ready: (pieces) => {
      const lengths = Array.from({ length: 12 }, (_, n) => 1 + ((n * 7) % 23) / 2);
      const counts = lengths.map((_, n) => Math.floor((pieces + n) / lengths.length));
      return () => planCuts({ stockLength: 20, lengths, counts, loss: 0 });
    },
  },
];
