import { MOST_KEPT, MOST_KEPT_CHARACTERS, thousands } from "./limits";
import { templateOf } from "./readTemplate";
import type { Template } from "./template";

/** Templates that are kept in a workbook, as the text of one of its settings. */
const KEPT_FORMAT = "bedrow-templates";
const KEPT_VERSION = 1;

/** One of them. What cannot be read stays as it is, and says why. */
export interface KeptTemplate {
  readonly name: string;
  readonly template?: Template;
  readonly why?: readonly string[];
  /** As it is kept. */
  readonly content: unknown;
}

export type Kept =
  | { readonly ok: true; readonly templates: readonly KeptTemplate[] }
  /** What is damaged gives way once the person has said so; what a later version wrote never does. */
  | { readonly ok: false; readonly why: string; readonly isDamaged?: boolean };

/** A change to the templates of a workbook: what there will be, or why not. */
export type Changed = Kept;

/** Reads what a workbook keeps; "" where it keeps nothing. */
export function readKept(text: string): Kept {
  if (text === "") return { ok: true, templates: [] };
  try {
    const { format, version, templates } = (JSON.parse(text) ?? {}) as Record<string, unknown>;
    if (format !== KEPT_FORMAT || !Array.isArray(templates)) return damaged();
    if (typeof version !== "number") return damaged();
    if (version > KEPT_VERSION) {
      return {
        ok: false,
        why: "A newer version of this add-in saved templates in this workbook. They weren't changed. Use that version to change them.",
      };
    }
    return { ok: true, templates: templates.map(keptTemplate) };
  } catch {
    return damaged();
  }
}

function damaged(): Kept {
  return {
    ok: false,
    isDamaged: true,
    why: "The templates saved in this workbook are damaged and can't be read. They weren't changed. You can still open templates from files and save them to files.",
  };
}

function keptTemplate(content: unknown): KeptTemplate {
  const read = templateOf(content);
  if (read.ok) return { name: read.template.name, template: read.template, content };
  const { name } = (content ?? {}) as { readonly name?: unknown };
  return { name: typeof name === "string" ? name.slice(0, 80) : "", why: read.why, content };
}

export function keptText(templates: readonly KeptTemplate[]): string {
  const content = templates.map((one) => one.content);
  return JSON.stringify({ format: KEPT_FORMAT, version: KEPT_VERSION, templates: content });
}

/** Whether two templates have one name, as people read it. */
export const sameName = (one: string, other: string): boolean =>
  one.trim().toLowerCase() === other.trim().toLowerCase();

/**
 * The templates with one more.
 *
 * @param replacing whether one of its name gives way to it; else that is refused.
 */
export function withTemplate(templates: readonly KeptTemplate[], template: Template, replacing: boolean): Changed {
  const { name } = template;
  const added: KeptTemplate = { name, template, content: template };
  const isOld = (one: KeptTemplate) => one.template !== undefined && sameName(one.name, name);
  if (templates.some(isOld) && !replacing)
    return { ok: false, why: `This workbook already has a template “${name}”. Choose another name.` };
  return limited([...templates.filter((one) => !isOld(one)), added]);
}

/** The templates without one of them. */
export function withoutTemplate(templates: readonly KeptTemplate[], unwanted: KeptTemplate): Changed {
  const text = JSON.stringify(unwanted.content);
  const rest = templates.filter(({ content }) => JSON.stringify(content) !== text);
  return rest.length < templates.length ? { ok: true, templates: rest } : gone(unwanted.name);
}

/** The templates with one of them under another name. */
export function renamedTemplate(templates: readonly KeptTemplate[], name: string, wanted: string): Changed {
  const found = templates.find((one) => one.template !== undefined && sameName(one.name, name));
  if (!found) return gone(name);
  const isTaken = templates.some((one) => one !== found && sameName(one.name, wanted));
  if (isTaken)
    return { ok: false, why: `This workbook already has a template “${wanted.trim()}”. Choose another name.` };
  const read = templateOf({ ...found.template, name: wanted.trim() });
  if (!read.ok) return { ok: false, why: `“${wanted.slice(0, 80)}” can't be a template's name: ${read.why[0]}` };
  const renamed: KeptTemplate = { name: read.template.name, template: read.template, content: read.template };
  return limited(templates.map((one) => (one === found ? renamed : one)));
}

function gone(name: string): Changed {
  return { ok: false, why: `This workbook no longer has a template “${name}”.` };
}

function limited(templates: readonly KeptTemplate[]): Changed {
  if (templates.length > MOST_KEPT) {
    return {
      ok: false,
      why: `A workbook can hold ${MOST_KEPT} templates. Delete one, or save this one to a file.`,
    };
  }
  const { length } = keptText(templates);
  if (length <= MOST_KEPT_CHARACTERS) return { ok: true, templates };
  return {
    ok: false,
    why: `There's no room for it in this workbook: its templates would have ${thousands(length)} characters; the limit is ${thousands(MOST_KEPT_CHARACTERS)}. Delete one, or save this one to a file.`,
  };
}
