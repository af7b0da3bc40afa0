import type { BorderStyleTypes, IBorderData, IBorderStyleData, IStyleData, Nullable } from "@univerjs/core";
import type { ColorReader } from "../../xlsx/colors";
import {
  type FileAlignment,
  type FileBorders,
  type FileFill,
  type FileFont,
  type FileLine,
  type FileStyle,
  plainFont,
} from "../../xlsx/style";
import type { GridLibrary } from "../grid/library";
import type { CellLook } from "../grid/port";
import { lookFrom, type StyleLook, styleFrom } from "../grid/styles";

const horizontals: Readonly<Record<string, CellLook["horizontal"]>> = {
  left: "Left",
  center: "Center",
  centerContinuous: "Center",
  right: "Right",
};
const verticals: Readonly<Record<string, CellLook["vertical"]>> = { top: "Top", center: "Center" };

/** The grid's style for one of a file. */
export function styleFromFile(library: GridLibrary, style: FileStyle, colorOf: ColorReader): IStyleData {
  const { numFmt = "General" } = style;
  const look: Partial<CellLook> = {
    ...fontLook(style.font ?? {}, colorOf),
    ...alignmentLook(style.alignment ?? {}),
    ...(numFmt !== "General" && { numberFormat: numFmt }),
  };
  const fill = style.fill && fillColor(style.fill, colorOf);
  if (fill !== undefined) look.fill = fill;
  const borders = style.border ? bordersFromFile(style.border, colorOf) : {};
  return {
    ...styleFrom(library, look),
    ...(Object.keys(borders).length > 0 && { bd: borders }),
  };
}

function fontLook(font: FileFont, colorOf: ColorReader): Partial<CellLook> {
  const { name, size, bold, italic, underline, strike } = font;
  const color = colorOf(font.color);
  return {
    ...(name !== undefined && name !== plainFont.name && { fontName: name }),
    ...(size !== undefined && size !== plainFont.size && { fontSize: size }),
    ...(bold && { bold }),
    ...(italic && { italic }),
    ...(underline && { underline: underline === "double" ? "Double" : true }),
    ...(strike && { strikethrough: true }),
    // The color that a program takes of itself stays the grid's, which has another one in the dark.
    ...(color !== undefined && color !== "#000000" && { fontColor: color }),
  };
}

function alignmentLook({ horizontal, vertical, wrapText, indent }: FileAlignment): Partial<CellLook> {
  const [across, down] = [horizontals[horizontal ?? ""], verticals[vertical ?? ""]];
  return {
    ...(across && { horizontal: across }),
    ...(down && { vertical: down }),
    ...(wrapText && { wrap: true }),
    ...(indent && { indent }),
  };
}

function fillColor(fill: FileFill, colorOf: ColorReader): string | undefined {
  if (fill.pattern === "none") return undefined;
  const isPlain = fill.pattern === "solid" || fill.pattern === "gradient";
  return isPlain ? colorOf(fill.fgColor) : (colorOf(fill.bgColor) ?? colorOf(fill.fgColor));
}

/**
 * A file's style for one of the grid.
 *
 * @param isText whether the cell shows text, which programs indent only if it is aligned left.
 */
export function styleToFile(library: GridLibrary, style: IStyleData, isText: boolean): FileStyle {
  const look = lookFrom(library, style);
  const stands = isText && look.indent > 0 && look.horizontal === "General";
  const alignment = alignmentOf(stands ? { ...look, horizontal: "Left" } : look);
  const borders = style.bd ? bordersToFile(style.bd) : {};
  return {
    numFmt: look.numberFormat,
    font: fontOf(look),
    ...(look.fill && {
      fill: { pattern: "solid", fgColor: { argb: argb(look.fill) } },
    }),
    ...(Object.keys(borders).length > 0 && { border: borders }),
    ...(Object.keys(alignment).length > 0 && { alignment }),
  };
}

function fontOf({ fontName, fontSize, bold, italic, underline, strikethrough, fontColor }: StyleLook): FileFont {
  return {
    name: fontName ?? plainFont.name,
    size: fontSize ?? plainFont.size,
    ...(bold && { bold }),
    ...(italic && { italic }),
    ...(underline && { underline: underline === "Double" ? "double" : true }),
    ...(strikethrough && { strike: true }),
    ...(fontColor && { color: { argb: argb(fontColor) } }),
  };
}

function alignmentOf({ horizontal, vertical, wrap, indent }: StyleLook): FileAlignment {
  return {
    ...(horizontal !== "General" && { horizontal: across[horizontal] }),
    ...(vertical !== "Bottom" && { vertical: down[vertical] }),
    ...(wrap && { wrapText: true }),
    ...(indent > 0 && { indent }),
  };
}

const across = { Left: "left", Center: "center", Right: "right" } as const;
const down = { Top: "top", Center: "center" } as const;

/** The grid's colors are HTML's, or `rgb(…)` where a person picked one. */
export function argb(color: string): string {
  const hex =
    /^#([\da-f]{6})/i.exec(color)?.[1] ??
    /^#([\da-f])([\da-f])([\da-f])$/i
      .exec(color)
      ?.slice(1)
      .map((one) => one + one)
      .join("");
  if (hex) return `FF${hex.toUpperCase()}`;
  const parts = /^rgba?\(\s*(\d+)\s*,\s*(\d+)\s*,\s*(\d+)/.exec(color)?.slice(1) ?? [];
  return `FF${[0, 1, 2]
    .map((place) =>
      Math.min(255, Number(parts[place] ?? 0))
        .toString(16)
        .padStart(2, "0"),
    )
    .join("")}`.toUpperCase();
}

/** What files call the grid's lines, by the grid's own numbers for them. */
const lines: readonly (string | undefined)[] = [
  undefined,
  "thin",
  "hair",
  "dotted",
  "dashed",
  "dashDot",
  "dashDotDot",
  "double",
  "medium",
  "mediumDashed",
  "mediumDashDot",
  "mediumDashDotDot",
  "slantDashDot",
  "thick",
];

const sides = { top: "t", bottom: "b", left: "l", right: "r" } as const;
const sideNames = ["top", "bottom", "left", "right"] as const;
const black = "#000000";

/** The grid's borders for those of a file. */
function bordersFromFile(borders: FileBorders, colorOf: ColorReader): IBorderData {
  const found: IBorderData = {};
  for (const side of sideNames) {
    const line = lineFromFile(borders[side], colorOf);
    if (line) found[sides[side]] = line;
  }
  const { diagonal } = borders;
  const line = diagonal && lineFromFile(diagonal, colorOf);
  if (line && diagonal.down) found.tl_br = line;
  if (line && diagonal.up) found.bl_tr = line;
  return found;
}

function lineFromFile(border: FileLine | undefined, colorOf: ColorReader): IBorderStyleData | undefined {
  const number = border?.style ? lines.indexOf(border.style) : -1;
  if (number < 1) return undefined;
  return { s: number as BorderStyleTypes, cl: { rgb: colorOf(border?.color) ?? black } };
}

/** A file's borders for those of the grid. */
function bordersToFile(borders: IBorderData): FileBorders {
  const diagonal = lineToFile(borders.tl_br ?? borders.bl_tr);
  const found = sideNames.flatMap((side) => {
    const line = lineToFile(borders[sides[side]]);
    return line ? [[side, line] as const] : [];
  });
  return {
    ...Object.fromEntries(found),
    ...(diagonal && {
      diagonal: { ...diagonal, down: Boolean(borders.tl_br), up: Boolean(borders.bl_tr) },
    }),
  };
}

function lineToFile(line: Nullable<IBorderStyleData>): FileLine | undefined {
  const style = line ? lines[line.s] : undefined;
  return style === undefined ? undefined : { style, color: { argb: argb(line?.cl?.rgb ?? black) } };
}
