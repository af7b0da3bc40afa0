import { mostCells } from "../limits";
import type { MarkedStyles } from "../look/formats";
import { FileTrouble } from "../trouble";
import { writeZip } from "../zip/writeZip";
import type { BookParts } from "./bookParts";
import { countOf, without } from "./xml";

/*
 * What is taken out of a sheet before the library reads it: this program reads it by itself, or not at all. The library
 * would make an object of each cell of a merge, a list rule or a name, and of whole columns of them, and stumbles over
 * several kinds of drawings and tables.
 */
const taken = [
  "mergeCells",
  "dataValidations",
  "conditionalFormatting",
  "hyperlinks",
  "drawing",
  "legacyDrawing",
  "legacyDrawingHF",
  "tableParts",
  "extLst",
  "picture",
  "oleObjects",
  "controls",
  "sheetProtection",
  "protectedRanges",
  "autoFilter",
  "customSheetViews",
  "AlternateContent",
  "mc:AlternateContent",
];

/**
 * The workbook's cells and their styles alone, as a file that the library reads: its sheets in their order, and behind
 * them one whose cells have one style each, the first one's again at the end.
 *
 * @param styles the styles, with marks in the place of number formats.
 * @throws FileTrouble where there are more cells than a practice workbook takes.
 */
export async function paredFile(book: BookParts, styles: MarkedStyles): Promise<Uint8Array<ArrayBuffer>> {
  const cells = book.sheets.reduce((sum, { xml }) => sum + countOf(xml, "c"), 0);
  if (cells > mostCells) {
    const [many, most] = [cells, mostCells].map((count) => count.toLocaleString("en-US"));
    throw new FileTrouble(`The file is too large: ${many} cells, and at most ${most} go into the practice workbook.`);
  }
  const parts = new Map<string, string>();
  const sheetXmls = [...book.sheets.map(({ xml }) => without(xml, taken)), sheetOfStyles(styles)];
  // The library has its own mind about the names of sheets.
  const sheets = sheetXmls.map((_, place) => {
    return `<sheet name="S${place + 1}" sheetId="${place + 1}" r:id="s${place + 1}"/>`;
  });
  parts.set(
    "xl/workbook.xml",
    `<workbook xmlns="${MAIN}" xmlns:r="${RELATIONS}"><sheets>${sheets.join("")}</sheets></workbook>`,
  );
  const pointers = sheetXmls.map((_, place) => {
    return `<Relationship Id="s${place + 1}" Type="${RELATIONS}/worksheet" Target="worksheets/sheet${place + 1}.xml"/>`;
  });
  parts.set("xl/_rels/workbook.xml.rels", `<Relationships xmlns="${POINTERS}">${pointers.join("")}</Relationships>`);
  if (styles.xml) parts.set("xl/styles.xml", styles.xml);
  if (book.stringsXml) parts.set("xl/sharedStrings.xml", book.stringsXml);
  sheetXmls.forEach((xml, place) => {
    parts.set(`xl/worksheets/sheet${place + 1}.xml`, xml);
  });
  const encoder = new TextEncoder();
  return writeZip(new Map([...parts].map(([name, text]) => [name, encoder.encode(text)])), false);
}

function sheetOfStyles({ formats }: MarkedStyles): string {
  const rows = [...formats.keys(), formats.length].map((number) => {
    return `<row r="${number + 1}"><c r="A${number + 1}" s="${number}"/></row>`;
  });
  return `<worksheet xmlns="${MAIN}"><sheetData>${rows.join("")}</sheetData></worksheet>`;
}

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const POINTERS = "http://schemas.openxmlformats.org/package/2006/relationships";
