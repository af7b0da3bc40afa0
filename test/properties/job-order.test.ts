import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Estimate } from "../../src/quantities/bed/estimate";
import { crewPlan } from "../../src/quantities/job/crewPlan";
import type { OrderLine } from "../../src/quantities/job/order";
import { orderJob } from "../../src/quantities/job/orderJob";
import { type JobBed, jobs, jobsTypedOver } from "./jobBeds";

const orderOf = (beds: readonly JobBed[]) => orderJob(beds.map(({ needs }) => needs));

/** The line of the bed's own estimate behind each kind of line of the order. */
const ownLines: Readonly<Record<string, string>> = {
  stone: "stoneLine",
  delivery: "delivery",
  haul: "haul",
  dump: "dump",
  border: "edging",
  stakes: "stakeLine",
  fabric: "fabric",
  pins: "pinLine",
};
const kindOf = ({ key }: OrderLine) => key.split("|")[0]!;
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const linesOf = (lines: readonly OrderLine[], kind: string) => lines.filter((line) => kindOf(line) === kind);

const own = ({ estimate, typed }: JobBed, key: string) => {
  const line = estimate.lines.find((one) => one.key === key)!;
  return { quantity: typed.find((one) => one.line === key)?.quantity ?? line.amount, unitCost: line.unitCost };
};

describe("an order of one to twenty random beds", () => {
  test("has the sums of the beds' own lines, to the cent and the pin", () => {
    fc.assert(
      fc.property(jobsTypedOver, (beds) => {
        const { lines, money } = orderOf(beds);
        for (const [kind, key] of Object.entries(ownLines)) {
          const found = linesOf(lines, kind);
          expect(sum(found.map(({ bedByBed }) => bedByBed))).toBeCloseTo(
            sum(beds.map((bed) => own(bed, key).quantity)),
            9,
          );
          // Each lot with a price of its own is rounded to the cent once.
          const cost = sum(beds.map((bed) => own(bed, key).quantity * own(bed, key).unitCost));
          const lots = new Set(beds.map((bed) => JSON.stringify(bed.needs[kind as keyof typeof bed.needs] ?? "")));
          const halves = 0.5 * Math.max(beds.length, lots.size) + 1e-6;
          expect(Math.abs(sum(found.map((line) => line.money!.bedByBedCents)) - cost * 100)).toBeLessThanOrEqual(
            halves,
          );
        }
        const total = (amount: keyof Estimate["amounts"]) => sum(beds.map(({ estimate }) => estimate.amounts[amount]));
        const needed = (kind: string) => sum(linesOf(lines, kind).map((line) => line.needed));
        expect(needed("pins")).toBe(total("pins"));
        expect(needed("stone")).toBeCloseTo(total("stoneTons"), 9);
        expect(needed("haul")).toBeCloseTo(total("spoilYards"), 9);
        expect(needed("border")).toBeCloseTo(total("borderRun") + total("innerRun"), 9);
        expect(needed("fabric")).toBeCloseTo(
          sum(beds.map(({ estimate: { amounts } }) => amounts.fabricStrips * amounts.fabricLength)),
          9,
        );
        expect(money.orderCents).toBe(sum(lines.map((line) => line.money!.orderCents)));
        expect(money.savedCents).toBe(money.bedByBedCents - money.orderCents);
      }),
      { numRuns: 30 },
    );
  });

  test("never takes or costs more than bed by bed", () => {
    fc.assert(
      fc.property(jobsTypedOver, (beds) => {
        const { lines, money } = orderOf(beds);
        for (const line of lines) {
          if (kindOf(line) === "stakes") continue;
          expect(line.order).toBeLessThanOrEqual(line.bedByBed);
          expect(line.money!.orderCents).toBeLessThanOrEqual(line.money!.bedByBedCents);
        }
        // A piece that is saved brings no stakes along: so pieces and stakes are held against each other in money.
        const border = [...linesOf(lines, "border"), ...linesOf(lines, "stakes")].map((line) => line.money!.savedCents);
        expect(sum(border)).toBeGreaterThanOrEqual(-border.length);
        expect(money.savedCents).toBeGreaterThanOrEqual(-border.length);
      }),
      { numRuns: 30 },
    );
  });

  test("loses nothing that was typed, and nothing that is needed", () => {
    fc.assert(
      fc.property(jobsTypedOver, (beds) => {
        const { lines } = orderOf(beds);
        for (const [kind, key] of Object.entries(ownLines)) {
          const ordered = sum(linesOf(lines, kind).map(({ order }) => order));
          const typed = beds.flatMap((bed) =>
            bed.typed.filter(({ line }) => line === key).map((one) => one.quantity ?? 0),
          );
          expect(ordered).toBeGreaterThanOrEqual(sum(typed) - 1e-9);
        }
        const untyped = beds.filter(({ typed }) => typed.length === 0);
        if (untyped.length === 0) return;
        for (const line of orderOf(untyped).lines) {
          const { needed, order } = line;
          if (kindOf(line) === "stone") expect(order).toBeGreaterThanOrEqual(needed * (1 - 1e-9));
          if (kindOf(line) === "pins") expect(order * Number(line.key.split("|")[1])).toBeGreaterThanOrEqual(needed);
        }
      }),
      { numRuns: 25 },
    );
  });

  test("is the same in whatever order the beds come", () => {
    const told = (beds: readonly JobBed[]) =>
      orderOf(beds).lines.map(
        ({ key, needed, allowance, order, bedByBed, money, item, specification, weightTons }) => ({
          key,
          needed,
          allowance,
          order,
          bedByBed,
          money,
          item,
          specification,
          weightTons,
        }),
      );
    const shuffled = jobsTypedOver.chain((beds) =>
      fc.tuple(fc.constant(beds), fc.shuffledSubarray(beds, { minLength: beds.length })),
    );
    fc.assert(
      fc.property(shuffled, ([beds, others]) => {
        expect(told(others)).toEqual(told(beds));
      }),
      { numRuns: 25 },
    );
  });

  test("of one bed is that bed's own numbers", () => {
    fc.assert(
      fc.property(jobsTypedOver, ([bed]) => {
        const { lines } = orderOf([bed!]);
        for (const [kind, key] of Object.entries(ownLines)) {
          const [line, ...others] = linesOf(lines, kind);
          expect(others).toEqual([]);
          expect(line?.order ?? 0).toBe(own(bed!, key).quantity);
          expect(line?.saved ?? 0).toBe(0);
        }
      }),
    );
  });
});

describe("the cutting of one to twenty random beds", () => {
  const [lossIn, slack] = [0.125, 1e-6];

  test("gives every run the pieces that reach over it, and no piece more than its length", () => {
    fc.assert(
      fc.property(jobs, (beds) => {
        const { lines } = orderOf(beds);
        for (const { cutting, order, key } of linesOf(lines, "border")) {
          const pieceFt = Number(key.split("|")[2]);
          const { whole, stocks } = cutting!;
          expect(sum(whole.map(({ count }) => count)) + stocks.length).toBe(order);
          for (const { cuts } of stocks)
            expect(sum(cuts.map(({ lengthFt }) => lengthFt)) + ((cuts.length - 1) * lossIn) / 12).toBeLessThanOrEqual(
              pieceFt + slack,
            );
          for (const { needs } of beds) {
            if (needs.border!.pieceLengthFt !== pieceFt) continue;
            // A run goes by the number that its last piece has in the bed's drawing.
            const lastPieces = [...whole, ...stocks.flatMap(({ cuts }) => cuts)]
              .filter(({ bed }) => bed === needs.name)
              .map(({ part }) => part);
            const byRun = [...new Set(lastPieces)].sort((one, other) => one - other);
            expect(byRun).toHaveLength(needs.border!.runs!.length);
            needs.border!.runs!.forEach(({ feet, closed }, n) => {
              const isIts = (one: { bed: string; part: number }) => one.bed === needs.name && one.part === byRun[n];
              const wholePieces = sum(whole.filter(isIts).map(({ count }) => count));
              const cut = stocks.flatMap(({ cuts }) => cuts.filter(isIts));
              expect(cut.length).toBeLessThanOrEqual(1);
              const pieces = wholePieces + cut.length;
              const laps = (closed ? pieces : pieces - 1) * (needs.border!.lapIn / 12);
              const reach = wholePieces * pieceFt + sum(cut.map(({ lengthFt }) => lengthFt)) - laps;
              expect(reach).toBeGreaterThanOrEqual(feet - slack);
            });
          }
        }
      }),
      { numRuns: 25 },
    );
  });

  test("gives every strip the fabric that covers it, laps included, and no roll more than its length", () => {
    fc.assert(
      fc.property(jobs, (beds) => {
        const { lines } = orderOf(beds);
        for (const { cutting, order, key } of linesOf(lines, "fabric")) {
          const [widthFt, rollFt] = key.split("|").slice(1).map(Number);
          const { whole, stocks } = cutting!;
          expect(sum(whole.map(({ count }) => count)) + stocks.length).toBe(order);
          for (const { cuts, leftOverFt } of stocks)
            expect(sum(cuts.map(({ lengthFt }) => lengthFt)) + leftOverFt).toBeCloseTo(rollFt!, 6);
          for (const { needs } of beds) {
            const { rollWidthFt, rollLengthFt, stripsFt, endLapIn } = needs.fabric!;
            if (rollWidthFt !== widthFt || rollLengthFt !== rollFt) continue;
            stripsFt!.forEach((stripFt, n) => {
              const isIts = (one: { bed: string; part: number }) => one.bed === needs.name && one.part === n + 1;
              const wholeRolls = sum(whole.filter(isIts).map(({ count }) => count));
              const cut = stocks.flatMap(({ cuts }) => cuts.filter(isIts));
              const pieces = wholeRolls + cut.length;
              const covered =
                wholeRolls * rollFt! + sum(cut.map(({ lengthFt }) => lengthFt)) - ((pieces - 1) * endLapIn) / 12;
              expect(covered).toBeCloseTo(stripFt, 6);
            });
          }
        }
      }),
      { numRuns: 25 },
    );
  });

  test("stops at the steps allowed, with a plan that is no worse than bed by bed", () => {
    fc.assert(
      fc.property(jobs, (beds) => {
        for (const line of orderJob(
          beds.map(({ needs }) => needs),
          { steps: 1 },
        ).lines)
          if (kindOf(line) !== "stakes") expect(line.order).toBeLessThanOrEqual(line.bedByBed);
      }),
      { numRuns: 20 },
    );
  });
});

test("the crew sheet has the same amounts and hours as the estimates and the order", () => {
  fc.assert(
    fc.property(jobs, (beds) => {
      const needs = beds.map((bed) => bed.needs);
      const order = orderOf(beds);
      const plan = crewPlan(needs, order, { people: 2, dayHours: 8 });
      expect(plan.personHours).toBeCloseTo(sum(beds.map(({ estimate }) => estimate.laborHours)), 9);
      expect(plan.crewDays).toBeCloseTo(sum(beds.map(({ estimate }) => estimate.crewDays)), 9);
      expect(plan.amounts.pins).toBe(sum(linesOf(order.lines, "pins").map(({ needed }) => needed)));
      expect(plan.amounts.pieces).toBe(sum(linesOf(order.lines, "border").map((line) => line.order)));
      expect(plan.amounts.rolls).toBe(sum(linesOf(order.lines, "fabric").map((line) => line.order)));
      expect(sum(plan.steps.map(({ hours = 0 }) => hours))).toBeCloseTo(plan.personHours, 9);
    }),
    { numRuns: 25 },
  );
});
