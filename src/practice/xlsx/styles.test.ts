import { createRequire } from "node:module";
import { describe, expect, test } from "vitest";
import { colorReader } from "../../xlsx/colors";
import { readStyles } from "../../xlsx/read/styles";
import { readXml } from "../../xlsx/read/xml";
import { showsDate } from "../../xlsx/style";
import { StyleSheet } from "../../xlsx/write/styles";
import type { GridLibrary } from "../grid/library";
import { styleFromFile, styleToFile } from "./styles";

const require = createRequire(import.meta.url);
const core = require("@univerjs/core") as GridLibrary["core"];
const sheets = require("@univerjs/preset-sheets-node-core") as GridLibrary["sheets"] & GridLibrary["drawing"];
const library: GridLibrary = { core, drawing: sheets, sheets };
const xmlOf = (text: string) => readXml(new TextEncoder().encode(text));

describe("the color of a file", () => {
  const scheme = `<a:theme xmlns:a="x"><a:clrScheme name="x"><a:dk1><a:sysClr val="windowText" lastClr="000000"/></a:dk1>
    <a:lt1><a:srgbClr val="FFFFFF"/></a:lt1><a:accent1><a:srgbClr val="4F81BD"/></a:accent1></a:clrScheme></a:theme>`;
  const colorOf = colorReader(xmlOf(scheme));

  test.each([
    ["written out", { argb: "FF12ab34" }, "#12AB34"],
    ["of the theme, whose first two are light and dark", { theme: 0 }, "#FFFFFF"],
    ["of the theme, dark", { theme: 1 }, "#000000"],
    ["of the theme, an accent", { theme: 4 }, "#4F81BD"],
    // Shades of that accent as spreadsheet programs show them, from memory; a part may be off by one.
    ["made lighter", { theme: 4, tint: 0.5999938962981048 }, "#B8CCE4"],
    ["made darker", { theme: 4, tint: -0.249977111117893 }, "#366092"],
    ["white made darker", { theme: 0, tint: -0.5 }, "#808080"],
    ["by number", { indexed: 10 }, "#FF0000"],
  ])("%s", (_, color, html) => {
    const parts = (text: string) => [1, 3, 5].map((at) => Number.parseInt(text.slice(at, at + 2), 16));
    const [got, wanted] = [parts(colorOf(color) ?? ""), parts(html)];
    for (const place of [0, 1, 2]) expect(Math.abs((got[place] ?? -9) - (wanted[place] ?? 0))).toBeLessThanOrEqual(1);
  });

  test("that the program chooses is none", () => {
    expect([colorOf(undefined), colorOf({}), colorOf({ indexed: 64 })]).toEqual([undefined, undefined, undefined]);
  });
});

test.each([
  ["m/d/yyyy", true],
  ["[h]:mm", true],
  ["[Red]0.00", false],
  ['0.0" days"', false],
  ["General", false],
  ["[$-409]d-mmm-yy;@", true],
  ["_(* #,##0.00_)", false],
])("the format %s shows a date: %s", (format, shows) => {
  expect(showsDate(format)).toBe(shows);
});

test("a look goes into a file and comes back", () => {
  const style = {
    bg: { rgb: "#112233" },
    cl: { rgb: "#AABBCC" },
    ff: "Georgia",
    fs: 14,
    bl: 1 as const,
    it: 1 as const,
    ul: { s: 1 as const },
    st: { s: 1 as const },
    tb: 3 as const,
    ht: 3 as const,
    vt: 2 as const,
    n: { pattern: "#,##0.00" },
    bd: { t: { s: 7 as const, cl: { rgb: "#445566" } }, bl_tr: { s: 13 as const, cl: { rgb: "#000000" } } },
  };
  const file = styleToFile(library, style, false);
  expect(styleFromFile(library, file, colorReader(undefined))).toEqual(style);
  // And through the part of the file that holds it.
  const sheet = new StyleSheet();
  const number = sheet.ofCell(file);
  const read = readStyles(readXml(sheet.part())).cells[number];
  expect(read && styleFromFile(library, read, colorReader(undefined))).toEqual(style);
});

test("a cell that no one dressed comes back as such", () => {
  const file = styleToFile(library, {}, false);
  expect(styleFromFile(library, file, colorReader(undefined))).toEqual({});
});

test("text that is indented is at the left in a file, and a number where it stood", () => {
  const style = { pd: { l: 11 } };
  expect(styleToFile(library, style, true).alignment).toEqual({ horizontal: "left", indent: 1 });
  expect(styleToFile(library, style, false).alignment).toEqual({ indent: 1 });
});

test("the styles of a file are read as it says them", () => {
  const { cells, rules } = readStyles(
    xmlOf(
      '<styleSheet xmlns="x"><numFmts count="1"><numFmt numFmtId="164" formatCode="0.0&quot; ft&quot;"/></numFmts>' +
        '<fonts><font/><font><b val="0"/><i/><u val="none"/><sz val="9"/></font></fonts>' +
        '<cellXfs count="3"><xf numFmtId="0" fontId="0"/><xf numFmtId="164" fontId="1"><alignment wrapText="1"/></xf>' +
        '<xf numFmtId="14"/></cellXfs><dxfs><dxf><font><b/></font></dxf></dxfs></styleSheet>',
    ),
  );
  expect(cells).toEqual([
    { numFmt: "General", font: {} },
    {
      numFmt: '0.0" ft"',
      font: { bold: false, italic: true, underline: false, size: 9 },
      alignment: { wrapText: true },
    },
    { numFmt: "m/d/yyyy", font: {} },
  ]);
  expect(rules).toEqual([{ font: { bold: true } }]);
});
