import { expect, test } from "vitest";
import { fromA1, regionOf } from "../../../test/plainRegion";
import { toPlain } from "./toPlain";

/** The copied contents of one cell, where the copy is at the same address. */
function copied(cells: Parameters<typeof regionOf>[0], address: string, around: Parameters<typeof toPlain>[1] = {}) {
  const region = regionOf(cells);
  const { row, column } = fromA1(address);
  return toPlain(region, around).plan.formulas[row]![column];
}

test("a call becomes arithmetic with the same references and conditions", () => {
  expect(copied({ A1: 108, B1: 3, C1: "=BED.STONE_YARDS(A1,B1)" }, "C1")).toBe(
    "=IF(AND(ISNUMBER(A1),A1>0,ISNUMBER(B1),B1>0),A1*B1/324,#VALUE!)",
  );
});

test("what is typed into the call is checked now, and not in the formula", () => {
  expect(copied({ A1: '=BED.STONE_TONS(108,3,"River Rock",8%)' }, "A1")).toBe("=108*3/324*(1+0.08)*1.35");
  expect(copied({ A1: "=BED.STONE_YARDS(108,3,8)" }, "A1")).toBe("=#VALUE!");
  expect(copied({ A1: '=BED.STONE_DENSITY("granit")' }, "A1")).toBe("=NA()");
});

test("nested calls share their conditions, and arithmetic around a call keeps its order", () => {
  expect(copied({ A1: 10, B1: "=2*BED.AREA_ROUND(BED.FEET(A1))^2" }, "B1")).toBe(
    "=2*IF(AND(ISNUMBER(A1),A1>0),PI()/4*A1^2,#VALUE!)^2",
  );
  expect(copied({ A1: "=-(1+BED.PRICE_MARKUP(4,0.5))*2" }, "A1")).toBe("=-(1+(4*(1+0.5)))*2");
});

test("a workbook that was opened without the add-in is read as well", () => {
  expect(copied({ A1: 4, B1: "=_xldudf_BED_FEET(A1)" }, "B1")).toBe("=IF(AND(ISNUMBER(A1),A1>0),A1,#VALUE!)");
});

test("taped inputs become decimal numbers, in the unit of the argument that reads them", () => {
  const region = regionOf({
    A1: `18' 6"`,
    B1: "5",
    C1: '2 1/2"',
    D1: "=BED.STONE_YARDS(BED.AREA_RECTANGLE(A1,B1),C1)",
  });
  const { plan, replaced } = toPlain(region);
  expect(plan.formulas[0]!.slice(0, 3)).toEqual([18.5, 5, 2.5]);
  expect(replaced).toEqual([
    { from: "A1", to: "A1", was: `18' 6"`, is: 18.5, unit: "ft" },
    { from: "B1", to: "B1", was: "5", is: 5, unit: "ft" },
    { from: "C1", to: "C1", was: '2 1/2"', is: 2.5, unit: "in" },
  ]);
  expect(region.formulas[0]![0]).toBe(`18' 6"`);
});

test("one taped input that is read as feet and as inches is converted in the formula", () => {
  expect(copied({ A1: "4'", B1: "=BED.FEET(A1)", C1: "=BED.INCHES(A1)" }, "C1")).toBe(
    "=IF(AND(ISNUMBER(A1),A1>0),(A1*12),#VALUE!)",
  );
  // A text without a unit is 4 ft for the one and 4 in for the other, as a number would be.
  expect(copied({ A1: "4", B1: "=BED.FEET(A1)", C1: "=BED.INCHES(A1)" }, "C1")).toBe(
    "=IF(AND(ISNUMBER(A1),A1>0),A1,#VALUE!)",
  );
});

test("a taped 0 stays a measure", () => {
  expect(copied({ A1: "0'", B1: "=BED.FEET(A1)" }, "B1")).toBe("=IF(AND(ISNUMBER(A1),A1>=0),A1,#VALUE!)");
});

test("shares and dates that were typed as text look like shares and dates", () => {
  const region = regionOf({ A1: "8%", B1: "=BED.MARKUP_FOR_MARGIN(A1)", A2: "2026-03-02", B2: "=BED.DIG_DATE(A2,2)" });
  const { plan } = toPlain(region);
  expect([plan.formulas[0]![0], plan.formats[0]![0]]).toEqual([0.08, "0.0%"]);
  expect([plan.formulas[1]![0], plan.formats[1]![0]]).toEqual([46_083, "yyyy-mm-dd"]);
});

test("the name of a stone in a cell is looked up, and written as the lookup knows it", () => {
  const region = regionOf({ A1: "river_rock", B1: "=BED.STONE_DENSITY(A1)" });
  const { plan } = toPlain(region);
  expect(plan.formulas[0]![0]).toBe("river rock");
  expect(plan.formulas[0]![1]).toContain('"river rock"');
});

test("what has no ordinary form is left as its value, and named with the reason", () => {
  const region = regionOf(
    { A1: 100, B1: "=BED.CUT_COUNT(A1,D1:D3)", C1: "=BED.FEET(D1&A1)", E1: "=LET(a,A1,BED.FEET(a))" },
    { B1: 3, C1: 7, E1: 100 },
  );
  const { plan, leftAsValues } = toPlain(region);
  expect(plan.formulas[0]!.slice(1)).toEqual([3, 7, "", 100]);
  expect(leftAsValues.map(({ to, reason }) => `${to}: ${reason}`)).toEqual([
    "B1: BED.CUT_COUNT has no ordinary form: it searches for the best cut plan, which an ordinary formula can't do",
    "C1: D1&A1 joins text, which an ordinary formula can't read",
    "E1: it defines names within the formula (LET or LAMBDA)",
  ]);
  expect(plan.looks.map(({ area }) => [area.row, area.column])).toContainEqual([0, 1]);
  expect(plan.formulas.flat()).toContain("'Values that no longer update: B1, C1, E1.");
});

test("a list that spills is copied with all its values", () => {
  const region = regionOf(
    { A1: "=BED.CUT_LIST(D1,D2:D4)", A2: "", B1: "", B2: "", C1: "=SUM(A1#)" },
    { A1: "stock", B1: "left", A2: 1, B2: 4.5, C1: 1 },
  );
  const { plan, leftAsValues } = toPlain(region);
  expect(plan.formulas.slice(0, 2)).toEqual([
    ["stock", "left", 1],
    [1, 4.5, ""],
  ]);
  expect(leftAsValues.map(({ to }) => to)).toEqual(["A1:B2", "C1"]);
  expect(leftAsValues[1]!.reason).toBe("A1# is a list the copy has as values");
});

test("an ordinary list that spills is left room", () => {
  const region = regionOf({ A1: "=SORT(C1:C2)", A2: "", C1: 2, C2: 1 }, { A1: 1, A2: 2, C1: 2, C2: 1 });
  expect(toPlain(region).plan.formulas.slice(0, 2)).toEqual([
    ["=SORT(C1:C2)", "", 2],
    ["", "", 1],
  ]);
});

test("references within the copy move with it, others get their sheet's name", () => {
  const region = regionOf({ B2: 4, C2: "=BED.FEET(B2)+$A$1+Rates!B3", D2: "=B2*A1" });
  const { plan, converted } = toPlain(region, {}, { at: { row: 9, column: 0 }, sameSheet: false });
  expect(plan.formulas[0]).toEqual([
    4,
    "=IF(AND(ISNUMBER(A10),A10>0),A10,#VALUE!)+'Front yard'!$A$1+Rates!B3",
    "=A10*'Front yard'!A1",
  ]);
  expect(converted).toEqual(["B10"]);
  expect(toPlain(region, {}, { at: region, sameSheet: true }).plan.formulas[0]![2]).toBe("=B2*A1");
});

test("a column of a table becomes the cell it means", () => {
  const region = regionOf({ A1: "Length", A2: 18, B2: "=BED.FEET([@Length])", C2: "=Jobs[Length]*2" });
  const data = { sheetName: "Front yard", row: 1, column: 0, rows: 1, columns: 3 };
  const tables = [{ name: "Jobs", headings: ["Length", "Feet", "Twice"], data }];
  expect(toPlain(region, { tables }).plan.formulas[1]).toEqual([18, "=IF(AND(ISNUMBER(A2),A2>0),A2,#VALUE!)", "=A2*2"]);
  expect(toPlain(region).leftAsValues.map(({ to, reason }) => `${to}: ${reason}`)).toEqual([
    "B2: [@Length] belongs to a table that isn't there",
    "C2: Jobs[Length] belongs to a table that isn't there",
  ]);
});

test("a taped text outside the copy can't be replaced, so the formula is left as its value", () => {
  const region = regionOf({ A1: "=BED.FEET(Rates!B2)", A2: "=BED.FEET(gap)" }, { A1: 18.5, A2: 18.5 });
  const { plan, leftAsValues } = toPlain(region, { valueAt: () => `18' 6"`, names: { gap: "=Rates!$B$2" } });
  expect(plan.formulas.slice(0, 2)).toEqual([[18.5], [18.5]]);
  expect(leftAsValues[0]!.reason).toBe(`B2 on Rates is not copied, and holds “18' 6"” as text`);
  expect(toPlain(region, { valueAt: () => 4, names: { gap: "Rates!$B$2" } }).plan.formulas.slice(0, 2)).toEqual([
    ["=IF(AND(ISNUMBER(Rates!B2),Rates!B2>0),Rates!B2,#VALUE!)"],
    ["=IF(AND(ISNUMBER(gap),gap>0),gap,#VALUE!)"],
  ]);
});

test("a formula that gives taped text is replaced by the number it stands for", () => {
  const region = regionOf({ A1: 18, B1: `=A1&"'"`, C1: "=BED.FEET(B1)" }, { A1: 18, B1: "18'", C1: 18 });
  const { plan, leftAsValues, replaced } = toPlain(region);
  expect(plan.formulas[0]![1]).toBe(18);
  expect(leftAsValues.map(({ to, reason }) => [to, reason])).toEqual([
    ["B1", "its result is the text “18'”, which ordinary formulas can't read"],
  ]);
  expect(replaced).toEqual([]);
});

test("formulas that read a replaced text by themselves are named", () => {
  const region = regionOf({ A1: "18'", B1: "=BED.FEET(A1)", C1: "=LEN(A1)", D1: "=SUM(A1:B1)", E1: "=B1*2" });
  expect(toPlain(region).alsoRead).toEqual(["C1", "D1"]);
});

test("asking whether a replaced text is blank changes nothing, and asking whether it is 0 only where it is", () => {
  const asks = (text: string) => toPlain(regionOf({ A1: text, B1: '=IF(OR(A1="",A1=0),0,BED.FEET(A1))' }));
  expect(asks("18'").alsoRead).toEqual([]);
  expect(asks("0'").alsoRead).toEqual(["B1"]);
  expect(String(asks("18'").plan.formulas[0]![1])).toContain('IF(OR(A1="",A1=0),0,');
});

test("a formula over 8,192 characters is left as its value", () => {
  const cells = Object.fromEntries(Array.from({ length: 80 }, (_, row) => [`A${row + 1}`, row]));
  const points = `'Front yard of the corner house'!$A$1001:$B$1020`;
  const region = regionOf({ ...cells, C1: `=BED.AREA_POINTS(${points})` }, { ...cells, C1: 6 });
  const { leftAsValues } = toPlain(region);
  expect(leftAsValues[0]!.reason).toMatch(/^as an ordinary formula it has \d{4,} characters; the limit is 8192$/);
});

test("a formula that needs to be an array formula in a file is named", () => {
  const region = regionOf({ A1: 0, B1: 0, A2: 4, B2: 0, A3: 0, B3: 3, C1: "=BED.AREA_POINTS(A1:B3)" });
  expect(toPlain(region).arrays).toEqual(["C1"]);
});

test("values only leaves no formula, and text stays text", () => {
  const region = regionOf(
    { A1: "6-8", B1: "=1+1", C1: "North bed", D1: "=A1&1", E1: true, F1: "=1/0", A2: "=no formula" },
    { A1: "6-8", B1: 2, C1: "North bed", D1: "6-81", E1: true, F1: "#DIV/0!", A2: "=no formula" },
  );
  const { plan } = toPlain(region, {}, undefined, "values only");
  expect(plan.formulas[0]).toEqual(["'6-8", 2, "North bed", "'6-81", "TRUE", "#DIV/0!"]);
  expect(plan.formulas[1]![0]).toBe("'=no formula");
  expect(plan.formulas.at(-1)![0]).toBe("'Copy as values: nothing in it updates.");
});
