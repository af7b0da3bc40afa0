import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";

const FOLDER = resolve(import.meta.dirname, "../../src/help/guide");

/** The guide's pages as they were written, by the names of their files. */
export const fragments: readonly (readonly [name: string, html: string])[] = readdirSync(FOLDER)
  .filter((name) => name.endsWith(".html"))
  .map((name) => [name, readFileSync(join(FOLDER, name), "utf8")]);

export const pictureNames: readonly string[] = readdirSync(join(FOLDER, "pictures"));

/** The bed that the first page estimates, as it is typed into the pane. */
export const example = JSON.parse(readFileSync(join(FOLDER, "example.json"), "utf8")) as {
  readonly name: string;
  readonly way: "rectangle";
  readonly typed: Readonly<Record<string, string>>;
};

/** Markup as the text that is read. */
export const textOf = (html: string): string =>
  html
    .replace(/<[^>]*>/g, "")
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&#39;", "'")
    .replaceAll("&amp;", "&")
    .replace(/\s+/g, " ")
    .trim();

/** What stands in every element of a kind, as text. */
export function textsIn(html: string, element: string): string[] {
  return [...html.matchAll(new RegExp(`<${element}(?:\\s[^>]*)?>([\\s\\S]*?)</${element}>`, "g"))].map(([, inner]) =>
    textOf(inner!),
  );
}

/** A number of the guide: where it comes from, and how it is shown. */
export interface Shown {
  readonly source: string;
  readonly shown: string;
}

/** The numbers that a page marks, each with its source: a formula, a cell of the first estimate, a starting value. */
export function numbersIn(html: string): Shown[] {
  const marked = [...html.matchAll(/<data value=(?:"([^"]*)"|'([^']*)')>([\s\S]*?)<\/data>/g)].map(
    ([, plain, quoted, inner]) => ({ source: textOf(plain ?? quoted ?? ""), shown: textOf(inner!) }),
  );
  const worked = [...html.matchAll(/<code>(=[^<]+)<\/code>\s+gives\s+<output>([^<]*)<\/output>/g)].map(
    ([, formula, shown]) => ({ source: textOf(formula!), shown: textOf(shown!) }),
  );
  return [...marked, ...worked];
}

/** What is left of a page's prose once everything that a test looks at is gone. */
export function unmarked(html: string): string {
  return textOf(html.replace(/<(data|code|output|kbd|var|b)(?:\s[^>]*)?>[\s\S]*?<\/\1>/g, " "));
}
