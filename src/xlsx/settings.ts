import { escaped, HEAD, readXml } from "./xml";
import type { ZipFile } from "./zip";

/*
 * What the add-in keeps with the workbook stands in a part of its own, so that it comes along. Spreadsheet programs leave
 * such a part alone and keep it.
 */
const NAMESPACE = "urn:practice-workbook:settings";
const folder = /^customXml\/item\d+\.xml$/;

export function settingsXml(settings: Readonly<Record<string, unknown>>): string {
  return `${HEAD}<settings xmlns="${NAMESPACE}">${escaped(JSON.stringify(settings))}</settings>`;
}

/** What was kept in a file: {} where it is none of ours, undefined where it is damaged. */
export function readSettings(zip: ZipFile): Readonly<Record<string, unknown>> | undefined {
  for (const name of zip.names.filter((one) => folder.test(one))) {
    const bytes = zip.part(name);
    if (!bytes || !new TextDecoder().decode(bytes).includes(NAMESPACE)) continue;
    try {
      const read: unknown = JSON.parse(readXml(bytes).text);
      return typeof read === "object" && read !== null && !Array.isArray(read) ? { ...read } : undefined;
    } catch {
      return undefined;
    }
  }
  return {};
}
