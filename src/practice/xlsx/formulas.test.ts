import { describe, expect, test } from "vitest";
import { FunctionNames, fromFile, movedFormula, toFile } from "./formulas";
import { type FileTable, tableCells } from "./tableReferences";

const functions = new FunctionNames(["BED.STONE_TONS", "BED.AREA_POINTS"]);
const beds: FileTable = {
  part: "xl/tables/table1.xml",
  pointer: "rId1",
  name: "Beds",
  sheetName: "Jobs",
  // B2:D6: a row of headings, three beds, a row of totals.
  area: { row: 1, column: 1, rowCount: 5, columnCount: 3 },
  columns: ["Length", "Width", "Area, sq ft"],
  headingRows: 1,
  totalRows: 1,
  style: "",
};
const cell = { sheetName: "Jobs", row: 3, column: 6 };
const read = (text: string) => fromFile(text, cell, { functions, tables: [beds] });
const formula = (text: string) => {
  const made = read(text);
  return "formula" in made ? made.formula : made.refused;
};

describe("a formula in a file and in a cell", () => {
  test.each([
    ["_xldudf_BED_STONE_TONS(A1,3)", "=BED.STONE_TONS(A1,3)"],
    ['_xldudf_BED_STONE_TONS(SUM(A1:A3),"3"" deep")', '=BED.STONE_TONS(SUM(A1:A3),"3"" deep")'],
    ["_xlfn.IFNA(A1,0)", "=IFNA(A1,0)"],
    ["_xlfn._xlws.SORT(A1:A3)", "=SORT(A1:A3)"],
    ["_xlfn.LET(_xlpm.depth,3,_xlpm.depth*A1)", "=LET(depth,3,depth*A1)"],
    ["_xlfn.LAMBDA(_xlpm.a,_xlpm.b,_xlpm.a+_xlpm.b)(1,2)", "=LAMBDA(a,b,a+b)(1,2)"],
    ["'Bob''s jobs'!B2*Rate_crew_hour", "='Bob''s jobs'!B2*Rate_crew_hour"],
    ["-A1^2", "=-A1^2"],
    ['"_xlfn.IFNA("&A1', '="_xlfn.IFNA("&A1'],
  ])("%s is %s both ways", (inFile, inCell) => {
    expect(formula(inFile)).toBe(inCell);
    expect(toFile(inCell, functions)).toBe(inFile);
  });

  test("functions are told whatever their capitals", () => {
    expect(formula("_xlUDF_x(1)")).toBe("=_xlUDF_x(1)");
    expect(formula("_XLDUDF_bed_stone_tons(1)")).toBe("=BED.STONE_TONS(1)");
    expect(toFile("=bed.area_points(A1:B4)", functions)).toBe("_xldudf_BED_AREA_POINTS(A1:B4)");
  });

  test("a name that only looks like a function of ours in a file is no one's", () => {
    expect(toFile("=BED_STONE_TONS(1)", functions)).toBe("BED_STONE_TONS(1)");
  });

  test("functions of add-ins that are not here stay as they are, and are told", () => {
    expect(read("_xldudf_OTHER_SUM(1)")).toEqual({
      formula: "=_xldudf_OTHER_SUM(1)",
      foreign: ["_xldudf_OTHER_SUM"],
    });
  });
});

describe("a formula that cannot be one here", () => {
  test.each([
    ["[1]Sheet1!A1*2"],
    ["SUM('[2]Old jobs'!A1:A9)"],
    ["[3]!Rate"],
    ["'C:\\jobs\\[old.xlsx]Sheet1'!A1"],
    ["cmd|'/C calc'!A0"],
  ])("reads outside: %s", (text) => {
    expect(formula(text)).toBe("outside");
  });

  test("text with brackets or a line in it reads nothing outside", () => {
    expect(formula('"[1] of "&A1&"|"')).toBe('="[1] of "&A1&"|"');
  });

  test("is told where it does not hold together, or refers to a table that is not there", () => {
    expect(formula("1+")).toBe("unreadable");
    expect(formula("SUM(Other[Length])")).toBe("table");
  });

  test("a reference to what is gone is an ordinary error", () => {
    expect(formula("Jobs!#REF!+1")).toBe("=Jobs!#REF!+1");
  });
});

describe("a reference to a table is one to its cells", () => {
  // Worked by hand on B2:D6 with headings in row 2 and totals in row 6; the formula is in row 4.
  test.each([
    ["Beds[Length]", "$B$3:$B$5"],
    ["Beds[[#This Row],[Width]]", "$C4"],
    ["Beds[@Width]", "$C4"],
    ["Beds[[#All],[Length]]", "$B$2:$B$6"],
    ["Beds[#Headers]", "$B$2:$D$2"],
    ["Beds[[#Totals],[Area, sq ft]]", "$D$6"],
    ["Beds[[Length]:[Width]]", "$B$3:$C$5"],
    ["beds[]", "$B$3:$D$5"],
  ])("%s is %s", (reference, cells) => {
    expect(tableCells(reference, [beds], cell)).toBe(cells);
  });

  test("with the sheet's name from another sheet", () => {
    expect(tableCells("Beds[Width]", [beds], { ...cell, sheetName: "Other" })).toBe("Jobs!$C$3:$C$5");
  });

  test("without a table's name it is the table around the cell", () => {
    expect(tableCells("[@Length]", [beds], { ...cell, column: 3 })).toBe("$B4");
    expect(tableCells("[@Length]", [beds], cell)).toBeUndefined();
  });

  test("a heading that the table does not have is no reference", () => {
    expect(tableCells("Beds[Depth]", [beds], cell)).toBeUndefined();
  });
});

test("a formula that a file keeps once for several cells moves with its relative references alone", () => {
  expect(movedFormula("B2*$C$1+SUM(D:D)+LOG10(A$1)", "E2", "F4")).toBe("C4*$C$1+SUM(E:E)+LOG10(B$1)");
  expect(movedFormula("IF('A 1'!B2=\"A1\",1,2)", "C1", "C3")).toBe("IF('A 1'!B4=\"A1\",1,2)");
});
