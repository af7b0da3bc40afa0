import { addressOf } from "../../../xlsx/addresses";
import { elements, firstElement } from "../../../xlsx/read/xml";
import { addTable } from "../../../xlsx/write/book";
import type { PackageParts } from "../../../xlsx/write/package";
import type { SheetEdits } from "../../../xlsx/write/sheetEdit";
import type { SheetTable } from "../../grid/port";
import type { Saving } from "../context";
import type { FileInGrid } from "./fileInGrid";
import { tableHeadings, tablesToFile } from "./names";

/** Brings the tables of a sheet up to date: those that came or went, and the areas and headings of the others. */
export function editTables(
  saving: Saving,
  before: Saving,
  file: FileInGrid,
  parts: PackageParts,
  place: number,
  id: string,
): Pick<SheetEdits, "tables"> {
  const tablesOn = ({ kept }: Saving) =>
    ((kept.custom?.tables ?? []) as readonly SheetTable[]).filter(({ area }) => area.sheetId === id);
  const [was, is] = [tablesOn(before), tablesOn(saving)];
  const sheet = file.book.sheets[place]?.part ?? "";
  const removed: string[] = [];
  for (const table of was) {
    const own = file.opened.tables[Number(table.id) - 1];
    if (!own) continue;
    const now = is.find((one) => one.id === table.id);
    const headings = now && own.headingRows > 0 ? tableHeadings(saving, now) : own.columns;
    if (!now || !headings || headings.length === 0) {
      if (now) saving.findings.fact(`the table ${now.name}, saved as ordinary cells`);
      removed.push(own.pointer);
      parts.unpoint(sheet, (pointer) => pointer === own.pointer);
      continue;
    }
    const isSame = JSON.stringify([own.area, own.columns]) === JSON.stringify([areaOf(now), headings]);
    if (isSame && now.name === table.name && now.style === table.style) continue;
    parts.edit(own.part, (edit) => {
      const columns = [...elements(firstElement(edit.root, "tableColumns"), "tableColumn")];
      if (columns.length !== headings.length) return;
      const ref = addressOf(now.area);
      edit.set(edit.root, { ref, ...(now.name !== table.name && { name: now.name, displayName: now.name }) });
      const filter = edit.root.children.find(({ name }) => name === "autoFilter");
      if (filter && own.totalRows === 0) edit.set(filter, { ref });
      columns.forEach((column, index) => {
        const name = headings[index] ?? "";
        if (name !== own.columns[index]) edit.set(column, { name: name.replaceAll("\n", "_x000a_") });
      });
      const style = edit.root.children.find(({ name }) => name === "tableStyleInfo");
      if (style && now.style !== table.style) edit.set(style, { name: now.style || undefined });
    });
  }
  const known = new Set(was.map((one) => one.id));
  const made = new Set(is.filter((one) => !known.has(one.id)).map(({ name }) => name));
  const added = made.size === 0 ? [] : tablesToFile(saving, id).filter(({ name }) => made.has(name));
  const pointers = added.map((table) => addTable(parts, sheet, "table", table));
  return removed.length + pointers.length > 0 ? { tables: { removed, added: pointers } } : {};
}

function areaOf({ area: { row, column, rowCount, columnCount } }: SheetTable) {
  return { row, column, rowCount, columnCount };
}
