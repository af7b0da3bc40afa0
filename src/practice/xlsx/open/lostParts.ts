import type { BookParts, SheetPart } from "../../../xlsx/read/bookParts";
import { countOf, elements, firstElement, readXml } from "../../../xlsx/read/xml";
import type { Findings } from "../context";

/** Parts of a package that say by their names alone that something stays behind. */
const byName: readonly (readonly [RegExp, string, string?])[] = [
  [/^xl\/charts\/chart[^/]*\.xml$/, "chart"],
  [/^xl\/charts\/chartEx[^/]*\.xml$/, "chart of a newer kind", "charts of a newer kind"],
  [
    /^xl\/pivotTables\/[^/]+\.xml$/,
    "pivot table, whose cells stay as values",
    "pivot tables, whose cells stay as values",
  ],
  [/^xl\/embeddings\/[^/]+$/, "embedded object"],
  [/^xl\/(?:ctrlProps|activeX)\/[^/]+\.xml$/, "form control"],
  [/^xl\/(?:slicers|timelines)\/[^/]+\.xml$/, "slicer"],
  [/^xl\/queryTables\/[^/]+\.xml$/, "query to outside data", "queries to outside data"],
  [/^xl\/externalLinks\/[^/]+\.xml$/, "link to another workbook", "links to other workbooks"],
  [/^_xmlsignatures\/sig[^/]*$/, "digital signature"],
];

/** Finds what the practice workbook has no room for, from the file's parts and the sheets' own marks. */
export function findLostParts(book: BookParts, findings: Findings): void {
  const { zip } = book;
  if (zip.names.some((name) => /vbaProject\.bin$/i.test(name))) findings.fact("macros");
  for (const [pattern, one, many] of byName) {
    findings.count(one, zip.names.filter((name) => pattern.test(name)).length, many);
  }
  if (zip.has("xl/connections.xml")) findings.fact("connections to outside data");
  if (book.isLocked) findings.fact("the protection of the workbook");
  for (const name of book.otherSheets) findings.fact(`the sheet “${name}”, which has no cells`);
  for (const sheet of book.sheets) {
    findInSheet(sheet, findings);
    for (const { kind, target, isOutside } of sheet.relationships.values()) {
      if (isOutside || !/^(?:comments|threadedComment)$/.test(kind)) continue;
      const bytes = zip.part(target);
      if (bytes)
        findings.count("comment", countOf(readXml(bytes), kind === "comments" ? "comment" : "threadedComment"));
    }
  }
}

function findInSheet({ name, xml }: SheetPart, findings: Findings): void {
  const count = (element: string, one: string, many?: string) => findings.count(one, countOf(xml, element), many);
  count("hyperlink", "link, whose text stays", "links, whose texts stay");
  count("scenario", "scenario");
  count("customSheetView", "view of a sheet", "views of a sheet");
  if (firstElement(xml, "sheetProtection")) findings.fact(`the protection of the sheet “${name}”`);
  if (firstElement(xml, "autoFilter"))
    findings.fact(`the filter buttons on “${name}”; rows that they hide stay hidden`);
  if (firstElement(xml, "picture")) findings.fact(`the background picture of “${name}”`);
  if (firstElement(xml, "legacyDrawingHF")) findings.fact(`pictures in the page heads and feet of “${name}”`);
  const columns = [...elements(firstElement(xml, "cols"), "col")];
  if (columns.some(({ attributes }) => Number(attributes.outlineLevel ?? 0) > 0))
    findings.fact(`the groups of columns on “${name}”`);
  findings.count("small chart in a cell", countOf(xml, "x14:sparkline"), "small charts in cells");
  const newer = [...elements(xml, "ext")].reduce((sum, ext) => sum + countOf(ext, "x14:cfRule"), 0);
  findings.count(
    "conditional format that isn't supported here",
    newer,
    "conditional formats that aren't supported here",
  );
}
