import { SaxesParser } from "saxes";
import { damaged, FileRefusal } from "../limits";
import { allAtOnce, type Steps } from "../steps";

/** An element of a part, with the elements in it. */
export interface XmlElement {
  /** Without the prefix that some programs put before every name of a part. */
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly XmlElement[];
  /** The text between its tags, without that of the elements in it. */
  readonly text: string;
  readonly span: XmlSpan;
}

/** Where an element is in the text of its part: its first tag, what is in it, and its last tag. */
export interface XmlSpan {
  readonly start: number;
  readonly inside: number;
  readonly insideEnd: number;
  readonly end: number;
}

/** Follows a part while it is read, so that what comes by the hundred thousand need not be kept. */
export interface XmlVisitor {
  opened?(name: string, attributes: XmlElement["attributes"], span: Pick<XmlSpan, "start" | "inside">): void;
  /** Whether the element was taken, and is not to be kept in its parent. */
  closed?(element: XmlElement): boolean;
}

/** Elements inside of one another; a workbook needs about ten. */
const deepest = 200;

/**
 * Reads a part of a workbook.
 *
 * @throws FileRefusal where it is no XML, and for a part that declares names of its own, which no workbook does, and
 *   attacks do.
 */
export function readXml(bytes: Uint8Array, visitor: XmlVisitor = {}): XmlElement {
  return allAtOnce(xmlSteps(bytes, visitor));
}

/** The letters of a part that are read before the work stops for a moment. */
const lettersAStep = 65_536;

/** Reads a part of a workbook in steps. @throws FileRefusal as {@link readXml} does. */
export function* xmlSteps(bytes: Uint8Array, visitor: XmlVisitor = {}): Steps<XmlElement> {
  const parser = new SaxesParser<{ xmlns: false; position: false }>({ xmlns: false, position: false });
  const whole = xmlText(bytes);
  const open: OpenElement[] = [];
  let prefix: string | undefined;
  let root: XmlElement | undefined;
  const addText = (text: string) => {
    const inside = open.at(-1);
    if (inside) inside.text += text;
  };
  parser.on("doctype", () => {
    throw damaged("it defines XML entities, which no workbook does");
  });
  parser.on("opentag", ({ name: full, attributes }) => {
    if (open.length > deepest) throw damaged("its contents don't fit together");
    prefix ??= full.slice(0, full.indexOf(":") + 1);
    const name = prefix && full.startsWith(prefix) ? full.slice(prefix.length) : full;
    const inside = parser.position;
    // A tag has no other "<" in it.
    const span = { start: whole.lastIndexOf("<", inside - 1), inside, insideEnd: inside, end: inside };
    open.push({ name, attributes, children: [], text: "", span });
    visitor.opened?.(name, attributes, span);
  });
  parser.on("text", addText);
  parser.on("cdata", addText);
  parser.on("closetag", ({ isSelfClosing }) => {
    const element = open.pop();
    if (element && !isSelfClosing) {
      element.span.end = parser.position;
      element.span.insideEnd = whole.lastIndexOf("<", parser.position - 1);
    }
    if (!element || visitor.closed?.(element)) return;
    const parent = open.at(-1);
    if (parent) parent.children.push(element);
    else root = element;
  });
  try {
    for (let at = 0; at < whole.length; at += lettersAStep) {
      parser.write(whole.slice(at, at + lettersAStep));
      yield at / whole.length;
    }
    parser.close();
  } catch (cause) {
    throw cause instanceof FileRefusal ? cause : damaged("its contents don't fit together", cause);
  }
  if (!root) throw damaged("its contents don't fit together");
  return root;
}

interface OpenElement extends XmlElement {
  readonly children: XmlElement[];
  text: string;
  readonly span: { -readonly [key in keyof XmlSpan]: number };
}

/** The text of a part, in which elements have their spans. */
export function xmlText(bytes: Uint8Array): string {
  const isWide = (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff);
  return new TextDecoder(isWide ? (bytes[0] === 0xff ? "utf-16le" : "utf-16be") : "utf-8").decode(bytes);
}

/** The elements of a name, in order; those of the same name inside one of them are not looked for. */
export function* elements(inside: XmlElement | undefined, name: string): Generator<XmlElement> {
  for (const child of inside?.children ?? []) {
    if (child.name === name) yield child;
    else yield* elements(child, name);
  }
}

export function firstElement(inside: XmlElement | undefined, name: string): XmlElement | undefined {
  return elements(inside, name).next().value ?? undefined;
}

export function countOf(inside: XmlElement | undefined, name: string): number {
  let count = 0;
  for (const _ of elements(inside, name)) count += 1;
  return count;
}

/** The attributes of the first element of a name; none where there is no such element. */
export function attributesOf(inside: XmlElement | undefined, name: string): XmlElement["attributes"] {
  return firstElement(inside, name)?.attributes ?? {};
}

/** The element with the names in it as they are behind their prefixes, for parts that mix several vocabularies. */
export function withoutPrefixes(element: XmlElement): XmlElement {
  return {
    ...element,
    name: element.name.slice(element.name.indexOf(":") + 1),
    children: element.children.map(withoutPrefixes),
  };
}

export function isTrue(attribute: string | undefined): boolean {
  return attribute === "1" || attribute === "true";
}

/** A number that an attribute or element holds, kept within bounds; `plain` where it holds none. */
export function numberIn(text: string | undefined, plain: number, least: number, most: number): number {
  const number = Number.parseFloat(text ?? "");
  return Number.isNaN(number) ? plain : Math.min(most, Math.max(least, number));
}
