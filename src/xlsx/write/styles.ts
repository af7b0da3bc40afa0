import type { FileColor } from "../colors";
import {
  type FileBorders,
  type FileFill,
  type FileFont,
  type FileLine,
  type FileStyle,
  firstOwnFormat,
  knownFormats,
  plainFont,
} from "../style";
import { HEAD, MAIN, tag } from "./xml";

const plain: FileStyle = { font: plainFont };
const sides = ["left", "right", "top", "bottom"] as const;

/** The styles of a file while it is made. Each gets a number when it is first asked for. */
export class StyleSheet {
  private readonly fonts = new Parts([fontXml(plainFont)]);
  /** Programs assume that the first two fills are these: ECMA-376 18.8.20, from memory. */
  private readonly fills = new Parts([fillXml({ pattern: "none" }), fillXml({ pattern: "gray125" })]);
  private readonly borders = new Parts([bordersXml({})]);
  private readonly formats = new Parts([]);
  private readonly cellStyles = new Parts([]);
  private readonly rules = new Parts([]);
  private readonly known = new Map<FileStyle, number>();

  constructor() {
    this.ofCell(plain);
  }

  /** The number of a cell's style; 0 for the plain one. */
  ofCell(style: FileStyle = plain): number {
    const known = this.known.get(style);
    if (known !== undefined) return known;
    const { numFmt = "General", font = plainFont, fill, border, alignment } = style;
    const number = this.cellStyles.number(
      tag(
        "xf",
        {
          numFmtId: this.format(numFmt),
          fontId: this.fonts.number(fontXml(font)),
          fillId: fill ? this.fills.number(fillXml(fill)) : 0,
          borderId: border ? this.borders.number(bordersXml(border)) : 0,
          xfId: 0,
          applyNumberFormat: numFmt !== "General",
          applyFont: true,
          applyFill: fill !== undefined,
          applyBorder: border !== undefined,
          applyAlignment: alignment !== undefined,
        },
        alignment && tag("alignment", { ...alignment }),
      ),
    );
    this.known.set(style, number);
    return number;
  }

  /** The number of a style that a rule gives to cells while its condition holds. */
  ofRule({ font, fill }: FileStyle): number {
    return this.rules.number(tag("dxf", {}, (font ? fontXml(font) : "") + (fill ? fillXml(fill) : "")));
  }

  /** The part of the file that holds the styles. */
  xml(): string {
    const formats = this.formats.xmls.map((code, index) => {
      return tag("numFmt", { numFmtId: firstOwnFormat + index, formatCode: code });
    });
    const plainXf = tag("xf", { numFmtId: 0, fontId: 0, fillId: 0, borderId: 0 });
    return (
      HEAD +
      tag(
        "styleSheet",
        { xmlns: MAIN },
        [
          formats.length > 0 ? list("numFmts", formats) : "",
          list("fonts", this.fonts.xmls),
          list("fills", this.fills.xmls),
          list("borders", this.borders.xmls),
          list("cellStyleXfs", [plainXf]),
          list("cellXfs", this.cellStyles.xmls),
          list("cellStyles", [tag("cellStyle", { name: "Normal", xfId: 0, builtinId: 0 })]),
          list("dxfs", this.rules.xmls),
        ].join(""),
      )
    );
  }

  private format(code: string): number {
    const known = numberOfFormat.get(code);
    return known ?? firstOwnFormat + this.formats.number(code);
  }
}

const numberOfFormat: ReadonlyMap<string, number> = new Map(
  // Those from 5 to 8 and from 37 on show what the reader's country has in their place.
  Object.entries(knownFormats).flatMap(([number, code]) =>
    isEverywhere(Number(number)) ? [[code, Number(number)]] : [],
  ),
);

function isEverywhere(number: number): boolean {
  return number <= 4 || (number >= 9 && number <= 13) || number === 49;
}

/** Pieces of XML, each once, in the order in which they came. */
class Parts {
  private readonly numbers = new Map<string, number>();

  constructor(first: readonly string[]) {
    first.forEach((xml) => {
      this.number(xml);
    });
  }

  get xmls(): readonly string[] {
    return [...this.numbers.keys()];
  }

  number(xml: string): number {
    const number = this.numbers.get(xml) ?? this.numbers.size;
    this.numbers.set(xml, number);
    return number;
  }
}

function list(name: string, xmls: readonly string[]): string {
  return tag(name, { count: xmls.length }, xmls.join(""));
}

function fontXml({ bold, italic, strike, underline, size, color, name }: FileFont): string {
  const flag = (element: string, is: boolean | undefined) => {
    if (is === undefined) return "";
    return is ? tag(element) : tag(element, { val: 0 });
  };
  return tag(
    "font",
    {},
    [
      flag("b", bold),
      flag("i", italic),
      flag("strike", strike),
      underline ? tag("u", underline === "double" ? { val: "double" } : {}) : "",
      size === undefined ? "" : tag("sz", { val: size }),
      colorXml("color", color),
      name === undefined ? "" : tag("name", { val: name }),
    ].join(""),
  );
}

function fillXml({ pattern, fgColor, bgColor }: FileFill): string {
  const colors = colorXml("fgColor", fgColor) + colorXml("bgColor", bgColor);
  return tag("fill", {}, tag("patternFill", { patternType: pattern }, colors));
}

function bordersXml({ diagonal, ...lines }: FileBorders): string {
  const { up = false, down = false } = diagonal ?? {};
  const line = (name: string, one: FileLine | undefined) => {
    return one ? tag(name, { style: one.style }, colorXml("color", one.color)) : tag(name);
  };
  return tag(
    "border",
    { diagonalUp: up, diagonalDown: down },
    sides.map((side) => line(side, lines[side])).join("") + line("diagonal", diagonal),
  );
}

function colorXml(name: string, color: FileColor | undefined): string {
  return color ? tag(name, { rgb: color.argb, theme: color.theme, tint: color.tint, indexed: color.indexed }) : "";
}
