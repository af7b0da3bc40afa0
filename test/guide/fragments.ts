import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { unescaped } from "../../src/help/html";
import type { BedForm } from "../../src/quantities/bed/form";

const FOLDER = resolve(import.meta.dirname, "../../src/help/guide");

/** The guide's pages as they were written, by the names of their files. */
export const fragments: readonly (readonly [name: string, html: string])[] = readdirSync(FOLDER)
  .filter((name) => name.endsWith(".html"))
  .sort((one, other) => Number.parseInt(one, 10) - Number.parseInt(other, 10))
  .map((name) => [name, readFileSync(join(FOLDER, name), "utf8")]);

export const pictureNames: readonly string[] = readdirSync(join(FOLDER, "pictures"));

/** A bed of the guide as it is typed into the pane; what is left out stays as the form has it. */
export type GuideBed = Pick<BedForm, "name" | "way" | "typed"> & Partial<BedForm>;

const bedsIn = (file: string) => JSON.parse(readFileSync(join(FOLDER, file), "utf8"));

/** The bed that the first page estimates. */
export const example: GuideBed = bedsIn("example.json");

/** The beds of other shapes, by the words that sources of numbers name them with. */
export const shapes: Readonly<Record<string, GuideBed>> = bedsIn("shapes.json");

/** What is typed into the pane about the shape of a bed of the guide. */
export const typedFor = ({ typed, widths = [], points = [], cutOuts = [] }: GuideBed): string[] => [
  ...Object.values(typed),
  ...widths,
  ...points.flatMap((point) => point.slice(0, 2)),
  ...cutOuts.flat().filter((text) => text !== ""),
];

/** Markup as the text that is read. */
export const textOf = (html: string): string => unescaped(html.replace(/<[^>]*>/g, ""));

/** What is in every element of a kind, as text. */
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

/** The numbers that a page marks, each with its source: a formula, a cell of an estimate, a starting value. */
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
