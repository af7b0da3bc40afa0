import { describe, expect, test } from "vitest";
import { blankForm, followedRate, listedStone, textOf } from "./form";
import {
  isPriced,
  isRate,
  isRateName,
  type Rate,
  type RateKey,
  type Rates,
  rateFor,
  rateKeys,
  rateLabel,
  stoneRateOf,
  whoseName,
} from "./rates";
import { readForm } from "./read";
import { readRate, readStonePrice, readStoneWeight } from "./readRate";

const text = (typed: string): Rate => ({ text: typed, isExample: false });
const rates = (changes: Partial<Record<RateKey, Rate>> = {}, more: Partial<Rates> = {}): Rates => {
  const rest = Object.fromEntries(rateKeys.map((key) => [key, readRate(key, 1, true)])) as Record<RateKey, Rate>;
  // A share of 1 is no waste.
  return {
    byField: { ...rest, waste: text("8%"), stoneCost: text("70"), ...changes },
    stones: [
      { name: "River rock", stoneCost: text("66"), tonsPerYard: text("1.4") },
      { name: "Lava rock", stoneCost: { problem: "The price of Lava rock is blank." } },
    ],
    ...more,
  };
};
const form = { ...blankForm(), typed: { length: "18", width: "5" } };
const withTyped = (typed: Record<string, string>, given = rates()) => ({
  ...form,
  typed: { ...form.typed, ...typed },
  rates: given,
});

describe("the name of a cell", () => {
  test.each([
    ["Rate_overhead", true],
    ["rate_OVERHEAD", true],
    ["Rate_stone_prices", true],
    ["Whose_stone_kinds", true],
    ["Whose_crew_hour", true],
    ["Whose_waste", false], // waste starts with common practice, so no one asks whose it is
    ["Overhead", false],
  ])("%s is one of ours: %s", (name, isOurs) => {
    expect(isRateName(name)).toBe(isOurs);
  });

  test("that tells whose a price is follows the price's", () => {
    expect(whoseName("crewRate")).toBe("Whose_crew_hour");
  });
});

test("fields are rates, and rates are priced, where an office sets them", () => {
  expect((["overhead", "waste", "length"] as const).map(isRate)).toEqual([true, true, false]);
  expect((["overhead", "waste", "length"] as const).map(isPriced)).toEqual([true, false, false]);
});

test("every rate has a label of its own", () => {
  const labels = rateKeys.map(rateLabel);
  expect(new Set(labels).size).toBe(rateKeys.length);
  expect(rateLabel("stoneCost")).toBe("Any other stone");
  expect(rateLabel("overhead")).toBe("Overhead on cost");
});

describe("a listed stone", () => {
  test.each([
    ["river rock", "River rock"],
    [" RIVER   ROCK ", "River rock"],
    ["river  rock", "River rock"],
    ["riverrock", undefined],
    ["brick", undefined],
    [" ", undefined],
    ["", undefined],
  ])("is found by %j: %s", (typed, name) => {
    expect(stoneRateOf(rates(), typed)?.name).toBe(name);
  });

  test("has its own price, and others the price of any other", () => {
    expect(rateFor(rates(), "stoneCost", "river rock")).toEqual(text("66"));
    expect(rateFor(rates(), "stoneCost", "brick")).toEqual(text("70"));
    expect(rateFor(rates(), "waste", "river rock")).toEqual(text("8%"));
    const broken = rates({}, { stonesProblem: "The list of stone is broken." });
    expect(rateFor(broken, "stoneCost", "brick")).toEqual({ problem: "The list of stone is broken." });
    expect(rateFor(broken, "waste", "brick")).toEqual(text("8%"));
  });
});

describe("a field of the form", () => {
  test("follows the office's rate until something is typed", () => {
    const office = withTyped({}, rates({ overhead: text("12%"), crewRate: { problem: "missing" } }));
    expect(textOf(office, "overhead")).toBe("12%");
    expect(textOf(office, "crewRate")).toBe("");
    expect(textOf(office, "stoneCost")).toBe("66");
    expect(textOf(office, "stoneSize")).toBe("1.25");
    expect(textOf({ ...office, typed: { overhead: "9%" } }, "overhead")).toBe("9%");
    expect(followedRate(office, "overhead")).toEqual(text("12%"));
    expect(followedRate({ ...office, typed: { overhead: "9%" } }, "overhead")).toBeUndefined();
    expect(followedRate(office, "stoneSize")).toBeUndefined();
    expect(followedRate(form, "overhead")).toBeUndefined();
  });

  test("starts with the sample price of its stone where the office has no rates", () => {
    expect(textOf({ ...form, typed: { stone: "lava rock" } }, "stoneCost")).toBe("140");
    expect(textOf(form, "overhead")).toBe("10%");
  });

  test("knows its stone in the office's list", () => {
    expect(listedStone(withTyped({}))?.name).toBe("River rock");
    expect(listedStone(withTyped({ stone: "brick" }))).toBeUndefined();
    expect(listedStone(form)).toBeUndefined();
  });
});

describe("a bed is read with the office's rates", () => {
  const read = (typed: Record<string, string>, given?: Rates) => readForm(withTyped(typed, given));
  const places = (typed: Record<string, string>, given: Rates) =>
    read(typed, given).problems.map(({ place, message, unfinished }) => [place, message, unfinished]);

  test("and with the weight of its stone where the office weighed it", () => {
    expect(read({}).bed).toMatchObject({ weighedTonsPerYard: 1.4, numbers: { stoneCost: 66 } });
    expect(read({}).problems).toEqual([]);
    expect(read({ stone: "brick" }).bed).not.toHaveProperty("weighedTonsPerYard");
  });

  test("unless one of them cannot be read", () => {
    expect(places({}, rates({ crewRate: { problem: "Crew rate is blank." } }))).toEqual([
      ["crewRate", "Crew rate is blank.", false],
    ]);
    expect(places({ stone: "lava rock" }, rates())).toEqual([["stoneCost", "The price of Lava rock is blank.", false]]);
    const weighed = { name: "River rock", stoneCost: text("66"), tonsPerYard: { problem: "Too heavy." } };
    expect(places({}, rates({}, { stones: [weighed] }))).toEqual([["stone", "Too heavy.", false]]);
  });

  test("and asks for the list even where the price was typed, for the weight", () => {
    const broken = rates({}, { stonesProblem: "The list of stone is broken." });
    expect(places({ stoneCost: "50" }, broken)).toEqual([["stone", "The list of stone is broken.", false]]);
    expect(places({}, broken)).toEqual([["stoneCost", "The list of stone is broken.", false]]);
    expect(read({ stoneCost: "50" }).problems).toEqual([]);
  });
});

describe("a cell with a rate", () => {
  test.each<[RateKey, unknown, string]>([
    ["waste", 0.07, "7%"], // 7.000000000000001 % in binary
    ["waste", 0, "0%"],
    ["crewRate", 52.5, "52.5"],
    ["pieceLength", 8, "8"],
    ["pieceLength", `8' 6"`, `8' 6"`],
    ["minimumCharge", 0, "0"],
  ])("%s of %j reads as %s", (key, cell, typed) => {
    expect(readRate(key, cell, true)).toEqual({ text: typed, isExample: true });
    expect(readRate(key, cell, false)).toEqual({ text: typed, isExample: false });
  });

  test.each<[RateKey, unknown, RegExp]>([
    ["waste", undefined, /^Waste and low spots \(Rates\) is missing: no cell is named Rate_waste\./],
    ["waste", "", /^Waste and low spots \(Rates\) is blank.* such as 8%/],
    ["waste", null, /is blank/],
    ["waste", 1.5, /must be under 1/],
    ["crewRate", "52.5", /^Crew rate, with burden \(Rates\): can't read “52\.5” as a number/],
    ["crewRate", true, /can't read TRUE as a number/],
    ["crewRate", -1, /less than 0/],
    ["pieceLength", "eight", /as a length/],
    ["pieceLength", true, /can't read TRUE as a number/],
  ])("%s of %j gives no rate", (key, cell, words) => {
    expect(readRate(key, cell, false)).toEqual({ problem: expect.stringMatching(words) });
  });

  test("of a listed stone has a price, and a weight where one was typed", () => {
    expect(readStonePrice("Lava rock", 140, true)).toEqual({ text: "140", isExample: true });
    expect(readStonePrice("Lava rock", "", true).problem).toMatch(/^The price of Lava rock \(Rates\) is blank/);
    expect(["", null, undefined].map((cell) => readStoneWeight("Lava rock", cell))).toEqual(Array(3).fill(undefined));
    expect(readStoneWeight("Lava rock", 0.6)).toEqual({ text: "0.6", isExample: false });
    expect(readStoneWeight("Lava rock", 10)).toEqual({ text: "10", isExample: false });
    expect(readStoneWeight("Lava rock", 10.1)?.problem).toMatch(
      /^The weight of Lava rock \(Rates\): .* no more than 10 tons/,
    );
    expect(readStoneWeight("Lava rock", "x")?.problem).toMatch(/as a number\. Try 1\.35/);
  });
});
