import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, test } from "vitest";
import * as functions from "../../src/functions/index";
import { nativeForms } from "../../src/functions/native/forms";
import type { FunctionDoc } from "../../src/help/docstrings";
import { everyDocstring } from "../../src/help/pages";
import { PURPOSES } from "../../src/help/purposes";
import { functionKnowledge } from "../../src/review/knowledge";
import { CASES, LISTS } from "../functionCases";
import { figure, heldFromOutside, type OutsideCheck } from "../outside";
import { functionChecks } from "../references/functions";

/*
 * The one list of what belongs to a worksheet function. Whoever adds one runs this test: it says what is still missing
 * and where it goes. What each part must hold is the business of the tests named beside it.
 */
const ROOT = resolve(import.meta.dirname, "../..");
const read = (path: string) => readFileSync(join(ROOT, path), "utf8");

/** What the project has, by the places where a function has to stand. */
interface House {
  readonly docs: readonly FunctionDoc[];
  readonly exported: readonly string[];
  readonly promised: string;
  readonly native: readonly string[];
  readonly cases: readonly string[];
  readonly knowledge: readonly string[];
  readonly purposes: readonly string[];
  /** Functions that a check of test/references compares with something from outside. */
  readonly held: readonly string[];
}

const house: House = {
  docs: everyDocstring(ROOT),
  exported: Object.keys(functions),
  promised: read("test/contracts/functions-metadata.test.ts"),
  native: Object.keys(nativeForms),
  cases: [...Object.keys(CASES), ...LISTS],
  knowledge: functionKnowledge.map(({ name }) => name),
  purposes: PURPOSES.flatMap((purpose) => purpose.functions),
  held: [...heldFromOutside(Object.values(functionChecks).flat())],
};

/** The parts of a docstring that are not there. */
function missingWords(doc: FunctionDoc): string[] {
  const { about, returns, example, source, related } = doc;
  const parts = { "what it is for": about, "@returns": returns, "@example": example, "@source": source };
  return [
    ...Object.entries(parts).flatMap(([part, text]) => (text === "" ? [part] : [])),
    ...(related.length === 0 ? ["@see"] : []),
    ...doc.arguments.flatMap(({ name, about: text }) => (text === "" ? [`what to give for ${name}`] : [])),
  ];
}

/** What is missing of a function, each with where it goes. */
function missing(id: string, at: House): string[] {
  const doc = at.docs.find((one) => one.id === id);
  const words = doc ? missingWords(doc).join(", ") : "all of it, or its file in src/functions/files.json";
  const holds = (text: string) => new RegExp(`\\b${id}\\b`).test(text);
  const steps: readonly (readonly [boolean, string])[] = [
    [words === "", `its docstring in src/functions: ${words} (step 2)`],
    [at.exported.includes(id), "the function under its id, exported by src/functions/index.ts (step 2)"],
    [at.native.includes(id), "its native form, or why it has none, in src/functions/native/forms.ts (step 3)"],
    [holds(at.promised), "its row of arguments, kept for years, in test/contracts/functions-metadata.test.ts (step 4)"],
    [at.cases.includes(id), "its arguments in CASES, or itself in LISTS, of test/functionCases.ts (step 4)"],
    [at.held.includes(id), "an outside check that 1 % too much would fail, in test/references/functions (step 4)"],
    [at.knowledge.includes(id), "what the check and Explain know of it, in src/review/knowledge (step 5)"],
    [at.purposes.includes(id), "its place in the help, in src/help/purposes.ts (step 5)"],
  ];
  return steps.flatMap(([done, what]) => (done ? [] : [`BED.${id} lacks ${what}`]));
}

describe("a worksheet function is complete", () => {
  const ids = new Set([...house.docs.map(({ id }) => id), ...house.exported, ...house.native, ...house.purposes]);

  test.each([...ids].sort())("BED.%s", (id) => {
    expect(missing(id, house)).toEqual([]);
  });

  test("and there are some", () => {
    expect(ids.size).toBeGreaterThan(40);
  });
});

describe("a part that is missing is named, with where it goes", () => {
  const without = (part: Partial<House>) => missing("STONE_TONS", { ...house, ...part });
  const doc = house.docs.find(({ id }) => id === "STONE_TONS")!;
  const withDoc = (change: Partial<FunctionDoc>) => without({ docs: [{ ...doc, ...change }] });

  test.each([
    [without({ docs: [] }), /lacks its docstring in src\/functions: all of it/],
    [withDoc({ source: "" }), /docstring.*: @source/],
    [withDoc({ example: "", related: [] }), /docstring.*: @example, @see/],
    [withDoc({ arguments: [{ name: "area", about: "" }] }), /docstring.*: what to give for area/],
    [without({ exported: [] }), /exported by src\/functions\/index\.ts/],
    [without({ native: [] }), /native form, or why it has none/],
    [without({ promised: "STONE_TONS_MORE" }), /functions-metadata\.test\.ts/],
    [without({ cases: [] }), /CASES/],
    [without({ held: [] }), /outside check/],
    [without({ knowledge: [] }), /src\/review\/knowledge/],
    [without({ purposes: [] }), /src\/help\/purposes\.ts/],
  ])("%s", (said, expected) => {
    expect(said.length).toBe(1);
    expect(said[0]).toMatch(expected);
    expect(said[0]).toMatch(/^BED\.STONE_TONS lacks .*step \d/);
  });

  test("a function of which nothing but its name is there lacks every part", () => {
    expect(missing("PLANTED", house).length).toBe(8);
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
