import { describe, expect } from "vitest";
import type { BedNeeds } from "../../src/quantities/job/bedNeeds";
import { orderJob } from "../../src/quantities/job/orderJob";
import { randomFrom } from "../cuttingLists";
import { outside } from "../outside";
import { fewestByHighs } from "./cuttingHighs";

const PIECE_IN = 96;
const ROLL_FT = 50;

/** Jobs of three to twelve beds with runs in whole inches and strips in whole feet. */
const jobs = Array.from({ length: 12 }, (_, n) => {
  const random = randomFrom(n + 1);
  const beds = Array.from({ length: random(3, 12) }, () => ({
    runIn: random(20, 700),
    stripsFt: Array.from({ length: random(1, 3) }, () => random(6, 45)),
  }));
  return { seed: n + 1, beds };
});

const orderFor = (beds: (typeof jobs)[number]["beds"]) =>
  orderJob(
    beds.map(({ runIn, stripsFt }, n): BedNeeds => {
      const own = { quantity: Math.ceil(runIn / PIECE_IN) };
      return {
        name: `Bed ${n + 1}`,
        border: {
          heightIn: 4,
          pieceLengthFt: PIECE_IN / 12,
          lapIn: 0,
          runs: [{ feet: runIn / 12, closed: false }],
          stakes: 0,
          stakesPerPiece: 0,
          pieces: own,
          extraStakes: { quantity: 0 },
        },
        // Rolls of a bed are no concern here: more than any cutting takes.
        fabric: { rollWidthFt: 6, rollLengthFt: ROLL_FT, endLapIn: 12, stripsFt, rolls: { quantity: stripsFt.length } },
      };
    }),
    { cutLossIn: 0 },
  ).lines;

const counted = (lengths: readonly number[]) => {
  const sizes = [...new Set(lengths)];
  return [sizes, sizes.map((size) => lengths.filter((length) => length === size).length)] as const;
};

describe("pieces and rolls of a whole job against HiGHS, a general solver, on the arc-flow model", () => {
  for (const { seed, beds } of jobs)
    outside("HiGHS", `job ${seed}`, async () => {
      const lines = orderFor(beds);
      const border = lines.find(({ supplier }) => supplier === "border")!;
      const whole = beds.reduce((sum, { runIn }) => sum + Math.floor(runIn / PIECE_IN), 0);
      const lasts = beds.map(({ runIn }) => runIn % PIECE_IN).filter((length) => length > 0);
      expect(border.cutting!.proven).toBe(true);
      expect(border.order).toBe(whole + (await fewestByHighs(PIECE_IN, ...counted(lasts))));

      const fabric = lines.find(({ supplier }) => supplier === "fabric and pins")!;
      const withoutJoints = await fewestByHighs(ROLL_FT, ...counted(beds.flatMap(({ stripsFt }) => stripsFt)));
      if (fabric.cutting!.moreJoints === 0) expect(fabric.order).toBe(withoutJoints);
      else expect(fabric.order).toBeLessThan(withoutJoints);
    });
});
