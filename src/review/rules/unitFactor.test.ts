import { describe, expect, test } from "vitest";
import { cellsFound, findWith } from "../../../test/findWith";
import { unitFactor } from "./units";

/** A formula in the last column, and the unit that column's heading names. */
const rows = (heading: string, formula: string) => [
  ["Bed", "Length (ft)", "Width (ft)", "Depth (in)", "Density (tons/cu yd)", "Share", "Beds", heading],
  ["Front walk", 18, 5, 3, 1.35, 0.08, 4, formula],
];

describe("a formula whose unit isn't that of its heading", () => {
  test.each([
    ["square feet times inches, never divided by 324", "Stone (cu yd)", "=B2*C2*D2", true],
    ["square feet times inches over 27 only", "Stone (cu yd)", "=B2*C2*D2/27", true],
    ["square feet times feet over 27", "Stone (cu yd)", "=B2*C2*(D2/12)/27", false],
    ["over 324 at once", "Stone (cu yd)", "=B2*C2*D2/324", false],
    ["tons from the weight of a yard", "Stone (tons)", "=B2*C2*D2/324*E2", false],
    ["tons in pounds", "Stone (lb)", "=B2*C2*D2/324*E2", true],
    ["tons times 2,000 in pounds", "Stone (lb)", "=B2*C2*D2/324*E2*2000", false],
    ["a share more is the same unit", "Area (sq ft)", "=B2*C2*(1+F2)", false],
    ["1.08 is 8% more", "Area (sq ft)", "=B2*C2*1.08", false],
    ["a length in inches", "Length (in)", "=B2*1", true],
    ["a plain reference to another unit", "Length (in)", "=B2", true],
    ["a plain reference to the same unit", "Length (ft)", "=B2", false],
    ["rounded", "Stone (cu yd)", "=ROUNDUP(B2*C2*D2,0)", true],
    ["another kind of measure isn't asked about", "Area (sq ft)", "=B2*C2*D2", false],
    ["a sum of two lengths has nothing to turn", "Length (in)", "=B2+C2", false],
    ["no references", "Length (in)", "=12*3", false],
    ["a factor that is no unit", "Area (sq ft)", "=B2*C2*5", false],
    ["no unit in the heading", "Stone", "=B2*C2*D2", false],
    ["a count", "Strips (each)", "=B2*12", false],
    ["a share", "Share (%)", "=F2*12", false],
    ["money", "Price ($)", "=G2*12", false],
    ["our own function gives its unit itself", "Stone (tons)", "=BED.STONE_YARDS(B2*C2,D2)", false],
    ["our own function that gives cubic yards", "Stone (cu ft)", "=BED.STONE_YARDS(B2*C2,D2)", false],
    ["a share of a share", "Share (%)", "=F2*144", false],
    ["a count of a count", "Stakes (each)", "=G2*144", false],
    ["our own function times a number", "Stone (cu ft)", "=BED.STONE_YARDS(B2*C2,D2)*1", true],
  ])("%s", (_, heading, formula, isFound) => {
    expect(cellsFound(unitFactor, rows(heading, formula))).toEqual(isFound ? ["H2"] : []);
  });

  test("is nothing where money comes of money", () => {
    const priced = [
      ["Line", "Cost ($)", "Price ($)"],
      ["Stone", 100, "=B2*144"],
    ];
    expect(cellsFound(unitFactor, priced)).toEqual([]);
  });

  // Up to 12 beds of one size are a count: 3 x 18 ft is not feet for yards.
  test.each([
    ["3 beds of one length", "Length (ft)", "=B2*3", false],
    ["9 beds of one area", "Area (sq ft)", "=B2*C2*9", false],
    ["12 beds", "Area (sq ft)", "=B2*C2*12", false],
    ["27 is no count", "Area (sq ft)", "=B2*C2*27", true],
    ["a third is no count", "Length (ft)", "=B2/3", true],
    ["3 hidden in 9 over 3", "Length (ft)", "=B2*9/3", true],
    ["12 hidden in another number", "Area (sq ft)", "=B2*C2*24/2", true],
  ])("%s", (_, heading, formula, isFound) => {
    expect(cellsFound(unitFactor, rows(heading, formula))).toEqual(isFound ? ["H2"] : []);
  });

  test("says how far it is off, and by what to divide or multiply", () => {
    expect(findWith(unitFactor, rows("Stone (cu yd)", "=B2*C2*D2"))).toMatchObject([
      {
        level: "error",
        rank: 90,
        cells: ["H2"],
        seen:
          "“Front walk”, “Stone (cu yd)” is in cu yd; by the units it reads, =B2*C2*D2 is 324 times too large " +
          "(square feet times inches and cubic yards).",
        todo: "Divide by 324 more, or correct the unit in a heading.",
      },
    ]);
    expect(findWith(unitFactor, rows("Stone (lb)", "=B2*C2*D2/324*E2"))[0]).toMatchObject({
      seen:
        "“Front walk”, “Stone (lb)” is in lb; by the units it reads, =B2*C2*D2/324*E2 is 2,000 times too small " +
        "(pounds and tons).",
      todo: "Multiply by 2000 more, or correct the unit in a heading.",
    });
  });

  test("is one finding where it was filled down", () => {
    const filled = [...rows("Stone (cu yd)", "=B2*C2*D2"), ["Side yard", 20, 4, 3, 1.35, 0.08, 4, "=B3*C3*D3"]];
    expect(findWith(unitFactor, filled).map(({ cells }) => cells)).toEqual([["H2", "H3"]]);
    const apart = [...rows("Stone (cu yd)", "=B2*C2*D2"), ["Side yard", 20, 4, 3, 1.35, 0.08, 4, "=B3*D3*C3"]];
    expect(findWith(unitFactor, apart).map(({ cells }) => cells)).toEqual([["H2"], ["H3"]]);
  });
});
