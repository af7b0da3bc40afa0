import { type Change, contentTypes, declare, pointTo, relationshipTypes } from "./parts";

/*
 * That an array formula is one that takes as many cells as it needs is said apart from the cell, which points to it by a
 * number: [MS-XLSX] 2.4 and what programs write, from memory. A program that does not know it shows an array formula.
 */
const part = "xl/metadata.xml";
const main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const spills = "http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray";
const kind =
  '<metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" ' +
  'splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/>';
const facts =
  `<?xml version="1.0" encoding="UTF-8" standalone="yes"?><metadata xmlns="${main}" xmlns:xda="${spills}">` +
  `<metadataTypes count="1">${kind}</metadataTypes><futureMetadata name="XLDAPR" count="1"><bk><extLst>` +
  '<ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext>' +
  '</extLst></bk></futureMetadata><cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>';

/** A sheet whose array formulas point to what is said of them. */
export function spilling(sheetXml: string): string {
  return sheetXml.replace(/<c ([^>]*)>(?=<f t="array")/g, '<c $1 cm="1">');
}

export function addSpillFacts(change: Change): void {
  change(part, () => facts);
  declare(change, part, `${contentTypes}.spreadsheetml.sheetMetadata+xml`);
  pointTo(change, "xl/workbook.xml", "spills", `${relationshipTypes}/sheetMetadata`, "metadata.xml");
}
