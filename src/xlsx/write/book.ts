import { writeZip } from "../zip";
import { drawingXml } from "./drawing";
import { DRAWING_ID, marked, type NewSheet, type NewTable, sheetXml, tableId } from "./sheet";
import { StyleSheet } from "./styles";
import { escaped, HEAD, MAIN, OFFICE_TYPES, PACKAGE, RELATIONSHIPS, SETTINGS, SPILLS, tag } from "./xml";

/** A workbook of which a file is made. */
export interface NewBook {
  readonly sheets: readonly NewSheet[];
  readonly names?: readonly NewName[];
  /** Stands as the author and the last who saved it. */
  readonly author: string;
  readonly title?: string;
  /** The place of the sheet that is in front. */
  readonly front?: number;
  /** What add-ins keep with the workbook. */
  readonly settings?: Readonly<Record<string, unknown>>;
  /** Whether programs have to work out all formulas, because some have no result yet. */
  readonly lacksResults?: boolean;
}

export interface NewName {
  readonly name: string;
  /** Without "=". */
  readonly text: string;
  /** The place of the sheet for which alone it holds. */
  readonly sheet?: number;
}

/** The id of the settings part. Any will do; programs only compare it with those of other parts. */
const SETTINGS_ID = "{6B0B3F0E-3C1D-4E0B-9C4A-5B1B0A6D2F11}";
const SHEET_TYPE = `${OFFICE_TYPES}.spreadsheetml`;

/** Makes an .xlsx file. @throws {RangeError} for no sheet. */
export function writeBook(book: NewBook): Uint8Array<ArrayBuffer> {
  if (book.sheets.length === 0) throw new RangeError("A file needs a sheet.");
  const parts = new PackageParts();
  const shared = { styles: new StyleSheet(), ...sharedTexts() };
  const { sheets, front = 0, settings = {} } = book;
  parts.point("", "rId1", "officeDocument", "xl/workbook.xml");
  addProperties(parts, book);
  parts.add("xl/workbook.xml", workbookXml(book), `${SHEET_TYPE}.sheet.main+xml`);
  let tables = 0;
  let pictures = 0;
  sheets.forEach((sheet, place) => {
    const part = `xl/worksheets/sheet${place + 1}.xml`;
    parts.add(part, sheetXml(sheet, place === front, shared), `${SHEET_TYPE}.worksheet+xml`);
    parts.point("xl/workbook.xml", `rId${place + 1}`, "worksheet", `worksheets/sheet${place + 1}.xml`);
    addPictures(parts, sheet, part, place + 1, pictures);
    pictures += sheet.pictures?.length ?? 0;
    (sheet.tables ?? []).forEach((table, index) => {
      tables += 1;
      parts.add(`xl/tables/table${tables}.xml`, tableXml(table, tables), `${SHEET_TYPE}.table+xml`);
      parts.point(part, tableId(index), "table", `../tables/table${tables}.xml`);
    });
  });
  parts.add("xl/styles.xml", shared.styles.xml(), `${SHEET_TYPE}.styles+xml`);
  parts.point("xl/workbook.xml", "styles", "styles", "styles.xml");
  parts.add("xl/sharedStrings.xml", shared.xml(), `${SHEET_TYPE}.sharedStrings+xml`);
  parts.point("xl/workbook.xml", "texts", "sharedStrings", "sharedStrings.xml");
  if (sheets.some(({ cells }) => cells.some(({ array }) => array?.spills))) {
    parts.add("xl/metadata.xml", spillFacts(), `${SHEET_TYPE}.sheetMetadata+xml`);
    parts.point("xl/workbook.xml", "spills", "sheetMetadata", "metadata.xml");
  }
  if (Object.keys(settings).length > 0) addSettings(parts, settings);
  return parts.zip();
}

/** The parts of a package, what they are, and what they point to. */
class PackageParts {
  private readonly parts = new Map<string, Uint8Array>();
  private readonly types: string[] = [
    tag("Default", { Extension: "rels", ContentType: "application/vnd.openxmlformats-package.relationships+xml" }),
    tag("Default", { Extension: "xml", ContentType: "application/xml" }),
  ];
  private readonly pointers = new Map<string, string[]>();

  add(name: string, content: string | Uint8Array, type?: string): void {
    this.parts.set(name, typeof content === "string" ? new TextEncoder().encode(content) : content);
    if (type) this.types.push(tag("Override", { PartName: `/${name}`, ContentType: type }));
  }

  addKind(extension: string, type: string): void {
    const xml = tag("Default", { Extension: extension, ContentType: type });
    if (!this.types.includes(xml)) this.types.splice(2, 0, xml);
  }

  /** Lets a part, or the package itself for "", point to another one. */
  point(part: string, id: string, kind: string, target: string): void {
    const type = kind === "core-properties" ? `${PACKAGE}/relationships/metadata/${kind}` : `${RELATIONSHIPS}/${kind}`;
    const before = this.pointers.get(part) ?? [];
    this.pointers.set(part, [...before, tag("Relationship", { Id: id, Type: type, Target: target })]);
  }

  zip(): Uint8Array<ArrayBuffer> {
    const encoder = new TextEncoder();
    const types = HEAD + tag("Types", { xmlns: `${PACKAGE}/content-types` }, this.types.join(""));
    const pointers = [...this.pointers].map(([part, xmls]) => {
      const xml = HEAD + tag("Relationships", { xmlns: `${PACKAGE}/relationships` }, xmls.join(""));
      return [part.replace(/([^/]*)$/, "_rels/$1.rels"), encoder.encode(xml)] as const;
    });
    return writeZip(new Map([["[Content_Types].xml", encoder.encode(types)], ...pointers, ...this.parts]));
  }
}

/** The texts of a file, each once. */
function sharedTexts() {
  const numbers = new Map<string, number>();
  return {
    textNumber(text: string): number {
      const number = numbers.get(text) ?? numbers.size;
      numbers.set(text, number);
      return number;
    },
    xml(): string {
      const items = [...numbers.keys()].map((text) => {
        const space = /^\s|\s$|\n/.test(text) && "preserve";
        return tag("si", {}, tag("t", { "xml:space": space }, escaped(marked(text))));
      });
      return HEAD + tag("sst", { xmlns: MAIN, uniqueCount: items.length }, items.join(""));
    },
  };
}

function workbookXml({ sheets, names = [], front = 0, lacksResults }: NewBook): string {
  const listed = sheets.map(({ name, hidden }, place) => {
    return tag("sheet", { name, sheetId: place + 1, state: hidden && "hidden", "r:id": `rId${place + 1}` });
  });
  const defined = names.map(({ name, text, sheet }) =>
    tag("definedName", { name, localSheetId: sheet }, escaped(text)),
  );
  return (
    HEAD +
    tag(
      "workbook",
      { xmlns: MAIN, "xmlns:r": RELATIONSHIPS },
      [
        tag("workbookPr"),
        tag("bookViews", {}, tag("workbookView", { windowWidth: 24_000, windowHeight: 12_000, activeTab: front })),
        tag("sheets", {}, listed.join("")),
        defined.length > 0 ? tag("definedNames", {}, defined.join("")) : "",
        lacksResults ? tag("calcPr", { fullCalcOnLoad: true }) : "",
      ].join(""),
    )
  );
}

/** @param before how many pictures the file has already. */
function addPictures(
  parts: PackageParts,
  { pictures = [] }: NewSheet,
  sheet: string,
  number: number,
  before: number,
): void {
  if (pictures.length === 0) return;
  const drawing = `xl/drawings/drawing${number}.xml`;
  parts.add(drawing, drawingXml(pictures), `${OFFICE_TYPES}.drawing+xml`);
  parts.point(sheet, DRAWING_ID, "drawing", `../drawings/drawing${number}.xml`);
  pictures.forEach(({ kind, bytes }, place) => {
    const name = `image${before + place + 1}.${kind}`;
    parts.addKind(kind, `image/${kind}`);
    parts.add(`xl/media/${name}`, bytes);
    parts.point(drawing, `picture${place + 1}`, "image", `../media/${name}`);
  });
}

function tableXml({ name, area, columns, style }: NewTable, id: number): string {
  const xmls = columns.map((text, index) => {
    // A line break in a heading is written so in a file.
    return tag("tableColumn", { id: index + 1, name: text.replaceAll("\n", "_x000a_") });
  });
  return (
    HEAD +
    tag(
      "table",
      { xmlns: MAIN, id, name, displayName: name, ref: area, totalsRowShown: 0 },
      [
        tag("autoFilter", { ref: area }),
        tag("tableColumns", { count: xmls.length }, xmls.join("")),
        style &&
          tag("tableStyleInfo", {
            name: style,
            showFirstColumn: 0,
            showLastColumn: 0,
            showRowStripes: 1,
            showColumnStripes: 0,
          }),
      ].join(""),
    )
  );
}

/*
 * That an array formula is one that takes as many cells as it needs is said apart from the cell, which points to it by a
 * number: [MS-XLSX] 2.4 and what programs write, from memory. A program that does not know it shows an array formula.
 */
function spillFacts(): string {
  const keeps =
    "copy pasteAll pasteValues merge splitFirst rowColShift clearFormats clearComments assign coerce cellMeta".split(
      " ",
    );
  const kind = tag("metadataType", {
    name: "XLDAPR",
    minSupportedVersion: 120_000,
    ...Object.fromEntries(keeps.map((name) => [name, true])),
  });
  const property = tag("xda:dynamicArrayProperties", { fDynamic: 1, fCollapsed: 0 });
  const extension = tag("ext", { uri: "{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}" }, property);
  return (
    HEAD +
    tag(
      "metadata",
      { xmlns: MAIN, "xmlns:xda": SPILLS },
      [
        tag("metadataTypes", { count: 1 }, kind),
        tag("futureMetadata", { name: "XLDAPR", count: 1 }, tag("bk", {}, tag("extLst", {}, extension))),
        tag("cellMetadata", { count: 1 }, tag("bk", {}, tag("rc", { t: 1, v: 0 }))),
      ].join(""),
    )
  );
}

function addSettings(parts: PackageParts, settings: Readonly<Record<string, unknown>>): void {
  const facts = { "ds:itemID": SETTINGS_ID, "xmlns:ds": RELATIONSHIPS.replace("relationships", "customXml") };
  parts.add("customXml/item1.xml", HEAD + tag("settings", { xmlns: SETTINGS }, escaped(JSON.stringify(settings))));
  parts.add(
    "customXml/itemProps1.xml",
    HEAD + tag("ds:datastoreItem", facts, tag("ds:schemaRefs")),
    `${OFFICE_TYPES}.customXmlProperties+xml`,
  );
  parts.point("customXml/item1.xml", "facts", "customXmlProps", "itemProps1.xml");
  parts.point("xl/workbook.xml", "settings", "customXml", "../customXml/item1.xml");
}

function addProperties(parts: PackageParts, { author, title }: NewBook): void {
  const day = new Date().toISOString();
  const when = (name: string) => tag(`dcterms:${name}`, { "xsi:type": "dcterms:W3CDTF" }, day);
  const core = [
    title ? tag("dc:title", {}, escaped(title)) : "",
    tag("dc:creator", {}, escaped(author)),
    tag("cp:lastModifiedBy", {}, escaped(author)),
    when("created"),
    when("modified"),
  ];
  const names = {
    "xmlns:cp": `${PACKAGE}/metadata/core-properties`,
    "xmlns:dc": "http://purl.org/dc/elements/1.1/",
    "xmlns:dcterms": "http://purl.org/dc/terms/",
    "xmlns:xsi": "http://www.w3.org/2001/XMLSchema-instance",
  };
  parts.add(
    "docProps/core.xml",
    HEAD + tag("cp:coreProperties", names, core.join("")),
    "application/vnd.openxmlformats-package.core-properties+xml",
  );
  parts.point("", "rId2", "core-properties", "docProps/core.xml");
  const app = `<Properties xmlns="${RELATIONSHIPS.replace("relationships", "extended-properties")}"><Company></Company></Properties>`;
  parts.add("docProps/app.xml", HEAD + app, `${OFFICE_TYPES}.extended-properties+xml`);
  parts.point("", "rId3", "extended-properties", "docProps/app.xml");
}
