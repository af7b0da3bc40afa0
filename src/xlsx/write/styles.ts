import type { FileColor } from "../colors";
import type { XmlElement } from "../read/xml";
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
import { XmlEdit } from "./edit";
import { HEAD, MAIN, tag } from "./xml";

const plain: FileStyle = { font: plainFont };
const sides = ["left", "right", "top", "bottom"] as const;

/** The lists of a part with styles, in the order that it has them: ECMA-376 18.8.39. */
const ORDER = "numFmts fonts fills borders cellStyleXfs cellXfs cellStyles dxfs tableStyles colors extLst".split(" ");

/**
 * The styles of a file while it is made. Each gets a number when it is first asked for. Those of a file that is changed
 * keep their numbers, and new ones come after them.
 */
export class StyleSheet {
  private readonly edit: XmlEdit | undefined;
  private readonly fonts: Parts;
  private readonly fills: Parts;
  private readonly borders: Parts;
  private readonly formats: Parts;
  private readonly cellStyles: Parts;
  private readonly rules: Parts;
  private readonly known = new Map<FileStyle, number>();
  /** The numbers of the formats that the file spells out, by how they are spelled. */
  private readonly ownFormats = new Map<string, number>();
  private readonly firstFormat: number;

  /**
   * @param styles the part of the file that is changed.
   * @param taken how many numbers of cells' styles the file uses; some use more than it has.
   */
  constructor(
    styles?: Uint8Array,
    private readonly taken = 0,
  ) {
    const edit = styles && new XmlEdit(styles);
    // A part without any style is as good as none.
    this.edit = edit?.root.children.some(({ name }) => name === "cellXfs") ? edit : undefined;
    const list = (name: string, first: readonly string[] = []) => {
      const known = this.listed(name).length;
      return known > 0 ? new Parts([], known) : new Parts(first);
    };
    this.fonts = list("fonts", [fontXml(plainFont)]);
    // Programs assume that the first two fills are these: ECMA-376 18.8.20, from memory.
    this.fills = list("fills", [fillXml({ pattern: "none" }), fillXml({ pattern: "gray125" })]);
    this.borders = list("borders", [bordersXml({})]);
    this.formats = new Parts([]);
    this.cellStyles = this.edit ? new Parts([], Math.max(taken, this.listed("cellXfs").length)) : new Parts([]);
    this.rules = list("dxfs");
    for (const { attributes } of this.listed("numFmts"))
      this.ownFormats.set(attributes.formatCode ?? "", Number(attributes.numFmtId));
    this.firstFormat = Math.max(firstOwnFormat, ...[...this.ownFormats.values()].map((number) => number + 1));
    if (this.edit) this.known.set(plain, 0);
    else this.ofCell(plain);
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

  /**
   * The number of a style of the file with what was changed in it; what was not changed stays as the file has it.
   *
   * @param number of the style that the cell has in the file.
   */
  changed(number: number, before: FileStyle, after: FileStyle): number {
    const { edit } = this;
    const xf = this.listed("cellXfs")[number];
    const isSame = (name: keyof FileStyle) => JSON.stringify(before[name]) === JSON.stringify(after[name]);
    if (!edit || !xf) return this.ofCell(after);
    const attributes: Record<string, string | number> = {};
    const part = (name: string, list: string) => {
      const known = this.listed(list)[Number(xf.attributes[name] ?? 0)];
      return known && edit.plain(known);
    };
    if (!isSame("numFmt"))
      Object.assign(attributes, { numFmtId: this.format(after.numFmt ?? "General"), applyNumberFormat: 1 });
    if (!isSame("font")) {
      const font = withChanges(part("fontId", "fonts"), fontXml(before.font ?? {}), fontXml(after.font ?? {}), FONT);
      Object.assign(attributes, { fontId: this.fonts.number(font), applyFont: 1 });
    }
    if (!isSame("fill"))
      Object.assign(attributes, { fillId: after.fill ? this.fills.number(fillXml(after.fill)) : 0, applyFill: 1 });
    if (!isSame("border")) {
      const [one, other] = [bordersXml(before.border ?? {}), bordersXml(after.border ?? {})];
      const border = withChanges(part("borderId", "borders"), one, other, BORDER);
      Object.assign(attributes, { borderId: this.borders.number(border), applyBorder: 1 });
    }
    const alignment = xf.children.find(({ name }) => name === "alignment");
    let inner = xf.children.map((child) => (child === alignment ? "" : edit.plain(child))).join("");
    if (isSame("alignment")) inner = (alignment ? edit.plain(alignment) : "") + inner;
    else {
      Object.assign(attributes, { applyAlignment: 1 });
      const gone = Object.keys(before.alignment ?? {}).map((name) => [name, undefined] as const);
      const all = { ...alignment?.attributes, ...Object.fromEntries(gone), ...after.alignment };
      inner = tag("alignment", all) + inner;
    }
    if (Object.keys(attributes).length === 0) return number;
    return this.cellStyles.number(tag("xf", { ...xf.attributes, ...attributes }, inner));
  }

  /** The number of a style that a rule gives to cells while its condition holds. */
  ofRule({ font, fill }: FileStyle): number {
    return this.rules.number(tag("dxf", {}, (font ? fontXml(font) : "") + (fill ? fillXml(fill) : "")));
  }

  /** Whether there is any style but the plain one and those of the file. */
  get isUsed(): boolean {
    return this.cellStyles.xmls.length > (this.edit ? 0 : 1) || this.rules.xmls.length > 0;
  }

  /** Plain styles for the numbers that the file uses and has none for, so that they don't become new ones. */
  private missing(): string[] {
    const lacking = this.edit && this.cellStyles.xmls.length > 0 ? this.taken - this.listed("cellXfs").length : 0;
    return Array.from({ length: Math.max(0, lacking) }, () => tag("xf", { xfId: 0 }));
  }

  /** The part of the file that holds the styles. */
  part(): Uint8Array {
    const { edit } = this;
    const formats = this.formats.xmls.map((code, index) => {
      return tag("numFmt", { numFmtId: this.firstFormat + index, formatCode: code });
    });
    const added: readonly (readonly [name: string, xmls: readonly string[]])[] = [
      ["numFmts", formats],
      ["fonts", this.fonts.xmls],
      ["fills", this.fills.xmls],
      ["borders", this.borders.xmls],
      ["cellXfs", [...this.missing(), ...this.cellStyles.xmls]],
      ["dxfs", this.rules.xmls],
    ];
    if (!edit) return new TextEncoder().encode(this.xml(new Map(added)));
    for (const [name, xmls] of added) {
      const known = edit.root.children.find((child) => child.name === name);
      if (xmls.length === 0) continue;
      if (known) {
        edit.set(known, { count: known.children.length + xmls.length });
        edit.append(known, xmls.join(""));
      } else edit.putInOrder(edit.root, name, list(name, xmls), ORDER);
    }
    return edit.bytes();
  }

  private xml(lists: ReadonlyMap<string, readonly string[]>): string {
    const plainXf = tag("xf", { numFmtId: 0, fontId: 0, fillId: 0, borderId: 0 });
    const fixed = new Map<string, readonly string[]>([
      ["cellStyleXfs", [plainXf]],
      ["cellStyles", [tag("cellStyle", { name: "Normal", xfId: 0, builtinId: 0 })]],
    ]);
    const inner = ORDER.map((name) => {
      const xmls = lists.get(name) ?? fixed.get(name) ?? [];
      return xmls.length > 0 || name === "dxfs" ? list(name, xmls) : "";
    });
    return HEAD + tag("styleSheet", { xmlns: MAIN }, inner.join(""));
  }

  private listed(name: string): readonly XmlElement[] {
    return this.edit?.root.children.find((child) => child.name === name)?.children ?? [];
  }

  private format(code: string): number {
    const known = numberOfFormat.get(code) ?? this.ownFormats.get(code);
    return known ?? this.firstFormat + this.formats.number(code);
  }
}

/** What a font and a border hold, in the order of the file: ECMA-376 18.8.22 and 18.8.4. */
const FONT = "b i strike condense extend outline shadow u vertAlign sz color name family charset scheme".split(" ");
const BORDER = "start end left right top bottom diagonal vertical horizontal".split(" ");

/** An element of the file with those children exchanged in which two others differ. */
function withChanges(file: string | undefined, before: string, after: string, order: readonly string[]): string {
  const [own, one, other] = [file ?? before, before, after].map((xml) => new XmlEdit(new TextEncoder().encode(xml)));
  const childrenOf = (edit: XmlEdit | undefined) =>
    new Map((edit?.root.children ?? []).map((child) => [child.name, edit?.source(child) ?? ""]));
  const [kept, from, to] = [childrenOf(own), childrenOf(one), childrenOf(other)];
  for (const name of new Set([...from.keys(), ...to.keys()])) {
    if (from.get(name) === to.get(name)) continue;
    const xml = to.get(name);
    if (xml === undefined) kept.delete(name);
    else kept.set(name, xml);
    // The name of a font counts before the scheme that it belongs to, and its family goes with it.
    if (name === "name") for (const bound of ["scheme", "family", "charset"]) kept.delete(bound);
  }
  const inOrder = [...kept].sort(([first], [second]) => order.indexOf(first) - order.indexOf(second));
  const { diagonalUp, diagonalDown } = other?.root.attributes ?? {};
  const attributes = { ...own?.root.attributes, diagonalUp, diagonalDown };
  return tag(own?.root.name ?? "", attributes, inOrder.map(([, xml]) => xml).join(""));
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

  /** @param before how many the file has already. */
  constructor(
    first: readonly string[],
    private readonly before = 0,
  ) {
    first.forEach((xml) => {
      this.number(xml);
    });
  }

  get xmls(): readonly string[] {
    return [...this.numbers.keys()];
  }

  number(xml: string): number {
    const number = this.numbers.get(xml) ?? this.before + this.numbers.size;
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
