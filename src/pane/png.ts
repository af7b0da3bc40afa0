import { WorkbookFailure } from "../workbook/failure";

/** Pixels of the picture for one of the drawing: 720 px wide on 7.5 in of paper gives 288 dots an inch. */
const SCALE = 3;
const GAP = 16;
const NO_PICTURE =
  "The picture of the bed couldn't be made, so nothing was changed. Try again. If that fails, use a newer version of the spreadsheet program, or another browser.";

/** A picture and its size in the drawing's own pixels. */
export interface Drawn {
  /** Base64, without a prefix. */
  readonly png: string;
  readonly width: number;
  readonly height: number;
}

/**
 * Draws SVG texts below one another into one PNG on white.
 *
 * @param isTurned puts their top at the left, for a page that is held sideways.
 */
export async function pngOf(svgs: readonly string[], isTurned = false): Promise<Drawn> {
  const images = await Promise.all(svgs.map(imageOf));
  const width = Math.max(...images.map((image) => image.width));
  const height = images.reduce((sum, image) => sum + image.height, GAP * (images.length - 1));
  const canvas = document.createElement("canvas");
  const size = isTurned ? { width: height, height: width } : { width, height };
  canvas.width = size.width * SCALE;
  canvas.height = size.height * SCALE;
  const context = canvas.getContext("2d");
  if (!context) throw new WorkbookFailure(NO_PICTURE);
  context.scale(SCALE, SCALE);
  if (isTurned) {
    context.translate(0, width);
    context.rotate(-Math.PI / 2);
  }
  context.fillStyle = "#ffffff";
  context.fillRect(0, 0, width, height);
  let top = 0;
  for (const image of images) {
    context.drawImage(image, 0, top, image.width, image.height);
    top += image.height + GAP;
  }
  return { png: canvas.toDataURL("image/png").replace("data:image/png;base64,", ""), ...size };
}

async function imageOf(svg: string): Promise<HTMLImageElement> {
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
  await image.decode().catch((cause) => {
    throw new WorkbookFailure(NO_PICTURE, { cause });
  });
  return image;
}
