import { readdirSync, readFileSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { functionsFile } from "../../src/functions/metadata";
import type { NativeForm } from "../../src/functions/native/form";
import { nativeForms } from "../../src/functions/native/forms";
import type { Given } from "../../src/functions/native/given";
import { closed } from "../../src/functions/native/worked";
import { levelsOf } from "../../src/sheets/plain/limits";

const { functions } = functionsFile("https://tools.example");
const forms = Object.entries(nativeForms).filter((one): one is [string, NativeForm] => "build" in one[1]);

test("every worksheet function has an ordinary form, or says why it has none", () => {
  const missing = functions
    .filter(({ id }) => nativeForms[id] === undefined)
    .map(
      ({ id }) =>
        `${id} has no entry in src/functions/native/forms.ts: give its arithmetic, or { none: "why it has none" }.`,
    );
  expect(missing).toEqual([]);
});

test("a reason for having none is put in words", () => {
  for (const [id, form] of Object.entries(nativeForms))
    if ("none" in form) expect(form.none, id).toMatch(/^\p{Ll}.{20,}[^.]$/u);
});

test("an ordinary form belongs to a function that there is", () => {
  const ids = functions.map(({ id }) => id);
  expect(forms.map(([id]) => id).filter((id) => !ids.includes(id))).toEqual([]);
});

/** What every spreadsheet program has had since 2007, and longer. */
const KNOWN = new Set(
  (
    "ABS AND COLUMN COUNT COUNTBLANK COUNTIF IF INDEX INT ISLOGICAL ISNUMBER ISTEXT LOWER MATCH MAX MEDIAN MIN MOD N OR " +
    "PI ROW SIGN SQRT SUBSTITUTE SUM SUMPRODUCT TRANSPOSE TRIM WORKDAY"
  ).split(" "),
);

describe.each(forms)("%s", (id, form) => {
  const { parameters } = functions.find((one) => one.id === id)!;
  const letters = parameters.map((_, place) => "ACEGIKM"[place]!);
  const given = parameters.map(({ dimensionality }, place): Given => {
    const letter = letters[place]!;
    if (dimensionality === "matrix") return rangeFrom(letter, id.endsWith("_POINTS") ? 2 : 1);
    return { kind: "cell", text: `${letter}1` };
  });
  const formula = closed(form.build(given));

  test("takes the function's arguments, and uses each", () => {
    expect(form.takes.length).toBe(parameters.length);
    for (const letter of letters) expect(formula).toMatch(new RegExp(`\\b${letter}1\\b`));
  });

  test("asks for nothing that spreadsheet programs have not had for long", () => {
    const used = [...formula.matchAll(/([A-Z.]+)\(/g)].map(([, name]) => name!);
    expect(used.filter((name) => !KNOWN.has(name))).toEqual([]);
    expect(used.length).toBeGreaterThan(0);
  });

  test("stays within 8,192 characters and 64 levels", () => {
    expect(formula.length).toBeLessThanOrEqual(8192);
    expect(levelsOf(formula)).toBeLessThanOrEqual(64);
  });
});

const ROWS = 20;

function rangeFrom(letter: string, columns: number): Given {
  const column = (place: number) => String.fromCharCode(letter.charCodeAt(0) + place);
  const part = (row: number, across: number, toRow: number, toAcross: number) => {
    const [first, last] = [`${column(across)}${row + 1}`, `${column(toAcross)}${toRow + 1}`];
    return first === last ? first : `${first}:${last}`;
  };
  return { kind: "range", range: { text: part(0, 0, ROWS - 1, columns - 1), rows: ROWS, columns, part } };
}

test("the ordinary forms need nothing of the host", () => {
  const folder = resolve(import.meta.dirname, "../../src/functions/native");
  for (const file of readdirSync(folder).filter((name) => name.endsWith(".ts"))) {
    expect(readFileSync(resolve(folder, file), "utf8"), file).not.toMatch(/CustomFunctions|\/cellError|Office|Excel\./);
  }
});
