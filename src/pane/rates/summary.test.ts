import { describe, expect, test } from "vitest";
import { borderChoices, fabricChoices } from "../../quantities/bed/choices";
import { listKeys, listOf } from "../../quantities/bed/officeLists";
import { pricedRates, stoneListNames } from "../../quantities/bed/rates";
import { type NamedCells, ratesFrom } from "../../sheets/rates/ratesFrom";
import { ratesSheet } from "../../sheets/rates/ratesSheet";
import type { FoundRates } from "../../workbook/read/rates";
import { missingRates } from "./missing";
import { examplePrices, rateProblems, ratesSummary } from "./summary";

const plan = ratesSheet({ row: 0, column: 0 });
const cells = new Map<string, NamedCells>(
  plan.names!.map(({ name, area: { row, column, rows, columns } }) => [
    name,
    plan.formulas.slice(row, row + rows).map((line) => line.slice(column, column + columns)),
  ]),
);

function found(change: Readonly<Record<string, NamedCells>> = {}, left: readonly string[] = []): FoundRates {
  const named = new Map([...cells, ...Object.entries(change)].filter(([name]) => !left.includes(name)));
  return { rates: ratesFrom(named)!, sheets: ["Rates"], names: [...named.keys()] };
}

/** What the cells hold that say whose a price is: on a sheet they are formulas. */
const filled = (name: string, content: unknown) => cells.get(name)!.map((row) => row.map(() => content));
const allAre = (whose: string) =>
  Object.fromEntries(
    [...cells.keys()].flatMap((name) => (name.startsWith("Whose_") ? [[name, filled(name, whose)]] : [])),
  );
const examples = allAre("example");
const own = allAre("own");

describe("the summary of the office's rates", () => {
  test("counts the prices that are still samples", () => {
    const count = pricedRates.length + cells.get(stoneListNames.kinds)!.filter(([name]) => name !== "").length;
    expect(examplePrices(found(examples))).toHaveLength(count);
    expect(ratesSummary(found(examples))).toBe(`Prices from Rates; ${count} are still samples.`);
  });

  test("has nothing to say once every price is the office's own", () => {
    expect(examplePrices(found(own))).toEqual([]);
    expect(ratesSummary(found(own))).toBe("Prices from Rates.");
  });

  test("calls the sheet by its first name where no cell is left on one", () => {
    expect(ratesSummary({ ...found(own), sheets: [] })).toBe("Prices from Rates.");
    expect(ratesSummary({ ...found(own), sheets: ["Prices", "Crew"] })).toBe("Prices from Prices, Crew.");
  });

  test("says whose price it is where a ready choice brings one of its own", () => {
    const [steel, roll] = [borderChoices[0]!.fills, fabricChoices[0]!.fills];
    expect(ratesSummary(found(own), steel)).toBe("Edging piece, price: a sample, not from Rates. Type your own.");
    expect(ratesSummary(found(own), { ...steel, ...roll })).toBe(
      "Edging piece, price and Fabric roll, price: samples, not from Rates. Type your own.",
    );
    expect(ratesSummary(found(own), { ...steel, pieceCost: "31" })).toBe("Prices from Rates.");
  });

  test("counts one price as one", () => {
    const one = { ...own, Whose_crew_hour: [["example"]] };
    expect(ratesSummary(found(one))).toBe("Prices from Rates; 1 is still a sample.");
  });

  test("puts a damaged rate first", () => {
    const damaged = found({ ...examples, Rate_crew_hour: [["ask"]] });
    expect(rateProblems(damaged)).toHaveLength(1);
    expect(ratesSummary(damaged)).toBe("Prices from Rates; 1 rate is missing or damaged.");
  });

  test("counts a damaged price or weight of a stone", () => {
    const first = (name: string, content: unknown) => ({
      [name]: cells.get(name)!.map((row, place) => (place === 0 ? [content] : row)),
    });
    expect(rateProblems(found(first(stoneListNames.prices, "ask")))).toHaveLength(1);
    expect(rateProblems(found(first(stoneListNames.weights, "heavy")))).toHaveLength(1);
  });
});

test.each(listKeys)("a damaged row, or the loss of a column, of the list of %s is a problem", (key) => {
  const { names, price, columns } = listOf(key);
  const price1 = columns[price]!;
  const damaged = cells.get(price1)!.map((row, place) => (place === 0 ? ["ask"] : row));
  expect(rateProblems(found({ [price1]: damaged }))).toEqual([
    expect.stringContaining(`of ${cells.get(names)![0]![0]}`),
  ]);
  expect(rateProblems(found({}, [price1]))).toEqual([expect.stringContaining(`The list of ${listOf(key).of}`)]);
});

describe("the rates that a sheet still lacks", () => {
  test("are those without a name", () => {
    expect(missingRates(found())).toMatchObject({ keys: [], stones: false });
    expect(missingRates(found({}, ["Rate_crew_hour"])).keys).toEqual(["crewRate"]);
  });

  test("are the stones only where no part of their list is left", () => {
    expect(missingRates(found({}, [stoneListNames.weights])).stones).toBe(false);
    expect(missingRates(found({}, Object.values(stoneListNames))).stones).toBe(true);
  });
});
