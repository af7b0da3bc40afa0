import { expect, test } from "vitest";
import { countsInPlan, planOfEstimate } from "../../layout/planOfEstimate";
import { bedNeedsOf } from "../job/bedNeedsOf";
import { orderJob } from "../job/orderJob";
import { estimateBed } from "./estimate";
import { type BedForm, blankForm } from "./form";
import { readForm } from "./read";

const straight: Partial<BedForm> = { typed: { length: "27", width: "11" } };
const round: Partial<BedForm> = { way: "round", typed: { diameter: "10" } };

function layersOf(form: Partial<BedForm>, fabricLayers: string) {
  const { bed } = readForm({ ...blankForm(), ...form, typed: { ...form.typed, fabricLayers } });
  if (!bed) throw new Error("This form can't be read.");
  const plan = planOfEstimate(bed);
  return { bed, plan, estimate: estimateBed(bed, countsInPlan(bed, plan)) };
}

test.each([straight, round])("a second layer takes as much fabric again, and no more pins (%#)", (form) => {
  const [one, two] = ["1", "2"].map((layers) => layersOf(form, layers).estimate);
  for (const key of ["fabricStrips", "fabricArea", "rolls", "fabricTime"] as const)
    expect(two!.amounts[key], key).toBe(2 * one!.amounts[key]);
  expect(two!.amounts.pins).toBe(one!.amounts.pins);
  expect(two!.stripsFt).toEqual([...one!.stripsFt, ...one!.stripsFt]);
});

test.each([straight, round])(
  "without fabric nothing is laid, pinned, ordered, or drawn, and the rest stays (%#)",
  (form) => {
    const { bed, plan, estimate } = layersOf(form, "0");
    const usual = layersOf(form, "1").estimate;
    expect(estimate.amounts).toEqual({
      ...usual.amounts,
      ...{ fabricStrips: 0, fabricArea: 0, rolls: 0, pins: 0, pinBoxes: 0, fabricTime: 0 },
    });
    expect(plan).toMatchObject({ cuts: [], pins: [], counts: { rolls: 0, pins: 0 } });
    const order = orderJob([bedNeedsOf(bed, estimate, { name: "Bed" })]);
    expect(order.lines.filter(({ supplier }) => supplier === "fabric and pins")).toEqual([]);
  },
);

// By hand: each layer is 2 × 27 ft, so four strips come off rolls of 50 ft: 27 + 23, 4 + 1 lap + 27 + 18, 9 + 1 lap + …
test("the order cuts both layers together, and a strip has its drawing's number in each", () => {
  const { bed, estimate } = layersOf(straight, "2");
  const [fabric] = orderJob([bedNeedsOf(bed, estimate, { name: "Bed" })]).lines.filter(
    ({ item }) => item === "Fabric rolls",
  );
  expect(fabric).toMatchObject({ order: 4, needed: 4 * 27 });
  const parts = fabric!.cutting!.stocks.flatMap(({ cuts }) => cuts.map(({ part }) => part));
  expect(new Set(parts)).toEqual(new Set([1, 2]));
});
