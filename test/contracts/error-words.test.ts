import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { asFailure, isUnknown } from "../../src/workbook/failure";

/*
 * The codes come from the spreadsheet program's own lists: its client library (@microsoft/office-js, web and desktop
 * files) and its type package (@types/office-js). A new version of either may bring codes that have no words yet.
 */
const read = (path: string) => readFileSync(resolve(import.meta.dirname, "../../node_modules", path), "utf8");

/** The codes of a list, between where it begins and where it ends in a file. */
function codesBetween(text: string, begin: RegExp, end: string): string[] {
  const start = text.search(begin);
  const list = text.slice(start, text.indexOf(end, start));
  return [...list.matchAll(/= ["'](\w+)["']/g)].map(([, code]) => code!);
}

const library = (file: string) => {
  const text = read(`@microsoft/office-js/dist/${file}`);
  return [
    ...codesBetween(text, /ErrorCodes\["accessDenied"\] =/, "Excel.ErrorCodes"),
    ...codesBetween(text, /CoreErrorCodes\.apiNotFound =/, "return CoreErrorCodes"),
    ...codesBetween(text, /\bErrorCodes\.propertyNotLoaded =/, "return ErrorCodes"),
  ];
};
const lists = {
  "the web library": library("excel-web-16.00.debug.js"),
  "the desktop library": library("excel-win32-16.01.debug.js"),
  "the type package": codesBetween(
    read("@types/office-js/index.d.ts"),
    /enum ErrorCodes \{[^}]*dirtySupportingFormula/,
    "}",
  ),
};

const wordsOf = (code: string) => asFailure({ code, debugInfo: {} }).message;

describe.each(Object.entries(lists))("every error code of %s", (_, codes) => {
  test("has words of its own", () => {
    expect(codes.length).toBeGreaterThan(20);
    expect(codes.filter((code) => isUnknown({ code }))).toEqual([]);
    expect(codes.filter((code) => wordsOf(code) === wordsOf("NoSuchCode"))).toEqual([]);
  });

  test("is put as what happened and what to do, on one line and without the code", () => {
    for (const code of codes) {
      expect(wordsOf(code)).toMatch(/^[A-Z][^\n]+[.:] [A-Z][^\n]+\.$/);
      expect(wordsOf(code)).not.toContain(code);
    }
  });
});

test("a code that no one knows is told from the ones that have words", () => {
  expect(isUnknown({ code: "0x800A03EC" })).toBe(true);
  expect(wordsOf("0x800A03EC")).toContain("refused");
});
