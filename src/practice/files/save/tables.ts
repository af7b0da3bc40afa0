import type { SheetTable } from "../../grid/port";
import { addressOf } from "../formula/cellPlace";
import { escaped } from "../package/xml";
import type { Saving } from "./context";

/** A table as a part of the file, and the sheet that it stands on. */
export interface TablePart {
  readonly sheetId: string;
  readonly xml: string;
}

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

/** The workbook's tables. One whose headings are not all different texts is none in a file, and stays ordinary cells. */
export function tableParts(saving: Saving): TablePart[] {
  const tables = (saving.kept.custom?.tables ?? []) as readonly SheetTable[];
  return tables.flatMap(({ name, area, style }) => {
    const [headings = []] = saving.cells.read({ ...area, rowCount: 1 });
    const texts = headings.map(({ value, kind, formula }) =>
      kind === "text" && formula === undefined ? String(value) : "",
    );
    const isSound =
      area.rowCount > 1 && !texts.includes("") && new Set(texts.map((one) => one.toLowerCase())).size === texts.length;
    if (!saving.kept.sheets[area.sheetId] || !isSound) {
      saving.findings.fact(`the table ${name}, whose cells are ordinary ones there`);
      return [];
    }
    return [{ sheetId: area.sheetId, xml: tableXml(name, addressOf(area), texts, style) }];
  });
}

/** `id` stands for the table's number in the file, which is not known yet. */
function tableXml(name: string, ref: string, headings: readonly string[], style: string): string {
  const columns = headings.map((text, index) => {
    return `<tableColumn id="${index + 1}" name="${escaped(text.replaceAll("\n", "_x000a_"))}"/>`;
  });
  return [
    `<?xml version="1.0" encoding="UTF-8" standalone="yes"?><table xmlns="${MAIN}" id="NUMBER" name="${escaped(name)}"`,
    ` displayName="${escaped(name)}" ref="${ref}" totalsRowShown="0"><autoFilter ref="${ref}"/>`,
    `<tableColumns count="${columns.length}">${columns.join("")}</tableColumns>`,
    style &&
      `<tableStyleInfo name="${escaped(style)}" showFirstColumn="0" showLastColumn="0" showRowStripes="1" showColumnStripes="0"/>`,
    "</table>",
  ].join("");
}

export function numberedTable(xml: string, number: number): string {
  return xml.replace('id="NUMBER"', `id="${number}"`);
}
