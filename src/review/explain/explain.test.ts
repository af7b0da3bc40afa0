import { describe, expect, test } from "vitest";
import { callFunction } from "../../../test/callFunction";
import { ours } from "../../../test/properties/review-workbooks/ours";
import { sections } from "../../../test/properties/review-workbooks/sections";
import { factsOf, knowledge, type SheetInput } from "../../../test/reviewWorkbook";
import { cellAround, explain } from "./explain";
import { priceStrip } from "./strip";

const sheet = (rows: SheetInput["rows"]) => factsOf({ sheets: [{ name: "Jobs", rows }] });
const place = { sheet: "Jobs", row: 1, column: 4 };
const told = (formula: string, rows: SheetInput["rows"] = []) =>
  explain(formula, cellAround(sheet(rows), place, knowledge, callFunction))!;

const bed: SheetInput["rows"] = [
  ["Bed", "Length (ft)", "Width (ft)", "Depth (in)", "Stone (tons)"],
  ["Front walk", `18' 6"`, 5, 2, ""],
];

describe("a call of ours", () => {
  const explained = told('=BED.STONE_TONS(BED.AREA_RECTANGLE(B2,C2),D2,"river rock",8%)', bed);

  test("shows each argument with its value and unit, and what its cell is called", () => {
    expect(explained.arguments.map(({ name, text, value }) => [name, text, value])).toEqual([
      ["area", "BED.AREA_RECTANGLE(B2,C2)", "92.5 sq ft"],
      ["depth_in", "D2", "2 in"],
      ["stone", '"river rock"', "river rock: 1.35 tons/cu yd"],
      ["waste", "8%", "8%"],
    ]);
    expect(explained.arguments[1]?.reads).toBe("Front walk, Depth (in)");
  });

  test("names the source of a table value", () => {
    expect(explained.arguments[2]?.source).toMatch(/^Common practice/);
  });

  test("works line by line with the numbers in it", () => {
    // By hand: 92.5 × 2 ÷ 324 = 0.570988; × 1.08 = 0.616667; × 1.35 = 0.8325.
    expect(explained.working).toEqual([
      "92.5 × 2 ÷ 324 = 0.570988 cu yd",
      "plus 8% waste: 0.570988 × 1.08 = 0.616667 cu yd",
      "0.616667 × 1.35 tons/cu yd = 0.8325 tons",
    ]);
    expect(explained.result).toBe("0.8325 tons");
  });

  test("can be stepped into, down to the tape", () => {
    const [area] = explained.inside;
    expect(area?.text).toBe("BED.AREA_RECTANGLE(B2,C2)");
    expect(area?.arguments[0]).toMatchObject({
      name: "length",
      value: `18' 6", which is 18.5 ft`,
      reads: "Front walk, Length (ft)",
    });
    expect(area?.arguments[2]).toMatchObject({ name: "corner_radius", text: "", value: "left out: 0 ft" });
    expect(area?.working).toEqual(["18.5 × 5 = 92.5 sq ft"]);
  });
});

describe("an error", () => {
  test("gives the full reason and the fix, in the function's own words", () => {
    expect(told('=BED.STONE_TONS(100,2,"rivr rock")').error).toEqual({
      reason: "stone: “rivr rock” isn't in the list.",
      fix: "Did you mean “river rock”? Or type the tons per cubic yard.",
    });
    expect(told("=BED.PRICE_MARGIN(100,35)").error).toEqual({
      reason: "margin: 35 must be under 1.",
      fix: "Type 10% or 0.10, not 10.",
    });
  });

  test("is traced to the innermost call that it comes from", () => {
    const explained = told('=BED.STONE_TONS(BED.AREA_RECTANGLE(B3,5),2,"river rock")*62', bed);
    expect(explained.error?.reason).toBe("The error comes from BED.AREA_RECTANGLE(B3,5): length is blank or 0.");
  });

  test("is explained from the arguments where no one knows the function's own words", () => {
    const silent = { ...cellAround(sheet(bed), place, knowledge, () => ({ error: "#VALUE!" })) };
    expect(explain("=BED.STONE_YARDS(B3,2)", silent)?.error).toEqual({
      reason: "area is blank, and it's required.",
      fix: "Fix area, which is B3.",
    });
  });
});

describe("a plain formula", () => {
  test("shows the branch that counts, the numbers put in, and only the calls that it comes to", () => {
    const explained = told('=IF(B2="",0,BED.FEET(B2)*(1+C2))', bed);
    expect(explained.working).toEqual([
      '“18\' 6"” = "" is false: takes the second part',
      "BED.FEET(“18' 6\"”) × (1 + 5) = 111",
    ]);
    expect(explained.inside.map(({ text }) => text)).toEqual(["BED.FEET(B2)"]);
    expect(told('=IF(B3="",0,BED.FEET(B3))', bed).inside).toEqual([]);
  });

  test("reads a range up to where INDEX says that it ends", () => {
    const rows: SheetInput["rows"] = [["Width (ft)"], [4], [6], [9]];
    expect(told("=SUM(A2:INDEX(A2:A4,ROWS(A2:A4)-1))", rows).result).toBe("10");
    expect(told("=SUM(A2:INDEX(A2:A4,3))+1", rows).result).toBe("20");
    expect(told("=SUM(A3:INDEX(A2:A4,1,0))", rows).result).toBe("?");
  });

  test("that cannot be read has no explanation", () => {
    expect(explain("=5 +* 3", cellAround(sheet([]), place, knowledge, callFunction))).toBeUndefined();
  });
});

describe("a price in one strip", () => {
  test("of a line: quantity, unit cost, cost, markup, price", () => {
    const facts = factsOf(ours(1));
    const used = facts.sheets[0]!.used!;
    const row = used.values.findIndex((cells) => cells[0] === "Stone" && cells[2] === "tons");
    // 1 ton at 66 with 22% on it.
    expect(
      priceStrip(facts, { sheet: "Front walk", row, column: 6 })?.steps.map(({ what, how }) => [what, how]),
    ).toEqual([["Stone", "1 ton × 66.00 = 66.00; + 22% = 80.52"]]);
  });

  test("of a block: its lines and its overhead come to its price", () => {
    const facts = factsOf(ours(1));
    const strip = priceStrip(facts, { sheet: "Front walk", row: 1, column: 1 })!;
    expect(strip.steps.map(({ what }) => what)).toContain("Overhead");
    const lines = strip.steps.filter(({ what }) => what !== "Minimum charge");
    expect(lines.reduce((sum, { amount }) => sum + amount, 0)).toBeCloseTo(strip.price, 2);
  });

  test("of an estimate in sections: its lines, the overhead on them, and the margin", () => {
    const facts = factsOf(sections());
    const row = facts.sheets[0]!.used!.values.findIndex((cells) => cells[0] === "Price");
    const steps = priceStrip(facts, { sheet: "Maple Terrace", row, column: 4 })!.steps;
    expect(steps).toHaveLength(15);
    expect(steps[0]).toMatchObject({ what: "River rock", how: "3.5 tons × 61.00 = 213.50" });
    expect(steps.slice(-2).map(({ what, how }) => `${what}: ${how}`)).toEqual(["Overhead: 183.85", "Margin: 22%"]);
  });

  test("of a cell that holds no price there is none", () => {
    expect(priceStrip(sheet(bed), { sheet: "Jobs", row: 1, column: 2 })).toBeUndefined();
  });
});
