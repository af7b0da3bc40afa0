import type { FileColor } from "./colors";

/** How a cell looks, as files have it: ECMA-376 part 1, 18.8. What is absent is left to the program. */
export interface FileStyle {
  readonly numFmt?: string;
  readonly font?: FileFont;
  readonly fill?: FileFill;
  readonly border?: FileBorders;
  readonly alignment?: FileAlignment;
}

export interface FileFont {
  readonly name?: string;
  /** In points. */
  readonly size?: number;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly strike?: boolean;
  readonly underline?: boolean | "double";
  readonly color?: FileColor;
}

export interface FileFill {
  /** "solid", "none", one of the patterns of ECMA-376 18.18.55, or "gradient" for colors that run into one another. */
  readonly pattern: string;
  readonly fgColor?: FileColor;
  readonly bgColor?: FileColor;
}

export interface FileLine {
  /** "thin", "double" and so on: ECMA-376 18.18.3. */
  readonly style: string;
  readonly color?: FileColor;
}

export interface FileBorders {
  readonly top?: FileLine;
  readonly bottom?: FileLine;
  readonly left?: FileLine;
  readonly right?: FileLine;
  readonly diagonal?: FileLine & { readonly up: boolean; readonly down: boolean };
}

export interface FileAlignment {
  /** "left", "center" and so on: ECMA-376 18.18.40. */
  readonly horizontal?: string;
  /** "top", "center", "bottom" and so on: ECMA-376 18.18.88. */
  readonly vertical?: string;
  readonly wrapText?: boolean;
  readonly indent?: number;
  readonly textRotation?: number;
}

/** What a cell of a file is set in where nobody chose a font. The grid then takes its own. */
export const plainFont = { name: "Calibri", size: 11 } as const;

/** Pixels to the width of a digit in that font, by which files count: ECMA-376 18.3.1.13. */
export const digitPixels = 7;

/** Files measure drawings in these: 914,400 to the inch, of which a pixel is a 96th. ECMA-376 20.1.2.1. */
export const emusPerPixel = 9525;
