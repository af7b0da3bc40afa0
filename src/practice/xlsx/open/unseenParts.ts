import type { BookParts, SheetPart } from "../../../xlsx/read/bookParts";
import { relationshipsOf } from "../../../xlsx/read/package";
import { countOf, elements, firstElement, readXml } from "../../../xlsx/read/xml";
import type { Findings } from "../context";

/** What a part is that nothing of is shown here, by what the part that points to it calls it. */
const ofSheet: Readonly<Record<string, readonly [one: string, many?: string]>> = {
  chart: ["chart"],
  chartEx: ["chart of a newer kind", "charts of a newer kind"],
  pivotTable: ["pivot table"],
  oleObject: ["embedded object"],
  package: ["embedded object"],
  ctrlProp: ["form control"],
  control: ["form control"],
  slicer: ["slicer"],
  timeline: ["slicer"],
  queryTable: ["query to outside data", "queries to outside data"],
};

/**
 * Finds what of a workbook isn't shown here, but for that of its sheets.
 *
 * @param unseen what stays in the file.
 * @param lost what no copy of it will have.
 */
export function findInBook(book: BookParts, unseen: Findings, lost: Findings): void {
  const { zip } = book;
  if (zip.names.some((name) => /vbaProject\.bin$/i.test(name))) lost.fact("macros");
  const links = zip.names.filter((name) => /^xl\/externalLinks\/[^/]+\.xml$/i.test(name)).length;
  unseen.count("link to another workbook", links, "links to other workbooks");
  if (zip.names.some((name) => /^_xmlsignatures\/sig[^/]*$/i.test(name))) unseen.fact("a digital signature");
  if (zip.has("xl/connections.xml")) unseen.fact("connections to outside data");
  if (book.isLocked) unseen.fact("the protection of the workbook");
  for (const name of book.otherSheets) unseen.fact(`the sheet “${name}”, which has no cells`);
}

/** Finds what of a sheet isn't shown here, from its own marks and the parts that it needs. */
export function findInSheet(book: BookParts, sheet: SheetPart, findings: Findings): void {
  const { name, xml, relationships } = sheet;
  const seen = new Set<string>();
  const follow = (all: SheetPart["relationships"]): void => {
    for (const { kind, target, isOutside } of all.values()) {
      if (isOutside || seen.has(target) || !book.zip.has(target)) continue;
      seen.add(target);
      const [one, many] = ofSheet[kind] ?? [];
      if (one) findings.count(one, 1, many);
      if (kind === "drawing" || kind === "table" || kind === "chart") follow(relationshipsOf(book.zip, target));
      if (kind !== "comments" && kind !== "threadedComment") continue;
      const bytes = book.zip.part(target);
      if (bytes)
        findings.count("comment", countOf(readXml(bytes), kind === "comments" ? "comment" : "threadedComment"));
    }
  };
  follow(relationships);
  const count = (element: string, one: string, many?: string) => findings.count(one, countOf(xml, element), many);
  count("hyperlink", "link");
  count("scenario", "scenario");
  count("customSheetView", "view of a sheet", "views of a sheet");
  if (firstElement(xml, "sheetProtection")) findings.fact(`the protection of the sheet “${name}”`);
  if (firstElement(xml, "autoFilter")) findings.fact(`the filter buttons on “${name}”`);
  if (firstElement(xml, "picture")) findings.fact(`the background picture of “${name}”`);
  if (firstElement(xml, "legacyDrawingHF")) findings.fact(`pictures in the page headers and footers of “${name}”`);
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
