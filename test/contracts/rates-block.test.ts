import fc from "fast-check";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { type Field, fields } from "../../src/quantities/bed/fields";
import { lines } from "../../src/quantities/bed/lines";
import { pricedRates, type RateKey, rateKeys, rateNames, whoseName } from "../../src/quantities/bed/rates";
import { readRates } from "../../src/workbook/read/rates";
import { bedsOfEachWay } from "../bedsOfEachWay";
import type { HeadlessHost } from "../headlessHost";
import { insertRates, rateAddress } from "../insertRates";
import { createProductHost } from "../productHost";
import { type Block, formWithRates, insertBlock, paneEstimate, paneProblems, typeRates } from "../ratesBench";

let host: HeadlessHost;
let sheet: string;

describe("a block in a workbook with rates", () => {
  beforeAll(async () => {
    host = await createProductHost();
    sheet = await insertRates();
  });
  afterAll(() => host.dispose());

  /** Puts something into a rate's cell while `look` looks, and then what was there before. */
  async function during(name: string, content: number | string, look: () => Promise<void> | void): Promise<void> {
    const address = `${sheet}!${rateAddress(name)}`;
    const [formula, before] = [host.formula(address), host.value(address)];
    await host.type({ [address]: content });
    await look();
    await host.type({ [address]: formula ?? before });
  }

  test("follows every rate, and still comes to what the pane shows", async () => {
    // A bed by its stone's weight, so that the price of any other stone counts, too.
    const block = await insertBlock(host, await formWithRates({ stone: "1.4" }));
    for (const key of rateKeys) {
      await during(rateNames[key], changed(key), async () => {
        expect(block.value(cellOf(key)), key).toBe(changed(key));
        const expected = paneEstimate(await formWithRates({ stone: "1.4" }));
        expect(block.value("price"), key).toBeCloseTo(expected.price, 9);
        expect(block.value("priceWithTax"), key).toBeCloseTo(expected.priceWithTax, 9);
        expect(block.value("crewDays"), key).toBeCloseTo(expected.crewDays, 9);
      });
    }
  });

  test("keeps what was typed for this bed, in the pane or over its cell", async () => {
    const block = await insertBlock(host, await formWithRates({ rollCost: "59" }));
    await block.type("pinLine.unitCost", 15);
    expect(block.value("pinLine.remark")).toBe("price typed over.");
    await during("Rate_fabric_roll", 80, () => expect(block.value("fabric.unitCost")).toBe(59));
    await during("Rate_pin_box", 80, () => expect(block.value("pinLine.unitCost")).toBe(15));
    await during("Rate_border_piece", 80, () => expect(block.value("edging.unitCost")).toBe(80));
  });

  test("says which prices are examples, and that it uses any, only while it does", async () => {
    const block = await insertBlock(host, await formWithRates());
    expect(block.value("fabric.remark")).toBe("sample price");
    expect(block.value("scrape.remark")).toBe("sample price");
    expect(block.value("overhead.note")).toBe("sample; not marked up");
    expect(block.value("headWords")).toBe("sample prices: set your own in Rates");
    await during("Rate_fabric_roll", 71, () => expect(block.value("fabric.remark")).toBe(""));
    await during("Whose_fabric_roll", "own", () => expect(block.value("fabric.remark")).toBe(""));

    const marks = [...pricedRates.map(whoseName), "Whose_stone_kinds"];
    const own = Object.fromEntries(marks.map((name) => [`${sheet}!${rateAddress(name)}`, "own"]));
    const formulas = Object.fromEntries(Object.keys(own).map((address) => [address, host.formula(address)!]));
    await host.type(own);
    expect(block.value("headWords")).toBe("");
    await host.type(formulas);
    expect(block.value("headWords")).toBe("sample prices: set your own in Rates");
  });

  test("takes the price of its stone, and of any other for one that is not listed, and says so", async () => {
    const block = await insertBlock(host, await formWithRates({ stone: "Pea Gravel " }));
    expect(block.value("stoneLine.unitCost")).toBe(48);
    await block.type("stone", "crushed marble");
    expect(block.value("stoneLine.unitCost")).toBe(62);
    expect(block.value("stoneLine.remark")).toBe("sample price, any other stone");
    // A kind of the office's own, below those that are there from the start, with its weight.
    const row = Number(rateAddress("Rate_stone_kinds").slice(1)) + 5;
    await host.type({ [`${sheet}!A${row}`]: "canyon blend", [`${sheet}!B${row}`]: 88, [`${sheet}!F${row}`]: 1.42 });
    await block.type("stone", "Canyon blend");
    expect(block.value("stoneLine.unitCost")).toBe(88);
    expect(block.value("stoneLine.remark")).toBe("");
    expect(block.value("stoneDensity")).toBe(1.42);
    const form = await formWithRates({ stone: "canyon blend" });
    expect(block.value("price")).toBeCloseTo(paneEstimate(form).price, 9);
    await host.type({ [`${sheet}!B${row}`]: "" });
    expect([block.value("stoneLine.unitCost"), block.value("stoneLine.remark")]).toEqual(["no rate", "rate is blank"]);
    expect(block.value("price")).toBe("#VALUE!");
    await host.type({ [`${sheet}!A${row}`]: "", [`${sheet}!F${row}`]: "" });
  });

  describe("and a rate that is damaged", () => {
    const no = "No price: a rate is missing or damaged. See its row.";
    const words: Readonly<Record<string, RegExp>> = { "": /blank/, "ask Dale": /text|length/, "-3": /0|whole|%/ };

    // What the price before tax does not rest on.
    const neededFor: Readonly<Partial<Record<RateKey, string>>> = {
      crewSize: "crewDays",
      crewDay: "crewDays",
      salesTax: "priceWithTax",
    };

    let block: Block;
    beforeAll(async () => {
      block = await insertBlock(host, await formWithRates({ stone: "1.4" }));
    });

    test("gives no price, whichever it is, and says why in its row and on top", async () => {
      for (const [index, key] of rateKeys.entries()) {
        const [damage, word] = Object.entries(words)[index % 3]!;
        await during(rateNames[key], damage === "-3" ? -3 : damage, async () => {
          const needed = neededFor[key];
          expect([key, block.value(needed ?? "headPrice")]).toEqual([key, "#VALUE!"]);
          if (!needed) expect([key, block.value("headWords")]).toEqual([key, no]);
          expect(block.value(remarkOf(key)), key).toMatch(word);
          // The pane says so, too, at the field, and does not write a block without a price.
          const problems = paneProblems(await formWithRates({ stone: "1.4" }));
          expect(problems, key).toMatchObject([{ place: key, unfinished: false }]);
        });
      }
      expect(block.value("price")).toBeTypeOf("number");
    });

    test.each([
      ["Rate_fabric_roll", "=1/0", "rate is missing or has an error"],
      ["Rate_fabric_roll", true, "rate is text, not a number"],
      ["Rate_fabric_roll", "'64", "rate is text, not a number"],
      ["Rate_edging_feet", 0, "rate is 0 or less"],
      ["Rate_pins_per_box", 2.5, "rate isn't a whole number over 0"],
      ["Rate_markup_labor", 35, "rate is not 0% to 200%"],
      ["Rate_waste", 1, "rate is not 0% to under 100%"],
      ["Rate_roll_width", 0, "rate is 0 or less"],
      ["Rate_roll_width", "6 foots", "rate isn't a length"],
    ])("%s as %j: %s", async (name, damage, said) => {
      const key = rateKeys.find((one) => rateNames[one] === name)!;
      await during(name, damage as string, async () => {
        // An error in the cell of a rate is told by this block's own cell, and not handed on without words.
        expect(block.value(remarkOf(key))).toContain(said);
        expect(block.value("price")).toBe("#VALUE!");
        expect(block.value("headWords")).toBe(no);
        expect((await readRates())!.rates.byField[key].problem).toBeTruthy();
      });
    });

    test("0 is a price where a field takes it", async () => {
      await during("Rate_dump_fee", 0, () => expect(block.value("dump.price")).toBe(0));
      await during("Rate_sales_tax", 0.0825, () =>
        expect(block.value("priceWithTax")).toBeCloseTo(Number(block.value("price")) * 1.0825, 1),
      );
    });
  });
});

describe("blocks of each way of measuring", () => {
  /** Rates of an office, as someone might type them. */
  const office = fc.record(
    Object.fromEntries(rateKeys.map((key) => [key, anyRate(fields[key])])) as Record<RateKey, fc.Arbitrary<number>>,
  );

  test("come to what the pane shows, whatever the rates are", async () => {
    host = await createProductHost();
    sheet = await insertRates();
    const { rates } = (await readRates())!;
    // Of one bed waste and crew rate were typed, and of one the stone is given by its weight.
    const beds = Object.values(bedsOfEachWay);
    const blocks = [];
    for (const bed of beds) blocks.push(await insertBlock(host, { ...bed, rates }));
    for (const values of fc.sample(office, { numRuns: 4, seed: 20 })) {
      await typeRates(host, sheet, Object.fromEntries(rateKeys.map((key) => [rateNames[key], values[key]])));
      const now = (await readRates())!.rates;
      for (const [index, bed] of beds.entries()) {
        const expected = paneEstimate({ ...bed, rates: now });
        for (const key of ["price", "priceWithTax", "fullCost", "laborHours", "crewDays"] as const)
          expect(blocks[index]!.value(key), `${key} with ${JSON.stringify(values)}`).toBeCloseTo(expected[key], 7);
        for (const { key, costSum } of expected.lines)
          expect(blocks[index]!.value(`${key}.cost`), key).toBeCloseTo(costSum, 7);
      }
    }
    host.dispose();
  });

  function anyRate({ reads, initial, mayBeZero }: Field): fc.Arbitrary<number> {
    if (reads === "share") return fc.integer({ min: 0, max: 90 }).map((percent) => percent / 100);
    const start = Number(initial);
    if (reads === "whole") return fc.integer({ min: mayBeZero ? 0 : 1, max: start + 3 });
    return fc.integer({ min: 70, max: 200 }).map((percent) => Math.round(start * percent) / 100);
  }
});

describe("a block whose rates are gone", () => {
  beforeEach(async () => {
    host = await createProductHost();
    sheet = await insertRates();
  });
  afterEach(() => host.dispose());

  const removeName = (name: string) =>
    Excel.run(async (context) => {
      context.workbook.names.getItem(name).delete();
      await context.sync();
    });

  test("has no price, and says so; the pane says which names are missing", async () => {
    const form = await formWithRates();
    await removeName("Rate_fabric_roll");
    const block = await insertBlock(host, form);
    expect(block.value("fabric.unitCost")).toBe("no rate");
    expect(block.value("fabric.remark")).toBe("rate is missing or has an error");
    expect(block.value("price")).toBe("#VALUE!");
    const { byField } = (await readRates())!.rates;
    expect(byField.rollCost.problem).toMatch(/no cell is named Rate_fabric_roll/);
  });

  test("without its list of stone, too", async () => {
    const form = await formWithRates();
    await removeName("Rate_stone_prices");
    const block = await insertBlock(host, form);
    expect([block.value("stoneLine.unitCost"), block.value("stoneLine.remark")]).toEqual([
      "no rate",
      "list of stone is missing",
    ]);
    expect(block.value("price")).toBe("#VALUE!");
    expect((await readRates())!.rates.stonesProblem).toMatch(/list of stone by kind/);
  });
});

/** The cell of the block that follows a rate. */
function cellOf(key: RateKey): string {
  const line = key === "crewRate" ? undefined : lines.find(({ cost }) => cost === key);
  return line ? `${line.key}.unitCost` : key;
}

/** The cell that says what there is to say about it. */
function remarkOf(key: RateKey): string {
  const cell = cellOf(key);
  return cell.endsWith(".unitCost") ? cell.replace("unitCost", "remark") : `${key}.note`;
}

/** Another sensible value for a rate, in the way that someone types it. */
function changed(key: RateKey): number | string {
  const { reads, initial }: Field = fields[key];
  if (reads === "feet") return `${Number(initial) - 1}' 3"`;
  if (reads === "share") return 0.31;
  return reads === "whole" ? Number(initial) + 1 : Number(initial) * 1.5;
}
