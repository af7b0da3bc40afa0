import { describe, expect } from "vitest";
import { planCuts } from "../../src/quantities/cutting/planCuts";
import { randomFrom } from "../cuttingLists";
import { outside } from "../outside";
import { fewestByHighs } from "./cuttingHighs";
import { GAPS, PUBLISHED, TRAPS } from "./cuttingInstances";

describe("the fewest stocks, proven", () => {
  for (const { name, source, fewest, ...list } of [...TRAPS, ...PUBLISHED])
    outside(source, `${name}: ${fewest}`, () => {
      expect(planCuts(list)).toMatchObject({ count: fewest, atLeast: fewest, proven: true });
    });
});

describe("lists that need one stock more than their fractional plan, rounded up", () => {
  for (const { name, source, fewest, stockLength, lengths, counts } of GAPS)
    outside(source, `${name}: ${fewest}`, async () => {
      const proven = { count: fewest, atLeast: fewest, proven: true };
      expect(planCuts({ stockLength, lengths, ...(counts && { counts }) })).toMatchObject(proven);
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

  for (const { seed, stockLength, lengths, counts } of lists)
    outside("HiGHS", `list ${seed}: ${lengths} from ${stockLength}`, async () => {
      const fewest = await fewestByHighs(stockLength, lengths, counts);
      expect(planCuts({ stockLength, lengths, ...(counts && { counts }) })).toMatchObject({
        count: fewest,
        proven: true,
      });
    });
});
