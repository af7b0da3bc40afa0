import { rectangleOf } from "../../../xlsx/addresses";
import type { BookParts, NamePart } from "../../../xlsx/read/bookParts";
import { attributesOf, elements, numberIn, readXml, type XmlElement } from "../../../xlsx/read/xml";
import { counted, type Opening, sheetId } from "../context";
import { fromFile } from "../formulas";
import type { FileTable } from "../tableReferences";

/** A name as the grid keeps it. */
interface GridName {
  readonly id: string;
  readonly name: string;
  readonly formulaOrRefString: string;
  readonly localSheetId: string;
  /** Whether programs leave it out of their lists; formulas use it all the same. */
  readonly hidden?: boolean;
}

/** What the grid calls the whole workbook. */
const everywhere = "AllDefaultWorkbook";

/** The names of a file, as the grid keeps them; those that programs make for themselves are left out. */
export function readNames(opening: Opening): Record<string, GridName> {
  const { book, findings } = opening;
  const names: Record<string, GridName> = {};
  book.names.forEach((part, index) => {
    if (/^_xlnm\.|^_xlfn|^_xlpm|^_FilterDatabase/i.test(part.name)) return;
    const text = readName(opening, part);
    const localSheetId = placeOf(book, part);
    if (text === undefined || localSheetId === undefined) {
      if (!part.hidden)
        findings.place("name", part.name, (count) => {
          return `${counted(count, "name that points", "names that point")} to nothing in the file`;
        });
      return;
    }
    const id = `name-${index + 1}`;
    names[id] = { id, name: part.name, formulaOrRefString: text, localSheetId, ...(part.hidden && { hidden: true }) };
  });
  return names;
}

function readName(opening: Opening, { text }: NamePart): string | undefined {
  if (text === "" || text.includes("#REF!")) return undefined;
  const read = fromFile(text, { sheetName: "", row: 0, column: 0 }, opening);
  if ("refused" in read) return undefined;
  const isReference = /!/.test(text) && !/[-+*/^&(),<>=]/.test(text.replace(/^'(?:[^']|'')*'/, ""));
  return isReference ? read.formula.slice(1) : read.formula;
}

/** The grid's id of the sheet for which a name holds; undefined where that one is no sheet of cells. */
function placeOf(book: BookParts, { sheetPlace }: NamePart): string | undefined {
  if (sheetPlace === undefined) return everywhere;
  const sheet = book.sheetAt[sheetPlace];
  return sheet && sheetId(book.sheets.indexOf(sheet));
}

/** Tells the names that stand for several cells. */
export function namesOfSeveral({ names }: BookParts): (name: string) => boolean {
  const several = names.filter(({ text }) =>
    /^(?:'(?:[^']|'')*'|[^'!()]+)!\$?[A-Z]*\$?\d*:\$?[A-Z]*\$?\d*$/i.test(text),
  );
  const known = new Set(several.map(({ name }) => name.toLowerCase()));
  return (name) => known.has(name.toLowerCase());
}

/** The tables of a file. */
export function readTables({ zip, sheets }: BookParts): FileTable[] {
  return sheets.flatMap((sheet) =>
    [...sheet.relationships].flatMap(([pointer, { kind, target, isOutside }]) => {
      const bytes = kind === "table" && !isOutside ? zip.part(target) : undefined;
      const table = bytes && tableOf(readXml(bytes), sheet.name);
      return table ? [{ ...table, part: target, pointer }] : [];
    }),
  );
}

function tableOf(table: XmlElement, sheetName: string): Omit<FileTable, "part" | "pointer"> | undefined {
  const area = rectangleOf(table.attributes.ref ?? "");
  if (table.name !== "table" || !area) return undefined;
  const { displayName, name = "", headerRowCount = "1", totalsRowCount = "0" } = table.attributes;
  return {
    name: displayName ?? name,
    sheetName,
    area,
    columns: [...elements(table, "tableColumn")].map(({ attributes }) => {
      // A line break in a heading is written so in a file.
      return (attributes.name ?? "").replaceAll("_x000a_", "\n");
    }),
    headingRows: numberIn(headerRowCount, 1, 0, 1),
    totalRows: numberIn(totalsRowCount, 0, 0, 1),
    style: attributesOf(table, "tableStyleInfo").name ?? "",
  };
}
