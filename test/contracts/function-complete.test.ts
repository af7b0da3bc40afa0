import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { declarations } from "../../src/functions/declarations";
import type { Declaration } from "../../src/functions/declare";
import * as functions from "../../src/functions/index";
import { CASES, LISTS } from "../functionCases";
import { figure, heldFromOutside, type OutsideCheck } from "../outside";
import { functionChecks } from "../references/functions";

/*
 * The one list of what belongs to a worksheet function. Whoever adds one runs this test: it says what is still missing
 * and where it goes. What each part must hold is the business of the tests named beside it.
 */
const ROOT = resolve(import.meta.dirname, "../..");
const EACH = join(ROOT, "src/functions/each");
const read = (path: string) => readFileSync(join(ROOT, path), "utf8");

/** What the project has, by the places where a function has to be. */
interface House {
  /** Files of src/functions/each, and what is in them. */
  readonly files: ReadonlyMap<string, string>;
  readonly declared: readonly Declaration[];
  readonly exported: readonly string[];
  readonly promised: string;
  readonly cases: readonly string[];
  /** Functions that a check of test/references compares with something from outside. */
  readonly held: readonly string[];
}

const house: House = {
  files: new Map(readdirSync(EACH).map((name) => [name, readFileSync(join(EACH, name), "utf8")])),
  declared: declarations,
  exported: Object.keys(functions),
  promised: read("test/contracts/functions-metadata.test.ts"),
  cases: [...Object.keys(CASES), ...LISTS],
  held: [...heldFromOutside(Object.values(functionChecks).flat())],
};

/** The parts of a declaration that say nothing. */
function missingWords({
  about,
  gives,
  returns,
  rule,
  example,
  source,
  related,
  arguments: takes,
}: Declaration): string[] {
  return [
    ...Object.entries({ about, gives, returns, rule, example, source }).flatMap(([part, text]) => (text ? [] : [part])),
    ...(related.length === 0 ? ["related"] : []),
    ...takes.flatMap(({ name, about: text }) => (text ? [] : [`what to give for ${name}`])),
  ];
}

/** What is missing of a function, each with where it goes. */
function missing(id: string, at: House): string[] {
  const declared = at.declared.find(({ name }) => name === id);
  const words = declared ? missingWords(declared).join(", ") : "all of it, exported under the file's name and Declared";
  const holds = (text: string) => new RegExp(`\\b${id}\\b`).test(text);
  const single = declared && declared.kind !== "list";
  const steps: readonly (readonly [boolean, string])[] = [
    [at.files.has(fileOf(id)), `its file src/functions/each/${fileOf(id)}`],
    [words === "", `its declaration: ${words}`],
    [!single || declared.working !== undefined, "its working, which Explain shows, in its declaration"],
    [at.exported.includes(id), "its export under its own name, in its file"],
    [holds(at.promised), "its row of arguments, kept for years, in test/contracts/functions-metadata.test.ts"],
    [at.cases.includes(id), "its arguments in CASES, or itself in LISTS, of test/functionCases.ts"],
    [at.held.includes(id), "an outside check that 1 % too much would fail, in test/references/functions"],
  ];
  return steps.flatMap(([done, what]) => (done ? [] : [`BED.${id} lacks ${what}`]));
}

/** The file of a function: STONE_TONS is in stoneTons.ts. */
const fileOf = (id: string) =>
  `${id.toLowerCase().replace(/_([a-z])/g, (_, letter: string) => letter.toUpperCase())}.ts`;

describe("a worksheet function is complete", () => {
  const idsInFiles = [...house.files.values()].flatMap(
    (text) => /export const ([A-Z_]+) = worksheet/.exec(text)?.[1] ?? [],
  );
  const ids = new Set([...house.declared.map(({ name }) => name), ...house.exported, ...idsInFiles]);

  test.each([...ids].sort())("BED.%s", (id) => {
    expect(missing(id, house)).toEqual([]);
  });

  test("and there are some, each in a file of its own", () => {
    expect(ids.size).toBeGreaterThan(40);
    expect(idsInFiles.length).toBe(house.files.size);
  });
});

describe("a part that is missing is named, with where it goes", () => {
  const without = (part: Partial<House>) => missing("STONE_TONS", { ...house, ...part });
  const declared = house.declared.find(({ name }) => name === "STONE_TONS")!;
  const withWords = (change: Partial<Declaration>) => without({ declared: [{ ...declared, ...change }] });
  const { working: _, ...unexplained } = declared;

  test.each([
    [without({ files: new Map() }), /its file src\/functions\/each\/stoneTons\.ts/],
    [without({ declared: [] }), /declaration: all of it, exported under/],
    [withWords({ source: "" }), /declaration: source/],
    [withWords({ example: "", related: [] }), /declaration: example, related/],
    [withWords({ arguments: [{ name: "area", kind: "sq ft", about: "" }] }), /declaration: what to give for area/],
    [without({ declared: [unexplained] }), /its working/],
    [without({ exported: [] }), /its export under its own name/],
    [without({ promised: "STONE_TONS_MORE" }), /functions-metadata\.test\.ts/],
    [without({ cases: [] }), /CASES/],
    [without({ held: [] }), /outside check/],
  ])("%s", (said, expected) => {
    expect(said.length).toBe(1);
    expect(said[0]).toMatch(expected);
    expect(said[0]).toMatch(/^BED\.STONE_TONS lacks /);
  });

  test("a function of which nothing but its name is there lacks every part", () => {
    expect(missing("PLANTED", house).length).toBe(6);
  });
});

describe("an outside check", () => {
  const SOURCE = "by hand: 108 × 3 ÷ 324";
  const held = (check: Partial<OutsideCheck>) => [
    ...heldFromOutside([{ what: "a yard", source: SOURCE, compare: () => {}, ...check }]),
  ];

  test("counts where it compares what the function gives", () => {
    expect(held(figure(SOURCE, (BED) => BED.STONE_YARDS(108, 3), 1))).toEqual(["STONE_YARDS"]);
  });

  test.each<[string, Partial<OutsideCheck>]>([
    ["an import that is never called", { compare: () => expect(functions.STONE_YARDS).toBeDefined() }],
    ["a call of the import, which nothing can spoil", { compare: () => expect(functions.STONE_YARDS(108, 3)).toBe(1) }],
    ["a call whose result nobody looks at", { compare: (BED) => void BED.STONE_YARDS(108, 3) }],
    ["a result that only has to be there", { compare: (BED) => expect(BED.STONE_YARDS(108, 3)).toBeGreaterThan(0) }],
    [
      "the function compared with itself",
      { compare: (BED) => expect(BED.STONE_YARDS(1, 3)).toBe(BED.STONE_YARDS(1, 3)) },
    ],
    ["a figure that is wrong", figure(SOURCE, (BED) => BED.STONE_YARDS(108, 3), 2)],
    ["a figure without a source", figure(" – ", (BED) => BED.STONE_YARDS(108, 3), 1)],
  ])("is not %s", (_, check) => {
    expect(held(check)).toEqual([]);
  });
});
