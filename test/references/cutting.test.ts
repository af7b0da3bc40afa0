import { describe, expect, test } from "vitest";
import { planCuts } from "../../src/quantities/cutting/planCuts";
import { randomFrom } from "../cuttingLists";
import { fewestByHighs } from "./cuttingHighs";
import { GAPS, PUBLISHED, TRAPS } from "./cuttingInstances";

describe("traps for first-fit-decreasing, optimum by hand", () => {
  test.each(TRAPS)("$name: $fewest", ({ fewest, ...list }) => {
    expect(planCuts(list)).toMatchObject({ count: fewest, atLeast: fewest, proven: true });
  });
});

describe("published lists", () => {
  test.each(PUBLISHED)("$name: $fewest", ({ fewest, ...list }) => {
    expect(planCuts(list)).toMatchObject({ count: fewest, atLeast: fewest, proven: true });
  });
});

describe("lists that need one stock more than their fractional plan, rounded up", () => {
  test.each(GAPS)("$name: $fewest", async ({ fewest, stockLength, lengths, counts }) => {
    expect(planCuts({ stockLength, lengths, counts })).toMatchObject({ count: fewest, atLeast: fewest, proven: true });
    expect(await fewestByHighs(stockLength, lengths, counts!)).toBe(fewest);
  });
});

describe("the same count as HiGHS, a general solver, on the arc-flow model", () => {
  const lists = Array.from({ length: 30 }, (_, seed) => {
    const random = randomFrom(seed + 1);
    const stockLength = random(40, 100);
    const lengths = [
      ...new Set(Array.from({ length: random(3, 12) }, () => random(Math.ceil(stockLength / 8), stockLength * 0.62))),
    ];
    return { seed: seed + 1, stockLength, lengths, counts: lengths.map(() => random(1, 7)) };
  });

  test.each(lists)("list $seed: $lengths from $stockLength", async ({ stockLength, lengths, counts }) => {
    const fewest = await fewestByHighs(stockLength, lengths, counts);
    expect(planCuts({ stockLength, lengths, counts })).toMatchObject({ count: fewest, proven: true });
  });
});

describe("lists of the sizes that jobs have are planned and proven within the usual steps", () => {
  const feet = (sixteenths: number) => sixteenths / 192;

  test("60 pieces of 15 lengths from 20 ft, cut with a saw", () => {
    for (let seed = 1; seed <= 40; seed++) {
      const random = randomFrom(seed);
      const lengths = Array.from({ length: 15 }, () => feet(random(2 * 192, 12 * 192)));
      const counts = lengths.map(() => 4);
      expect(planCuts({ stockLength: 20, lengths, counts, loss: feet(2) }).proven).toBe(true);
    }
  });

  test("120 pieces, all of different lengths", () => {
    for (let seed = 1; seed <= 8; seed++) {
      const random = randomFrom(seed);
      const lengths = Array.from({ length: 120 }, () => feet(random(2 * 192, 10 * 192)));
      expect(planCuts({ stockLength: 20, lengths }).proven).toBe(true);
    }
  });

  test("200 pieces of a dozen lengths", () => {
    for (let seed = 1; seed <= 20; seed++) {
      const random = randomFrom(seed);
      const lengths = Array.from({ length: 12 }, () => feet(random(192, 12 * 192)));
      const counts = lengths.map((_, n) => (n < 8 ? 17 : 16));
      expect(planCuts({ stockLength: 20, lengths, counts }).proven).toBe(true);
    }
  });
});
