import { type Schema, Validator } from "@cfworker/json-schema";
import { isObject } from "../kept";
import { damageIn, parsedFile, type RefusedFile, refusedFile } from "../ownFile";
import { MOST_CHARACTERS, thousands } from "./limits";
import { TEMPLATE_FORMAT, TEMPLATE_VERSION, type Template } from "./template";
import schema from "./template-1.schema.json";
import { templateFaults } from "./templateFaults";

/** A template, or why there is none, in sentences for the person. */
export type Read = { readonly ok: true; readonly template: Template } | RefusedFile;

const validator = new Validator(schema as Schema, "2020-12", true);

/**
 * Reads a template from the text of a file.
 *
 * @param text the file, at most a million characters.
 * @returns the template, with nothing in it that runs, reaches outside of the workbook or disguises itself; or why it
 *   is refused. Nothing else comes of it.
 * @example readTemplate("[]") // { ok: false, why: ["The file isn't a template from this add-in."], more: 0 }
 */
export function readTemplate(text: string): Read {
  if (text.length > MOST_CHARACTERS) {
    return refusedFile([`The file is too large: the limit is ${thousands(MOST_CHARACTERS)} characters.`]);
  }
  try {
    return templateOf(parsedFile(text));
  } catch {
    return refusedFile(["The file is damaged, or isn't a template from this add-in: its text can't be read (JSON)."]);
  }
}

/** The same for what was kept, not as text. */
export function templateOf(content: unknown): Read {
  const { format, version } = isObject(content) ? content : {};
  if (format !== TEMPLATE_FORMAT) return refusedFile(["The file isn't a template from this add-in."]);
  if (typeof version === "number" && version > TEMPLATE_VERSION) {
    return refusedFile([
      `A newer version of this add-in wrote it (format version ${version}; this one reads ${TEMPLATE_VERSION}).`,
    ]);
  }
  const damage = damageIn(validator, content, "a template does");
  if (damage) return refusedFile([damage]);
  const template = content as Template;
  const faults = templateFaults(template);
  if (faults.length === 0) return { ok: true, template };
  return refusedFile(faults.map(({ at, what }) => (at === undefined ? what : `${at} ${what}.`)));
}
