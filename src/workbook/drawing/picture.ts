/** A picture over cells. */
export interface Picture {
  /** PNG, base64, without a prefix. */
  readonly png: string;
  readonly widthPoints: number;
  readonly heightPoints: number;
  readonly altText: string;
}

/** Where cells are on their sheet, in points. */
export interface Frame {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Queues a picture onto a sheet, under a name by which it can be found again. */
export function queuePicture(
  worksheet: Excel.Worksheet,
  { png, widthPoints, heightPoints, altText }: Picture,
  { left, top }: Pick<Frame, "left" | "top">,
  name: string,
): void {
  const shape = worksheet.shapes.addImage(png);
  shape.name = name;
  shape.altTextDescription = altText;
  shape.left = left;
  shape.top = top;
  shape.width = widthPoints;
  shape.height = heightPoints;
}

/** A picture as large as fits into a frame, in its own proportions. */
export function fittedPicture(
  png: string,
  altText: string,
  { width, height }: Pick<Frame, "width" | "height">,
): Picture {
  const natural = pngSize(png);
  const scale = Math.min(width / natural.widthPoints, height / natural.heightPoints);
  return { png, altText, widthPoints: natural.widthPoints * scale, heightPoints: natural.heightPoints * scale };
}

/** Tells the shapes that are meant from the others of their sheet. */
type IsMeant = (shape: { readonly id: string; readonly name: string }) => boolean;

/** The pictures and shapes of a sheet, and their places; readable after the request. */
export function queueShapes(worksheet: Excel.Worksheet) {
  worksheet.shapes.load("items/id,items/name,items/left,items/top");
  return {
    all: (): readonly Excel.Shape[] => worksheet.shapes.items,
    ids: (): string[] => worksheet.shapes.items.map(({ id }) => id),
    names: (): string[] => worksheet.shapes.items.map(({ name }) => name),
    has: (isMeant: IsMeant): boolean => worksheet.shapes.items.some(isMeant),
    /** Queues the removal of some. */
    remove: (isMeant: IsMeant): void => {
      for (const shape of worksheet.shapes.items) if (isMeant(shape)) shape.delete();
    },
  };
}

/**
 * @example freeShapeName("Bedrow picture", ["Bedrow picture 1"]) // "Bedrow picture 2"
 */
export function freeShapeName(stem: string, taken: readonly string[]): string {
  for (let number = 1; ; number += 1) if (!taken.includes(`${stem} ${number}`)) return `${stem} ${number}`;
}

const POINTS_A_PIXEL = 72 / 96;

/** A PNG's width and height follow its signature and the head of its first part: RFC 2083, 3.1 and 4.1.1. */
const WIDTH_AT = 16;
const HEIGHT_AT = 20;

/**
 * The natural size of a PNG in points, at 96 pixels an inch.
 *
 * @param base64 the file, without a prefix.
 */
export function pngSize(base64: string): { readonly widthPoints: number; readonly heightPoints: number } {
  const head = atob(base64.slice(0, 32));
  return {
    widthPoints: numberAt(head, WIDTH_AT) * POINTS_A_PIXEL,
    heightPoints: numberAt(head, HEIGHT_AT) * POINTS_A_PIXEL,
  };
}

/** The four bytes from a place on, largest first. */
function numberAt(bytes: string, place: number): number {
  return [0, 1, 2, 3].reduce((number, byte) => number * 256 + bytes.charCodeAt(place + byte), 0);
}
