import { describe, expect } from "vitest";
import type { BedNeeds } from "../../src/quantities/job/bedNeeds";
import { orderJob } from "../../src/quantities/job/orderJob";
import { callFunction } from "../callFunction";
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

describe("BED.JOB_PIECES against HiGHS, with laps, closed runs, and what the saw takes", () => {
  const [LAP_IN, LOSS_IN] = [2, 1];
  /** A run's whole pieces, and the inches of its last one, by hand: each next piece reaches 96 − 2 in further. */
  const byHand = (runIn: number, isClosed: boolean) => {
    const gain = PIECE_IN - LAP_IN;
    const pieces = isClosed ? Math.ceil(runIn / gain) : Math.max(1, Math.ceil((runIn - LAP_IN) / gain));
    const lastIn = runIn - (pieces - 1) * gain + (isClosed ? LAP_IN : 0);
    return lastIn === PIECE_IN ? { whole: pieces, lasts: [] } : { whole: pieces - 1, lasts: [lastIn] };
  };

  for (const seed of Array.from({ length: 12 }, (_, n) => n + 101))
    outside("HiGHS", `runs ${seed}`, async () => {
      const random = randomFrom(seed);
      const runs = (most: number) => Array.from({ length: random(1, most) }, () => random(20, 500));
      const [open, closed] = [runs(9), runs(4)];
      const parts = [...open.map((run) => byHand(run, false)), ...closed.map((run) => byHand(run, true))];
      const lasts = parts.flatMap((part) => part.lasts);
      const whole = parts.reduce((sum, part) => sum + part.whole, 0);
      const inFeet = (inches: readonly number[]) => inches.map((run) => [run / 12]);
      const given = [inFeet(open), PIECE_IN / 12, LAP_IN, inFeet(closed), LOSS_IN];
      // n pieces and n − 1 cuts fit a piece where n pieces and n cuts fit one that is a cut longer.
      const fewest = await fewestByHighs(PIECE_IN + LOSS_IN, ...counted(lasts.map((last) => last + LOSS_IN)));
      expect(callFunction("BED.JOB_PIECES", given)).toBe(whole + fewest);
    });
});

describe("BED.JOB_ROLLS against HiGHS", () => {
  for (const seed of Array.from({ length: 12 }, (_, n) => n + 201))
    outside("HiGHS", `strips ${seed}`, async () => {
      const random = randomFrom(seed);
      const strips = Array.from({ length: random(4, 16) }, () => random(6, ROLL_FT));
      const rolls = (endLapIn: number) =>
        callFunction("BED.JOB_ROLLS", [strips.map((strip) => [strip]), ROLL_FT, endLapIn]);
      const withoutJoints = await fewestByHighs(ROLL_FT, ...counted(strips));
      // With a lap of 49 ft no remnant of a roll is of use, so nothing is gained by a joint.
      expect(rolls(49 * 12)).toBe(withoutJoints);
      // Joints save rolls or are not made; and fabric for all strips there must be.
      const total = strips.reduce((sum, strip) => sum + strip, 0);
      expect(rolls(12)).toBeLessThanOrEqual(withoutJoints);
      expect(rolls(12)).toBeGreaterThanOrEqual(Math.ceil(total / ROLL_FT));
    });
});
