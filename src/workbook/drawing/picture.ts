import { fittedSize } from "../../sheets/pngSize";

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
export function fittedPicture(png: string, altText: string, frame: Pick<Frame, "width" | "height">): Picture {
  return { png, altText, ...fittedSize(png, frame) };
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
