import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { installGuide } from "../../src/packaging/installGuide.mjs";
import { type FieldKey, fields } from "../../src/quantities/bed/fields";
import { type BedForm, blankForm } from "../../src/quantities/bed/form";
import { dateWords, serialOf } from "../../src/quantities/calendar/calendarDay";
import { readTypedDate } from "../../src/quantities/calendar/typedDate";
import { FEWEST_JOBS } from "../../src/quantities/history/learn";
import { readTape } from "../../src/quantities/tape";
import { INCHES_PER_FOOT } from "../../src/quantities/units";
import { cautions } from "../../src/sheets/cautions";
import { keyAddresses } from "../../src/sheets/compose";
import { estimateBlock, estimateRows } from "../../src/sheets/estimate/block";
import { insertPlan } from "../../src/workbook/change/insert";
import { example, fragments, numbersIn, shapes, textsIn, typedFor, unmarked } from "../guide/fragments";
import type { HeadlessHost } from "../headlessHost";
import { createProductHost } from "../productHost";

const MANIFEST = readFileSync(resolve(import.meta.dirname, "../../manifest.xml"), "utf8");
const KNOWN: Readonly<Record<string, number>> = {
  "fewest jobs": FEWEST_JOBS,
  "inches in a foot": INCHES_PER_FOOT,
};

/**
 * Which programs have the sets that the manifest asks for, as their publisher lists them at learn.microsoft.com, under
 * javascript/api/requirement-sets: excel/excel-api-requirement-sets, excel/custom-functions-requirement-sets and
 * common/shared-runtime-requirement-sets, read in November 2026. In each row the set that came last decides: ExcelApi
 * 1.14 with the subscription and on a Mac, CustomFunctionsRuntime 1.3 where the program was bought once at retail.
 * Custom functions are listed as not supported on an iPad, and in nothing older than 2021.
 */
const PUBLISHED: Readonly<Record<string, string>> = {
  subscription: "Microsoft 365",
  "subscription from": "Version 2108",
  "Mac from": "Version 16.52",
  "bought once from": "2021",
  "retail from": "Version 2311",
  "not in": "2019",
};

/** The guide's beds, by the words before the colon of a source: `first:price` is the price of the first estimate. */
const BEDS = { first: example, ...shapes };

/** An insert a bed takes a while on a machine under load. */
const BLOCKS_MS = 60_000;

let host: HeadlessHost;
/** Where the values of each bed's estimate stand, by their keys. */
const cellsOf = new Map<string, (key: string) => unknown>();
beforeAll(async () => {
  host = await createProductHost();
  for (const [bed, typed] of Object.entries(BEDS)) {
    const form: BedForm = { ...blankForm(), ...typed };
    const inserted = await insertPlan((at) => estimateBlock(form, at), { kind: "new sheet", name: bed });
    if (!inserted.done) throw new Error("a new sheet is free");
    const keys = keyAddresses(estimateRows(form), { row: 0, column: 0 });
    cellsOf.set(bed, (key) => {
      if (!keys.has(key)) throw new Error(`The estimate has no cell ${key}.`);
      return host.value(`'${inserted.sheetName}'!${keys.get(key)}`);
    });
  }
}, BLOCKS_MS);
afterAll(() => host.dispose());

let row = 0;
/** What a formula gives in a cell of its own, in the practice grid's engine with all functions of the product. */
async function worked(formula: string): Promise<unknown> {
  row += 1;
  const at = `first!T${row}`;
  await host.type({ [at]: formula });
  return host.errorMessage(at) ?? host.value(at);
}

/** What a number of the guide is really, by its source: a number, or text that must be the same. */
async function real(source: string): Promise<unknown> {
  if (source.startsWith("=")) return worked(source);
  const [kind = "", name = ""] = source.split(":");
  const bed = cellsOf.get(kind);
  if (bed && name) return bed(name);
  if (kind === "known") return KNOWN[name];
  if (kind === "published") return PUBLISHED[name];
  if (kind === "field") {
    const initial = fields[name as FieldKey]?.initial;
    return initial?.endsWith("%") ? Number(initial.slice(0, -1)) / 100 : Number(initial);
  }
  if (source === "caution") return cautions.map(({ text }) => text).join(" ");
  if (kind === "manifest") {
    const version = new RegExp(`<Set Name="${name}" MinVersion="([^"]+)"`).exec(MANIFEST)?.[1];
    return version ? `${name} ${version}` : new RegExp(`<${name}>([^<]+)<`).exec(MANIFEST)?.[1];
  }
  throw new Error(`${source} is no source of a number in the guide.`);
}

/** A value as the guide shows it where it shows it rightly: with as many digits as there, as a share, or as a day. */
function asShown(value: unknown, shown: string): string {
  if (typeof value !== "number") return String(value).includes(shown) ? shown : String(value);
  const plain = shown.replaceAll(",", "").replace("%", "");
  if (!/^-?[\d.]+$/.test(plain)) return dateWords(value);
  const digits = plain.split(".")[1]?.length ?? 0;
  const isShare = shown.endsWith("%");
  const rounded = (isShare ? value * 100 : value).toLocaleString("en-US", {
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
  });
  return isShare ? `${rounded}%` : rounded;
}

describe.each(fragments)("the guide's page %s", (_, html) => {
  const numbers = numbersIn(html);

  test("shows numbers that the product really gives", async () => {
    for (const { source, shown } of numbers) {
      const value = await real(source);
      expect(value, source).toBeDefined();
      expect(asShown(value, shown), source).toBe(shown);
    }
  });

  test("has no other number in it", () => {
    expect(unmarked(html).match(/[^.]*\d[^.]*/g) ?? []).toEqual([]);
  });

  test("has no formula in it that is not worked out", () => {
    const formulas = textsIn(html, "code").filter((text) => text.startsWith("=") && text !== "=BED.");
    expect(formulas.filter((formula) => !numbers.some(({ source }) => source === formula))).toEqual([]);
  });

  test("calculates with the numbers that it supposes", () => {
    const sources = numbers.map(({ source }) => source).join(" ");
    const stands = (number: string) =>
      new RegExp(`(?<![\\d.])${number.replace(".", "\\.")}(?![\\d]|\\.\\d)`).test(sources);
    expect(textsIn(html, "var").filter((number) => !stands(number))).toEqual([]);
  });

  test("has people type what is read, or keys that are there", () => {
    const KEYS = ["Enter", "Esc", "Tab", "Page Down", "Page Up"];
    const typed = [example.name, ...Object.values(BEDS).flatMap(typedFor)];
    const isRead = (text: string) => {
      if (KEYS.includes(text) || typed.includes(text)) return true;
      // A length, or a date as it can be typed from the first of a year on.
      const read = /^\d+\/|^\d{4}-|^[A-Z]/.test(text)
        ? readTypedDate(text, "", serialOf(2031, 1, 1), "mdy")
        : readTape(text, "ft");
      return read > 0;
    };
    for (const text of textsIn(html, "kbd")) expect(isRead(text), text).toBe(true);
  });
});

test.each([
  ["first-estimate", [example.name, ...typedFor(example)]],
  ["other-shapes", Object.values(shapes).flatMap(typedFor)],
])("the page %s has people type the beds that it shows", (page, texts) => {
  const [, html] = fragments.find(([name]) => name.endsWith(`${page}.html`))!;
  const typed = textsIn(html, "kbd");
  expect(texts.filter((text) => !typed.includes(text))).toEqual([]);
});

test.each([
  ["README.md", readFileSync(resolve(import.meta.dirname, "../../README.md"), "utf8")],
  ["the page for whoever installs it", installGuide({ origin: "https://tools.example", version: "1.0.0.0" })],
])("%s names the same programs and requirement sets as the guide", (_, text) => {
  const sets = [...MANIFEST.matchAll(/<Set Name="(\w+)" MinVersion="([^"]+)"/g)].map(
    ([, name, least]) => `${name} ${least}`,
  );
  expect(sets.length).toBeGreaterThan(0);
  const words = text.replace(/\s+/g, " ");
  expect([...Object.values(PUBLISHED), ...sets].filter((each) => !words.includes(each))).toEqual([]);
});

test("a number that is wrong by its last digit is found", () => {
  expect(asShown(18.5, "18.5")).toBe("18.5");
  expect(asShown(18.5, "18.6")).toBe("18.5");
  expect(asShown(5400, "5,400.00")).toBe("5,400.00");
  expect(asShown(0.054, "5.5%")).toBe("5.4%");
  expect(unmarked("<p>It takes 7 bags.</p>")).toMatch(/\d/);
});
