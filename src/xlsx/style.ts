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

/** The font of a cell in a file when no one picked one. The grid then uses its own. */
export const plainFont = { name: "Calibri", size: 11 } as const;

/** Pixels to the width of a digit in that font, by which files count: ECMA-376 18.3.1.13. */
export const digitPixels = 7;

/** Files measure drawings in these: 914,400 to the inch, of which a pixel is a 96th. ECMA-376 20.1.2.1. */
export const emusPerPixel = 9525;

/*
 * The number formats that files have numbers for: ECMA-376 part 1, 18.8.30; those for dates and money as programs show
 * them in the United States.
 */
export const knownFormats: Readonly<Record<number, string>> = {
  0: "General",
  1: "0",
  2: "0.00",
  3: "#,##0",
  4: "#,##0.00",
  5: '"$"#,##0_);\\("$"#,##0\\)',
  6: '"$"#,##0_);[Red]\\("$"#,##0\\)',
  7: '"$"#,##0.00_);\\("$"#,##0.00\\)',
  8: '"$"#,##0.00_);[Red]\\("$"#,##0.00\\)',
  9: "0%",
  10: "0.00%",
  11: "0.00E+00",
  12: "# ?/?",
  13: "# ??/??",
  14: "m/d/yyyy",
  15: "d-mmm-yy",
  16: "d-mmm",
  17: "mmm-yy",
  18: "h:mm AM/PM",
  19: "h:mm:ss AM/PM",
  20: "h:mm",
  21: "h:mm:ss",
  22: "m/d/yyyy h:mm",
  37: "#,##0_);(#,##0)",
  38: "#,##0_);[Red](#,##0)",
  39: "#,##0.00_);(#,##0.00)",
  40: "#,##0.00_);[Red](#,##0.00)",
  41: '_(* #,##0_);_(* \\(#,##0\\);_(* "-"_);_(@_)',
  42: '_("$"* #,##0_);_("$"* \\(#,##0\\);_("$"* "-"_);_(@_)',
  43: '_(* #,##0.00_);_(* \\(#,##0.00\\);_(* "-"??_);_(@_)',
  44: '_("$"* #,##0.00_);_("$"* \\(#,##0.00\\);_("$"* "-"??_);_(@_)',
  45: "mm:ss",
  46: "[h]:mm:ss",
  47: "mm:ss.0",
  48: "##0.0E+0",
  49: "@",
};

/** Whether a number format shows a day or a time of day. */
export function showsDate(format: string): boolean {
  const bare = format.replace(/"[^"]*"|\\.|_.|\*./g, "").replace(/\[(?!(?:h+|m+|s+)\])[^\]]*\]/gi, "");
  return /[ymdhs]/i.test(bare.replace(/General/gi, ""));
}

/** The first number for a format that the file spells out: ECMA-376 18.8.30. */
export const firstOwnFormat = 164;
