import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import ts from "typescript";
import { describe, expect, test } from "vitest";
import { outside } from "../outside";
import { functionChecks } from "../references/functions";

const FOLDER = resolve(import.meta.dirname, "../references");
const files = readdirSync(FOLDER, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".ts"));

/** What a file takes from vitest by name. */
function takenFromVitest(file: string, text: string): string[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
  return source.statements.filter(ts.isImportDeclaration).flatMap(({ moduleSpecifier, importClause }) => {
    if (!ts.isStringLiteral(moduleSpecifier) || moduleSpecifier.text !== "vitest") return [];
    const named = importClause?.namedBindings;
    return named && ts.isNamedImports(named)
      ? named.elements.map(({ name, propertyName }) => (propertyName ?? name).text)
      : ["all of it"];
  });
}

/** A test of one's own, which would need no source. */
const withoutSource = (file: string, text: string) =>
  takenFromVitest(file, text).filter((name) => !["describe", "expect", "beforeAll", "afterAll"].includes(name));

describe("every test in test/references names its source", () => {
  test.each(files)("%s: its tests are made by `outside`, which asks for one", (file) => {
    expect(withoutSource(file, readFileSync(join(FOLDER, file), "utf8"))).toEqual([]);
  });

  test("and a test that is made by vitest's own `test` or `it` is found", () => {
    expect(withoutSource("a.ts", 'import { expect, test } from "vitest";')).toEqual(["test"]);
    expect(withoutSource("a.ts", 'import { describe, it as outside } from "vitest";')).toEqual(["it"]);
    expect(withoutSource("a.ts", 'import * as vitest from "vitest";')).toEqual(["all of it"]);
  });

  test.each([undefined, "", " – ", "§ 4"])("the source %j is none", (source) => {
    expect(() => outside(source as string, "1 yd is 3 ft", () => {})).toThrow(/Name the source of "1 yd is 3 ft"/);
  });

  test("the checks of all files in test/references/functions are run", () => {
    const tables = files.filter((file) => file.startsWith("functions/") && file !== "functions/index.ts");
    expect(Object.keys(functionChecks).sort()).toEqual(
      tables.map((file) => file.slice("functions/".length, -3)).sort(),
    );
    for (const [table, checks] of Object.entries(functionChecks)) expect(checks.length, table).toBeGreaterThan(5);
  });
});
