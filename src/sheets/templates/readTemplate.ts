import { type OutputUnit, type Schema, Validator } from "@cfworker/json-schema";
import { withoutHidden } from "./hiddenCharacters";
import { MOST_CHARACTERS, thousands } from "./limits";
import { TEMPLATE_FORMAT, TEMPLATE_VERSION, type Template } from "./template";
import schema from "./template-1.schema.json";
import { templateFaults } from "./templateFaults";

/** A template, or why there is none, in sentences for the person. */
export type Read =
  | { readonly ok: true; readonly template: Template }
  | { readonly ok: false; readonly why: readonly string[]; readonly more: number };

const MOST_TOLD = 12;
const validator = new Validator(schema as Schema, "2020-12", true);

/**
 * Reads a template from the text of a file.
 *
 * @param text the file, at most a million characters.
 * @returns the template, with nothing in it that runs, reaches outside of the workbook or disguises itself; or why it
 *   is refused. Nothing else comes of it.
 * @example readTemplate("[]") // { ok: false, why: ["The file is no template of this add-in."], more: 0 }
 */
export function readTemplate(text: string): Read {
  if (text.length > MOST_CHARACTERS) {
    return refused([`The file is too large: ${thousands(MOST_CHARACTERS)} characters are the most.`]);
  }
  try {
    return templateOf(JSON.parse(text.replace(/^\uFEFF/, "")) as unknown);
  } catch {
    return refused(["The file is damaged, or no template of this add-in: its text cannot be read (JSON)."]);
  }
}

/** The same for what was kept, not as text. */
export function templateOf(content: unknown): Read {
  const { format, version } = (isRecord(content) ? content : {}) as Record<string, unknown>;
  if (format !== TEMPLATE_FORMAT) return refused(["The file is no template of this add-in."]);
  if (typeof version === "number" && version > TEMPLATE_VERSION) {
    return refused([
      `A later version of this add-in wrote it (version ${version} of the format; this one reads ${TEMPLATE_VERSION}).`,
    ]);
  }
  const { valid, errors } = validator.validate(content);
  if (!valid) return refused([damage(errors.at(-1))]);
  const template = content as Template;
  const faults = templateFaults(template);
  if (faults.length === 0) return { ok: true, template };
  return refused(faults.map(({ at, what }) => (at === undefined ? what : `${at} ${what}.`)));
}

function refused(why: readonly string[]): Read {
  // What is told quotes the file, so nothing of that may disguise itself either.
  return { ok: false, why: why.slice(0, MOST_TOLD).map(withoutHidden), more: Math.max(0, why.length - MOST_TOLD) };
}

const LONGEST_TOLD = 160;

/** Where a file is not as it should be: `It is damaged at cells, 3, formula`. */
function damage(unit: OutputUnit | undefined): string {
  const place = (unit?.instanceLocation ?? "#").split("/").slice(1).join(", ").slice(0, LONGEST_TOLD);
  if (unit?.keyword === "false") return `It holds “${place}”, which a template does not have.`;
  const where = place === "" ? "" : ` at ${place}`;
  return `It is damaged${where}: ${(unit?.error ?? "it is not as the schema says").slice(0, LONGEST_TOLD)}`;
}

function isRecord(value: unknown): boolean {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
