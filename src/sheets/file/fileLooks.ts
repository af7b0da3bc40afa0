import type { Borders, Fill, Style } from "exceljs";
import { type Look, looks, warned } from "../looks";
import type { CellStyle, Plan } from "../plan";

/** What a file's cells are set in where nothing else is said. */
const FONT = { name: "Calibri", size: 11 } as const;
const COLOR = /^#?([\da-f]{6})$/i;
const SIDES = ["top", "bottom", "left", "right"] as const;

/** The looks of a plan's cells, by row and column: the named ones, and the exact ones over them. */
export function stylesOf(plan: Plan): (row: number, column: number) => Partial<Style> {
  const dresses = plan.formulas.map((cells) => cells.map((): CellStyle => ({})));
  for (const { area, look } of plan.looks) {
    for (let row = area.row; row < area.row + area.rows; row += 1) {
      for (let column = area.column; column < area.column + area.columns; column += 1) {
        const before = dresses[row]?.[column];
        if (before) dresses[row]![column] = over(before, dressOf(looks[look]));
      }
    }
  }
  return (row, column) => {
    const exact = plan.dress?.[row]?.[column];
    const dress = over(dresses[row]![column]!, exact ?? {});
    return { ...styleOf(dress), numFmt: plan.formats[row]?.[column] ?? "General" };
  };
}

/** How a cell looks while its warning holds. */
export function warnedStyle(): Partial<Style> {
  const { fill, color } = warned;
  return {
    // The fill of a rule stands in its background, unlike a cell's.
    ...(fill && { fill: { type: "pattern", pattern: "solid", bgColor: { argb: argb(fill)! } } satisfies Fill }),
    ...(color && { font: { color: { argb: argb(color)! } } }),
  };
}

function over(below: CellStyle, above: CellStyle): CellStyle {
  return { ...below, ...above, rules: { ...below.rules, ...above.rules } };
}

function dressOf({ ruleAbove, ruleBelow, wrap, top, ...look }: Look): CellStyle {
  const rules = { ...(ruleAbove && { top: ruleAbove }), ...(ruleBelow && { bottom: ruleBelow }) };
  return { ...look, ...(wrap && { wrap }), ...((wrap || top) && { vertical: "Top" as const }), rules };
}

function styleOf(dress: CellStyle): Partial<Style> {
  const { font, size, bold, italic, underline, color, fill, align, vertical, indent, wrap, rules = {} } = dress;
  const ink = argb(color);
  const paint = argb(fill);
  const border: Partial<Borders> = {};
  for (const side of SIDES) {
    const rule = argb(rules[side]);
    if (rule) border[side] = { style: "thin", color: { argb: rule } };
  }
  const alignment: Partial<Style["alignment"]> = {
    ...(align && { horizontal: HORIZONTAL[align] }),
    ...(vertical && { vertical: VERTICAL[vertical] }),
    ...(indent && { indent }),
    ...(wrap && { wrapText: true }),
  };
  return {
    font: {
      ...FONT,
      ...(font && { name: font }),
      ...(size && { size }),
      ...(bold && { bold }),
      ...(italic && { italic }),
      ...(underline && { underline }),
      ...(ink && { color: { argb: ink } }),
    },
    ...(paint && { fill: { type: "pattern", pattern: "solid", fgColor: { argb: paint } } satisfies Fill }),
    ...(Object.keys(border).length > 0 && { border }),
    ...(Object.keys(alignment).length > 0 && { alignment }),
  };
}

const HORIZONTAL = { Left: "left", Center: "center", Right: "right" } as const;
const VERTICAL = { Top: "top", Center: "middle", Bottom: "bottom" } as const;

/** A colour of ours as a file holds it; undefined for what is none. */
function argb(color: string | undefined): string | undefined {
  const digits = COLOR.exec(color ?? "")?.[1];
  return digits && `FF${digits.toUpperCase()}`;
}
