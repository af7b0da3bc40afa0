import { expect, test } from "vitest";
import { allAtOnce } from "../steps";
import { readTexts, sheetSteps } from "./cells";
import { readXml } from "./xml";

const bytes = (text: string) => new TextEncoder().encode(text);
const sheet = (rows: string, texts = "<sst/>") =>
  allAtOnce(
    sheetSteps(bytes(`<worksheet><sheetData>${rows}</sheetData></worksheet>`), readTexts(readXml(bytes(texts)))),
  );

test("a row or cell without an address comes right after the one before it", () => {
  const { cells } = sheet(
    '<row><c><v>1</v></c><c><v>2</v></c></row><row r="5"><c r="C5"><v>3</v></c><c><v>4</v></c></row><row><c><v>5</v></c></row>',
  );
  expect(cells.map(({ row, column, value }) => [row, column, value])).toEqual([
    [0, 0, 1],
    [0, 1, 2],
    [4, 2, 3],
    [4, 3, 4],
    [5, 0, 5],
  ]);
});

test.each([
  ['<c t="s"><v>0</v></c>', "two fonts", true],
  ['<c t="inlineStr"><is><t>plain </t></is></c>', "plain ", false],
  ['<c t="inlineStr"><is><r><t>two </t></r><r><rPr><b/></rPr><t>fonts</t></r></is></c>', "two fonts", true],
  ['<c t="str"><f>A1</f><v><![CDATA[<bed>]]></v></c>', "<bed>", false],
  ['<c t="str"><v>_x0041_ _x005F_x0041_ _X0041_</v></c>', "A _x0041_ _X0041_", false],
  ['<c t="b"><v>1</v></c>', true, false],
  ['<c t="e"><v>#N/A</v></c>', { error: "#N/A" }, false],
  ["<c><v>1.25E-2</v></c>", 0.0125, false],
  // Day 45,725 after 1899-12-30, worked by hand from 45,658 for 2025-01-01; 12:00 is half a day.
  ['<c t="d"><v>2025-03-09T12:00:00</v></c>', 45_725.5, false],
  ['<c t="d"><v>2025-03-09</v></c>', 45_725, false],
])("%s holds %j", (xml, value, isRich) => {
  const texts = '<sst><si><r><t>two </t></r><r><t>fonts</t></r><rPh sb="0" eb="1"><t>spoken</t></rPh></si></sst>';
  expect(sheet(`<row>${xml}</row>`, texts).cells[0]).toMatchObject({ value, isRich });
});

test("formulas say which cells they are for, and which cell they share", () => {
  const { cells } = sheet(
    '<row r="1"><c r="A1"><f t="shared" ref="A1:A2" si="0">B1*2</f><v>2</v></c><c r="C1"><f t="array" ref="C1:C2">D1:D2</f></c></row>' +
      '<row r="2"><c r="A2"><f t="shared" si="0"/><v>4</v></c><c r="B2"><f/><v>7</v></c></row>',
  );
  expect(cells.map(({ formula }) => formula)).toEqual([
    { kind: "shared", text: "B1*2", area: "A1:A2", shared: "0" },
    { kind: "array", text: "D1:D2", area: "C1:C2" },
    { kind: "shared", text: "", shared: "0" },
    undefined,
  ]);
});

test("the elements around the cells are kept, and the cells are not", () => {
  const { xml, rows, cellCount } = sheet('<row r="2" ht="20"><c r="B2"/></row><row r="3"><c r="B3"/></row>');
  expect(xml.children.map(({ name, children }) => [name, children.length])).toEqual([["sheetData", 0]]);
  expect([rows, cellCount]).toEqual([[{ row: 1, attributes: { r: "2", ht: "20" } }], 2]);
});

test.each([
  ['<row><c t="s"><v>3</v></c></row>', "don't fit together"],
  ['<row><c r="XFE1"><v>3</v></c></row>', "don't fit together"],
])("%s is refused", (rows, words) => {
  expect(() => sheet(rows)).toThrow(words);
});
