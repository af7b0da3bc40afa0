import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { BedForm } from "../../src/quantities/bed/form";
import { inOneJob } from "../../src/quantities/job/inOneJob";
import { orderJob } from "../../src/quantities/job/orderJob";
import { type PricedJobLine, priceJob } from "../../src/quantities/job/priceJob";
import { areaBeds, type BedOfJob, bedOfJob, jobsOnAnyTerms, jobsOnSameTerms, jobsTypedOver } from "./jobToPrice";

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const priced = (beds: readonly BedOfJob[]) => priceJob(beds.map(({ toPrice }) => toPrice));
const bedsOf = (forms: readonly BedForm[]) => forms.map((form) => bedOfJob(form));
const CENT = 0.01;
/** What binary arithmetic loses. */
const SLACK = 1e-6;

/** The lines of a price by the line of a bed's own estimate that each stands for. */
const lineOf = ({ key = "" }: PricedJobLine) => key.replace(/\d+$/, "");
const quantityOf = (lines: readonly PricedJobLine[], line: string) =>
  sum(lines.filter((one) => lineOf(one) === line).map(({ quantity }) => quantity));

/** How the keys of the same lines begin: in the order, and in the price. */
const SHARED = {
  stone: "stoneLine",
  delivery: "deliveryLine",
  border: "edgingLine",
  stakes: "stakeLine",
  fabric: "fabricLine",
  pins: "pinLine",
  haul: "haul",
  dump: "dump",
} as const;

/** The lines of one bed's own estimate that have another key in a price of kinds. */
const OF_KINDS: Readonly<Record<string, string>> = {
  edging: "edgingLine",
  fabric: "fabricLine",
  delivery: "deliveryLine",
};

describe("the lines of a job's price", () => {
  test("are those of its order, whatever the beds' own terms, also where quantities were typed over", () => {
    fc.assert(
      fc.property(jobsOnAnyTerms, (forms) => {
        const job = forms.map(({ form, typed }) => bedOfJob(form, typed));
        const order = orderJob(inOneJob(job.map(({ needs }) => needs)));
        const { lines } = priced(job);
        for (const [inOrder, inPrice] of Object.entries(SHARED)) {
          // A line of nothing is not on the order.
          const ordered = order.lines.filter((line) => line.key.split("|")[0] === inOrder && line.order > 0);
          const own = lines.filter((line) => lineOf(line) === inPrice && line.quantity > SLACK);
          const sorted = (quantities: readonly number[]) => [...quantities].sort((a, b) => a - b);
          expect(sorted(own.map(({ quantity }) => quantity)), inPrice).toEqual(
            sorted(ordered.map((line) => line.order)).map((quantity) => expect.closeTo(quantity, 6)),
          );
          // The order rounds each line to the cent.
          const money = sum(ordered.map((line) => line.money!.orderCents)) * CENT;
          const cost = sum(own.map((line) => line.cost));
          expect(Math.abs(cost - money), inPrice).toBeLessThanOrEqual((ordered.length / 2) * CENT + SLACK);
        }
      }),
      { numRuns: 40, seed: 7 },
    );
  });

  test("are the bed's own where a job has one bed, also where quantities were typed over", () => {
    fc.assert(
      fc.property(jobsOnAnyTerms, ([first]) => {
        const { form, typed } = first!;
        const bed = bedOfJob(form, typed);
        const { lines, amounts } = priced([bed]);
        for (const { key, amount } of bed.estimate.lines)
          expect(quantityOf(lines, OF_KINDS[key] ?? key), key).toBeCloseTo(typed[key]?.quantity ?? amount, 6);
        if (Object.keys(typed).length === 0) expect(amounts.price).toBe(bed.estimate.price);
      }),
      { numRuns: 40, seed: 7 },
    );
  });
});

describe("a job of one to ten beds on the same terms", () => {
  test("never costs more than its beds apart, also where quantities were typed over", () => {
    fc.assert(
      fc.property(jobsTypedOver, (forms) => {
        const beds = forms.map(({ form, typed }) => bedOfJob(form, typed));
        const { amounts, byBed } = priced(beds);
        const apart = beds.map((bed) => priced([bed]).amounts);
        expect(amounts.directCost).toBeLessThanOrEqual(sum(apart.map(({ directCost }) => Number(directCost))) + SLACK);
        // Each price is rounded to the cent.
        const prices = sum(apart.map(({ price }) => Number(price)));
        expect(amounts.price).toBeLessThanOrEqual(prices + (beds.length / 2) * CENT + SLACK);
        expect(sum(byBed)).toBeCloseTo(Number(amounts.price), 6);
        expect(Math.min(...byBed)).toBeGreaterThan(0);
      }),
      { numRuns: 30, seed: 7 },
    );
  });

  test("never costs less with one bed more", () => {
    fc.assert(
      fc.property(jobsOnSameTerms, (forms) => {
        const beds = bedsOf(forms);
        const costs = [1, Math.ceil(beds.length / 2), beds.length - 1, beds.length]
          .filter((count) => count > 0)
          .sort((a, b) => a - b)
          .map((count) => Number(priced(beds.slice(0, count)).amounts.directCost));
        for (const [n, cost] of costs.entries()) expect(cost).toBeGreaterThanOrEqual((costs[n - 1] ?? 0) - SLACK);
      }),
      { numRuns: 30, seed: 7 },
    );
  });

  test("costs the same in whatever order they come, and each bed's share stays its own", () => {
    const shuffled = jobsOnSameTerms.chain((forms) =>
      fc.tuple(fc.constant(forms), fc.shuffledSubarray([...forms.keys()], { minLength: forms.length })),
    );
    fc.assert(
      fc.property(shuffled, ([forms, places]) => {
        const beds = bedsOf(forms);
        const one = priced(beds);
        const other = priced(places.map((place) => beds[place]!));
        const told = ({ lines }: typeof one) =>
          lines
            .map(({ label, quantity, cost }) => `${label.toLowerCase()} ${quantity.toFixed(6)} ${cost.toFixed(4)}`)
            .sort();
        expect(told(other)).toEqual(told(one));
        for (const [key, amount] of Object.entries(one.amounts))
          expect(other.amounts[key as keyof typeof one.amounts], key).toBeCloseTo(Number(amount), 6);
        for (const [n, place] of places.entries())
          expect(Math.abs(other.byBed[n]! - one.byBed[place]!)).toBeLessThanOrEqual(CENT + SLACK);
      }),
      { numRuns: 25, seed: 7 },
    );
  });
});

describe("a bed known by its area, entered as two halves", () => {
  /** What a bed has of its own: ends of runs and strips, and full barrows. */
  const OF_EACH_BED = ["edgingLine", "stakeLine", "fabricLine", "pinLine", "spread"];

  test("changes nothing but pieces, stakes, rolls, pins, and barrow trips", () => {
    fc.assert(
      fc.property(areaBeds, ([whole, half, others]) => {
        const beside = bedsOf(others);
        const one = priced([bedOfJob(whole), ...beside]);
        const two = priced([bedOfJob(half), bedOfJob(half), ...beside]);
        for (const line of new Set(one.lines.map(lineOf))) {
          const [before, after] = [quantityOf(one.lines, line), quantityOf(two.lines, line)];
          if (!OF_EACH_BED.includes(line)) expect(after, line).toBeCloseTo(before, 6);
        }
        const change = (line: string) => quantityOf(two.lines, line) - quantityOf(one.lines, line);
        // Each half rounds its trips up; a trip of 60 ft takes 3.1 minutes.
        expect(change("spread")).toBeGreaterThanOrEqual(-SLACK);
        expect(change("spread")).toBeLessThanOrEqual(3.1 / 60 + SLACK);
        expect(Math.abs(change("edgingLine"))).toBeLessThanOrEqual(1);
        expect(change("pinLine")).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 30, seed: 7 },
    );
  });
});
