import { describe, expect } from "vitest";
import { type Estimate, estimateBed } from "../../src/quantities/bed/estimate";
import { type FieldKey, fields } from "../../src/quantities/bed/fields";
import { blankForm, initialOf, unitOf } from "../../src/quantities/bed/form";
import { readForm } from "../../src/quantities/bed/read";
import { SOLD_BY, usuallySoldBy } from "../../src/quantities/soldBy";
import { STONES } from "../../src/quantities/stone";
import { outside } from "../outside";

/*
 * A bed of 500 sq ft at 3 in, without waste: 125 cu ft, 4.63 cu yd. Edging 4 in high, 1/2 in of it in the trench, and
 * 1/2 in of it above the stone.
 */
const BED = {
  ...{ area: "500", longest: "50", widest: "10", waste: "0" },
  ...{ borderHeight: "4", trenchDepth: "0.5", topGap: "0.5" },
};

type Typed = Readonly<Partial<Record<FieldKey, string>>>;

function bedWith(typed: Typed): Estimate {
  const { bed, problems } = readForm({ ...blankForm(), way: "area", typed: { ...BED, ...typed } });
  if (!bed) throw new Error(problems[0]?.message);
  return estimateBed(bed);
}

const stoneLine = ({ lines }: Estimate) => lines.find(({ key }) => key === "stoneLine")!;

/** At 2,600 lb a cubic yard. */
const GRAVEL = { stone: "gravel" };

describe("500 sq ft at 3 in", () => {
  outside("by hand", "is 125 cu ft", () => {
    expect(bedWith({}).amounts.stoneYards * 27).toBeCloseTo(125, 9);
  });

  outside("by hand, with gravel at 2,600 lb a cubic yard (CalRecycle)", "by the ton", () => {
    const estimate = bedWith(GRAVEL);
    // 4.63 × 1.3 = 6.02 tons, by half tons; 6.5 ÷ 1.3 cu yd.
    expect(estimate.amounts.stoneOrder).toBe(6.5);
    expect(estimate.amounts.orderTons).toBe(6.5);
    expect(estimate.amounts.orderYards).toBeCloseTo(5, 9);
    expect(stoneLine(estimate).unit).toBe("tons");
    expect(estimate.amounts.bagPounds).toBe(0);
  });

  outside(
    "UF/IFAS, Florida Yards Workbook: a cubic yard covers 108 sq ft at 3 in; the rest by hand",
    "by the cubic yard",
    () => {
      const estimate = bedWith({ ...GRAVEL, soldBy: "cubic yard" });
      // 500 ÷ 108 = 4.63, by half yards.
      expect(estimate.amounts.stoneOrder).toBe(5);
      expect(estimate.amounts.orderYards).toBe(5);
      expect(estimate.amounts.orderTons).toBeCloseTo(6.5, 9);
      expect(stoneLine(estimate)).toMatchObject({ unit: "cu yd", amount: 5, unitCost: 84, costSum: 420 });
    },
  );

  outside("UF/IFAS, Florida Yards Workbook: a bag of 2 cu ft covers 8 sq ft at 3 in", "by the bag of 2 cu ft", () => {
    const { amounts } = bedWith({ ...GRAVEL, soldBy: "bag", bagSize: "2" });
    expect(amounts.stoneOrder).toBe(Math.ceil(500 / 8));
    expect(amounts.orderYards).toBeCloseTo((63 * 2) / 27, 9);
    expect(amounts.orderTons).toBeCloseTo(((63 * 2) / 27) * 1.3, 9);
  });

  outside("by hand: 125 cu ft ÷ 3, and ÷ 0.5", "by bags of other sizes", () => {
    expect(bedWith({ soldBy: "bag", bagSize: "3" }).amounts.stoneOrder).toBe(42);
    const estimate = bedWith({ soldBy: "bag" });
    expect(estimate.amounts.stoneOrder).toBe(250);
    expect(stoneLine(estimate)).toMatchObject({ unit: "bags", unitCost: 6.5, costSum: 1625 });
  });

  outside("by hand: a bulk bag of a cubic yard is common practice", "by the bulk bag", () => {
    const estimate = bedWith({ ...GRAVEL, soldBy: "bulk bag" });
    expect(estimate.amounts.stoneOrder).toBe(5);
    expect(estimate.amounts.orderTons).toBeCloseTo(6.5, 9);
    expect(stoneLine(estimate)).toMatchObject({ unit: "bulk bags", unitCost: 145, costSum: 725 });
    expect(bedWith({ ...GRAVEL, soldBy: "bulk bag", bulkBagSize: "0.5" }).amounts.stoneOrder).toBe(10);
  });
});

outside("by hand: 500 sq ft at 2 in is 83.3 cu ft", "orders keep the yard's step and minimum in its own unit", () => {
  const thin = { ...GRAVEL, trenchDepth: "1.5" };
  const order = (typed: Typed) => bedWith({ ...thin, ...typed }).amounts.stoneOrder;
  // 3.09 cu yd, 4.01 tons.
  expect(order({})).toBe(4.5);
  expect(order({ soldBy: "cubic yard" })).toBe(3.5);
  expect(order({ soldBy: "cubic yard", orderStep: "0.25" })).toBe(3.25);
  expect(order({ soldBy: "cubic yard", orderMinimum: "5" })).toBe(5);
  expect(order({ soldBy: "bag", orderStep: "50" })).toBe(200);
  expect(order({ soldBy: "bulk bag", orderMinimum: "6" })).toBe(6);
});

outside("by hand", "trucks are filled by volume and by weight, whatever the stone is sold by", () => {
  const loads = (typed: Typed) => bedWith({ ...GRAVEL, ...typed }).amounts.deliveries;
  for (const { name } of SOLD_BY) {
    // 5 cu yd or 6.5 tons: the order fits 2.5 cu yd twice, and 2 tons 4 times; bags are a little less than 5 cu yd.
    expect(loads({ soldBy: name, deliveryYards: "2.5", deliveryPayload: "8" }), name).toBe(2);
    expect(loads({ soldBy: name, deliveryYards: "10", deliveryPayload: "2" }), name).toBe(4);
  }
});

describe("a bag", () => {
  outside(
    "CalRecycle and others, 2,600, 2,850, and 2,970 lb a cubic yard; 0.5 cu ft of it by hand",
    "weighs its share of a cubic yard",
    () => {
      const pounds = (stone: string) => bedWith({ soldBy: "bag", stone }).amounts.bagPounds;
      expect(pounds("1.3")).toBeCloseTo(48.1, 1);
      expect(pounds("1.425")).toBeCloseTo(52.8, 1);
      expect(pounds("1.485")).toBeCloseTo(55, 1);
    },
  );

  outside("by hand", "in bulk weighs what its yards weigh", () => {
    expect(bedWith({ ...GRAVEL, soldBy: "bulk bag" }).amounts.bagPounds).toBeCloseTo(2600, 9);
    expect(bedWith({ ...GRAVEL, soldBy: "bulk bag", bulkBagSize: "0.5" }).amounts.bagPounds).toBeCloseTo(1300, 9);
  });
});

outside(
  "NIST Handbook 130, Method of Sale of Commodities, as the Hamilton County (OH) Auditor states it: mulch by volume, stone by weight",
  "mulch starts with the cubic yard, stone with the ton",
  () => {
    const byVolume = STONES.filter(({ name }) => usuallySoldBy(name).name === "cubic yard").map(({ name }) => name);
    expect(byVolume).toEqual([
      ...["wood chips", "green wood chips", "shredded bark", "hardwood mulch", "bark nuggets"],
      ...["shredded rubber", "rubber nuggets"],
    ]);
    expect(initialOf({ ...blankForm(), typed: { stone: "Hardwood mulch" } }, "soldBy")).toBe("cubic yard");
    expect(initialOf({ ...blankForm(), typed: { stone: "granite boulders" } }, "soldBy")).toBe("ton");
    expect(initialOf(blankForm(), "soldBy")).toBe(fields.soldBy.initial);
  },
);

outside("common practice; prices made up", "each unit starts with its own step, minimum, size, and price", () => {
  const starts = (soldBy: string) => {
    const form = { ...blankForm(), typed: { soldBy } };
    const keys = ["orderStep", "orderMinimum", "stoneCost"] as const;
    return [...keys.map((key) => initialOf(form, key)), unitOf(form, "orderStep"), unitOf(form, "stoneCost")];
  };
  expect(Object.fromEntries(SOLD_BY.map(({ name }) => [name, starts(name)]))).toEqual({
    ton: ["0.5", "1", "62", "tons", "per ton"],
    "cubic yard": ["0.5", "1", "84", "cu yd", "per cu yd"],
    bag: ["1", "0", "6.5", "bags", "per bag"],
    "bulk bag": ["1", "0", "145", "bulk bags", "per bulk bag"],
  });
  expect([fields.bagSize.initial, fields.bulkBagSize.initial, fields.bulkBagLoad.initial]).toEqual([
    "0.5",
    "1",
    "3000",
  ]);
});
