import { readXml } from "../read/xml";
import { drawingXml } from "./drawing";
import { PackageParts } from "./package";
import type { NewPicture, Shared } from "./sheet";
import { DRAWING_ID, marked, type NewSheet, type NewTable, sheetXml, tableId, textXml } from "./sheet";
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
  /** Whether programs leave it out of their lists. */
  readonly hidden?: boolean;
}

/** The id of the settings part. Any will do; programs only compare it with those of other parts. */
const SETTINGS_ID = "{6B0B3F0E-3C1D-4E0B-9C4A-5B1B0A6D2F11}";
const WORKBOOK = "xl/workbook.xml";
const SHEET_TYPE = `${OFFICE_TYPES}.spreadsheetml`;

/** Makes an .xlsx file. @throws {RangeError} for no sheet. */
export function writeBook(book: NewBook): Uint8Array<ArrayBuffer> {
  if (book.sheets.length === 0) throw new RangeError("A file needs a sheet.");
  const parts = new PackageParts();
  const shared = { styles: new StyleSheet(), ...sharedTexts() };
  const { sheets, front = 0, settings = {} } = book;
  parts.point("", "rId1", "officeDocument", WORKBOOK);
  addProperties(parts, book);
  parts.add(WORKBOOK, workbookXml(book), `${SHEET_TYPE}.sheet.main+xml`);
  sheets.forEach((sheet, place) => {
    const part = `xl/worksheets/sheet${place + 1}.xml`;
    addSheet(parts, part, sheet, shared, place === front);
    parts.point(WORKBOOK, `rId${place + 1}`, "worksheet", `worksheets/sheet${place + 1}.xml`);
  });
  parts.add("xl/styles.xml", shared.styles.part(), `${SHEET_TYPE}.styles+xml`);
  parts.point(WORKBOOK, "styles", "styles", "styles.xml");
  parts.add("xl/sharedStrings.xml", shared.xml(), `${SHEET_TYPE}.sharedStrings+xml`);
  parts.point(WORKBOOK, "texts", "sharedStrings", "sharedStrings.xml");
  if (sheets.some(({ cells }) => cells.some(({ array }) => array?.spills))) addSpillFacts(parts, WORKBOOK);
  if (Object.keys(settings).length > 0) addSettings(parts, WORKBOOK, settings);
  return parts.zip();
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
        return tag("si", {}, textXml(escaped(marked(text))));
      });
      return HEAD + tag("sst", { xmlns: MAIN, uniqueCount: items.length }, items.join(""));
    },
  };
}

function workbookXml({ sheets, names = [], front = 0, lacksResults }: NewBook): string {
  const listed = sheets.map(({ name, hidden }, place) => {
    return tag("sheet", { name, sheetId: place + 1, state: hidden && "hidden", "r:id": `rId${place + 1}` });
  });
  const defined = names.map(({ name, text, sheet, hidden }) =>
    tag("definedName", { name, localSheetId: sheet, hidden }, escaped(text)),
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

/** Puts a sheet in, with its pictures and tables. @param part its name; one that is there is replaced. */
export function addSheet(parts: PackageParts, part: string, sheet: NewSheet, shared: Shared, isFront: boolean): void {
  const type = parts.has(part) ? undefined : `${SHEET_TYPE}.worksheet+xml`;
  parts.add(part, sheetXml(sheet, isFront, shared), type);
  if (sheet.pictures?.length) addDrawing(parts, part, sheet.pictures);
  (sheet.tables ?? []).forEach((table, place) => {
    addTable(parts, part, tableId(place), table);
  });
}

/** Puts pictures over a sheet that has none. @returns the id by which the sheet points to them. */
export function addDrawing(parts: PackageParts, sheet: string, pictures: readonly NewPicture[]): string {
  const drawing = parts.freeName("xl/drawings/drawing", ".xml");
  const ids = pictures.map((picture, place) => addImage(parts, drawing, picture, `picture${place + 1}`));
  parts.add(drawing, drawingXml(pictures, ids), `${OFFICE_TYPES}.drawing+xml`);
  return parts.point(sheet, DRAWING_ID, "drawing", `/${drawing}`);
}

/** Puts a picture's own bytes in. @returns the id by which its drawing points to them. */
export function addImage(parts: PackageParts, drawing: string, { kind, bytes }: NewPicture, id: string): string {
  const image = parts.freeName("xl/media/image", `.${kind}`);
  parts.addKind(kind, `image/${kind}`);
  parts.add(image, bytes);
  return parts.point(drawing, id, "image", `/${image}`);
}

/** Puts a table in. @returns the id by which its sheet points to it. */
export function addTable(parts: PackageParts, sheet: string, id: string, table: NewTable): string {
  const part = parts.freeName("xl/tables/table", ".xml");
  const ids = parts.names.flatMap((name) => {
    const bytes = /^xl\/tables\/[^/]+\.xml$/i.test(name) ? parts.part(name) : undefined;
    return bytes ? [Number(readXml(bytes).attributes.id ?? 0)] : [];
  });
  parts.add(part, tableXml(table, Math.max(0, ...ids) + 1), `${SHEET_TYPE}.table+xml`);
  return parts.point(sheet, id, "table", `/${part}`);
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
/** Puts in what an array formula that takes as many cells as it needs points to. */
export function addSpillFacts(parts: PackageParts, workbook: string): void {
  parts.add("xl/metadata.xml", spillFacts(), `${SHEET_TYPE}.sheetMetadata+xml`);
  parts.point(workbook, "spills", "sheetMetadata", "/xl/metadata.xml");
}

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

/** Puts in what add-ins keep with a workbook. */
export function addSettings(parts: PackageParts, workbook: string, settings: Readonly<Record<string, unknown>>): void {
  const facts = { "ds:itemID": SETTINGS_ID, "xmlns:ds": RELATIONSHIPS.replace("relationships", "customXml") };
  const item = parts.freeName("customXml/item", ".xml");
  const properties = item.replace("item", "itemProps");
  parts.add(item, settingsXml(settings));
  parts.add(
    properties,
    HEAD + tag("ds:datastoreItem", facts, tag("ds:schemaRefs")),
    `${OFFICE_TYPES}.customXmlProperties+xml`,
  );
  parts.point(item, "facts", "customXmlProps", `/${properties}`);
  parts.point(workbook, "settings", "customXml", `/${item}`);
}

export function settingsXml(settings: Readonly<Record<string, unknown>>): string {
  return HEAD + tag("settings", { xmlns: SETTINGS }, escaped(JSON.stringify(settings)));
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
