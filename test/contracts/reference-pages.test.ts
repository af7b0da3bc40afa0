import { existsSync } from "node:fs";
import { join, resolve } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { declarations } from "../../src/functions/declarations";
import { PURPOSES } from "../../src/functions/declare";
import { functionsFile } from "../../src/functions/metadata";
import { call, isError } from "../../src/help/calls";
import { deadLinks, linksOn } from "../../src/help/deadLinks";
import { readExample } from "../../src/help/example";
import { CAUTION_OF } from "../../src/help/functionCautions";
import { escaped } from "../../src/help/html";
import { HOW_SURE } from "../../src/help/numbers/stated";
import { isSilentZero } from "../../src/help/numbers/zeros";
import { type Contents, helpFiles } from "../../src/help/pages";
import { messages } from "../../src/quantities/messages";
import { SOURCED_SOILS, SOURCED_STONES } from "../../src/quantities/tableSources";
import { cautions } from "../../src/sheets/cautions";
import type { HeadlessHost } from "../headlessHost";
import { createProductHost } from "../productHost";

const ROOT = resolve(import.meta.dirname, "../..");
const made = helpFiles(ROOT);
const pages = [...made].filter(([name]) => name.endsWith(".html"));
const page = (name: string) => made.get(name) ?? "";

const text = (html: string) =>
  html
    .replace(/<[^>]*>/g, "")
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&amp;", "&");

/** The rows of the first table after a place in a page, as text. */
function tableAfter(html: string, place: string): string[][] {
  const [, body = ""] = /<tbody>([\s\S]*?)<\/tbody>/.exec(html.slice(html.indexOf(place))) ?? [];
  return body
    .trim()
    .split("\n")
    .map((row) => row.split("</td>").slice(0, -1).map(text));
}

describe("every page", () => {
  test.each(pages)("%s: each link resolves, within the help", (_, html) => {
    const addresses = [...html.matchAll(/(?:href|src)="([^"]*)"/g)].map(([, address]) => address!);
    expect(addresses.length).toBeGreaterThan(1);
    const missing = addresses.filter((address) => {
      const [file] = address.split("#");
      const stands = file === "help.css" ? "src/help/help.css" : `src/help/guide/${file}`;
      return !made.has(file!) && !existsSync(join(ROOT, stands));
    });
    expect(missing).toEqual([]);
  });

  test.each(pages)("%s: each link to a place on a page finds that place", (name, html) => {
    const links = linksOn(name, html);
    expect(links.length).toBeGreaterThan(0);
    expect(deadLinks(links, made)).toEqual([]);
  });

  test.each(pages)("%s: runs nothing, fetches nothing from elsewhere, and names its language and title", (_, html) => {
    expect(html).not.toMatch(/<script|\son\w+=|javascript:|https?:/i);
    expect(html).toContain("default-src 'none'");
    expect(html).toMatch(/<html lang="en">/);
    expect(html).toMatch(/<title>[^<]+ – Bedrow help<\/title>/);
    expect(html.match(/<h1>/g)?.length).toBe(1);
  });
});

describe("the index", () => {
  test("lists each function once, under what it is for", () => {
    const sections = page("index.html").split("<h2>");
    for (const { name, purpose } of declarations) {
      const holding = sections.filter((one) => one.includes(`<a href="${name}.html">BED.${name}</a>`));
      expect(holding.map((one) => one.split("</h2>")[0])).toEqual([purpose]);
    }
    for (const purpose of PURPOSES)
      expect(
        declarations.some((one) => one.purpose === purpose),
        purpose,
      ).toBe(true);
  });

  test("and the pane's list hold the same pages", () => {
    const contents = JSON.parse(page("contents.json")) as Contents;
    const listed = contents.flatMap((group) => group.pages.map(({ address }) => address));
    expect([...listed].sort()).toEqual(
      pages
        .map(([name]) => name)
        .filter((name) => name !== "index.html")
        .sort(),
    );
    for (const address of listed) expect(page("index.html")).toContain(`href="${address}"`);
  });

  test("is where the host's help link of a function leads", () => {
    const { functions } = functionsFile("https://tools.example");
    expect(functions.length).toBe(declarations.length);
    for (const { helpUrl } of functions) {
      const [, file] = /^https:\/\/tools\.example\/help\/(.+)$/.exec(helpUrl) ?? [];
      expect(made.has(file!)).toBe(true);
    }
  });
});

describe("what the numbers rest on", () => {
  const html = page("numbers.html");

  const ROWS = [
    ...SOURCED_STONES.map((row) => ({ ...row, kind: "Stone", value: String(Number(row.tonsPerYard.toPrecision(6))) })),
    ...SOURCED_SOILS.map((row) => ({ ...row, kind: "Soil", value: `${row.swell * 100}%` })),
  ];

  test.each(ROWS)("$kind: $name, with source and how sure", ({ kind, name, value, source, sure }) => {
    const part = html.slice(html.indexOf(`<h2 id="${kind.toLowerCase()}">${kind}</h2>`)).split("</section>")[0]!;
    const shown = part.split("\n").filter((line) => line.startsWith(`<tr><td>${name}</td>`));
    expect(shown.length).toBe(1);
    expect(text(shown[0]!)).toContain(value);
    expect(shown[0]).toContain(escaped(source));
    expect(shown[0]).toContain(HOW_SURE[sure]);
  });
});

describe("the page of a function", () => {
  let host: HeadlessHost;
  beforeAll(async () => {
    host = await createProductHost();
  });

  test.each(declarations.map((declared) => [declared.name, declared] as const))(
    "%s shows what the practice grid's engine gives for its example and for the ordinary form",
    async (id, declared) => {
      const html = page(`${id}.html`);
      const [, formula] = /<p class="formula"><code>([^<]*)<\/code>/.exec(html) ?? [];
      const at = /data-formula-at="([A-Z]+\d+)"/.exec(html)?.[1] ?? "A1";
      const cells = html.includes("data-formula-at") ? tableAfter(html, "data-formula-at") : [];
      const sheet = `Sheet ${host.grid.sheets.list().length}`;
      host.grid.sheets.add(sheet);
      const place = (column: number, row: string) => `'${sheet}'!${String.fromCharCode(64 + column)}${row}`;
      await host.type(
        Object.fromEntries(
          cells.flatMap(([row, ...across]) =>
            across.flatMap((cell, column) => (cell === "" ? [] : [[place(column + 1, row!), Number(cell)]])),
          ),
        ),
      );
      await host.type({ [`'${sheet}'!${at}`]: text(formula!) });

      const [, number] = /<output>([^<]*)<\/output>/.exec(html) ?? [];
      if (number !== undefined) {
        const shown = Number(number.replaceAll(",", ""));
        const digits = (value: unknown) => Number(Number(value).toPrecision(6));
        expect(digits(host.value(`'${sheet}'!${at}`))).toBe(shown);
        const [, ordinary] = /<p class="formula ordinary"><code>([^<]*)<\/code>/.exec(html) ?? [];
        if (ordinary === undefined) return expect(html).toContain("There's no ordinary formula");
        await host.type({ [`'${sheet}'!H20`]: text(ordinary) });
        return expect(digits(host.value(`'${sheet}'!H20`))).toBe(shown);
      }
      const rows = tableAfter(html, '<div class="result">');
      expect(rows.length).toBeGreaterThan(0);
      const first = at.charCodeAt(0);
      const [, row] = /(\d+)$/.exec(at)!;
      const last = `${String.fromCharCode(first + rows[0]!.length - 1)}${Number(row) + rows.length}`;
      const [, ...spilled] = host.values(`'${sheet}'!${at}:${last}`);
      const shown = (cell: unknown) =>
        typeof cell === "number"
          ? Number(cell.toPrecision(6)).toLocaleString("en-US", { maximumFractionDigits: 6 })
          : cell;
      expect(spilled.map((cellsOfRow) => cellsOfRow.map(shown))).toEqual(rows);
      expect(declared.example).toContain("INDEX");
    },
  );

  test.each(declarations.map((declared) => [declared.name, declared] as const))(
    "%s says what it is for, every argument, its source, what can go wrong, and what is related",
    (id, declared) => {
      const html = page(`${id}.html`);
      for (const said of [
        declared.about,
        declared.returns,
        declared.source,
        ...declared.arguments.map(({ about }) => about),
      ])
        expect(html).toContain(escaped(said));
      const slips = tableAfter(html, "What can go wrong");
      expect(slips.length).toBeGreaterThan(2);
      for (const [, says] of slips) {
        expect(says).toMatch(/^#(VALUE!|N\/A) \S.+\.$/);
        expect(says).not.toContain(messages.unforeseen());
      }
      for (const related of declared.related) expect(html).toContain(`<a href="${related}.html">BED.${related}</a>`);
    },
  );
});

test("a message of a function's own is told on its page, not only what all functions say", () => {
  for (const [id, says] of [
    ["AREA_TRIANGLE", "make a triangle"],
    ["AREA_POINTS", "meets side"],
    ["AREA_RECTANGLE", "too large for these sides"],
    ["AREA_ROUND", "leaving no ring"],
    ["STONE_DEPTH", "leaving no depth for stone"],
    ["STONE_TONS", "Did you mean"],
    ["PRICE_MARGIN", "must be under 1. Type"],
    ["CUT_COUNT", "longer than the stock"],
    ["DIG_DATE", "could be 2026-3-4 or 2026-4-3"],
    ["LAYOUT", "reaches outside the bed"],
  ] as const)
    expect(page(`${id}.html`), id).toContain(says);
});

test("whoever uses digging, hauling, barrow, stake, pin and bag functions alone reads the caution of that work", () => {
  for (const [about, ...ids] of [
    ["Buried lines", "DIG_DATE", "DIG_YARDS", "STAKES", "PINS", "PIN_MAP", "LAYOUT_PINS"],
    ["Trailers and trucks", "SPOIL_YARDS", "LOADS"],
    ["Lifting", "STONE_BAGS", "STONE_BULK_BAGS", "PAVERS", "BARROW_TRIPS", "HAUL_HOURS"],
  ] as const)
    for (const id of ids) {
      expect(CAUTION_OF[id], id).toBe(about);
      const [, said] = /<div class="caution">([\s\S]*?)<\/div>/.exec(page(`${id}.html`)) ?? [];
      expect(text(said ?? ""), id).toContain(cautions.find((caution) => caution.about === about)!.text);
      expect(said, id).toContain('href="numbers.html#cautions"');
    }
  expect(page("numbers.html")).toContain('<div id="cautions"><section>\n<h2 id="cautions-2">Cautions</h2>');
  expect(page("FEET.html")).not.toContain('class="caution"');
});

test("an argument of which the pages say that a blank is 0 takes one without an error", () => {
  const tried = declarations.flatMap(({ name, arguments: known, example }) => {
    const { given } = readExample(example);
    return known.flatMap((argument, place) => {
      if (!isSilentZero(argument)) return [];
      const all = known.map((_, at) => given[at] ?? null);
      expect(call(name, all.with(place, null)), `${argument.name} of ${name}`).toEqual(call(name, all.with(place, 0)));
      expect(isError(call(name, all.with(place, null))), `${argument.name} of ${name}`).toBe(false);
      return [argument.name];
    });
  });
  expect(tried.length).toBeGreaterThan(15);
});

test("the page of LOADS says that a blank weight means weight isn't checked, and what comes of it", () => {
  const html = text(page("LOADS.html"));
  expect(html).toContain("No weight given: weight isn't checked.");
  // 4.63 cu yd are one load of a box of 5 cu yd; by weight, 4.63 × 1.3 ÷ 2.55 = 2.4, three.
  expect(html).toMatch(/payload_tons: weight isn't checked\. .* overloaded\. The example then gives 1 instead of 3\./);
});
