import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { shownTexts } from "../shownTexts";

const SRC = resolve(import.meta.dirname, "../../src");
const FOLDER = resolve(import.meta.dirname, "../generated/texts");

/**
 * The screens, sheets, and pages, each with where its texts are: files, or folders, which end in a slash. A file belongs to
 * the longest name that it starts with.
 */
const CATALOGUES: Readonly<Record<string, readonly string[]>> = {
  "pane-estimate": ["pane/", "pane/lists/", "quantities/bed/form", "quantities/bed/read"],
  "pane-job-rows": ["pane/jobRows/", "sheets/jobRows/fit", "workbook/jobRows"],
  "pane-job-documents": ["pane/papers/"],
  "pane-rates": ["pane/rates/", "sheets/office/", "workbook/change/officeSettings", "workbook/settings/office"],
  "pane-check": ["pane/check/", "review/", "workbook/settings/dismissals"],
  "pane-explain": ["pane/explain/", "review/explain/"],
  "pane-templates": ["pane/templates/", "sheets/templates/", "workbook/settings/templates"],
  "pane-copy": ["pane/copy/", "sheets/plain/", "sheets/file/"],
  "pane-help": ["pane/help/"],
  "estimate-block": ["quantities/bed/", "sheets/estimate/", "sheets/block", "sheets/cautions"],
  "job-rows": ["sheets/jobRows/", "headings/"],
  "job-block": ["sheets/job/", "quantities/job/jobAmounts", "quantities/job/priceJob"],
  order: ["sheets/papers/", "quantities/job/"],
  "crew-sheet": ["sheets/papers/crewSheet", "quantities/job/crew"],
  "dig-notice": ["sheets/papers/noticeSheet", "quantities/calendar/"],
  proposal: ["sheets/papers/proposal", "sheets/papers/scopeOf"],
  "past-jobs": ["sheets/papers/pastJobs", "quantities/history/"],
  "rates-sheet": ["sheets/rates/"],
  drawings: ["layout/drawing/"],
  functions: ["functions/"],
  messages: ["quantities/", "layout/", "workbook/", "sheets/", "spreadsheet/", "xlsx/"],
  "practice-page": ["practice/"],
  "install-page": ["packaging/"],
  help: ["help/"],
};

/** Files whose words are on no screen, with where they are read. */
const ELSEWHERE: Readonly<Record<string, string>> = {
  "practice/host/": "what the stand-in answers the add-in, which words it for people itself",
  "practice/grid/": "what the grid answers the stand-in",
  "building/": "the build's own words, in a terminal",
  "licenses/": "the texts of licenses",
  "help/guide/": "pages that are nothing but text, and can be read as they are",
};

const patterns = [...Object.values(CATALOGUES).flat(), ...Object.keys(ELSEWHERE)];

const homeOf = (file: string) =>
  patterns.filter((pattern) => file.startsWith(pattern)).sort((one, other) => other.length - one.length)[0];

const files = readdirSync(SRC, { recursive: true, encoding: "utf8" })
  .filter((name) => name.includes("/") && /\.(?:tsx?|mjs|html)$/.test(name) && !name.includes(".test."))
  .sort()
  .map((name) => ({ name, home: homeOf(name), texts: shownTexts(name, readFileSync(join(SRC, name), "utf8")) }))
  .filter(({ texts }) => texts.length > 0);

describe("every text that a person can see is in the catalogue of its screen, which shows what the sources hold today", () => {
  test.each(Object.entries(CATALOGUES))("%s", async (screen, places) => {
    const groups = files
      .filter(({ home }) => home !== undefined && places.includes(home))
      .map(({ name, texts }) => [`## src/${name}`, ...texts, ""].join("\n"));
    await expect(groups.join("\n")).toMatchFileSnapshot(join(FOLDER, `${screen}.txt`));
  });
});

test("every file with texts belongs to a screen, or is read elsewhere", () => {
  expect(files.filter(({ home }) => home === undefined).map(({ name }) => name)).toEqual([]);
});

test("no screen or excuse names a place without texts", () => {
  expect(patterns.filter((pattern) => !files.some(({ home }) => home === pattern))).toEqual([]);
});

test("there is no catalogue of a screen that is gone", () => {
  expect(readdirSync(FOLDER).sort()).toEqual(
    Object.keys(CATALOGUES)
      .map((screen) => `${screen}.txt`)
      .sort(),
  );
});

test("texts are found in sentences, choices, attributes, and labels, and names in the code are not", () => {
  const found = (code: string) => shownTexts("a.tsx", code);
  expect(found('const a = <p title="Not yet">It has {n === 1 ? "one bed" : "more beds"} in <b>all</b>.</p>;')).toEqual([
    "It has {one bed|more beds} in all.",
    "Not yet",
  ]);
  expect(found(["throw new Problem(`The width of $", "{bed} isn’t a length.`);"].join(""))).toEqual([
    "The width of {bed} isn’t a length.",
  ]);
  expect(found('const field = { key: "edge", unit: "tons", kind: "number" };')).toEqual(["tons"]);
  expect(found('import a from "./Some file"; if (kind === "Two words") go("somewhere");')).toEqual([]);
  expect(shownTexts("a.html", "<style>a { color: red }</style><h1>Beds</h1><p>Taped\n  in <b>feet</b>.</p>")).toEqual([
    "Beds",
    "Taped in feet.",
  ]);
});
