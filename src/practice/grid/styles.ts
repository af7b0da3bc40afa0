import type { IStyleData } from "@univerjs/core";
import type { GridLibrary } from "./library";
import type { CellLook } from "./port";

/** What of a look the grid keeps as a style. */
export type StyleLook = Omit<CellLook, "locked">;

/** Indenting by one step moves the text this far, in pixels, as wide as about one and a half characters. */
const indentPixels = 9;

/** The distance that the grid itself keeps between the edge of a cell and its text, in pixels. */
const ownPaddingPixels = 2;

/** The grid's own font size, in points. */
const defaultFontSize = 11;

// The grid's own numbers for where text is in a cell.
const horizontals: Record<CellLook["horizontal"], number> = { General: 0, Left: 1, Center: 2, Right: 3 };
const verticals: Record<CellLook["vertical"], number> = { Top: 1, Center: 2, Bottom: 3 };

/** The grid's own style for a look; null takes the grid back to its default. */
export function styleFrom({ core }: GridLibrary, look: Partial<StyleLook>): IStyleData {
  const style: IStyleData = {};
  const has = (key: keyof StyleLook) => key in look;
  if (has("fill")) style.bg = look.fill === undefined ? null : { rgb: look.fill };
  if (has("fontColor")) style.cl = look.fontColor === undefined ? null : { rgb: look.fontColor };
  if (has("fontName")) style.ff = look.fontName ?? null;
  if (has("fontSize")) style.fs = look.fontSize ?? defaultFontSize;
  if (has("bold")) style.bl = look.bold ? 1 : 0;
  if (has("italic")) style.it = look.italic ? 1 : 0;
  if (has("underline")) {
    style.ul = { s: look.underline ? 1 : 0, ...(look.underline === "Double" && { t: core.TextDecoration.DOUBLE }) };
  }
  if (has("strikethrough")) style.st = { s: look.strikethrough ? 1 : 0 };
  if (has("wrap")) style.tb = look.wrap ? core.WrapStrategy.WRAP : core.WrapStrategy.OVERFLOW;
  if (has("horizontal")) style.ht = horizontals[look.horizontal ?? "General"];
  if (has("vertical")) style.vt = verticals[look.vertical ?? "Bottom"];
  if (has("indent")) style.pd = look.indent ? { l: ownPaddingPixels + look.indent * indentPixels } : null;
  if (has("turned")) style.tr = turnedTo(look.turned ?? 0);
  if (has("numberFormat")) {
    const isDefault = look.numberFormat === undefined || look.numberFormat === "General";
    style.n = isDefault ? null : { pattern: look.numberFormat ?? "General" };
  }
  return style;
}

/** The look of a cell with this style. */
export function lookFrom({ core }: GridLibrary, style: IStyleData): StyleLook {
  const left = style.pd?.l;
  return {
    fill: style.bg?.rgb ?? undefined,
    fontColor: style.cl?.rgb ?? undefined,
    fontName: style.ff ?? undefined,
    fontSize: style.fs ?? undefined,
    bold: style.bl === 1,
    italic: style.it === 1,
    underline: style.ul?.s === 1 && (style.ul.t === core.TextDecoration.DOUBLE ? "Double" : true),
    strikethrough: style.st?.s === 1,
    wrap: style.tb === core.WrapStrategy.WRAP,
    horizontal: keyOf(horizontals, style.ht) ?? "General",
    vertical: keyOf(verticals, style.vt) ?? "Bottom",
    indent: typeof left === "number" ? Math.max(0, Math.round((left - ownPaddingPixels) / indentPixels)) : 0,
    turned: turnedFrom(style.tr),
    numberFormat: style.n?.pattern ?? "General",
  };
}

/** The grid counts degrees downwards, and has another way of telling letters below one another. */
function turnedTo(degrees: number): IStyleData["tr"] {
  if (degrees === 0) return null;
  return degrees === LETTERS_BELOW ? { a: 0, v: 1 } : { a: -degrees, v: 0 };
}

function turnedFrom(turned: IStyleData["tr"]): number {
  if (!turned) return 0;
  return turned.v === 1 ? LETTERS_BELOW : 0 - turned.a;
}

/** The host's number for text whose letters are below one another. */
const LETTERS_BELOW = 180;

function keyOf<K extends string>(table: Record<K, number>, value: unknown): K | undefined {
  return (Object.keys(table) as K[]).find((key) => table[key] === value);
}
