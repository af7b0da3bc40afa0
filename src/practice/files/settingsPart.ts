import type { Findings } from "./open/findings";
import { escaped, firstElement, readXml, unescaped } from "./package/xml";
import type { ZipFile } from "./zip/readZip";

/*
 * What the add-in keeps with the workbook stands in a part of its own, so that it comes along. Spreadsheet programs leave
 * such a part alone and keep it.
 */
const NAMESPACE = "urn:practice-workbook:settings";
const folder = /^customXml\/item\d+\.xml$/;
export const settingsPart = "customXml/item1.xml";

export function settingsXml(settings: Readonly<Record<string, unknown>>): string {
  return `<?xml version="1.0" encoding="UTF-8"?><settings xmlns="${NAMESPACE}">${escaped(JSON.stringify(settings))}</settings>`;
}

/**
 * What was kept in a file; nothing where it is none of ours, or damaged.
 *
 * @param findings is told where it is damaged.
 */
export async function readSettings(zip: ZipFile, findings: Findings): Promise<Readonly<Record<string, unknown>>> {
  for (const name of zip.names.filter((one) => folder.test(one))) {
    const bytes = await zip.part(name);
    const xml = bytes ? readXml(bytes) : "";
    if (!xml.includes(`xmlns="${NAMESPACE}"`)) continue;
    try {
      const read: unknown = JSON.parse(unescaped(firstElement(xml, "settings")?.inner ?? ""));
      if (typeof read === "object" && read !== null && !Array.isArray(read)) return { ...read };
    } catch {
      // Told below, as what is no object is.
    }
    findings.fact("what add-ins keep with the workbook, which is damaged");
  }
  return {};
}
