import { mostPictures } from "../limits";
import type { SheetPart } from "../package/bookParts";
import { relationshipsOf } from "../package/relationships";
import { countOf, type Element, elements, firstElement, numberIn, readXml } from "../package/xml";
import type { ZipFile } from "../zip/readZip";
import type { Findings } from "./findings";
import type { Measures } from "./measures";

/** A picture of a file; lengths in pixels from the sheet's corner. */
export interface FilePicture {
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

/** Files measure drawings in these: 914,400 to the inch, of which a pixel is a 96th. ECMA-376 20.1.2.1. */
export const emusPerPixel = 9525;

/** A kilometer and more; nothing lies further out. */
const mostEmus = 1e12;

const kinds: Readonly<Record<string, string>> = { png: "png", jpg: "jpeg", jpeg: "jpeg", gif: "gif", bmp: "bmp" };

/** The pictures that lie over a sheet's cells. What else is drawn there is noted. */
export async function readPictures(
  zip: ZipFile,
  sheet: SheetPart,
  measures: Measures,
  findings: Findings,
): Promise<FilePicture[]> {
  const pictures: FilePicture[] = [];
  for (const { kind, target } of sheet.relationships.values()) {
    const bytes = kind === "drawing" ? await zip.part(target) : undefined;
    if (!bytes) continue;
    const xml = readXml(bytes).replace(/<(\/?)\w+:/g, "<$1");
    const media = await relationshipsOf(zip, target);
    for (const anchorName of ["twoCellAnchor", "oneCellAnchor", "absoluteAnchor"]) {
      for (const { inner } of elements(xml, anchorName)) {
        findings.count("drawn shape", countOf(inner, "sp") + countOf(inner, "cxnSp"));
        const picture = firstElement(inner, "pic");
        if (!picture) continue;
        const source = media.get(firstElement(picture.inner, "blip")?.attributes["r:embed"] ?? "");
        const dataUrl = source && !source.isOutside ? await dataUrlOf(zip, source.target) : undefined;
        if (dataUrl === undefined || pictures.length >= mostPictures)
          findings.count("picture that cannot be shown here", 1, "pictures that cannot be shown here");
        else pictures.push({ ...wordsOf(picture), dataUrl, ...placeOf(inner, measures) });
      }
    }
  }
  return pictures;
}

function wordsOf(picture: Element): Pick<FilePicture, "name" | "altText"> {
  const { name = "", descr = "" } = firstElement(picture.inner, "cNvPr")?.attributes ?? {};
  return { name, altText: descr };
}

async function dataUrlOf(zip: ZipFile, part: string): Promise<string | undefined> {
  const kind = kinds[part.slice(part.lastIndexOf(".") + 1).toLowerCase()];
  const bytes = kind && (await zip.part(part));
  return bytes ? `data:image/${kind};base64,${base64(bytes)}` : undefined;
}

function base64(bytes: Uint8Array): string {
  let text = "";
  for (let at = 0; at < bytes.length; at += 0x8000) text += String.fromCharCode(...bytes.subarray(at, at + 0x8000));
  return btoa(text);
}

function placeOf(anchor: string, measures: Measures): Omit<FilePicture, "name" | "altText" | "dataUrl"> {
  const across = (column: number) => measures.columns[column]?.w ?? measures.plainWidth;
  const down = (row: number) => measures.rows[row]?.h ?? measures.plainHeight;
  const size = firstElement(anchor, "ext")?.attributes ?? {};
  const place = firstElement(anchor, "pos")?.attributes ?? {};
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

function cornerOf(element: Element | undefined): Corner | undefined {
  if (!element) return undefined;
  const inner = (name: string) => firstElement(element.inner, name)?.inner;
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
