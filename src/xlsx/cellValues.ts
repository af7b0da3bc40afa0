import type { FileValue } from "./read/cells";

/** What a cell shows: the result of its formula, or what stands in it. */
export type Shown = string | number | boolean;

const ERRORS = ["#N/A", "#REF!", "#NAME?", "#DIV/0!", "#NULL!", "#VALUE!", "#NUM!"] as const;
const TRUTHS: ReadonlyMap<string, boolean> = new Map([
  ["TRUE", true],
  ["FALSE", false],
]);

/** Whether a plan's content is a formula. */
export function isFormula(content: string | number): content is `=${string}` {
  return typeof content === "string" && content.startsWith("=") && content.length > 1;
}

/**
 * What a plan's content is in a file, where it is no formula: the host's text mark is not kept, since text is text there.
 *
 * @example contentValue("'6-8") // "6-8"
 */
export function contentValue(content: string | number): FileValue | undefined {
  if (typeof content === "number") return content;
  if (content === "") return undefined;
  if (content.startsWith("'")) return content.slice(1);
  return TRUTHS.get(content) ?? errorOf(content) ?? content;
}

/** What a cell shows, as a file holds it. */
export function shownValue(shown: Shown): FileValue {
  return typeof shown === "string" ? (errorOf(shown) ?? shown) : shown;
}

function errorOf(text: string): FileValue | undefined {
  const error = ERRORS.find((one) => one === text);
  if (error) return { error };
  // Errors that came later have no place in every program's files.
  return /^#[A-Z]+!$/.test(text) ? { error: "#VALUE!" } : undefined;
}
