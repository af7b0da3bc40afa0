import type { FilePicture } from "./pictures";

/** How the grid keeps the pictures of one sheet, and what this stand-in keeps of their words beside them. */
export interface SheetDrawings {
  readonly drawings: object;
  readonly words: Readonly<Record<string, { readonly name: string; readonly altText: string }>>;
}

/** What the grid's own headings take of the window, in pixels: its pictures are placed with them counted in. */
const headings = { width: 46, height: 20 } as const;
const upright = { flipX: false, flipY: false, angle: 0, skewX: 0, skewY: 0 } as const;

export function drawingsOf(pictures: readonly FilePicture[], unitId: string, sheetId: string): SheetDrawings {
  const ids = pictures.map((_, index) => `${sheetId}-picture-${index + 1}`);
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
