import { mostSheets } from "../limits";
import { damaged, FileTrouble } from "../trouble";
import type { ZipFile } from "../zip/readZip";
import { type Relationships, relationshipsOf } from "./relationships";
import { elements, firstElement, readXml, unescaped } from "./xml";

/** A sheet of cells, as the file holds it. */
export interface SheetPart {
  readonly name: string;
  readonly hidden: boolean;
  readonly part: string;
  readonly xml: string;
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

/** A workbook's file, taken apart: the texts of its parts, none of them read yet. */
export interface BookParts {
  readonly zip: ZipFile;
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
  readonly stylesXml: string;
  readonly stringsXml: string | undefined;
  readonly themeXml: string;
}

/** How a strict workbook names its elements: ECMA-376 part 1, strict; nothing here reads one. */
const STRICT = "http://purl.oclc.org/ooxml/spreadsheetml/main";

/**
 * Takes a workbook's package apart.
 *
 * @throws FileTrouble where it holds no workbook, or one that nothing here reads.
 */
export async function bookParts(zip: ZipFile): Promise<BookParts> {
  const root = [...(await relationshipsOf(zip, "")).values()].find(({ kind }) => kind === "officeDocument");
  const workbook = root && (await zip.part(root.target));
  if (!root || !workbook) throw damaged("it holds no workbook");
  const xml = readXml(workbook);
  if (xml.includes(STRICT)) {
    throw new FileTrouble("The file is a “strict” workbook. Save it as an ordinary .xlsx in your spreadsheet program.");
  }
  if (!firstElement(xml, "workbook")) throw new FileTrouble("The file holds a document, but no workbook.");
  const relationships = await relationshipsOf(zip, root.target);
  const listed = [...elements(firstElement(xml, "sheets")?.inner ?? "", "sheet")].map(({ attributes }) => attributes);
  if (listed.length === 0) throw damaged("it has no sheets");
  if (listed.length > mostSheets) {
    throw new FileTrouble(
      `The file is too large: it has ${listed.length} sheets, and at most ${mostSheets} go in here.`,
    );
  }
  const sheetAt = await Promise.all(listed.map((attributes) => sheetPart(zip, attributes, relationships)));
  const sheets = sheetAt.filter((sheet) => sheet !== undefined);
  if (sheets.length === 0) throw new FileTrouble("The file has no sheet with cells.");
  const text = async (kind: string) => {
    const found = [...relationships.values()].find((one) => one.kind === kind);
    const bytes = found && (await zip.part(found.target));
    return bytes && readXml(bytes);
  };
  const stringsXml = await text("sharedStrings");
  if (stringsXml === undefined && sheets.some((sheet) => sheet.xml.includes(' t="s"')))
    throw damaged("its texts are missing");
  return {
    zip,
    sheets,
    sheetAt,
    otherSheets: listed.flatMap(({ name = "" }, place) => (sheetAt[place] ? [] : [name])),
    names: [...elements(firstElement(xml, "definedNames")?.inner ?? "", "definedName")].map(namePart),
    startsIn1904: isTrue(firstElement(xml, "workbookPr")?.attributes.date1904),
    isLocked: firstElement(xml, "workbookProtection") !== undefined,
    front: Number(firstElement(xml, "workbookView")?.attributes.activeTab ?? 0),
    stylesXml: (await text("styles")) ?? "",
    stringsXml,
    themeXml: (await text("theme")) ?? "",
  };
}

async function sheetPart(
  zip: ZipFile,
  { name = "", state = "visible", ...attributes }: Readonly<Record<string, string>>,
  relationships: Relationships,
): Promise<SheetPart | undefined> {
  const id = Object.entries(attributes).find(([key]) => /(^|:)id$/.test(key))?.[1] ?? "";
  const found = relationships.get(id);
  if (!found) throw damaged(`the sheet “${name}” is missing`);
  if (found.kind !== "worksheet") return undefined;
  const bytes = await zip.part(found.target);
  if (!bytes) throw damaged(`the sheet “${name}” is missing`);
  return {
    name,
    hidden: state !== "visible",
    part: found.target,
    xml: readXml(bytes),
    relationships: await relationshipsOf(zip, found.target),
  };
}

function namePart({ attributes, inner }: { attributes: Readonly<Record<string, string>>; inner: string }): NamePart {
  const { name = "", localSheetId, hidden } = attributes;
  return {
    name,
    text: unescaped(inner).trim(),
    sheetPlace: localSheetId === undefined ? undefined : Number(localSheetId),
    hidden: isTrue(hidden),
  };
}

export function isTrue(attribute: string | undefined): boolean {
  return attribute === "1" || attribute === "true";
}
