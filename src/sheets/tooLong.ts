import { MOST_IN_CELL } from "../spreadsheet/areas";
import type { Plan } from "./plan";

/** What spreadsheet programs take, by their published limits (from memory). */
const MOST_IN_FORMULA = 8192;
/** Of a text that is quoted inside a formula. */
const MOST_QUOTED = 255;

const QUOTED = /"((?:[^"]|"")*)"/g;
const SHOWN = 40;

/**
 * What of a plan no spreadsheet program would take, since it is too long; undefined where all of it fits.
 *
 * @example tooLong(plan) // "“Front walk and…” has 40,000 characters, and a cell takes 32,767. Make it shorter."
 */
export function tooLong({ formulas }: Pick<Plan, "formulas">): string | undefined {
  for (const content of formulas.flat()) {
    if (typeof content !== "string") continue;
    const words = content.startsWith("=") ? tooLongFormula(content) : tooLongText(content.replace(/^'/, ""));
    if (words) return words;
  }
  return undefined;
}

function tooLongText(text: string): string | undefined {
  return text.length > MOST_IN_CELL ? words(text, text.length, "a cell", MOST_IN_CELL) : undefined;
}

function tooLongFormula(formula: string): string | undefined {
  for (const [, quoted = ""] of formula.matchAll(QUOTED)) {
    const text = quoted.replaceAll('""', '"');
    if (text.length > MOST_QUOTED) return words(text, text.length, "a text inside a formula", MOST_QUOTED);
  }
  return formula.length > MOST_IN_FORMULA ? words(formula, formula.length, "a formula", MOST_IN_FORMULA) : undefined;
}

function words(text: string, length: number, what: string, most: number): string {
  const [has, takes] = [length, most].map((count) => count.toLocaleString("en-US"));
  return `“${text.slice(0, SHOWN)}…” has ${has} characters, and ${what} takes ${takes}. Make it shorter.`;
}
