import type { IStyleData } from "@univerjs/core";
import type { Alignment, Fill, Font, Style } from "exceljs";
import type { GridLibrary } from "../../grid/library";
import type { CellLook } from "../../grid/port";
import { styleFrom } from "../../grid/styles";
import { bordersFromFile } from "./borderLines";
import type { ColorReader } from "./colors";
import { plainFont } from "./plainFont";

const horizontals: Readonly<Record<string, CellLook["horizontal"]>> = {
  left: "Left",
  center: "Center",
  centerContinuous: "Center",
  right: "Right",
};
const verticals: Readonly<Record<string, CellLook["vertical"]>> = { top: "Top", middle: "Center", center: "Center" };

/**
 * The grid's style for one of a file.
 *
 * @param style as the library gives it.
 * @param format its number format.
 */
export function styleFromFile(
  library: GridLibrary,
  style: Partial<Style>,
  format: string,
  colorOf: ColorReader,
): IStyleData {
  const look: Partial<CellLook> = {
    ...fontLook(style.font ?? {}, colorOf),
    ...alignmentLook(style.alignment ?? {}),
    ...(format !== "General" && { numberFormat: format }),
  };
  const fill = style.fill && fillColor(style.fill, colorOf);
  if (fill !== undefined) look.fill = fill;
  const borders = style.border ? bordersFromFile(style.border, colorOf) : {};
  return {
    ...styleFrom(library, look),
    ...(Object.keys(borders).length > 0 && { bd: borders }),
  };
}

function fontLook(font: Partial<Font>, colorOf: ColorReader): Partial<CellLook> {
  const { name, size, bold, italic, underline, strike } = font;
  const color = colorOf(font.color);
  return {
    ...(name !== undefined && name !== plainFont.name && { fontName: name }),
    ...(size !== undefined && size !== plainFont.size && { fontSize: size }),
    ...(bold && { bold }),
    ...(italic && { italic }),
    ...(underline && underline !== "none" && { underline: underline === "double" ? "Double" : true }),
    ...(strike && { strikethrough: true }),
    // The colour that a program takes of itself stays the grid's, which has another one in the dark.
    ...(color !== undefined && color !== "#000000" && { fontColor: color }),
  };
}

function alignmentLook({ horizontal, vertical, wrapText, indent }: Partial<Alignment>): Partial<CellLook> {
  const [across, down] = [horizontals[horizontal ?? ""], verticals[vertical ?? ""]];
  return {
    ...(across && { horizontal: across }),
    ...(down && { vertical: down }),
    ...(wrapText && { wrap: true }),
    ...(indent && { indent }),
  };
}

function fillColor(fill: Fill, colorOf: ColorReader): string | undefined {
  if (fill.type === "gradient") return colorOf(fill.stops[0]?.color);
  if (fill.pattern === "none") return undefined;
  return fill.pattern === "solid" ? colorOf(fill.fgColor) : (colorOf(fill.bgColor) ?? colorOf(fill.fgColor));
}
