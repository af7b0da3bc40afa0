import { readXml, type XmlElement, type XmlVisitor, xmlText } from "../read/xml";
import { escaped } from "./xml";

/** Attributes to be set; undefined takes one away. */
export type NewAttributes = Readonly<Record<string, string | number | undefined>>;

interface ElementEdit {
  attributes: NewAttributes;
  /** What goes in after what is there. */
  appended: string;
}

/** A part of a file in which some elements are changed. All else keeps its bytes. */
export class XmlEdit {
  readonly root: XmlElement;
  private readonly text: string;
  private readonly pieces: { readonly start: number; readonly end: number; readonly text: string }[] = [];
  private readonly elements = new Map<XmlElement, ElementEdit>();
  /** What is before every name of the part, such as "x:". */
  private readonly prefix: string;

  /** @throws FileRefusal where the part is no XML. */
  constructor(bytes: Uint8Array, visitor?: XmlVisitor) {
    this.text = xmlText(bytes);
    this.root = readXml(bytes, visitor);
    this.prefix = /^<([\w.-]+:)/.exec(this.text.slice(this.root.span.start, this.root.span.inside))?.[1] ?? "";
  }

  /** An element as the part has it. */
  source({ span }: Pick<XmlElement, "span">): string {
    return this.text.slice(span.start, span.end);
  }

  /** An element as the part has it, in names without the part's own prefix. */
  plain(element: Pick<XmlElement, "span">): string {
    const source = this.source(element);
    return this.prefix ? source.replaceAll(`<${this.prefix}`, "<").replaceAll(`</${this.prefix}`, "</") : source;
  }

  /** Puts XML in the place of an element; "" removes it. @param xml in names without a prefix. */
  replace({ span }: Pick<XmlElement, "span">, xml: string): void {
    this.piece(span.start, span.end, this.named(xml));
  }

  /** Puts text, as it is, in the place of a piece of the part. */
  piece(start: number, end: number, text: string): void {
    this.pieces.push({ start, end, text });
  }

  insertAfter({ span }: Pick<XmlElement, "span">, xml: string): void {
    this.piece(span.end, span.end, this.named(xml));
  }

  insertBefore({ span }: Pick<XmlElement, "span">, xml: string): void {
    this.piece(span.start, span.start, this.named(xml));
  }

  /** Puts XML into an element, after all that it holds. */
  append(element: XmlElement, xml: string): void {
    this.editOf(element).appended += this.named(xml);
  }

  set(element: XmlElement, attributes: NewAttributes): void {
    const edit = this.editOf(element);
    edit.attributes = { ...edit.attributes, ...attributes };
  }

  /**
   * Puts an element among the others of its parent, whose order is fixed: in the place of the one of its name, or after
   * those that come before it.
   *
   * @param order the names of all that the parent may hold, in order.
   */
  putInOrder(parent: XmlElement, name: string, xml: string, order: readonly string[]): void {
    const known = parent.children.find((child) => child.name === name);
    const place = order.indexOf(name);
    const before = parent.children.filter((child) => order.indexOf(child.name) < place).at(-1);
    if (known) this.replace(known, xml);
    else if (before) this.insertAfter(before, xml);
    else if (parent.children[0]) this.insertBefore(parent.children[0], xml);
    else this.append(parent, xml);
  }

  get isChanged(): boolean {
    return this.pieces.length > 0 || this.elements.size > 0;
  }

  /** The part with all changes in it. */
  bytes(): Uint8Array {
    const pieces = [...this.pieces, ...[...this.elements].flatMap(([element, edit]) => this.piecesOf(element, edit))]
      .map((piece, order) => ({ ...piece, order }))
      .sort((one, other) => one.start - other.start || rank(one) - rank(other) || one.order - other.order);
    let text = "";
    let at = 0;
    for (const piece of pieces) {
      // What is inside of something that was replaced went with it.
      if (piece.start < at) continue;
      text += this.text.slice(at, piece.start) + piece.text;
      at = piece.end;
    }
    text += this.text.slice(at);
    return new TextEncoder().encode(text.replace(/^(<\?xml[^>]*?)\s+encoding\s*=\s*(["'])utf-?16[^"']*\2/i, "$1"));
  }

  /** An element as the part has it, with other attributes. */
  sourceWith({ span }: Pick<XmlElement, "span">, attributes: NewAttributes): string {
    return this.tagWith({ span }, attributes) + this.text.slice(span.inside, span.end);
  }

  /** The first tag of an element with other attributes. */
  tagWith({ span }: Pick<XmlElement, "span">, attributes: NewAttributes): string {
    return Object.entries(attributes).reduce(
      (text, [name, value]) => {
        const known = new RegExp(`\\s+${name}\\s*=\\s*(?:"[^"]*"|'[^']*')`);
        const wanted = value === undefined ? "" : ` ${name}="${escaped(String(value))}"`;
        if (known.test(text)) return text.replace(known, () => wanted);
        return text.replace(/\s*\/?>$/, (end) => wanted + end.trim());
      },
      this.text.slice(span.start, span.inside),
    );
  }

  private piecesOf(element: XmlElement, { attributes, appended }: ElementEdit) {
    const { start, inside, insideEnd, end } = element.span;
    const tag = this.tagWith(element, attributes);
    const isEmpty = inside === end;
    if (isEmpty && appended) {
      const name = /^<([^\s/>]+)/.exec(tag)?.[1] ?? "";
      return [{ start, end, text: `${tag.replace(/\s*\/>$/, ">")}${appended}</${name}>` }];
    }
    return [
      { start, end: inside, text: tag },
      ...(appended ? [{ start: insideEnd, end: insideEnd, text: appended }] : []),
    ];
  }

  private editOf(element: XmlElement): ElementEdit {
    const known = this.elements.get(element) ?? { attributes: {}, appended: "" };
    this.elements.set(element, known);
    return known;
  }

  /** XML whose elements have the names of this part. */
  named(xml: string): string {
    return this.prefix ? xml.replace(/<(\/?)(?=[A-Za-z]\w*[\s/>])/g, `<$1${this.prefix}`) : xml;
  }
}

/** What is put in comes before what is replaced, and what is replaced as a whole before what is inside of it. */
function rank({ start, end }: { readonly start: number; readonly end: number }): number {
  return start === end ? Number.NEGATIVE_INFINITY : -end;
}
