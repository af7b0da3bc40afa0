import type { BorderStyleTypes, IBorderData, IBorderStyleData, Nullable } from "@univerjs/core";
import type { Border, BorderStyle, Borders } from "exceljs";
import type { ColorReader } from "./colors";

/** What files call the grid's lines, by the grid's own numbers for them. */
const lines: readonly (BorderStyle | undefined)[] = [
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
export function bordersFromFile(borders: Partial<Borders>, colorOf: ColorReader): IBorderData {
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

function lineFromFile(border: Partial<Border> | undefined, colorOf: ColorReader): IBorderStyleData | undefined {
  const number = border?.style ? lines.indexOf(border.style) : -1;
  if (number < 1) return undefined;
  return { s: number as BorderStyleTypes, cl: { rgb: colorOf(border?.color) ?? black } };
}

/** A file's borders for those of the grid. */
export function bordersToFile(borders: IBorderData, argb: (color: string) => string): Partial<Borders> {
  const found: Partial<Borders> = {};
  for (const side of sideNames) {
    const line = lineToFile(borders[sides[side]], argb);
    if (line) found[side] = line;
  }
  const diagonal = lineToFile(borders.tl_br ?? borders.bl_tr, argb);
  if (diagonal) found.diagonal = { ...diagonal, down: Boolean(borders.tl_br), up: Boolean(borders.bl_tr) };
  return found;
}

function lineToFile(line: Nullable<IBorderStyleData>, argb: (color: string) => string): Border | undefined {
  const style = line ? lines[line.s] : undefined;
  return style && { style, color: { argb: argb(line?.cl?.rgb ?? black) } };
}
