import { describe, expect, test } from "vitest";
import { readTemplate } from "./readTemplate";

/*
 * Templates that would run something, reach out of the workbook, or show themselves as something else. The attacks are
 * the published ones on spreadsheet files: formula injection with DDE (OWASP, "CSV Injection"), web and external
 * functions, Excel 4 macro commands (MITRE ATT&CK T1564.007 and T1137 describe their use), Unicode "Trojan Source"
 * marks of direction (CVE-2021-42574); the rest follows from what formats and merged cells can hide.
 */
const right = {
  format: "bedrow-template",
  version: 1,
  name: "Front bed",
  rows: 6,
  columns: 4,
  widths: [10, 10, 10, 10],
  cells: [
    { at: "A1", text: "Area" },
    { at: "B1", number: 90 },
    { at: "B2", formula: "=BED.STONE_TONS($B$1,2,Rates!$B$2,Rate_waste)" },
  ],
  outside: [{ reads: "Rates!$B$2", opened: "keep" }],
};

const refusal = (change: object | string): readonly string[] => {
  const read = readTemplate(typeof change === "string" ? change : JSON.stringify({ ...right, ...change }));
  if (read.ok) throw new Error("It was taken.");
  return read.why;
};
const formula = (text: string) => ({ cells: [{ at: "B3", formula: text }] });
const look = (shown: object) => ({ looks: [{ at: ["A1:B1"], ...shown }] });

test("the template that is spoilt below is taken as it is", () => {
  expect(readTemplate(JSON.stringify(right))).toMatchObject({ ok: true });
});

describe("a formula is refused by its cell and by name", () => {
  test.each<[string, RegExp]>([
    [`=WEBSERVICE("https://example.com/?"&B1)`, /^B3 calls WEBSERVICE, which reaches out to the web\.$/],
    ["=_xlfn.WEBSERVICE(B1)", /B3 calls WEBSERVICE, which reaches out to the web/],
    [`=IF(B1>0,FILTERXML(A1,"//a"),0)`, /calls FILTERXML, which reaches out to the web/],
    ["=ENCODEURL(A1)", /calls ENCODEURL, which reaches out to the web/],
    [`=IMAGE("https://example.com/a.png")`, /calls IMAGE, which reaches out to the web/],
    [`=STOCKHISTORY("A",TODAY())`, /calls STOCKHISTORY, which reaches out to the web/],
    [`=IMPORTXML("https://example.com","//a")`, /calls IMPORTXML, which reaches out/],
    [`=HYPERLINK("https://example.com","Open")`, /calls HYPERLINK, which leaves the workbook/],
    [`=RTD("prog.id",,"topic")`, /calls RTD, which talks to another program/],
    [`=DDE("soffice","file","A1")`, /calls DDE, which talks to another program/],
    [`=CALL("Kernel32","WinExec","JC","calc",5)`, /calls CALL, which runs code outside/],
    [`=REGISTER.ID("Kernel32","WinExec")`, /calls REGISTER\.ID, which runs code outside/],
    [`=EXEC("calc")`, /calls EXEC, which runs code outside/],
    [`=PY("print(1)",0)`, /calls PY, which runs code outside/],
    [`=FWRITE(1,"x")`, /calls FWRITE, an old macro command/],
    ["=GET.WORKSPACE(2)", /calls GET\.WORKSPACE, an old macro command/],
    [`=SQL.REQUEST("DSN=x","","","select 1")`, /calls SQL\.REQUEST, which asks a server/],
    [`=CUBEVALUE("a","b")`, /calls CUBEVALUE, which asks a server/],
    [`=INDIRECT("Payroll!B"&2)`, /calls INDIRECT, which hides what it reads/],
    [`=CELL("filename",A1)`, /calls CELL, which reveals details of the computer or the file/],
    ["=ACME.PRICE(B1)", /calls ACME\.PRICE, which isn't an ordinary function or one of this add-in's/],
    ["=_xll.ACME(B1)", /calls _XLL\.ACME, which isn't an ordinary function/],
    ["=BED.GIVE_AWAY(B1)", /calls BED\.GIVE_AWAY, which this version of the add-in doesn't have/],
    ["=__PROTO__(1)", /calls __PROTO__, which isn't an ordinary function/],
    ["=MAP(A1:A3,WEBSERVICE)", /names WEBSERVICE, which reaches out to the web/],
    [`=LET(f,WEBSERVICE,f("https://example.com"))`, /calls F, which isn't an ordinary function/],
    ["=cmd|' /c calc'!A0", /calls another program \(with \|/],
    ["=+cmd|'/c calc'!A0", /calls another program \(with \|/],
    [`=-2+3+cmd|"/c calc"!A0`, /calls another program \(with \|/],
    ["=@SUM(1+9)*cmd|' /c calc'!A0", /calls another program \(with \|/],
    ["+cmd|' /c calc'!A0", /has a formula that doesn't begin with =/],
    ["-1+1", /has a formula that doesn't begin with =/],
    ["@SUM(A1)", /has a formula that doesn't begin with =/],
    ["=[Prices.xlsx]Stone!$B$2", /reads another workbook/],
    ["='[Prices 2.xlsx]Stone'!$B$2", /reads another workbook/],
    ["='C:\\Office\\[Prices.xlsx]Stone'!B2", /reads an address outside the workbook/],
    ["='https://example.com/[a.xlsx]Stone'!B2", /reads an address outside the workbook/],
    ["='\\\\server\\share\\[a.xlsx]Stone'!B2", /reads an address outside the workbook/],
    ["=[1]Stone!B2", /reads another workbook/],
    ["=[Prices.xlsx]!Rate", /reads another workbook/],
    ["=Payroll!$B$2", /reads Payroll!\$B\$2, which the template doesn't list/],
    ["=SUM(Jan:Dec!B2)", /reads several sheets at once/],
    ["=B9", /reads B9, beyond the template's cells/],
    ["=SUM(A:A)", /reads A:A, beyond the template's cells/],
    ["=SUM(A2:A)", /reads A2:A, which has no end/],
    ["=SUM(Payroll[Wage])", /reads the table Payroll\[Wage\]/],
    ["=Salary*2", /reads the name Salary, which the template doesn't list/],
    ["=LET(Rate_waste,0,B1*Rate_waste)", /gives another meaning to the name rate_waste/],
    [`="a`, /has a formula that can't be read/],
    ["=SUM(B1", /has a formula that can't be read/],
    ["=B1\u200B+1", /a hidden character \(U\+200B\)/],
    [`=${"(".repeat(70)}1${")".repeat(70)}`, /too many nested parentheses/],
  ])("%s", (text, words) => {
    expect(refusal(formula(text))[0]).toMatch(/^B3 /);
    expect(refusal(formula(text))[0]).toMatch(words);
  });

  test("in a rule by which cells stand out, too", () => {
    const warning = (when: string) => ({ warnings: [{ at: "B2:B4", when }] });
    expect(refusal(warning(`=WEBSERVICE("https://example.com")`))[0]).toMatch(/^B2:B4 in its color rule.*WEBSERVICE/);
    expect(refusal(warning("=BED.FEET(B2)>1"))[0]).toMatch(/function of this add-in in its color rule/);
    expect(refusal(warning("=Rates!$B$2>1"))[0]).toMatch(/reads Rates!\$B\$2, which the template doesn't list/);
  });

  test("and a list to choose from can't be one", () => {
    const list = (...names: string[]) => ({ choices: [{ at: "B1", names }] });
    expect(refusal(list("=Payroll!A1:A9"))[0]).toMatch(/^B1 offers a list that is a formula \(=Payroll!A1:A9\)/);
    expect(refusal(list("a,b"))[0]).toMatch(/offers a choice that is blank or has a comma/);
    expect(refusal(list("gravel\u202E"))[0]).toMatch(/a choice with a hidden character \(U\+202E\)/);
    expect(refusal(list(...Array.from({ length: 40 }, (_, n) => `stone ${n}`)))[0]).toMatch(/a list that is too long/);
  });
});

describe("what hides or disguises itself is refused", () => {
  test.each<[string, object, RegExp]>([
    ["all sections of a number format blank", look({ numberFormat: ";;;" }), /^A1:B1 has a number format that hides/],
    ["only the price blank", look({ numberFormat: ";-0;0;@" }), /A1:B1 has a number format that hides/],
    ["text blank", look({ numberFormat: "0;-0;0;" }), /has a number format that hides/],
    ["words in place of the number", look({ numberFormat: `"paid"` }), /has a number format that hides/],
    ["a condition that hides", look({ numberFormat: `[>100]"";0` }), /has a number format that hides/],
    ["digits that are not there", look({ numberFormat: `"1"0` }), /adds digits of its own/],
    ["escaped digits that are not there", look({ numberFormat: "0\\0" }), /adds digits of its own/],
    ["digits beside the number", look({ numberFormat: `0.00" 000"` }), /adds digits of its own/],
    ["white letters on white", look({ color: "#FFFFFF" }), /text that doesn't show on its fill \(#FFFFFF on/],
    ["letters in the fill's color", look({ color: "#24413A", fill: "#24413B" }), /text that doesn't show/],
    ["black letters on black", look({ fill: "#000000" }), /text that doesn't show/],
    ["a number format of five sections", look({ numberFormat: "0;0;0;@;0" }), /number format that hides/],
    ["letters of 97 points", look({ size: 97 }), /97 is greater than 96/],
    ["letters of one point", look({ size: 1 }), /1-point text, too small to read/],
    ["a font of pictures", look({ font: "Wingdings 2" }), /shows pictures instead of letters/],
    ["a hidden column", { widths: [10, 0, 10, 10] }, /^It's damaged at widths, 1: .*less than/],
    ["zero-width text", { cells: [{ at: "A1", text: "free\u200B" }] }, /^A1 has text with .*\(U\+200B\)/],
    ["text turned round", { cells: [{ at: "A1", text: "\u202Eeerf" }] }, /^A1 has text with .*\(U\+202E\)/],
    ["a control character", { cells: [{ at: "A1", text: "a\u0007" }] }, /\(U\+0007\)/],
    ["half a character", { cells: [{ at: "A1", text: "a\uD800" }] }, /half a character/],
    ["a name turned round", { name: "Front\u202Ebed" }, /^Its name has a hidden character \(U\+202E\)/],
    ["a note turned round", { note: "a\u2066b" }, /^Its note has a hidden character/],
    ["a blank name", { name: "   " }, /^It has no name\.$/],
    ["contents under merged cells", { merged: ["A1:B2"] }, /^B1 is hidden under the merged cells A1:B2/],
    ["cells merged twice", { merged: ["C1:D2", "D2:D3"] }, /^D2 is merged twice\.$/],
    ["two contents for one cell", { cells: [right.cells[0], right.cells[0]] }, /^A1 is given twice/],
    ["two looks for one cell", { looks: [{ at: ["A1", "A1:A2"] }] }, /^A1 has two formats/],
  ])("%s", (_, change, words) => {
    expect(refusal(change).join(" ")).toMatch(words);
  });
});

describe("a template defines nothing, and says all that it reads", () => {
  const outside = (...reads: string[]) => ({
    cells: [],
    outside: reads.map((one) => ({ reads: one, opened: "keep" })),
  });
  test.each<[string, object | string, RegExp]>([
    [
      "names of its own",
      { names: [{ name: "SUM", area: "A1" }] },
      /^It has “names”, which a template does not have\.$/,
    ],
    ["a script", { script: "alert(1)" }, /^It has “script”, which a template does not have/],
    ["another workbook listed", outside("[Prices.xlsx]Stone!$B$2"), /isn't an address or a name/],
    ["an address listed", outside("'https://example.com/a'!$B$2"), /isn't an address or a name/],
    [
      "a function listed as a name",
      outside("WEBSERVICE"),
      /lists WEBSERVICE as read outside of it, which isn't an address/,
    ],
    ["an ordinary function listed as a name", outside("SUM"), /lists SUM/],
    ["a cell listed as a name", outside("B2"), /lists B2/],
    ["a place in R1C1 listed as a name", outside("R1C1"), /lists R1C1/],
    ["a rate listed with a value", outside("Rate_waste"), /lists Rate_waste/],
    ["a sheet's name turned round", outside("'Ra\u202Etes'!$B$2"), /isn't an address or a name/],
    ["one thing listed twice", outside("Rates!$B$2", "rates!$B$2"), /lists rates!\$B\$2/],
    ["a cell beyond it", { cells: [{ at: "E1", number: 1 }] }, /^It has no cell E1\.$/],
    ["a cell that is several", { cells: [{ at: "A1:B1", number: 1 }] }, /damaged at cells, 0, at/],
    [
      "a number beyond all numbers",
      JSON.stringify(right).replace("90", "1e999"),
      /^B1 holds a number that is too large/,
    ],
  ])("%s", (_, change, words) => {
    expect(refusal(change).join(" ")).toMatch(words);
  });
});

describe("what is no template is refused in words", () => {
  test.each<[string, string, RegExp]>([
    ["nothing", "", /^The file is damaged, or isn't a template/],
    ["cut off", JSON.stringify(right).slice(0, 80), /^The file is damaged, or isn't a template/],
    ["a list", "[]", /^The file isn't a template from this add-in\.$/],
    ["null", "null", /^The file isn't a template/],
    ["something else", `{"format":"other"}`, /^The file isn't a template/],
    [
      "a later version",
      JSON.stringify({ ...right, version: 2 }),
      /^A newer version of this add-in wrote it \(format version 2/,
    ],
    ["a version that is none", JSON.stringify({ ...right, version: "1" }), /^It's damaged at version/],
    ["without cells", JSON.stringify({ ...right, cells: undefined }), /^It's damaged: .*cells/],
    [
      "a cell of two kinds",
      JSON.stringify({ ...right, cells: [{ at: "A1", text: "a", number: 1 }] }),
      /damaged at cells/,
    ],
    ["too many rows", JSON.stringify({ ...right, rows: 99_999 }), /^It's damaged at rows/],
    ["too many cells", JSON.stringify({ ...right, rows: 2000, columns: 100 }), /too many cells/],
    ["too few widths", JSON.stringify({ ...right, widths: [10] }), /one width for each column/],
    ["too large", " ".repeat(1_000_001), /^The file is too large: the limit is 1,000,000 characters\.$/],
    ["deep brackets", "[".repeat(200_000), /^The file is damaged, or isn't a template/],
  ])("%s", (_, text, words) => {
    expect(refusal(text)[0]).toMatch(words);
  });

  test("with a mark of byte order before it, it is read all the same", () => {
    expect(readTemplate(`\uFEFF${JSON.stringify(right)}`).ok).toBe(true);
  });

  test("many faults are told as far as a person reads them, and counted", () => {
    const cells = Array.from({ length: 5 }, (_, row) =>
      ["A", "B", "C", "D"].map((letter) => ({ at: `${letter}${row + 1}`, formula: "=INDIRECT(A1)" })),
    ).flat();
    expect(readTemplate(JSON.stringify({ ...right, cells }))).toMatchObject({ ok: false, more: 8 });
    expect(refusal({ cells })).toHaveLength(12);
  });
});
