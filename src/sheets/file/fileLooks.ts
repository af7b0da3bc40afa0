import { must } from "../../quantities/must";
import { type FileAlignment, type FileLine, type FileStyle, plainFont } from "../../xlsx/style";
import { type Look, looks, warned } from "../looks";
import type { CellStyle, Plan } from "../plan";

const COLOR = /^#?([\da-f]{6})$/i;
const SIDES = ["top", "bottom", "left", "right"] as const;

/** The looks of a plan's cells, by row and column: the named ones, and the exact ones over them. */
export function stylesOf(plan: Plan): (row: number, column: number) => FileStyle {
  const cellStyles = plan.formulas.map((cells) => cells.map((): CellStyle => ({})));
  for (const { area, look } of plan.looks) {
    for (let row = area.row; row < area.row + area.rows; row += 1) {
      for (let column = area.column; column < area.column + area.columns; column += 1) {
        const before = cellStyles[row]?.[column];
        if (before) must(cellStyles[row])[column] = over(before, lookStyle(looks[look]));
      }
    }
  }
  return (row, column) => {
    const exact = plan.dress?.[row]?.[column];
    const style = over(must(must(cellStyles[row])[column]), exact ?? {});
    return { ...styleOf(style), numFmt: plan.formats[row]?.[column] ?? "General" };
  };
}

/** How a cell looks while its warning holds. */
export function warnedStyle(): FileStyle {
  const { fill, color } = warned;
  return {
    // A rule's fill is its background color, unlike a cell's.
    ...(fill && { fill: { pattern: "solid", bgColor: { argb: must(argb(fill)) } } }),
    ...(color && { font: { color: { argb: must(argb(color)) } } }),
  };
}

function over(below: CellStyle, above: CellStyle): CellStyle {
  return { ...below, ...above, rules: { ...below.rules, ...above.rules } };
}

function lookStyle({ ruleAbove, ruleBelow, wrap, top, ...look }: Look): CellStyle {
  const rules = { ...(ruleAbove && { top: ruleAbove }), ...(ruleBelow && { bottom: ruleBelow }) };
  return { ...look, ...(wrap && { wrap }), ...((wrap || top) && { vertical: "Top" as const }), rules };
}

function styleOf(style: CellStyle): FileStyle {
  const { font, size, bold, italic, underline, color, fill, align, vertical, indent, wrap, rules = {} } = style;
  const ink = argb(color);
  const paint = argb(fill);
  const lines = SIDES.flatMap((side): [string, FileLine][] => {
    const rule = argb(rules[side]);
    return rule ? [[side, { style: "thin", color: { argb: rule } }]] : [];
  });
  const alignment: FileAlignment = {
    ...(align && { horizontal: HORIZONTAL[align] }),
    ...(vertical && { vertical: VERTICAL[vertical] }),
    ...(indent && { indent }),
    ...(wrap && { wrapText: true }),
  };
  return {
    font: {
      ...plainFont,
      ...(font && { name: font }),
      ...(size && { size }),
      ...(bold && { bold }),
      ...(italic && { italic }),
      ...(underline && { underline }),
      ...(ink && { color: { argb: ink } }),
    },
    ...(paint && { fill: { pattern: "solid", fgColor: { argb: paint } } }),
    ...(lines.length > 0 && { border: Object.fromEntries(lines) }),
    ...(Object.keys(alignment).length > 0 && { alignment }),
  };
}

const HORIZONTAL = { Left: "left", Center: "center", Right: "right" } as const;
const VERTICAL = { Top: "top", Center: "center", Bottom: "bottom" } as const;

/** A color of ours as a file holds it; undefined for what is none. */
function argb(color: string | undefined): string | undefined {
  const digits = COLOR.exec(color ?? "")?.[1];
  return digits && `FF${digits.toUpperCase()}`;
}
