import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { createContext, Script } from "node:vm";
import { describe, expect, test } from "vitest";
import { installGuide } from "../../src/packaging/installGuide.mjs";
import { HELP_FOLDER, screens } from "../../src/pane/screens";
import { DIST } from "../dist";
import { fakeCustomFunctions } from "../fakeCustomFunctions";

const read = (file: string) => readFileSync(join(DIST, file), "utf8");

/** `npm test` builds before it tests; run alone, this needs `npm run build` first. */
describe("the build", () => {
  test("holds all that the host, the practice page, and the pane's screens load or link to", () => {
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
      `${HELP_FOLDER}contents.json`,
      ...Object.values(screens).flatMap(({ guide }) => (guide ? HELP_FOLDER + guide.split("#")[0] : [])),
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

  test("holds nothing of the spreadsheet program's client library, which its license keeps from being handed on", () => {
    const library = resolve(import.meta.dirname, "../../node_modules/@microsoft/office-js/dist");
    const theirs = ["office.js", "excel-web-16.00.js", "excel-win32-16.01.js"];
    // What only its files say about themselves, and each of them does.
    const mark = /Office JavaScript API library/;
    for (const file of theirs) expect(readFileSync(join(library, file), "utf8"), file).toMatch(mark);
    const all = readdirSync(DIST, { recursive: true, encoding: "utf8" });
    expect(all.filter((file) => /(^|\/)(office|excel-)[^/]*\.js$/.test(file))).toEqual([]);
    expect(all.filter((file) => file.endsWith(".js")).filter((file) => mark.test(read(file)))).toEqual([]);
  });

  test("no script evaluates text as code, but a ready-made one that every page keeps from it", () => {
    const files = readdirSync(DIST, { recursive: true, encoding: "utf8" }).filter((file) => file.endsWith(".js"));
    const evaluating = files.filter((file) => /\beval\(|\bnew Function\(|[^\w.]Function\(["'`]/.test(read(file)));
    // The practice grid carries old ways to find the global object, and ways for scripts that are kept as text, which
    // nothing here uses. The pages' policies, below, forbid them.
    expect(evaluating.filter((file) => !isGrid(file))).toEqual([]);
  });
});

/** A chunk of the practice grid: it has the grid's own version string in it. */
const isGrid = (file: string) => file.startsWith("chunks") && read(file).includes("Univer");

/** Every page that is built, by its file, and the one that is made for the package. */
const pages = [
  ...readdirSync(DIST, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".html"))
    .map((file) => [file, read(file)] as const),
  ["install.html", installGuide({ origin: "https://tools.example", version: "1.0.0.0" })] as const,
];

/** The policy that a page sets for itself, by its directives. */
function policyOf(html: string): ReadonlyMap<string, readonly string[]> {
  const [, policy = ""] = /http-equiv="Content-Security-Policy"\s+content="([^"]*)"/.exec(html) ?? [];
  return new Map(
    policy.split(";").map((directive) => {
      const [name = "", ...sources] = directive.trim().split(/\s+/);
      return [name, sources];
    }),
  );
}

describe("every page that is built", () => {
  test("is looked at", () => {
    expect(pages.length).toBeGreaterThan(40);
    expect(pages.map(([file]) => file)).toEqual(expect.arrayContaining(["pane.html", "practice.html"]));
  });

  test.each(pages)("%s allows no more than it needs", (file, html) => {
    const policy = policyOf(html);
    expect(policy.get("default-src")).toEqual(["'none'"]);
    expect(policy.get("base-uri")).toEqual(["'none'"]);
    expect(policy.get("form-action")).toEqual(["'none'"]);
    // The host's own script comes from its maker, and nothing else from outside. A page of words runs nothing at all.
    const scripts = {
      "pane.html": ["'self'", "https://appsforoffice.microsoft.com", "https://ajax.aspnetcdn.com"],
      "practice.html": ["'self'"],
    };
    expect(policy.get("script-src")).toEqual(scripts[file as keyof typeof scripts]);
    expect([...policy.values()].flat()).not.toContain("*");
    expect([...policy.values()].flat().join(" ")).not.toMatch(/unsafe-eval|unsafe-hashes|https?:(?!\/\/)|http:/);
  });

  test.each(pages)("%s has no script, style of code or address of its own that runs", (_file, html) => {
    expect(html).not.toMatch(/<script(?![^>]*\ssrc=)[^>]*>/i);
    expect(html).not.toMatch(/<[a-z][^>]*\son[a-z]+\s*=/i);
    expect(html).not.toMatch(/(?:href|src|action)\s*=\s*["']?\s*(?:javascript|data|vbscript):/i);
    expect(html).not.toMatch(/<(?:iframe|object|embed|base|form(?![^>]*method="dialog"))\b/i);
  });
});
