import type { CornerInEmus, NewPicture } from "./sheet";
import { DRAWING, HEAD, RELATIONSHIPS, tag } from "./xml";

/** The part of a file that holds the pictures of a sheet: ECMA-376 20.5. @param ids by which it points to their bytes. */
export function drawingXml(pictures: readonly NewPicture[], ids: readonly string[]): string {
  return (
    HEAD +
    tag("xdr:wsDr", DRAWING_NAMES, pictures.map((one, place) => anchorXml(one, ids[place] ?? "", place + 2)).join(""))
  );
}

export const DRAWING_NAMES = {
  "xmlns:xdr": `${DRAWING}/spreadsheetDrawing`,
  "xmlns:a": `${DRAWING}/main`,
  "xmlns:r": RELATIONSHIPS,
};

/**
 * A picture in its place.
 *
 * @param id by which the drawing points to its bytes.
 * @param number its own among all that is drawn on the sheet.
 * @param names the vocabularies, where the drawing may have other signs for them.
 */
export function anchorXml(
  picture: NewPicture,
  id: string,
  number: number,
  names: Partial<typeof DRAWING_NAMES> = {},
): string {
  const { from, to, size } = picture;
  const inner = [
    cornerXml("xdr:from", from),
    to ? cornerXml("xdr:to", to) : tag("xdr:ext", { cx: size?.width ?? 0, cy: size?.height ?? 0 }),
    pictureXml(picture, id, number),
    tag("xdr:clientData"),
  ].join("");
  return to
    ? tag("xdr:twoCellAnchor", { ...names, editAs: "oneCell" }, inner)
    : tag("xdr:oneCellAnchor", { ...names }, inner);
}

function cornerXml(name: string, { row, column, rowOffset, columnOffset }: CornerInEmus): string {
  const value = (element: string, number: number) => tag(element, {}, String(number));
  return tag(
    name,
    {},
    [
      value("xdr:col", column),
      value("xdr:colOff", columnOffset),
      value("xdr:row", row),
      value("xdr:rowOff", rowOffset),
    ].join(""),
  );
}

function pictureXml({ name, altText }: NewPicture, embed: string, number: number): string {
  const facts = { id: number, name: name || `Picture ${number - 1}`, descr: altText };
  const locks = tag("xdr:cNvPicPr", {}, tag("a:picLocks", { noChangeAspect: true }));
  return tag(
    "xdr:pic",
    {},
    [
      tag("xdr:nvPicPr", {}, tag("xdr:cNvPr", facts) + locks),
      tag("xdr:blipFill", {}, tag("a:blip", { "r:embed": embed }) + tag("a:stretch", {}, tag("a:fillRect"))),
      tag("xdr:spPr", {}, tag("a:prstGeom", { prst: "rect" }, tag("a:avLst"))),
    ].join(""),
  );
}
