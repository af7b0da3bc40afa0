import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { countsInPlan } from "../../src/layout/planOfEstimate";
import { depthVerdicts } from "../../src/quantities/bed/depthVerdict";
import { estimateBed } from "../../src/quantities/bed/estimate";
import { type BedForm, blankForm } from "../../src/quantities/bed/form";
import { readForm } from "../../src/quantities/bed/read";
import { STONES } from "../../src/quantities/stone";
import { keyAddresses } from "../../src/sheets/compose";
import { estimateBlock, estimateRows } from "../../src/sheets/estimate/block";
import { insertPlan } from "../../src/workbook/change/insert";
import { bedsOfEachWay } from "../bedsOfEachWay";
import type { HeadlessHost } from "../headlessHost";
import { createProductHost } from "../productHost";

const form = (changes: Partial<BedForm>): BedForm => ({ ...blankForm(), name: "Front walk", ...changes });

/** One bed of each way of measuring, in tape text, and one whose strips are laid by hand. */
const beds: Record<string, BedForm> = {
  ...bedsOfEachWay,
  "widths, with strips along the base line by hand": form({
    way: "widths",
    typed: { spacing: "4", corners: "0", stripDirection: "0", rollWidth: "4" },
    widths: ["2", "5.5", "7", "6"],
  }),
};
const rectangle = bedsOfEachWay["rectangle, rounded"]!;

/** The estimate as the pane shows it: in plan, unless the bed is a plain rectangle. */
function estimateOf(bedForm: BedForm) {
  const bed = readForm(bedForm).bed!;
  return estimateBed(bed, countsInPlan(bed));
}

let host: HeadlessHost;
beforeAll(async () => {
  host = await createProductHost();
});
afterAll(() => host.dispose());

describe.each(Object.entries(beds))("the block of a bed measured as %s", (_, bed) => {
  const keys = keyAddresses(estimateRows(bed), { row: 0, column: 0 });

  test("works out on the sheet what the pane shows before it is written", async () => {
    const inserted = await insertPlan((at) => estimateBlock(bed, at), { kind: "new sheet", name: "Bed" });
    if (!inserted.done) throw new Error("a new sheet is free");
    const value = (key: string) => host.value(`'${inserted.sheetName}'!${keys.get(key)}`);
    const { amounts, lines, ...sums } = estimateOf(bed);

    const shown = Object.entries(amounts).filter(([key]) => keys.has(key));
    expect(shown.length).toBeGreaterThan(20);
    for (const [key, amount] of shown) {
      expect(value(key), key).toBeCloseTo(amount, 9);
    }
    for (const { key, amount, costSum, priceSum } of lines) {
      expect(value(`${key}.quantity`), key).toBeCloseTo(amount, 9);
      expect(value(`${key}.cost`), key).toBeCloseTo(costSum, 9);
      expect(value(`${key}.price`), key).toBeCloseTo(priceSum, 9);
    }
    for (const key of [
      "directCost",
      "overheadCost",
      "fullCost",
      "price",
      "taxSum",
      "priceWithTax",
      "markupOnCost",
      "marginOnPrice",
      "laborHours",
      "crewDays",
    ] as const) {
      expect(value(key), key).toBeCloseTo(sums[key]!, 9);
    }
  });
});

/** The block of a rectangle on a new sheet, its cells by key. */
async function insertRectangle(bed: BedForm) {
  const inserted = await insertPlan((at) => estimateBlock(bed, at), { kind: "new sheet", name: "Rectangle" });
  if (!inserted.done) throw new Error("a new sheet is free");
  const keys = keyAddresses(estimateRows(bed), { row: 0, column: 0 });
  const address = (key: string) => `'${inserted.sheetName}'!${keys.get(key)}`;
  return {
    value: (key: string) => host.value(address(key)),
    type: (cells: Record<string, string | number>) =>
      host.type(Object.fromEntries(Object.entries(cells).map(([key, content]) => [address(key), content]))),
  };
}

describe("the block of an 18 ft 6 in by 5 ft bed with two rounded corners of 2 ft", () => {
  test("gives what a person with a pencil gets", async () => {
    const { value } = await insertRectangle(rectangle);
    // Worked by hand with the rules in the functions' contract; plan geometry only.
    // A rounded corner takes (1 − π/4)·2² = 0.858407 sq ft off the area and (2 − π/2)·2 = 0.858407 ft off the border.
    expect(value("stoneArea")).toBeCloseTo(18.5 * 5 - 2 * 0.858407, 5);
    expect(value("borderRun")).toBeCloseTo(18.5 + 2 * 5 - 2 * 0.858407, 5);
    // Border 4 in, less 1.5 in of trench, less 0.5 in of gap (common practice).
    expect(value("stoneDepth")).toBe(2);
    // 90.783185 × 2 ÷ 324 = 0.560390 cu yd, and 8 % more; at 2,700 lb a cubic yard 0.817049 tons; the yard's least is 1.
    expect(value("stoneYards")).toBeCloseTo(0.605221, 6);
    expect(value("stoneTons")).toBeCloseTo(0.817049, 6);
    expect(value("orderTons")).toBe(1);
    // 90.783185 × 2.5 ÷ 324 + 26.783185 × (4/12) × (1.5/12) ÷ 27 = 0.700488 + 0.041332 bank cu yd; loam swells 1.25.
    expect(value("digYards")).toBeCloseTo(0.74182, 5);
    expect(value("spoilYards")).toBeCloseTo(0.927275, 5);
    expect(value("spoilLoads")).toBe(1);
    // Pieces of 8 ft lapping 2 in reach 7.8333 ft each: (26.7832 − 0.1667) ÷ 7.8333 = 3.4, so 4.
    expect(value("pieces")).toBe(4);
    // Stakes at most 30 in apart: 4 in each of three whole reaches, 2 in the 3.28 ft left, 1 at the end; none for a
    // rounded corner. Three come with each of the 4 pieces, so 3 more.
    expect(value("stakes")).toBe(15);
    expect(value("extraStakes")).toBe(3);
    // One 6 ft strip, 18.5 ft long, trimmed to the bed.
    expect(value("fabricStrips")).toBe(1);
    expect(value("fabricArea")).toBeCloseTo(18.5 * 5 - 2 * 0.858407, 2);
    expect(value("rolls")).toBe(1);
    // 11 rows of 3 and 9 rows of 2, as in the plain rectangle: where two corners are rounded, the outer rows' pins move to
    // where those rows meet the edge.
    expect(value("counted")).toBe("on the bed laid out in plan");
    expect(value("pins")).toBe(11 * 3 + 9 * 2);
    expect(value("pinBoxes")).toBe(1);
    expect(value("headDepth")).toBe("Depth works for this stone.");
  });

  test("has a price that can be followed line by line", async () => {
    const { value } = await insertRectangle(rectangle);
    const kinds = {
      scrape: 0.35,
      haul: 0.15,
      dump: 0.15,
      edging: 0.2,
      stakeLine: 0.2,
      setEdging: 0.35,
      fabric: 0.2,
      pinLine: 0.2,
      layFabric: 0.35,
      stoneLine: 0.2,
      delivery: 0.15,
      spread: 0.35,
      cleanUp: 0.35,
    };
    let [cost, price] = [0, 0];
    for (const [key, markup] of Object.entries(kinds)) {
      const lineCost = Number(value(`${key}.quantity`)) * Number(value(`${key}.unitCost`));
      cost += lineCost;
      price += lineCost * (1 + markup);
      expect(value(`${key}.markup`), key).toBe(markup);
    }
    expect(value("price")).toBeCloseTo(Math.max(400, price + 0.1 * cost), 2);
    const [full, shown] = [cost * 1.1, Number(value("price"))];
    expect(value("markupOnCost")).toBeCloseTo(shown / full - 1, 9);
    expect(value("marginOnPrice")).toBeCloseTo(1 - full / shown, 9);
  });
});

describe("a block that someone works with", () => {
  test("follows every input that is typed over", async () => {
    const typed = {
      length: `41' 2"`,
      width: "9 ft",
      cornerRadius: "1.5",
      roundedCorners: "4",
      houseEdging: "1",
      rightEdging: "0",
      borderHeight: "6",
      stone: "lava rock",
      waste: "12%",
      rollWidth: "4",
      overlap: "4",
      stakesPerPiece: "0",
      soil: "clay",
      crewRate: "61",
      materialMarkup: "0.3",
      overhead: "0.05",
      minimumCharge: "0",
    };
    const { value, type } = await insertRectangle(rectangle);
    await type(
      Object.fromEntries(
        Object.entries(typed).map(([key, text]) => [
          key,
          Number.isFinite(Number(text)) ? Number(text) : text.endsWith("%") ? 0.12 : text,
        ]),
      ),
    );
    await type({ "stoneLine.unitCost": 71 });
    const changed = estimateOf(form({ typed: { ...rectangle.typed, ...typed, stoneCost: "71" } }));
    for (const [key, amount] of Object.entries(changed.amounts)) {
      if (!["innerRun", "sandYards", "sandOrder", "bagPounds"].includes(key) && !key.startsWith("second"))
        expect(value(key), key).toBeCloseTo(amount, 9);
    }
    expect(value("price")).toBeCloseTo(changed.price, 9);
  });

  test("takes a markup typed over its line, says so, and counts it", async () => {
    const { value, type } = await insertRectangle(rectangle);
    expect(value("stoneLine.remark")).toBe("sample price");
    await type({ "stoneLine.markup": 0.5 });
    expect(value("stoneLine.remark")).toBe("markup typed over. sample price");
    expect(value("stoneLine.price")).toBeCloseTo(Number(value("stoneLine.cost")) * 1.5, 9);
    await type({ "fabric.quantity": 3 });
    expect(value("fabric.remark")).toBe("quantity typed over. sample price");
    expect(value("fabric.cost")).toBe(3 * 64);
  });

  test("includes a spare line in its sums, with the markup of its kind", async () => {
    const { value, type } = await insertRectangle(rectangle);
    const before = {
      cost: Number(value("directCost")),
      price: Number(value("linePrices")),
      hours: Number(value("laborHours")),
    };
    await type({ "spare1.quantity": 2, "spare1.unitCost": 40, "spare1.kind": "labor" });
    expect(value("directCost")).toBeCloseTo(before.cost + 80, 9);
    expect(value("linePrices")).toBeCloseTo(before.price + 80 * 1.35, 9);
    expect(value("laborHours")).toBeCloseTo(before.hours + 2, 9);
  });

  test("shows an error instead of a price where a measurement is blank or cannot be read", async () => {
    const { value, type } = await insertRectangle(rectangle);
    await type({ length: "18 fet" });
    expect(value("price")).toBe("#VALUE!");
    await type({ length: "" });
    expect(value("price")).toBe("#VALUE!");
  });

  test.each([
    [{ stoneSize: 1.5 }, depthVerdicts.stoneTooLarge],
    [{ borderHeight: 3.25 }, depthVerdicts.shallow],
    [{ borderHeight: 9 }, depthVerdicts.deep],
  ])("says what a depth does: %j", async (cells, verdict) => {
    const { value, type } = await insertRectangle(rectangle);
    await type(cells);
    expect(value("headDepth")).toBe(verdict);
  });
});

test("the block says what to mind about the covering that is typed, and nothing of river rock", async () => {
  const { value, type } = await insertRectangle(rectangle);
  expect(value("coveringCaution")).toBe("");
  for (const [stone, said] of [
    ["Wood chips", /^Can burn: .* Floats away .* keep it off siding\.$/],
    ["rubber nuggets", /^Can burn: keep it 5 ft from the house\.$/],
    ["pumice", /^Floats away in hard rain\.$/],
    ["decomposed granite", /silica dust/],
    ["crushed glass", /sharp edges/],
  ] as const) {
    await type({ stone });
    expect(value("coveringCaution"), stone).toMatch(said);
  }
  await type({ stone: 1.4 });
  expect(value("coveringCaution")).toBe("");
});

test("the cell of the stone offers the names near its own, as many as a cell takes", () => {
  const offered = (stone: string) =>
    estimateBlock({ ...rectangle, typed: { ...rectangle.typed, stone } }, { row: 0, column: 0 }).choices.flatMap(
      ({ names }) => (names.includes(stone) ? [names] : []),
    )[0]!;
  for (const { name } of STONES) {
    const names = offered(name);
    expect(names, name).toContain(name);
    expect(names.join(",").length, name).toBeLessThanOrEqual(255);
  }
});

test("a name that begins like a formula stays text", async () => {
  const { value } = await insertRectangle({ ...rectangle, name: '=HYPERLINK("x")' });
  expect(value("name")).toBe('=HYPERLINK("x")');
});
