import type { CornerInEmus, NewPicture } from "./sheet";
import { DRAWING, HEAD, RELATIONSHIPS, tag } from "./xml";

/** The part of a file that holds the pictures of a sheet: ECMA-376 20.5. */
export function drawingXml(pictures: readonly NewPicture[]): string {
  const names = {
    "xmlns:xdr": `${DRAWING}/spreadsheetDrawing`,
    "xmlns:a": `${DRAWING}/main`,
    "xmlns:r": RELATIONSHIPS,
  };
  return HEAD + tag("xdr:wsDr", names, pictures.map(anchorXml).join(""));
}

function anchorXml(picture: NewPicture, place: number): string {
  const { from, to, size } = picture;
  const inner = [
    cornerXml("xdr:from", from),
    to ? cornerXml("xdr:to", to) : tag("xdr:ext", { cx: size?.width ?? 0, cy: size?.height ?? 0 }),
    pictureXml(picture, place),
    tag("xdr:clientData"),
  ].join("");
  return to ? tag("xdr:twoCellAnchor", { editAs: "oneCell" }, inner) : tag("xdr:oneCellAnchor", {}, inner);
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

function pictureXml({ name, altText }: NewPicture, place: number): string {
  const facts = { id: place + 2, name: name || `Picture ${place + 1}`, descr: altText };
  const locks = tag("xdr:cNvPicPr", {}, tag("a:picLocks", { noChangeAspect: true }));
  return tag(
    "xdr:pic",
    {},
    [
      tag("xdr:nvPicPr", {}, tag("xdr:cNvPr", facts) + locks),
      tag(
        "xdr:blipFill",
        {},
        tag("a:blip", { "r:embed": `picture${place + 1}` }) + tag("a:stretch", {}, tag("a:fillRect")),
      ),
      tag("xdr:spPr", {}, tag("a:prstGeom", { prst: "rect" }, tag("a:avLst"))),
    ].join(""),
  );
}
