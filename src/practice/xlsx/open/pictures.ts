import { base64Of } from "../../../spreadsheet/base64";
import { mostPictures } from "../../../xlsx/limits";
import type { SheetPart } from "../../../xlsx/read/bookParts";
import { relationshipsOf } from "../../../xlsx/read/package";
import {
  attributesOf,
  countOf,
  elements,
  firstElement,
  numberIn,
  readXml,
  withoutPrefixes,
  type XmlElement,
} from "../../../xlsx/read/xml";
import { emusPerPixel } from "../../../xlsx/style";
import type { ZipFile } from "../../../xlsx/zip";
import type { Findings } from "../context";
import type { Measures } from "./sheet";

/** A picture of a file; lengths in pixels from the sheet's corner. */
export interface FilePicture {
  /** Its place among all that is drawn on the sheet, from 1. */
  readonly number: number;
  readonly name: string;
  readonly altText: string;
  readonly dataUrl: string;
  readonly from: Corner;
  readonly to: Corner;
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** A place within a cell. */
export interface Corner {
  readonly row: number;
  readonly rowOffset: number;
  readonly column: number;
  readonly columnOffset: number;
}

/** More than a kilometer; no drawing is farther out. */
const mostEmus = 1e12;

const kinds: Readonly<Record<string, string>> = { png: "png", jpg: "jpeg", jpeg: "jpeg", gif: "gif", bmp: "bmp" };

/** The pictures that lie over a sheet's cells. What else is drawn there is noted. */
export function readPictures(zip: ZipFile, sheet: SheetPart, measures: Measures, findings: Findings): FilePicture[] {
  const pictures: FilePicture[] = [];
  let number = 0;
  for (const { kind, target } of sheet.relationships.values()) {
    const bytes = kind === "drawing" ? zip.part(target) : undefined;
    if (!bytes) continue;
    const drawing = withoutPrefixes(readXml(bytes));
    const media = relationshipsOf(zip, target);
    for (const anchor of anchorsIn(drawing)) {
      number += 1;
      findings.count("drawn shape", countOf(anchor, "sp") + countOf(anchor, "cxnSp"));
      const picture = firstElement(anchor, "pic");
      if (!picture) continue;
      const source = media.get(attributesOf(picture, "blip")["r:embed"] ?? "");
      const dataUrl = source && !source.isOutside ? dataUrlOf(zip, source.target) : undefined;
      if (dataUrl === undefined || pictures.length >= mostPictures)
        findings.count("picture that can't be shown here", 1, "pictures that can't be shown here");
      else pictures.push({ number, ...wordsOf(picture), dataUrl, ...placeOf(anchor, measures) });
    }
  }
  return pictures;
}

/** What is drawn over a sheet, each with its place. @param drawing the part, without prefixes. */
export function anchorsIn(drawing: XmlElement): XmlElement[] {
  return ["twoCellAnchor", "oneCellAnchor", "absoluteAnchor"].flatMap((name) => [...elements(drawing, name)]);
}

function wordsOf(picture: XmlElement): Pick<FilePicture, "name" | "altText"> {
  const { name = "", descr = "" } = attributesOf(picture, "cNvPr");
  return { name, altText: descr };
}

function dataUrlOf(zip: ZipFile, part: string): string | undefined {
  const kind = kinds[part.slice(part.lastIndexOf(".") + 1).toLowerCase()];
  const bytes = kind && zip.part(part);
  return bytes ? `data:image/${kind};base64,${base64Of(bytes)}` : undefined;
}

function placeOf(anchor: XmlElement, measures: Measures): Omit<FilePicture, "number" | "name" | "altText" | "dataUrl"> {
  const across = (column: number) => measures.columns[column]?.w ?? measures.plainWidth;
  const down = (row: number) => measures.rows[row]?.h ?? measures.plainHeight;
  const size = attributesOf(anchor, "ext");
  const place = attributesOf(anchor, "pos");
  const from = cornerOf(firstElement(anchor, "from"));
  const end = firstElement(anchor, "to");
  const left = from ? distanceTo(from.column, across) + from.columnOffset : pixels(place.x);
  const top = from ? distanceTo(from.row, down) + from.rowOffset : pixels(place.y);
  const corner = end && cornerOf(end);
  const width = corner ? distanceTo(corner.column, across) + corner.columnOffset - left : pixels(size.cx);
  const height = corner ? distanceTo(corner.row, down) + corner.rowOffset - top : pixels(size.cy);
  return {
    left,
    top,
    width: Math.max(1, width),
    height: Math.max(1, height),
    from: from ?? cornerAt(left, top, across, down),
    to: cornerAt(left + width, top + height, across, down),
  };
}

function cornerOf(element: XmlElement | undefined): Corner | undefined {
  if (!element) return undefined;
  const inner = (name: string) => firstElement(element, name)?.text;
  return {
    row: numberIn(inner("row"), 0, 0, furthestRow),
    rowOffset: pixels(inner("rowOff")),
    column: numberIn(inner("col"), 0, 0, furthest - 1),
    columnOffset: pixels(inner("colOff")),
  };
}

function cornerAt(left: number, top: number, across: Sizes, down: Sizes): Corner {
  const [column, row] = [cellAt(left, across), cellAt(top, down)];
  return { row: row.index, rowOffset: row.offset, column: column.index, columnOffset: column.offset };
}

type Sizes = (index: number) => number;

/** Columns further out there are none, and rows further down have never been seen to hold a picture. */
const furthest = 16_384;
const furthestRow = 100_000;

function cellAt(distance: number, sizeOf: Sizes): { index: number; offset: number } {
  let [index, offset] = [0, Math.max(0, distance)];
  while (index < furthestRow && offset >= sizeOf(index)) {
    offset -= sizeOf(index);
    index += 1;
  }
  return { index, offset };
}

function distanceTo(index: number, sizeOf: Sizes): number {
  let sum = 0;
  for (let before = 0; before < index; before += 1) sum += sizeOf(before);
  return sum;
}

function pixels(emus: string | undefined): number {
  return numberIn(emus, 0, 0, mostEmus) / emusPerPixel;
}

/** The pictures of one sheet as the grid keeps them, and their names and alt texts, which the stand-in keeps. */
export interface SheetDrawings {
  readonly drawings: object;
  readonly words: Readonly<Record<string, { readonly name: string; readonly altText: string }>>;
}

/** What the grid's own headings take of the window, in pixels: its pictures are placed with them counted in. */
const headings = { width: 46, height: 20 } as const;
const upright = { flipX: false, flipY: false, angle: 0, skewX: 0, skewY: 0 } as const;

export function drawingsOf(pictures: readonly FilePicture[], unitId: string, sheetId: string): SheetDrawings {
  const ids = pictures.map(({ number }) => `${sheetId}-picture-${number}`);
  const data = pictures.map((picture, index) => {
    const { from, to, left, top, width, height, dataUrl } = picture;
    const place = { ...upright, from, to };
    return {
      unitId,
      subUnitId: sheetId,
      drawingId: ids[index],
      // A picture, by the grid's own numbers for drawings.
      drawingType: 0,
      imageSourceType: "BASE64",
      source: dataUrl,
      ...from,
      width,
      height,
      ...upright,
      sheetTransform: place,
      axisAlignSheetTransform: place,
      transform: { ...upright, left: left + headings.width, top: top + headings.height, width, height },
    };
  });
  return {
    drawings: { data: Object.fromEntries(data.map((one, index) => [ids[index], one])), order: ids },
    words: Object.fromEntries(pictures.map(({ name, altText }, index) => [ids[index], { name, altText }])),
  };
}
