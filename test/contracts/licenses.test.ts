import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import project from "../../package.json";
import { ALLOWED } from "../../src/licenses/allowed.mjs";
import { DIST } from "../dist";

/** `npm test` builds before it tests; run alone, this needs `npm run build` first. */
const list = readFileSync(`${DIST}/licenses.txt`, "utf8");
const entries = [
  ...list.matchAll(
    /^(\S+?)(?: [\d.]\S*)?: (.+?)(?: \(offered as .*\))?\. In: ([a-z, ]+?)(?:, packed into (\S+))?\.$/gm,
  ),
].map(([, name, license, parts, within]) => ({ name, license, parts, within }));

describe("the list of licenses", () => {
  test("tells every package that it counts", () => {
    expect(entries.length).toBeGreaterThan(100);
    expect(entries).toHaveLength(Number(/^Packages: (\d+)\.$/m.exec(list)?.[1]));
  });

  test("names no license that is not permissive", () => {
    const others = entries.filter(({ license }) => !license?.split(" AND ").every((one) => ALLOWED.includes(one)));
    expect(others).toEqual([]);
  });

  test("has what the add-in is known to load, where it loads it", () => {
    const of = (name: string) => entries.find((entry) => entry.name === name);
    expect(of("preact")).toMatchObject({ license: "MIT", parts: "pane" });
    expect(of("clipper2-ts")).toMatchObject({ license: "BSL-1.0", parts: "pane" });
    expect(of("fflate")).toMatchObject({ license: "MIT", parts: "pane, practice" });
    expect(of("saxes")).toMatchObject({ license: "ISC", parts: "pane, practice" });
    expect(of("@univerjs/core")).toMatchObject({ license: "Apache-2.0", parts: "practice" });
    expect(of("exceljs")).toBeUndefined();
    expect(of("webpack")?.parts).toBe("pane, practice");
    expect(of("esbuild")?.parts).toBe("functions, practice");
  });

  test("has nothing in the pane that the project does not ask for itself", () => {
    // The XML parser brings its own table of characters.
    const asked = [...Object.keys(project.devDependencies), "xmlchars"];
    const inPane = entries.filter(({ parts, within }) => parts?.includes("pane") && !within).map(({ name }) => name!);
    expect(inPane.filter((name) => !asked.includes(name))).toEqual([]);
  });
});
