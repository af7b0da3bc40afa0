import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import ts from "typescript";
import { describe, expect, test } from "vitest";
import { declarations } from "../../src/functions/declarations";
import { checkingNumbers } from "../../src/help/numbers/checking";
import { estimatingNumbers } from "../../src/help/numbers/estimating";
import { layingNumbers } from "../../src/help/numbers/laying";
import { cautionSources } from "../../src/help/numbers/outside";
import { HOW_SURE, OUR_CHOICE } from "../../src/help/numbers/stated";
import { isSilentZero, ZERO_MEANS } from "../../src/help/numbers/zeros";
import { numbersPage } from "../../src/help/numbersPage";
import { CLEAR_SHARE } from "../../src/layout/pins";
import { stoneChoices } from "../../src/quantities/bed/choices";
import { DEPTH_LIMITS } from "../../src/quantities/bed/depthVerdict";
import { exampleStonePrices } from "../../src/quantities/bed/examples";
import { fields } from "../../src/quantities/bed/fields";
import { listSamples } from "../../src/quantities/bed/listSamples";
import { federalHolidayNames } from "../../src/quantities/calendar/federalHolidays";
import { EDGING_KINDS } from "../../src/quantities/edgingKinds";
import { edgingCautions } from "../../src/quantities/edgingWork";
import { coveringCautions, depthWords, SOURCED_SOILS, SOURCED_STONES } from "../../src/quantities/tableSources";
import { WHOLE_TOLERANCE } from "../../src/quantities/whole";
import { MOST_OF_ROLL } from "../../src/review/rules/ratios";
import { cautions } from "../../src/sheets/cautions";
import { textOf } from "../guide/fragments";

const SRC = resolve(import.meta.dirname, "../../src");
const html = numbersPage().content;
const stated = [...estimatingNumbers, ...layingNumbers, ...checkingNumbers];

/** The rows of every table of the page, as text. */
const rows = [...html.matchAll(/<tr>([\s\S]*?)<\/tr>/g)].map(([, row]) =>
  [...row!.matchAll(/<td>([\s\S]*?)<\/td>/g)].map(([, cell]) => textOf(cell!)),
);
const hasRow = (...wanted: readonly string[]) => rows.some((row) => wanted.every((cell) => row.includes(cell)));

/** Tables that the page shows as they are; the tests below look for their rows. */
const SHOWN_WHOLE = [
  "STONES",
  "SOILS",
  "stoneChoices",
  "EDGING_KINDS",
  "SOLD_BY",
  "borderChoices",
  "fabricChoices",
  "listSamples",
  "exampleStonePrices",
  "shapeFields",
  "depthFields",
  "supplyFields",
  "secondFields",
  "crewFields",
  "moneyFields",
  "METERS_PER_YARD",
  "KILOGRAMS_PER_POUND",
  "POUNDS_PER_SHORT_TON",
  "CUBIC_FEET_PER_CUBIC_YARD",
  "RULES",
];

/** Numbers that are no statement about beds, and why. */
const NO_STATEMENT: Readonly<Record<string, string>> = {
  STRIP_DIGITS: "how many digits a list of strips has in its cell",
  jobInputs: "what is typed about a job starts at 0",
  // Exact by geometry, or by the calendar and the units that are on the page.
  WHOLE_RUN_FT: "a cut edge is one piece, however long",
  CORNER_LOSS: "geometry",
  CORNER_SHORTCUT: "geometry",
  CORNER_SINE: "geometry",
  QUARTERS: "geometry",
  EAST: "geometry",
  NORTH: "geometry",
  WEST: "geometry",
  SOUTH: "geometry",
  ROUNDED_FIRST: "which corner is which",
  SECOND_TRENCH: "units",
  FEET_PER_YARD: "units",
  INCHES_PER_FOOT: "units",
  TENTH_MILLIMETERS: "units",
  FOLLOWERS: "units",
  SIXTEENTHS_PER_INCH: "units",
  KEPT_PER_FOOT: "units",
  MINUTES_PER_HOUR: "units",
  MILLISECONDS_PER_DAY: "calendar",
  SERIAL_OF_1970: "calendar",
  CENTURY: "calendar",
  START: "calendar",
  FIRST_DATE: "calendar",
  LAST_DATE: "calendar",
  LAST_YEAR: "calendar",
  DAYS_PER_WEEK: "calendar",
  MONDAY_IN_WEEK: "calendar",
  SUNDAY: "calendar",
  MONDAY: "calendar",
  THURSDAY: "calendar",
  SATURDAY: "calendar",
  FEWEST_WIDTHS: "geometry",
  FEWEST_POINTS: "geometry",
  LOG_OF_HALF: "arithmetic",
  LAYOUT_COLUMNS: "places in a list",
  // The ordinary range of each stone is in its row.
  ORDINARY: "in the table of stone",
  LIGHT: "in the table of stone",
  stoneFrom: "in the table of stone",
  WOODY: "in the table of stone",
  STONE_DEPTH: "in the table of coverings",
  CHIPS_DEPTH: "in the table of coverings",
  MULCH_DEPTH: "in the table of coverings",
  RUBBER_DEPTH: "in the table of coverings",
  WEIGHT: "a field's wording; its starting value is that of river rock",
  // How text is read and printed.
  LONGEST_TEXT: "reading",
  LONGEST_PRINTED_FEET: "printing",
  SHARE_DIGITS: "digits",
  SURE_DIGITS: "digits",
  DECIMALS: "digits",
  // Differences too small to see, and the work of a search.
  FLAT: "too small to see",
  SAME_FT: "too small to see",
  SAME_CUT_FT: "too small to see",
  SAME_PIN_FT: "too small to see",
  ROUNDING_STEPS: "too small to see",
  SAME_DIRECTION: "too small to see",
  MOST_MITER: "drawing",
  CELLS_ACROSS: "search",
  BEYOND_COUNTING: "wording",
  STEPS_FOR_A_JOB: "search; the order says where a plan is not proven",
  MOST_PINS_BY_EDGE: "search",
  MOST_PLACES: "search",
};

/** Names of the constants of a room that hold numbers, also such as are written as text. */
function numericConstants(room: string): string[] {
  const files = readdirSync(join(SRC, room), { recursive: true, encoding: "utf8" }).filter(
    (name) => name.endsWith(".ts") && !/\.test\.ts$|^cutting\/|^drawing\//.test(name),
  );
  return files.flatMap((name) => {
    const source = ts.createSourceFile(name, readFileSync(join(SRC, room, name), "utf8"), ts.ScriptTarget.ES2022, true);
    return source.statements
      .filter(ts.isVariableStatement)
      .flatMap(({ declarationList }) => declarationList.declarations)
      .filter(({ initializer }) => initializer && holdsNumber(initializer))
      .map((declaration) => declaration.name.getText());
  });
}

function holdsNumber(node: ts.Node): boolean {
  if (ts.isArrowFunction(node) || ts.isFunctionExpression(node) || ts.isTypeNode(node)) return false;
  if (ts.isNumericLiteral(node)) return true;
  if (ts.isStringLiteral(node)) return /^\d+(\.\d+)?%?$/.test(node.text) && !ts.isPropertyName(node.parent);
  return ts.forEachChild(node, (child) => holdsNumber(child) || undefined) ?? false;
}

describe("the page of what the numbers rest on", () => {
  test.each(["quantities", "layout"])("states every constant of src/%s that says something about beds", (room) => {
    const known = new Set([...SHOWN_WHOLE, ...Object.keys(NO_STATEMENT), ...stated.flatMap((row) => row.constants)]);
    const constants = numericConstants(room);
    expect(constants.length).toBeGreaterThan(20);
    expect(
      constants.filter((name) => !known.has(name)),
      "constants that stand neither in src/help/numbers nor among those that state nothing",
    ).toEqual([]);
  });

  test("excuses no constant that is not there", () => {
    const constants = new Set([...numericConstants("quantities"), ...numericConstants("layout")]);
    expect([...SHOWN_WHOLE, ...Object.keys(NO_STATEMENT)].filter((name) => !constants.has(name))).toEqual([]);
  });

  test("shows each statement, with how sure it is", () => {
    const ways = [...Object.values(HOW_SURE), OUR_CHOICE];
    for (const { what, value, rests, source } of stated) {
      expect(ways, what).toContain(rests);
      expect(hasRow(what, value, source ? `${rests}: ${source}` : rests), what).toBe(true);
      if (rests !== HOW_SURE.practice && rests !== OUR_CHOICE) expect(source, what).toBeDefined();
    }
  });

  test("explains each word for how sure something is, and uses no other", () => {
    const legend = [...html.split("</dl>")[0]!.matchAll(/<dt>([^<]*)<\/dt>/g)].map(([, word]) => word!);
    expect(legend).toEqual(expect.arrayContaining([...Object.values(HOW_SURE), OUR_CHOICE]));
    const tables = [...html.matchAll(/<table>[\s\S]*?<\/table>/g)].map(([table]) => table);
    const used = tables.flatMap((table) => {
      const headings = [...table.matchAll(/<th scope="col">([^<]*)<\/th>/g)].map(([, heading]) => heading!);
      const column = headings.findIndex((heading) => ["Based on", "How sure"].includes(heading));
      if (column < 0) return [];
      return [...table.matchAll(/<tr>(<td>[\s\S]*?)<\/tr>/g)].map(([, row]) =>
        textOf(row!.split("</td>")[column]!).replace(/:.*/, ""),
      );
    });
    expect(used.length).toBeGreaterThan(60);
    for (const word of used) expect(legend).toContain(word);
  });

  test("says read in the source only where a source is named with its figure, and of ranges what they rest on", () => {
    for (const { name, source, sure, low, high } of SOURCED_STONES) {
      if (sure === "seen") expect(source, name).toMatch(/^(US Army|CalRecycle|Oregon DEQ).*\d/);
      const pounds = [low, high].map((tons) => (tons * 2000) / 27);
      const isSources = name === "gravel";
      // Dry and wet gravel in the source: 2,600 and 3,120 lb a cubic yard.
      if (isSources) expect(pounds.map((foot) => foot * 27)).toEqual([2600, 3120]);
      expect(hasRow(name, isSources ? "the source’s, dry to wet" : HOW_SURE.practice, source), name).toBe(true);
    }
  });

  test("says in words what the code holds as numbers", () => {
    expect(DEPTH_LIMITS.stoneShare).toBe(2 / 3);
    expect(WHOLE_TOLERANCE).toBe(1e-9);
    expect(CLEAR_SHARE).toBe(1 / 3);
    expect(MOST_OF_ROLL).toBe(1 / 3);
  });

  test("has a row for each stone, soil, choice, sample price, holiday, caution and starting value", () => {
    for (const { name, source, sure } of [...SOURCED_STONES, ...SOURCED_SOILS])
      expect(hasRow(name, source, HOW_SURE[sure]), name).toBe(true);
    for (const { name, fills } of [...stoneChoices, ...Object.values(listSamples).flat()]) {
      const row = rows.find((cells) => cells.includes(name))?.join(" ") ?? "";
      for (const text of Object.values(fills)) expect(row, name).toContain(text);
    }
    for (const { stone, perTon } of exampleStonePrices) expect(hasRow(stone, perTon), stone).toBe(true);
    for (const name of federalHolidayNames) expect(hasRow(name), name).toBe(true);
    const ofEdging = edgingCautions(EDGING_KINDS.map(({ name }) => name));
    for (const { about, text, source } of [...Object.values(coveringCautions), ...ofEdging])
      expect(hasRow(about, text, source), about).toBe(true);
    for (const { name, usualDepth, cautions: own } of SOURCED_STONES)
      expect(
        hasRow(
          name,
          usualDepth ? depthWords(usualDepth) : "by its size",
          usualDepth?.source ?? "",
          own.map(({ about }) => about).join(", "),
        ),
        name,
      ).toBe(true);
    for (const { about, text } of cautions) {
      expect(cautionSources[about], about).toBeDefined();
      expect(hasRow(about, text, cautionSources[about]!), about).toBe(true);
    }
    for (const { label, initial } of Object.values(fields))
      if (initial !== "" && initial !== "0") expect(hasRow(label, initial), label).toBe(true);
  });

  test("has a row for each argument that is taken where it is left out, and for each usual range", () => {
    for (const { name, arguments: given } of declarations)
      for (const { name: argument, fallback, usual } of given) {
        const taken = typeof fallback === "boolean" ? String(fallback).toUpperCase() : String(fallback);
        const isTold = fallback === undefined || fallback === "" || fallback === 0 || hasRow(argument, taken);
        expect(isTold, `${argument} of ${name}`).toBe(true);
        if (usual) expect(hasRow(argument, `${usual[0]} to ${usual[1]}`), `${argument} of ${name}`).toBe(true);
      }
  });

  test("has a row for each argument of which a blank is 0, with what that means", () => {
    const silent = declarations.flatMap(({ name, arguments: given }) =>
      given.filter(isSilentZero).map((argument) => ({ of: name, argument: argument.name })),
    );
    const held = ["waste", "trench_depth_in", "corner_radius", "cut_around_ft", "tons_per_yard", "payload_tons"];
    expect(silent.map(({ argument }) => argument)).toEqual(expect.arrayContaining(held));
    expect(Object.keys(ZERO_MEANS).sort()).toEqual([...new Set(silent.map(({ argument }) => argument))].sort());
    for (const { of, argument } of silent) {
      const row = rows.find((cells) => cells[0] === argument && cells[1] === ZERO_MEANS[argument]);
      expect(row?.[2]?.split(", "), argument).toContain(of);
    }
  });
});
