import { isDeepStrictEqual } from "node:util";
import { describe, expect, test } from "vitest";
import { countsInPlan } from "../../src/layout/planOfEstimate";
import { estimateBed } from "../../src/quantities/bed/estimate";
import { type EstimateLine, lines } from "../../src/quantities/bed/lines";
import { readForm } from "../../src/quantities/bed/read";
import type { BedNeeds } from "../../src/quantities/job/bedNeeds";
import { bedNeedsOf, type TypedLine } from "../../src/quantities/job/bedNeedsOf";
import { crewPlan } from "../../src/quantities/job/crewPlan";
import { orderJob } from "../../src/quantities/job/orderJob";
import { bedsOfEachWay } from "../bedsOfEachWay";

/** Lines that are neither ordered nor worked by the crew, each with why. None is. */
const NEITHER: Readonly<Record<string, string>> = {};

/** A quantity that no bed comes to by itself. */
const TYPED = 4321;

const { bed } = readForm(bedsOfEachWay["rectangle, rounded"]!);
if (!bed) throw new Error("The bed of this test can be read.");
const estimate = estimateBed(bed, countsInPlan(bed));
const needs = (typed: readonly TypedLine[]) => bedNeedsOf(bed, estimate, { name: "A bed", typed });
const hoursOf = (beds: readonly BedNeeds[]) => crewPlan(beds, orderJob(beds), { people: 2, dayHours: 8 }).personHours;

/** What is still to be done so that a line of the estimate is not lost on the way to the papers of a job. */
function missingStep({ key, kind }: Pick<EstimateLine, "key" | "kind">): string | undefined {
  const before = needs([]);
  const after = needs([{ line: key, quantity: TYPED }]);
  const orNeither = `or give its reason in NEITHER of this test`;
  if (kind === "labor") {
    if (isDeepStrictEqual(before, after))
      return `No step takes the hours of “${key}”: name it in lineOfStep of quantities/job/bedNeedsOf.ts, ${orNeither}.`;
    const own = estimate.lines.find((line) => line.key === key)?.amount ?? 0;
    const isWorked = Math.abs(hoursOf([after]) - hoursOf([before]) - (TYPED - own)) < 1e-6;
    return isWorked
      ? undefined
      : `The hours of “${key}” are on no crew sheet: give them to a step of quantities/job/crewSteps.ts, ${orNeither}.`;
  }
  if (isDeepStrictEqual(before, after))
    return `No need of a bed holds “${key}”: ask for own("${key}") in quantities/job/bedNeedsOf.ts, ${orNeither}.`;
  return orderJob([after]).lines.some(({ order }) => order === TYPED)
    ? undefined
    : `No line of the order has “${key}”: make one in quantities/job/orderJob.ts, ${orNeither}.`;
}

describe("every line of the estimate", () => {
  test("is ordered or worked by the crew, as its sheet says", () => {
    const open = lines.filter(({ key }) => !(key in NEITHER));
    expect(open.flatMap((line) => missingStep(line) ?? [])).toEqual([]);
    expect(Object.keys(NEITHER).filter((key) => !lines.some((line) => line.key === key))).toEqual([]);
  });

  test("is told in a block by its label and unit, which no other has", () => {
    const told = lines.map(({ label, unit }) => `${label} | ${unit}`);
    expect(new Set(told).size).toBe(told.length);
  });

  test("that was forgotten on the way is named, with the step that is missing", () => {
    expect(missingStep({ key: "plants", kind: "material" })).toMatch(/own\("plants"\) in quantities\/job\/bedNeedsOf/);
    expect(missingStep({ key: "water", kind: "labor" })).toMatch(/lineOfStep of quantities\/job\/bedNeedsOf/);
  });
});
