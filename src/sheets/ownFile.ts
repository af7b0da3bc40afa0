import type { OutputUnit, Validator } from "@cfworker/json-schema";
import { withoutHidden } from "./templates/hiddenCharacters";

/** A file of ours that was refused, in sentences for the person. */
export interface RefusedFile {
  readonly ok: false;
  readonly why: readonly string[];
  /** How many more sentences there would be. */
  readonly more: number;
}

const MOST_TOLD = 12;
const LONGEST_TOLD = 160;

export function refusedFile(why: readonly string[]): RefusedFile {
  // What is told quotes the file, so nothing of that may disguise itself either.
  return { ok: false, why: why.slice(0, MOST_TOLD).map(withoutHidden), more: Math.max(0, why.length - MOST_TOLD) };
}

/** The content of a file's text. @throws SyntaxError for what is no JSON. */
export function parsedFile(text: string): unknown {
  return JSON.parse(text.replace(/^\uFEFF/, ""));
}

/**
 * Where a file is not as its schema says; undefined where it is.
 *
 * @param owner what does not have a member that is too many: "a template does".
 * @example "It is damaged at cells, 3, formula: …"
 */
export function damageIn(validator: Validator, content: unknown, owner: string): string | undefined {
  const { valid, errors } = validator.validate(content);
  return valid ? undefined : damage(errors.at(-1), owner);
}

function damage(unit: OutputUnit | undefined, owner: string): string {
  const place = (unit?.instanceLocation ?? "#").split("/").slice(1).join(", ").slice(0, LONGEST_TOLD);
  if (unit?.keyword === "false") return `It has “${place}”, which ${owner} not have.`;
  const where = place === "" ? "" : ` at ${place}`;
  return `It's damaged${where}: ${(unit?.error ?? "it isn't in the expected form").slice(0, LONGEST_TOLD)}`;
}
