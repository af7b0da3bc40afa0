import type { CellStyle } from "../../sheets/plan";

/** What of a cell's style is read and written. */
export const STYLE_PROPERTIES: Excel.CellPropertiesLoadOptions = {
  format: {
    borders: { color: true, style: true },
    fill: { color: true },
    font: { bold: true, color: true, italic: true, name: true, size: true, underline: true },
    horizontalAlignment: true,
    indentLevel: true,
    verticalAlignment: true,
    wrapText: true,
  },
};

/** What of a cell's style is read to restore it after clearing. */
export const RESTORABLE_PROPERTIES: Excel.CellPropertiesLoadOptions = {
  format: {
    ...STYLE_PROPERTIES.format,
    borders: { color: true, style: true, weight: true },
    font: { ...STYLE_PROPERTIES.format?.font, strikethrough: true },
    protection: true,
    textOrientation: true,
  },
};

/** How a cell looked before something was written over it. */
export interface StyleBefore extends CellStyle {
  /** What a style has no names for, in the host's: lines other than thin ones, letters struck out or turned, locks. */
  readonly exact?: Excel.CellPropertiesFormat;
}

/** The host says white for a cell without a fill; writing that would hide its gridlines. */
export const NO_FILL = "#FFFFFF";

/** The font of plain cells; readable after the request. */
export function queuePlainFont(context: Excel.RequestContext) {
  const style = context.workbook.styles.getItemOrNullObject("Normal");
  style.load("font/name,font/size,font/color");
  return (): PlainFont => {
    if (style.isNullObject) return {};
    const { name, size, color } = style.font;
    return { name, size, color };
  };
}

/** Empty where the host does not tell: then every cell's font counts as chosen. */
export interface PlainFont {
  readonly name?: string;
  readonly size?: number;
  readonly color?: string;
}

const SIDES = ["top", "bottom", "left", "right"] as const;
const ALIGNS = ["Left", "Center", "Right"] as const;

/** How a cell differs from a plain one; undefined where it doesn't. */
export function cellStyleOf({ format = {} }: Excel.CellProperties, plain: PlainFont): CellStyle | undefined {
  const { borders = {}, fill, font = {}, horizontalAlignment, indentLevel, verticalAlignment, wrapText } = format;
  const align = ALIGNS.find((one) => one === horizontalAlignment);
  const vertical = (["Top", "Center"] as const).find((one) => one === verticalAlignment);
  const rules = Object.fromEntries(
    SIDES.flatMap((side) => {
      const { style = "None", color } = borders[side] ?? {};
      return style !== "None" && color ? [[side, color]] : [];
    }),
  );
  const style: CellStyle = {
    ...(fill?.color && fill.color !== NO_FILL && { fill: fill.color }),
    ...(font.color && font.color !== plain.color && { color: font.color }),
    ...(font.name && font.name !== plain.name && { font: font.name }),
    ...(font.size && font.size !== plain.size && { size: font.size }),
    ...(font.bold && { bold: true }),
    ...(font.italic && { italic: true }),
    ...(font.underline && font.underline !== "None" && { underline: true }),
    ...(align && { align }),
    ...(vertical && { vertical }),
    ...(indentLevel && { indent: indentLevel }),
    ...(wrapText && { wrap: true }),
    ...(Object.keys(rules).length > 0 && { rules }),
  };
  return Object.keys(style).length > 0 ? style : undefined;
}

/** The same with all that was asked for by {@link RESTORABLE_PROPERTIES}. */
export function styleBeforeOf(cell: Excel.CellProperties, plain: PlainFont): StyleBefore | undefined {
  const style = cellStyleOf(cell, plain);
  const exact = exactOf(cell.format ?? {});
  return Object.keys(exact).length > 0 ? { ...style, exact } : style;
}

function exactOf(format: Excel.CellPropertiesFormat): Excel.CellPropertiesFormat {
  const { borders = {}, font = {}, horizontalAlignment, protection, textOrientation, verticalAlignment } = format;
  const lines = SIDES.flatMap((side) => {
    const { style = "None", weight = "Thin", color } = borders[side] ?? {};
    const isNamed = style === "None" || (style === "Continuous" && weight === "Thin");
    return isNamed ? [] : [[side, { style, weight, ...(color && { color }) }] as const];
  });
  const letters: Excel.CellPropertiesFont = {
    ...(font.strikethrough && { strikethrough: true }),
    ...(font.underline && !["None", "Single"].includes(font.underline) && { underline: font.underline }),
  };
  return {
    ...(lines.length > 0 && { borders: Object.fromEntries(lines) }),
    ...(Object.keys(letters).length > 0 && { font: letters }),
    ...(horizontalAlignment && !NAMED_ACROSS.includes(horizontalAlignment) && { horizontalAlignment }),
    ...(verticalAlignment && !NAMED_DOWN.includes(verticalAlignment) && { verticalAlignment }),
    ...(textOrientation && { textOrientation }),
    ...((protection?.locked === false || protection?.formulaHidden) && { protection: unlocking(protection) }),
  };
}

function unlocking({ locked, formulaHidden }: Excel.CellPropertiesProtection): Excel.CellPropertiesProtection {
  return { ...(locked === false && { locked }), ...(formulaHidden && { formulaHidden }) };
}

const NAMED_ACROSS: readonly string[] = ["General", ...ALIGNS];
const NAMED_DOWN: readonly string[] = ["Top", "Center", "Bottom"];

/** A style in the host's names. */
function propertiesOf(style: StyleBefore): Excel.SettableCellProperties {
  const { fill, color, font, size, bold, italic, underline, align, vertical, indent, wrap, rules, exact = {} } = style;
  const letters: Excel.CellPropertiesFont = {
    ...(color && { color }),
    ...(font && { name: font }),
    ...(size && { size }),
    ...(bold !== undefined && { bold }),
    ...(italic !== undefined && { italic }),
    ...(underline !== undefined && { underline: underline ? "Single" : "None" }),
    ...exact.font,
  };
  const borders = {
    ...Object.fromEntries(
      Object.entries(rules ?? {}).map(([side, ruleColor]) => [side, { style: "Continuous", color: ruleColor }]),
    ),
    ...exact.borders,
  };
  return {
    format: {
      ...exact,
      ...(fill && { fill: { color: fill } }),
      ...(Object.keys(letters).length > 0 && { font: letters }),
      ...(align && { horizontalAlignment: align }),
      ...(vertical && { verticalAlignment: vertical }),
      ...(indent !== undefined && { indentLevel: indent }),
      ...(wrap !== undefined && { wrapText: wrap }),
      ...(Object.keys(borders).length > 0 && { borders }),
    },
  };
}

/** Queues styles cell by cell onto a range; only the part of it that has any is written. */
export function queueCellStyles(range: Excel.Range, styles: readonly (readonly (StyleBefore | undefined)[])[]): void {
  const rows = styles.flatMap((cells, row) => (cells.some((cell) => cell) ? [row] : []));
  const columns = styles.flatMap((cells) => cells.flatMap((cell, column) => (cell ? [column] : [])));
  const [firstRow, lastRow] = [rows[0], rows.at(-1)];
  if (firstRow === undefined || lastRow === undefined) return;
  // One by one, since a large sheet has more columns than a call takes arguments.
  const firstColumn = columns.reduce((first, column) => Math.min(first, column));
  const lastColumn = columns.reduce((last, column) => Math.max(last, column));
  const known = new Map<StyleBefore, Excel.SettableCellProperties>();
  const properties = (cell: StyleBefore | undefined): Excel.SettableCellProperties => {
    if (!cell) return {};
    const made = known.get(cell) ?? propertiesOf(cell);
    known.set(cell, made);
    return made;
  };
  range
    .getCell(firstRow, firstColumn)
    .getResizedRange(lastRow - firstRow, lastColumn - firstColumn)
    .setCellProperties(
      styles
        .slice(firstRow, lastRow + 1)
        .map((cells) =>
          Array.from({ length: lastColumn - firstColumn + 1 }, (_, index) => properties(cells[firstColumn + index])),
        ),
    );
}

const EVERY_LINE = ["EdgeTop", "EdgeBottom", "EdgeLeft", "EdgeRight", "InsideHorizontal", "InsideVertical"] as const;

/** Queues that cells look plain. Their color rules stay, which the host's own clearing would remove. */
export function queuePlainStyle({ format }: Excel.Range, { name, size, color }: PlainFont): void {
  format.fill.clear();
  format.font.bold = false;
  format.font.italic = false;
  format.font.underline = "None";
  if (name) format.font.name = name;
  if (size) format.font.size = size;
  if (color) format.font.color = color;
  format.horizontalAlignment = "General";
  format.verticalAlignment = "Bottom";
  format.indentLevel = 0;
  format.wrapText = false;
  for (const line of EVERY_LINE) format.borders.getItem(line).style = "None";
}
