import { fromFile } from "../formula/fromFile";
import type { BookParts, NamePart } from "../package/bookParts";
import { counted } from "../words";
import { type Opening, sheetId } from "./context";

/** A name as the grid keeps it. */
interface GridName {
  readonly id: string;
  readonly name: string;
  readonly formulaOrRefString: string;
  readonly localSheetId: string;
}

/** What the grid calls the whole workbook. */
const everywhere = "AllDefaultWorkbook";

/** The names of a file, as the grid keeps them; those that programs make for themselves are left out. */
export function readNames(opening: Opening): Record<string, GridName> {
  const { book, findings } = opening;
  const names: Record<string, GridName> = {};
  book.names.forEach((part, index) => {
    if (part.hidden || /^_xlnm\.|^_xlfn|^_xlpm|^_FilterDatabase/i.test(part.name)) return;
    const text = readName(opening, part);
    const localSheetId = placeOf(book, part);
    if (text === undefined || localSheetId === undefined) {
      findings.place("name", part.name, (count) => `${counted(count, "name")} of nothing that is in the file`);
      return;
    }
    const id = `name-${index + 1}`;
    names[id] = { id, name: part.name, formulaOrRefString: text, localSheetId };
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
