import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import ts from "typescript";
import { describe, expect, test } from "vitest";
import { declarations } from "../../src/functions/declarations";
import { deadLinks } from "../../src/help/deadLinks";
import { screens } from "../../src/pane/screens";
import { fragments, pictureNames, textOf, textsIn } from "../guide/fragments";

const ROOT = resolve(import.meta.dirname, "../..");
const PICTURES = join(ROOT, "src/help/guide/pictures");
/** All pictures together, so that the help stays small beside the add-in itself. */
const MOST_BYTES = 1_500_000;

const sources = readdirSync(join(ROOT, "src"), { recursive: true, encoding: "utf8" })
  .filter((name) => /^(pane|quantities|sheets)\/.*\.tsx?$/.test(name) && !name.includes(".test."))
  .map((name) => join(ROOT, "src", name));

/** Every text that stands whole in the source of the screens and sheets: between tags, in quotes, before a value. */
const said: ReadonlySet<string> = new Set([
  ...sources.flatMap((file) => textsOf(file)),
  ...[...readFileSync(join(ROOT, "manifest.xml"), "utf8").matchAll(/DefaultValue="([^"]*)"/g)].map(([, text]) => text!),
]);

function textsOf(file: string): string[] {
  const kind = file.endsWith("x") ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  const source = ts.createSourceFile(file, readFileSync(file, "utf8"), ts.ScriptTarget.ES2022, true, kind);
  const found: string[] = [];
  const visit = (node: ts.Node) => {
    if (ts.isStringLiteralLike(node) || ts.isJsxText(node) || ts.isTemplateHead(node))
      found.push(
        node.text
          .replace(/\s+/g, " ")
          .replace(/[ (]+$/, "")
          .trim(),
      );
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

describe.each(fragments)("the guide's page %s", (_, html) => {
  test("quotes only labels that are on the screens and sheets, letter by letter", () => {
    expect(textsIn(html, "b").filter((label) => !said.has(label))).toEqual([]);
  });

  test("names only functions that are there", () => {
    const named = [...textOf(html).matchAll(/BED\.([A-Z_]+)/g)].map(([, id]) => id!);
    expect(named.filter((id) => !isFunction(id))).toEqual([]);
  });

  test("shows pictures that are there, each with words for those who do not see it", () => {
    const shown = [...html.matchAll(/<img ([^>]*)>/g)].map(([, attributes]) => attributes!);
    for (const attributes of shown) {
      const [, name] = /src="pictures\/([^"]+)"/.exec(attributes) ?? [];
      expect(pictureNames, attributes).toContain(name);
      const [, words = ""] = /alt="([^"]*)"/.exec(attributes) ?? [];
      expect(words.length, attributes).toBeGreaterThan(30);
    }
    expect(html.match(/<figure/g)?.length ?? 0).toBe(shown.length);
    expect(html.match(/<figcaption>/g)?.length ?? 0).toBe(shown.length);
  });

  test("says in plain words, in short sentences", () => {
    const sentences = textOf(html.replace(/<\/(p|li|dt|dd|h\d|td|figcaption)>/g, ". "))
      .replace(/\d\.\d/g, "0")
      .split(/[.?!:;]+\s/)
      .map((sentence) => sentence.trim());
    expect(sentences.filter((sentence) => sentence.split(" ").length > 36)).toEqual([]);
  });
});

const isFunction = (id: string) => declarations.some(({ name }) => name === id);

describe("the guide's page of each screen", () => {
  const pages = new Map(fragments.map(([name, html]) => [name.replace(/^\d+-/, ""), html]));

  test.each(Object.entries(screens).filter(([screen]) => screen !== "help"))("%s: exists", (_, { guide }) => {
    expect(deadLinks([guide!], pages)).toEqual([]);
  });

  test("is missing when the page, or the place on it, was renamed", () => {
    expect(deadLinks(["paper.html", "papers.html", "looks-wrong.html#checks"], pages)).toEqual([
      "paper.html",
      "looks-wrong.html#checks",
    ]);
  });
});

test("a label that no screen has is found", () => {
  expect(said.has("Insert")).toBe(true);
  expect(said.has("Read the list at the selection")).toBe(true);
  expect(said.has("Insert the estimate now")).toBe(false);
});

test("the dangers of the work are told before the work, with what to do", () => {
  const pageOf = (address: string) => fragments.find(([name]) => name.endsWith(`-${address}.html`))![1];
  const [before = ""] = pageOf("first-estimate").split("<h2>Type what was taped</h2>");
  expect(before).toContain('<h2 id="before">');
  for (const word of [
    ">811<",
    "positive response",
    "private locator",
    "silica",
    "Wet the stone",
    "respirator",
    "payload",
  ])
    expect(before).toContain(word);
  for (const address of ["other-shapes", "job-rows"]) {
    const [first = ""] = pageOf(address).split("<h2>");
    expect(first, address).toMatch(/class="caution"[\s\S]*first-estimate\.html#before/);
  }
});

test("every picture is shown somewhere, and all together are small", () => {
  const shown = fragments.flatMap(([, html]) => [...html.matchAll(/src="pictures\/([^"]+)"/g)].map(([, name]) => name));
  expect([...pictureNames].sort()).toEqual([...new Set(shown)].sort());
  const bytes = pictureNames.map((name) => readFileSync(join(PICTURES, name)).length);
  expect(bytes.reduce((sum, size) => sum + size, 0)).toBeLessThan(MOST_BYTES);
});

test("the pages are in the order in which the work is done", () => {
  expect(fragments.map(([name]) => name.replace(/^\d+-|\.html$/g, ""))).toEqual([
    "first-estimate",
    "other-shapes",
    "job-rows",
    "papers",
    "templates",
    "looks-wrong",
    "without-the-add-in",
    "limits",
    "in-the-office",
    "pin-count",
    "questions",
  ]);
});
