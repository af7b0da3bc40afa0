import { existsSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { createContext, Script } from "node:vm";
import { describe, expect, test } from "vitest";
import { fakeCustomFunctions } from "../fakeCustomFunctions";

const DIST = resolve(import.meta.dirname, "../../dist");
const read = (file: string) => readFileSync(join(DIST, file), "utf8");

/** `npm test` builds before it tests; run alone, this needs `npm run build` first. */
describe("the build", () => {
  test("holds all that the host and the practice page load", () => {
    const files = [
      "functions.js",
      "functions.json",
      "pane.html",
      "pane.js",
      "pane.css",
      "practice.html",
      "practice.js",
      "manifest.xml",
      "manifest.dev.xml",
      "assets/icon-32.png",
    ];
    expect(files.filter((file) => !existsSync(join(DIST, file)))).toEqual([]);
  });

  test("functions.js associates every function of functions.json at once, in anything with a CustomFunctions global", () => {
    const CustomFunctions = fakeCustomFunctions();
    new Script(read("functions.js")).runInContext(createContext({ CustomFunctions }));
    const ids = (JSON.parse(read("functions.json")) as { functions: { id: string }[] }).functions.map(({ id }) => id);
    expect([...CustomFunctions.associated.keys()].sort()).toEqual([...ids].sort());
    const stoneTons = CustomFunctions.associated.get("STONE_TONS") as (...given: unknown[]) => unknown;
    // 108 sq ft 3 in deep is a cubic yard; 2,700 lb of it are 1.35 short tons (1 yd³ covers 324 sq ft an inch deep).
    expect(stoneTons(108, 3, 1.35, null)).toBeCloseTo(1.35, 12);
  });

  test("pane.html loads the functions before the pane, and nothing inline", () => {
    const html = read("pane.html");
    expect(html.indexOf("functions.js")).toBeGreaterThan(0);
    expect(html.indexOf("functions.js")).toBeLessThan(html.indexOf("pane.js"));
    expect(html).not.toMatch(/<script>|\son\w+=/);
  });

  test("neither pane nor functions evaluates text as code", () => {
    const evaluating = ["functions.js", "pane.js"].filter((file) => /\beval\(|new Function\(/.test(read(file)));
    expect(evaluating).toEqual([]);
  });
});
