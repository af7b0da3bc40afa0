import { readOfficeIndex } from "../../sheets/templates/officeIndex";
import { readTemplate } from "../../sheets/templates/readTemplate";
import type { Template } from "../../sheets/templates/template";

/** The office's templates, beside the add-in's own pages. */
const FOLDER = "templates/";

/** A template that an office offers to everyone, or why it can't be opened. */
export interface OfficeTemplate {
  readonly file: string;
  readonly template?: Template;
  readonly why?: readonly string[];
}

export interface OfficeFolder {
  readonly templates: readonly OfficeTemplate[];
  /** What is wrong with the list of them. */
  readonly trouble?: string;
}

/**
 * The templates of the folder beside the add-in, from its own origin only. An office that has none gets none.
 *
 * @param get gives the text of a file of the folder; undefined where there is no such file.
 */
export async function officeFolder(
  get: (file: string) => Promise<string | undefined> = fetched,
): Promise<OfficeFolder> {
  const text = await get("index.json");
  if (text === undefined) return { templates: [] };
  const index = readOfficeIndex(text);
  if (!index.ok) return { templates: [], trouble: index.why };
  return { templates: await Promise.all(index.files.map((file) => officeTemplate(file, get))) };
}

async function officeTemplate(
  file: string,
  get: (file: string) => Promise<string | undefined>,
): Promise<OfficeTemplate> {
  const text = await get(file);
  if (text === undefined) return { file, why: ["The list names it, but the folder has no such file."] };
  const read = readTemplate(text);
  return read.ok ? { file, template: read.template } : { file, why: read.why };
}

/** The text of a file of the office's folder, from the add-in's own origin only; undefined where there is none. */
export async function fetched(file: string): Promise<string | undefined> {
  const url = new URL(FOLDER + encodeURIComponent(file), document.baseURI);
  if (url.origin !== location.origin) return undefined;
  try {
    const response = await fetch(url, { redirect: "error", credentials: "same-origin", cache: "no-cache" });
    // Some hosts answer with a page where there is no file.
    const isPage = response.headers.get("content-type")?.includes("html") ?? false;
    return response.ok && !isPage ? await response.text() : undefined;
  } catch {
    return undefined;
  }
}
