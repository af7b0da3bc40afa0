import type { IStyleData } from "@univerjs/core";
import type { Alignment, Fill, Font, Style } from "exceljs";
import type { GridLibrary } from "../../grid/library";
import { lookFrom, type StyleLook } from "../../grid/styles";
import { bordersToFile } from "./borderLines";
import { plainFont } from "./plainFont";

/**
 * A file's style for one of the grid.
 *
 * @param isText whether the cell shows text, which programs indent only where it is told to stand at the left.
 */
export function styleToFile(library: GridLibrary, style: IStyleData, isText: boolean): Partial<Style> {
  const look = lookFrom(library, style);
  const stands = isText && look.indent > 0 && look.horizontal === "General";
  const alignment = alignmentOf(stands ? { ...look, horizontal: "Left" } : look);
  const borders = style.bd ? bordersToFile(style.bd, argb) : {};
  return {
    numFmt: look.numberFormat,
    font: fontOf(look),
    ...(look.fill && {
      fill: { type: "pattern", pattern: "solid", fgColor: { argb: argb(look.fill) } } satisfies Fill,
    }),
    ...(Object.keys(borders).length > 0 && { border: borders }),
    ...(Object.keys(alignment).length > 0 && { alignment }),
  };
}

function fontOf({ fontName, fontSize, bold, italic, underline, strikethrough, fontColor }: StyleLook): Partial<Font> {
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

function alignmentOf({ horizontal, vertical, wrap, indent }: StyleLook): Partial<Alignment> {
  return {
    ...(horizontal !== "General" && { horizontal: across[horizontal] }),
    ...(vertical !== "Bottom" && { vertical: down[vertical] }),
    ...(wrap && { wrapText: true }),
    ...(indent > 0 && { indent }),
  };
}

const across = { Left: "left", Center: "center", Right: "right" } as const;
const down = { Top: "top", Center: "middle" } as const;

/** The grid's colours are HTML's, or `rgb(…)` where a person picked one. */
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
