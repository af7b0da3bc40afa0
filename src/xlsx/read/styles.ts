import { colorOf } from "../colors";
import {
  type FileAlignment,
  type FileBorders,
  type FileFill,
  type FileFont,
  type FileLine,
  type FileStyle,
  knownFormats,
} from "../style";
import { firstElement, isTrue, numberIn, type XmlElement } from "./xml";

/** The looks that a file has numbers for. */
export interface FileStyles {
  /** Of cells. */
  readonly cells: readonly FileStyle[];
  /** Of rules that format cells while a condition holds. */
  readonly rules: readonly FileStyle[];
}

/** @param styles the part of the file that holds its styles, where it has one. */
export function readStyles(styles: XmlElement | undefined): FileStyles {
  const list = (name: string, of: string) =>
    firstElement(styles, name)?.children.filter((child) => child.name === of) ?? [];
  const formats = new Map<number, string>();
  for (const { attributes } of list("numFmts", "numFmt"))
    formats.set(Number(attributes.numFmtId), attributes.formatCode ?? "General");
  const fonts = list("fonts", "font").map(fontOf);
  const fills = list("fills", "fill").map(fillOf);
  const borders = list("borders", "border").map(bordersOf);
  const cells = list("cellXfs", "xf").map((xf): FileStyle => {
    const number = (name: string) => Number(xf.attributes[name] ?? 0);
    const format = number("numFmtId");
    const alignment = firstElement(xf, "alignment");
    const fill = fills[number("fillId")];
    const border = borders[number("borderId")];
    return {
      // Some programs write an empty format for the plain one.
      numFmt: formats.get(format) || knownFormats[format] || "General",
      font: fonts[number("fontId")] ?? {},
      ...(fill && { fill }),
      ...(border && { border }),
      ...(alignment && { alignment: alignmentOf(alignment) }),
    };
  });
  return { cells, rules: list("dxfs", "dxf").map(ruleStyleOf) };
}

function ruleStyleOf(dxf: XmlElement): FileStyle {
  const [font, fill] = [firstElement(dxf, "font"), firstElement(dxf, "fill")];
  const paint = fill && fillOf(fill);
  return { ...(font && { font: fontOf(font) }), ...(paint && { fill: paint }) };
}

function fontOf(font: XmlElement): FileFont {
  const held = (name: string) => font.children.find((child) => child.name === name)?.attributes;
  const flag = (name: string) => {
    const attributes = held(name);
    return attributes && (attributes.val === undefined || isTrue(attributes.val));
  };
  const [name, size, underline] = [held("name")?.val, held("sz")?.val, held("u")];
  const [bold, italic, strike] = [flag("b"), flag("i"), flag("strike")];
  const color = colorOf(font.children.find((child) => child.name === "color"));
  return {
    ...(name !== undefined && { name }),
    ...(size !== undefined && { size: numberIn(size, 11, 1, 409) }),
    ...(bold !== undefined && { bold }),
    ...(italic !== undefined && { italic }),
    ...(strike !== undefined && { strike }),
    ...(underline && { underline: underlineOf(underline.val) }),
    ...(color && { color }),
  };
}

function underlineOf(kind = "single"): boolean | "double" {
  return /^double/.test(kind) ? "double" : kind !== "none";
}

function fillOf(fill: XmlElement): FileFill | undefined {
  const stop = colorOf(firstElement(firstElement(fill, "gradientFill"), "color"));
  if (firstElement(fill, "gradientFill")) return { pattern: "gradient", ...(stop && { fgColor: stop }) };
  const pattern = firstElement(fill, "patternFill");
  if (!pattern) return undefined;
  const [fgColor, bgColor] = [colorOf(firstElement(pattern, "fgColor")), colorOf(firstElement(pattern, "bgColor"))];
  return {
    pattern: pattern.attributes.patternType ?? "none",
    ...(fgColor && { fgColor }),
    ...(bgColor && { bgColor }),
  };
}

function bordersOf(border: XmlElement): FileBorders {
  const line = (name: string): FileLine | undefined => {
    const side = border.children.find((child) => child.name === name);
    const color = colorOf(firstElement(side, "color"));
    return side?.attributes.style ? { style: side.attributes.style, ...(color && { color }) } : undefined;
  };
  const [top, bottom, left, right, diagonal] = ["top", "bottom", "left", "right", "diagonal"].map(line);
  const { diagonalUp, diagonalDown } = border.attributes;
  return {
    ...(top && { top }),
    ...(bottom && { bottom }),
    ...(left && { left }),
    ...(right && { right }),
    ...(diagonal && { diagonal: { ...diagonal, up: isTrue(diagonalUp), down: isTrue(diagonalDown) } }),
  };
}

function alignmentOf({ attributes }: XmlElement): FileAlignment {
  const { horizontal, vertical, wrapText, indent, textRotation } = attributes;
  return {
    ...(horizontal !== undefined && { horizontal }),
    ...(vertical !== undefined && { vertical }),
    ...(isTrue(wrapText) && { wrapText: true }),
    ...(indent !== undefined && { indent: numberIn(indent, 0, 0, 250) }),
    ...(textRotation !== undefined && { textRotation: numberIn(textRotation, 0, 0, 255) }),
  };
}
