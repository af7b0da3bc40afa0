import { MOST_OFFICE_FILES } from "./limits";

const INDEX_FORMAT = "bedrow-template-index";
const INDEX_VERSION = 1;
/** Files of the folder itself: no folders, no addresses. */
const FILE = /^[A-Za-z0-9][A-Za-z0-9 ._-]{0,78}\.json$/;

export type OfficeIndex =
  | {
      readonly ok: true;
      readonly files: readonly string[];
      /** The file of the office's settings, where it offers them. */
      readonly officeSettings?: string;
    }
  | { readonly ok: false; readonly why: string };

/**
 * Reads the list of templates and the name of the settings file that an office offers to everyone.
 *
 * @param text of the file `templates/index.json` beside the add-in.
 * @example readOfficeIndex('{"format":"bedrow-template-index","version":1,"templates":["front-bed.json"]}')
 */
export function readOfficeIndex(text: string): OfficeIndex {
  const { format, version, templates, officeSettings } = parsed(text);
  if (format !== INDEX_FORMAT) return refused("isn't a list of templates, or is damaged");
  if (version !== INDEX_VERSION) return refused("is from a version this add-in can't read");
  if (!Array.isArray(templates)) return refused("names no templates");
  const named = officeSettings === undefined ? templates : [...templates, officeSettings];
  const wrong = named.find((file) => typeof file !== "string" || !FILE.test(file) || file === "index.json");
  if (wrong !== undefined) {
    return refused(`names ${JSON.stringify(wrong).slice(0, 80)}, which isn't a file in that folder`);
  }
  if (templates.length > MOST_OFFICE_FILES) return refused(`names more than ${MOST_OFFICE_FILES} templates`);
  const files = [...new Set(templates as string[])];
  return { ok: true, files, ...(typeof officeSettings === "string" && { officeSettings }) };
}

function refused(why: string): OfficeIndex {
  return { ok: false, why: `The office's list of templates (templates/index.json) ${why}.` };
}

function parsed(text: string): Record<string, unknown> {
  try {
    const content: unknown = JSON.parse(text.replace(/^\uFEFF/, ""));
    return typeof content === "object" && content !== null ? (content as Record<string, unknown>) : {};
  } catch {
    return {};
  }
}
