import { describe, expect, test } from "vitest";
import { countsInPlan } from "../../layout/planOfEstimate";
import { estimateBed } from "../bed/estimate";
import { type BedForm, blankForm } from "../bed/form";
import { readForm } from "../bed/read";
import { must } from "../must";
import { type BedToPrice, priceJob, split } from "./priceJob";

function bed(name: string, form: Partial<BedForm>): BedToPrice {
  const read = readForm({ ...blankForm(), name, ...form });
  const { bed: made } = read as { bed: BedToPrice["bed"] };
  return { name, bed: must(made), laid: countsInPlan(must(made)) };
}

const strip = bed("Wall", { typed: { length: `32' 6 1/2"`, width: "3" } });
const rounded = bed("Walk", { typed: { length: `18' 6"`, width: "5", cornerRadius: "2", roundedCorners: "2" } });
const ring = bed("Tree", { way: "round", typed: { diameter: "8", innerDiameter: "2" } });
const kidney = bed("Kidney", {
  way: "widths",
  typed: { spacing: "4" },
  widths: ["0", "3", "4.5", "5", "4", "2.5", "0"],
  cutOuts: [["12", "1.5", "2", "3"]],
});
const four = [strip, rounded, ring, kidney];

describe("a job of one bed", () => {
  test.each(four.map((one) => [one.name, one] as const))("costs what the estimate of %s says", (_, one) => {
    const alone = estimateBed(one.bed, one.laid);
    const { amounts, lines } = priceJob([one]);
    expect(amounts.price).toBe(alone.price);
    expect(amounts.priceWithTax).toBe(alone.priceWithTax);
    expect(amounts.laborHours).toBeCloseTo(alone.laborHours, 9);
    expect(lines.reduce((sum, { cost }) => sum + cost, 0)).toBeCloseTo(alone.directCost, 9);
  });
});

test("four beds together cost less than four prices, and more than any one", () => {
  const together = priceJob(four);
  const apart = four.map((one) => estimateBed(one.bed, one.laid).price).reduce((sum, price) => sum + price, 0);
  expect(together.amounts.price).toBeLessThan(apart);
});

test("parts of a price add up to the cent", () => {
  expect(split(100, [1, 1, 1])).toEqual([33.33, 33.34, 33.33]);
});

describe("a stone of a job", () => {
  const stoneLines = (...beds: BedToPrice[]) =>
    priceJob(beds).lines.flatMap(({ key, label, quantity }) =>
      key?.startsWith("stoneLine") ? [[label, quantity]] : [],
    );
  const typed = (stone: string) => bed(stone, { typed: { length: "20", width: "5", stone } });

  test("given by its weight is one kind, however the number is written", () => {
    // 100 sq ft at 2 in with 8% waste: 0.6667 cu yd, 0.9333 tons, twice.
    expect(stoneLines(typed("1.4"), typed("1.40"))).toEqual([["Stone, stone of 1.4 tons/cu yd, to 1.25 in", 2]]);
  });

  test("that the office weighed keeps its name", () => {
    const one = typed("river rock");
    // 0.6667 cu yd of 1.6 tons
    expect(stoneLines({ ...one, bed: { ...one.bed, weighedTonsPerYard: 1.6 } })).toEqual([
      ["Stone, river rock, to 1.25 in", 1.5],
    ]);
  });

  test("is one kind whatever its case, and so is the edging's finish", () => {
    const finished = (borderFinish: string) => bed(borderFinish, { typed: { length: "20", width: "5", borderFinish } });
    expect(stoneLines(typed("River rock"), typed("river Rock"))).toHaveLength(1);
    const lines = priceJob([finished("usual"), finished("Usual")]).lines;
    expect(lines.filter(({ key }) => key?.startsWith("edgingLine")).map(({ label }) => label)).toEqual([
      "Edging pieces, 4 in high, 8 ft long",
    ]);
  });

  test("has a name that a person would write, for a size in thirds of an inch and of a foot", () => {
    const thirds = { borderHeight: "4 1/3", pieceLength: "8' 4\"", stoneSize: "3/8", rollWidth: "4' 8\"" };
    const lines = priceJob([bed("Thirds", { typed: { length: "20", width: "5", ...thirds } })]).lines;
    expect(lines.map(({ label }) => label)).toEqual(
      expect.arrayContaining([
        "Edging pieces, 4.333 in high, 8.333 ft long",
        "Fabric rolls, 4.667 ft × 50 ft",
        "Stone, river rock, to 0.375 in",
      ]),
    );
  });
});
