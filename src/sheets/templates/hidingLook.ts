import type { CellStyle } from "../plan";
import { numberFormatFault } from "./numberFormat";

/** Letters smaller than this, in points, are hardly seen. */
const SMALLEST_LETTERS = 6;
/** Below this contrast letters are not told from the ground; the faintest grey in use on white has about 1.8. */
const LEAST_CONTRAST = 1.5;
/** What cells have that no one has dressed. */
const PLAIN_GROUND = "#FFFFFF";
const PLAIN_LETTERS = "#000000";
/** Names of fonts as a template holds them. */
const FONT_NAME = /^[A-Za-z0-9][A-Za-z0-9 ._-]{0,59}$/;
const LARGEST_LETTERS = 96;
/** Fonts whose letters are pictures, from memory. */
const PICTURE_FONTS = /webdings|wingdings|dingbats|^symbol$|marlett/i;

/** A part of a look that keeps what is in a cell from being seen, and why. */
export interface Hiding {
  readonly part: "numberFormat" | "color" | "size" | "font";
  readonly why: string;
}

/** All by which a look hides what is in a cell, or disguises it. */
export function hidingIn({ numberFormat, ...dress }: CellStyle & { readonly numberFormat?: string }): Hiding[] {
  const { fill = PLAIN_GROUND, color = PLAIN_LETTERS, size, font } = dress;
  const format = numberFormat === undefined ? undefined : numberFormatFault(numberFormat);
  return [
    ...(format ? [{ part: "numberFormat" as const, why: format }] : []),
    ...(contrast(fill, color) < LEAST_CONTRAST
      ? [{ part: "color" as const, why: `has text that doesn't show on its fill (${color} on ${fill})` }]
      : []),
    ...(size !== undefined && (size < SMALLEST_LETTERS || size > LARGEST_LETTERS)
      ? [{ part: "size" as const, why: `has ${size}-point text, too ${sizeWord(size)} to read` }]
      : []),
    ...(font !== undefined && !FONT_NAME.test(font)
      ? [{ part: "font" as const, why: "uses a font that a template can't have" }]
      : []),
    ...(font !== undefined && PICTURE_FONTS.test(font)
      ? [{ part: "font" as const, why: `uses ${font}, which shows pictures instead of letters` }]
      : []),
  ];
}

const sizeWord = (size: number): string => (size < SMALLEST_LETTERS ? "small" : "large");

/** Contrast of two colors, 1 to 21, as the web content accessibility guidelines (WCAG 2.2) define it. */
function contrast(one: string, other: string): number {
  const [darker = 0, lighter = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (lighter + 0.05) / (darker + 0.05);
}

function luminance(color: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(color.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}
