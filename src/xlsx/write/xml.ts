/** The vocabularies of a workbook's parts: ECMA-376 part 1, annex A; [MS-XLSX] for the one of 2017. */
export const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
export const RELATIONSHIPS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
export const PACKAGE = "http://schemas.openxmlformats.org/package/2006";
export const DRAWING = "http://schemas.openxmlformats.org/drawingml/2006";
export const SPILLS = "http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray";
export const OFFICE_TYPES = "application/vnd.openxmlformats-officedocument";
/**
 * Add-in settings are saved in a part of their own. Spreadsheet programs leave such a part alone and keep it.
 */
export const SETTINGS = "urn:practice-workbook:settings";

/** Is at the head of every part. */
export const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

/**
 * An element as text.
 *
 * @param attributes what is undefined or false is left out, and true is written as 1.
 * @param inner its content as text of XML: other elements, or `escaped` text.
 * @example tag("col", { min: 1, max: 1, hidden: true }) // <col min="1" max="1" hidden="1"/>
 */
export function tag(
  name: string,
  attributes: Readonly<Record<string, string | number | boolean | undefined>> = {},
  inner = "",
): string {
  let text = `<${name}`;
  for (const [key, value] of Object.entries(attributes)) {
    if (value !== undefined && value !== false) text += ` ${key}="${value === true ? 1 : inAttribute(String(value))}"`;
  }
  return inner === "" ? `${text}/>` : `${text}>${inner}</${name}>`;
}

/** A parser turns line breaks and tabs in attributes into spaces, unless they are written as character codes. */
function inAttribute(text: string): string {
  return escaped(text).replace(/[\t\n\r]/g, (sign) => `&#${sign.charCodeAt(0)};`);
}

/** Escapes text for a part, between tags or in an attribute. */
export function escaped(text: string): string {
  return (
    text
      // What no part may hold at all: XML 1.0, 2.2.
      .replace(/(?![\t\n\r\u007f-\u009f])\p{Cc}|[\ufffe\uffff]/gu, "")
      .replaceAll("&", "&amp;")
      .replaceAll("<", "&lt;")
      .replaceAll(">", "&gt;")
      .replaceAll('"', "&quot;")
  );
}
