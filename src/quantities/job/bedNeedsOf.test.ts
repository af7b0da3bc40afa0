import { expect, test } from "vitest";
import { bedsOfEachWay } from "../../../test/bedsOfEachWay";
import { estimateBed } from "../bed/estimate";
import { readForm } from "../bed/read";
import { bedNeedsOf } from "./bedNeedsOf";
import { orderJob } from "./orderJob";

const needsOf = (way: string, more = {}) => {
  const { bed } = readForm(bedsOfEachWay[way]!);
  const estimate = estimateBed(bed!);
  return { bed: bed!, estimate, needs: bedNeedsOf(bed!, estimate, { name: way, ...more }) };
};

test.each(Object.keys(bedsOfEachWay))("a bed by %s is ordered as its own estimate says", (way) => {
  const { estimate, needs } = needsOf(way);
  const { lines, money } = orderJob([needs]);
  const materials = estimate.lines.filter(({ kind, amount }) => kind !== "labor" && amount > 0);
  expect(lines.map(({ order }) => order).sort()).toEqual(materials.map(({ amount }) => amount).sort());
  expect(money.orderCents / 100).toBeCloseTo(
    materials.reduce((sum, { costSum }) => sum + costSum, 0),
    2,
  );
});

test("a ring has two closed runs", () => {
  const { needs, estimate } = needsOf("ring");
  expect(needs.border!.runs).toEqual([
    { feet: estimate.amounts.borderRun, closed: true },
    { feet: estimate.amounts.innerRun, closed: true },
  ]);
});

test("what was typed over is in place of what was worked out", () => {
  const typed = [
    { line: "edging", quantity: 9 },
    { line: "stoneLine", unitCost: 55 },
    { line: "setEdging", quantity: 2.5 },
  ];
  const { needs, estimate } = needsOf("rectangle, plain", { typed });
  expect(needs.border!.pieces).toEqual({ quantity: 9, typed: true, unitCost: 24 });
  expect(needs.stone!.order).toEqual({ quantity: estimate.amounts.orderTons, unitCost: 55 });
  expect(needs.work!.hours.border).toBe(2.5);
});

test("a border's finish is told as the bed's sheet has it, the usual one not at all", () => {
  const black = { ...bedsOfEachWay.ring!, typed: { ...bedsOfEachWay.ring!.typed, borderFinish: "black" } };
  const { bed } = readForm(black);
  const needs = bedNeedsOf(bed!, estimateBed(bed!), { name: "ring" });
  expect(needs.border!.finish).toBe("black");
  const [line] = orderJob([needs]).lines.filter(({ supplier }) => supplier === "border");
  expect(line?.specification).toBe("4 in high, 8 ft long, black");
  expect(needsOf("ring").needs.border!.finish).toBeUndefined();
  const { bed: usual, estimate } = needsOf("ring");
  const spaced = { ...usual, names: { ...usual.names, borderFinish: " Usual " } };
  expect(bedNeedsOf(spaced, estimate, { name: "ring" }).border!.finish).toBeUndefined();
});

test("stone and soil go on the trucks of the form", () => {
  const { needs } = needsOf("rectangle, plain");
  // The form's starting values: deliveries of 10 cu yd and 8 tons, haul-off loads of 5 cu yd and 2.5 tons.
  expect(needs.stone!.truck).toEqual({ yards: 10, payloadTons: 8 });
  expect(needs.spoil!.truck).toEqual({ yards: 5, payloadTons: 2.5 });
});

test("a bed along a wall has one run of border, and as many strips as its width takes", () => {
  const { needs, estimate } = needsOf("rectangle, plain");
  // One long side and both ends of 41' 2" by 9 ft.
  expect(needs.border!.runs).toEqual([{ feet: estimate.amounts.borderRun, closed: false }]);
  expect(needs.border!.runs![0]!.feet).toBeCloseTo(41 + 2 / 12 + 18, 9);
  // 9 ft of width take two strips of a 6 ft roll.
  const { fabricLength } = estimate.amounts;
  expect(needs.fabric!.stripsFt).toEqual([fabricLength, fabricLength]);
});

test("what the estimator added by hand comes along", () => {
  const others = [{ item: "Boxwood, 2 gal", unit: "plants", order: { quantity: 3 } }];
  const otherHours = [{ label: "Move two shrubs", hours: 2 }];
  const { needs } = needsOf("ring", { others, otherHours });
  expect(needs.others).toBe(others);
  expect(needs.work!.otherHours).toBe(otherHours);
  expect(needsOf("ring").needs).not.toHaveProperty("others");
  expect(needsOf("ring").needs.work).not.toHaveProperty("otherHours");
});
