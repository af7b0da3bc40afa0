import { rectangleOf } from "../formula/cellPlace";
import type { FileTable } from "../formula/tables";
import type { BookParts } from "../package/bookParts";
import { elements, firstElement, numberIn, readXml } from "../package/xml";

/** The tables of a file. */
export async function readTables({ zip, sheets }: BookParts): Promise<FileTable[]> {
  const tables: FileTable[] = [];
  for (const sheet of sheets) {
    for (const { kind, target, isOutside } of sheet.relationships.values()) {
      const bytes = kind === "table" && !isOutside ? await zip.part(target) : undefined;
      const table = bytes && tableOf(readXml(bytes), sheet.name);
      if (table) tables.push(table);
    }
  }
  return tables;
}

function tableOf(xml: string, sheetName: string): FileTable | undefined {
  const table = firstElement(xml, "table");
  const area = rectangleOf(table?.attributes.ref ?? "");
  if (!table || !area) return undefined;
  const { displayName, name = "", headerRowCount = "1", totalsRowCount = "0" } = table.attributes;
  return {
    name: displayName ?? name,
    sheetName,
    area,
    columns: [...elements(table.inner, "tableColumn")].map(({ attributes }) => {
      // A line break in a heading is written so in a file.
      return (attributes.name ?? "").replaceAll("_x000a_", "\n");
    }),
    headingRows: numberIn(headerRowCount, 1, 0, 1),
    totalRows: numberIn(totalsRowCount, 0, 0, 1),
    style: firstElement(table.inner, "tableStyleInfo")?.attributes.name ?? "",
  };
}
