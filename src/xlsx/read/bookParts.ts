import { damaged, FileRefusal, mostCells, mostSheets } from "../limits";
import { partOf, type Steps } from "../steps";
import type { ZipFile } from "../zip";
import { type FileText, readTexts, type SheetContent, sheetSteps } from "./cells";
import { type Relationships, relationshipsOf } from "./package";
import { attributesOf, elements, firstElement, isTrue, readXml, type XmlElement } from "./xml";

/** A sheet of cells, as the file holds it. */
export interface SheetPart extends SheetContent {
  readonly name: string;
  readonly hidden: boolean;
  readonly part: string;
  /** The id by which the workbook points to it. */
  readonly pointer: string;
  readonly relationships: Relationships;
}

/** A name for cells or a formula, as the file holds it. */
export interface NamePart {
  readonly name: string;
  /** Without "=". */
  readonly text: string;
  /** The place, in the file's order of all its sheets, of the one for which it holds. */
  readonly sheetPlace: number | undefined;
  readonly hidden: boolean;
}

/** A workbook's file, taken apart. */
export interface BookParts {
  readonly zip: ZipFile;
  /** The name of the part that is the workbook, and what it points to. */
  readonly part: string;
  readonly relationships: Relationships;
  readonly sheets: readonly SheetPart[];
  /** By the place in the file's order of all sheets; undefined where that one is no sheet of cells. */
  readonly sheetAt: readonly (SheetPart | undefined)[];
  /** The names of sheets that have no cells, such as a chart's. */
  readonly otherSheets: readonly string[];
  readonly names: readonly NamePart[];
  readonly startsIn1904: boolean;
  readonly isLocked: boolean;
  /** Which sheet is in front, counted as `sheetAt`. */
  readonly front: number;
  readonly styles: XmlElement | undefined;
  readonly theme: XmlElement | undefined;
}

/** How a strict workbook names its elements: ECMA-376 part 1, strict; nothing here reads one. */
const STRICT = "http://purl.oclc.org/ooxml/spreadsheetml/main";

/**
 * Takes a workbook's package apart.
 *
 * @throws FileRefusal where it has no workbook in it, or one that nothing here reads.
 */
export function* bookSteps(zip: ZipFile): Steps<BookParts> {
  const root = [...relationshipsOf(zip, "").values()].find(({ kind }) => kind === "officeDocument");
  const bytes = root && zip.part(root.target);
  if (!root || !bytes) throw damaged("it has no workbook in it");
  const workbook = readXml(bytes);
  if (Object.values(workbook.attributes).includes(STRICT)) {
    throw new FileRefusal("The file is a “strict” workbook. Save it as an ordinary .xlsx in your spreadsheet program.");
  }
  if (workbook.name !== "workbook") throw new FileRefusal("The file has a document in it, not a workbook.");
  const relationships = relationshipsOf(zip, root.target);
  const part = (kind: string) => {
    const found = [...relationships.values()].find((one) => one.kind === kind);
    const found_bytes = found && zip.part(found.target);
    return found_bytes && readXml(found_bytes);
  };
  const listed = [...elements(firstElement(workbook, "sheets"), "sheet")].map(({ attributes }) => attributes);
  if (listed.length === 0) throw damaged("it has no sheets");
  if (listed.length > mostSheets) {
    throw new FileRefusal(
      `The file is too large: it has ${listed.length} sheets, and the limit here is ${mostSheets}.`,
    );
  }
  const strings = part("sharedStrings");
  const texts = strings && readTexts(strings);
  const sheetAt: (SheetPart | undefined)[] = [];
  for (const [place, attributes] of listed.entries()) {
    const steps = sheetPartSteps(zip, attributes, relationships, texts);
    sheetAt.push(yield* partOf(steps, place / listed.length, (place + 1) / listed.length));
  }
  const sheets = sheetAt.filter((sheet) => sheet !== undefined);
  if (sheets.length === 0) throw new FileRefusal("The file has no sheet with cells.");
  refuseTooManyCells(sheets);
  return {
    zip,
    part: root.target,
    relationships,
    sheets,
    sheetAt,
    otherSheets: listed.flatMap(({ name = "" }, place) => (sheetAt[place] ? [] : [name])),
    names: [...elements(firstElement(workbook, "definedNames"), "definedName")].map(namePart),
    startsIn1904: isTrue(attributesOf(workbook, "workbookPr").date1904),
    isLocked: firstElement(workbook, "workbookProtection") !== undefined,
    front: Number(attributesOf(workbook, "workbookView").activeTab ?? 0),
    styles: part("styles"),
    theme: part("theme"),
  };
}

function refuseTooManyCells(sheets: readonly SheetPart[]): void {
  const cells = sheets.reduce((sum, { cellCount }) => sum + cellCount, 0);
  if (cells <= mostCells) return;
  const [many, most] = [cells, mostCells].map((count) => count.toLocaleString("en-US"));
  throw new FileRefusal(`The file is too large: ${many} cells, and at most ${most} go into the practice workbook.`);
}

function* sheetPartSteps(
  zip: ZipFile,
  { name = "", state = "visible", ...attributes }: XmlElement["attributes"],
  relationships: Relationships,
  texts: readonly FileText[] | undefined,
): Steps<SheetPart | undefined> {
  const id = Object.entries(attributes).find(([key]) => /(^|:)id$/.test(key))?.[1] ?? "";
  const found = relationships.get(id);
  if (!found) throw damaged(`the sheet “${name}” is missing`);
  if (found.kind !== "worksheet") return undefined;
  const bytes = zip.part(found.target);
  if (!bytes) throw damaged(`the sheet “${name}” is missing`);
  return {
    ...(yield* sheetSteps(bytes, texts)),
    name,
    hidden: state !== "visible",
    part: found.target,
    pointer: id,
    relationships: relationshipsOf(zip, found.target),
  };
}

function namePart({ attributes, text }: XmlElement): NamePart {
  const { name = "", localSheetId, hidden } = attributes;
  return {
    name,
    text: text.trim(),
    sheetPlace: localSheetId === undefined ? undefined : Number(localSheetId),
    hidden: isTrue(hidden),
  };
}
