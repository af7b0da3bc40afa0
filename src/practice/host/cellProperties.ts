import { eachCell } from "../grid/geometry";
import type { Area, Border, CellBorders, CellLook, Edge, LooksPort } from "../grid/port";
import { hostColor } from "./color";
import { refuse } from "./error";
import { lookDefaults } from "./lookDefaults";
import { borderStyles, borderWeights } from "./rangeBorders";
import { underlineFrom, underlineTo } from "./underline";

type Format = Excel.CellPropertiesFormat;
type Asked = Excel.CellPropertiesLoadOptions;

/**
 * How each cell of an area looks, in the host's words; only what was asked for.
 *
 * @throws HostError where something is asked for that the practice workbook does not carry.
 */
export function cellProperties(looks: LooksPort, area: Area, asked: Asked): Excel.CellProperties[][] {
  const { format = {}, ...others } = asked;
  const { borders = {}, fill = {}, font = {}, ...alignment } = format;
  checkCarried(others, {});
  checkCarried(borders, { color: true, style: true, weight: true });
  checkCarried(fill, { color: true });
  checkCarried(font, {
    bold: true,
    color: true,
    italic: true,
    name: true,
    size: true,
    strikethrough: true,
    underline: true,
  });
  checkCarried(alignment, {
    horizontalAlignment: true,
    indentLevel: true,
    protection: true,
    textOrientation: true,
    verticalAlignment: true,
    wrapText: true,
  });
  const pick = picker({ ...alignment, fill, font });
  const pickBorder = picker(borders);
  const hasBorders = Object.keys(borders).length > 0;
  return eachCell(area, (row, column) => {
    const look = looks.read(area.sheetId, row, column);
    const picked = pick(formatOf(look));
    if (!hasBorders) return { format: picked };
    const drawn = Object.entries(looks.borders(area.sheetId, row, column)).map(([edge, border]) => {
      return [edge, pickBorder({ ...border, color: hostColor(border.color) })];
    });
    return { format: { ...picked, borders: Object.fromEntries(drawn) } };
  });
}

function checkCarried(asked: object, carried: Record<string, true>): void {
  const missing = Object.keys(asked).find((name) => !(name in carried));
  if (missing) throw refuse("InvalidArgument", `The practice workbook carries no cell property ${missing}.`);
}

function formatOf(look: CellLook): Format {
  return {
    fill: { color: hostColor(look.fill ?? lookDefaults.fill) },
    font: {
      bold: look.bold,
      color: hostColor(look.fontColor ?? lookDefaults.fontColor),
      italic: look.italic,
      name: look.fontName ?? lookDefaults.fontName,
      size: look.fontSize ?? lookDefaults.fontSize,
      strikethrough: look.strikethrough,
      underline: underlineFrom(look.underline),
    },
    horizontalAlignment: look.horizontal,
    indentLevel: look.indent,
    protection: { locked: look.locked },
    textOrientation: look.turned,
    verticalAlignment: look.vertical,
    wrapText: look.wrap,
  };
}

type Picker = (record: object) => object;

/** Takes the part of a record that `asked` marks, level by level; made once for all cells of an area. */
function picker(asked: object): Picker {
  const parts = Object.entries(asked).flatMap(([name, wanted]): [string, Picker | undefined][] => {
    if (typeof wanted !== "object" || wanted === null) return wanted ? [[name, undefined]] : [];
    return Object.keys(wanted).length > 0 ? [[name, picker(wanted)]] : [];
  });
  return (record) => {
    const picked: Record<string, unknown> = {};
    for (const [name, pick] of parts) {
      const value: unknown = Reflect.get(record, name);
      picked[name] = pick ? pick(value as object) : value;
    }
    return picked;
  };
}

export function isProperties(value: unknown): value is Excel.SettableCellProperties {
  return typeof value === "object" && value !== null;
}

/** The part of a look that a cell's properties set. */
export function lookOf({ format = {} }: Excel.SettableCellProperties): Partial<CellLook> {
  const { fill, font, horizontalAlignment, indentLevel, protection, textOrientation, verticalAlignment, wrapText } =
    format;
  const look = {
    fill: fill?.color,
    bold: font?.bold,
    fontColor: font?.color,
    italic: font?.italic,
    fontName: font?.name,
    fontSize: font?.size,
    strikethrough: font?.strikethrough,
    underline: font?.underline && underlineTo(font.underline),
    horizontal: horizontalAlignment,
    indent: indentLevel,
    locked: protection?.locked,
    turned: textOrientation,
    vertical: verticalAlignment,
    wrap: wrapText,
  };
  const given = Object.entries(look).filter(([, value]) => value !== undefined);
  return Object.fromEntries(given) as Partial<CellLook>;
}

/**
 * The borders that a cell's properties set.
 *
 * @throws HostError for a border that the practice workbook does not carry.
 */
export function bordersOf({ format }: Excel.SettableCellProperties): CellBorders {
  const { borders = {} } = format ?? {};
  checkCarried(borders, { top: true, bottom: true, left: true, right: true });
  const given = Object.entries(borders as Partial<Record<Edge, Excel.CellBorder>>);
  return Object.fromEntries(given.map(([edge, border]) => [edge, borderOf(border)]));
}

/** A border that is given a color or a weight alone is drawn, as in the host. */
function borderOf({ style = "Continuous", weight = "Thin", color = "#000000" }: Excel.CellBorder): Border {
  const line = {
    style: borderStyles.find((one) => one === style),
    weight: borderWeights.find((one) => one === weight),
  };
  if (!line.style || !line.weight) throw refuse("InvalidArgument");
  return { style: line.style, weight: line.weight, color };
}
