import { damaged } from "../trouble";

/** An element as it is found: its attributes by name, and the text between its marks. */
export interface Element {
  readonly attributes: Readonly<Record<string, string>>;
  readonly inner: string;
}

/**
 * The text of a part of a workbook, ready to be searched: without comments, and without the prefix that some programs put
 * before every name.
 *
 * @throws FileTrouble for a part that declares names of its own, which no workbook does, and attacks do.
 */
export function readXml(bytes: Uint8Array): string {
  const isWide = (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff);
  const encoding = isWide ? (bytes[0] === 0xff ? "utf-16le" : "utf-16be") : "utf-8";
  const text = new TextDecoder(encoding).decode(bytes).replace(/<!--[\s\S]*?-->/g, "");
  if (/<!DOCTYPE/i.test(text)) throw damaged("it declares names of its own, as no workbook does");
  const prefix = /<([\w.-]+):(?:workbook|worksheet|sst|styleSheet|table|comments)[\s>]/.exec(text)?.[1];
  return prefix === undefined ? text : text.replaceAll(`<${prefix}:`, "<").replaceAll(`</${prefix}:`, "</");
}

/** The elements of a name, in order; those of the same name inside one of them are not looked for. */
export function* elements(xml: string, name: string): Generator<Element> {
  for (const { start, tagEnd, innerEnd } of places(xml, name)) {
    yield { attributes: attributesOf(xml.slice(start, tagEnd)), inner: xml.slice(tagEnd, innerEnd) };
  }
}

export function firstElement(xml: string, name: string): Element | undefined {
  return elements(xml, name).next().value ?? undefined;
}

export function countOf(xml: string, name: string): number {
  let count = 0;
  for (const _ of places(xml, name)) count += 1;
  return count;
}

/** The text without the elements of these names. */
export function without(xml: string, names: readonly string[]): string {
  return names.reduce((text, name) => {
    const kept: string[] = [];
    let from = 0;
    for (const { start, end } of places(text, name)) {
      kept.push(text.slice(from, start));
      from = end;
    }
    return kept.join("") + text.slice(from);
  }, xml);
}

interface Place {
  readonly start: number;
  /** Behind the ">" of the opening mark. */
  readonly tagEnd: number;
  readonly innerEnd: number;
  /** Behind the whole element. */
  readonly end: number;
}

function* places(xml: string, name: string): Generator<Place> {
  let at = 0;
  for (;;) {
    const start = markAt(xml, `<${name}`, at);
    if (start === undefined) return;
    const tagEnd = endOfTag(xml, start);
    if (tagEnd === undefined) return;
    if (xml[tagEnd - 2] === "/") {
      yield { start, tagEnd, innerEnd: tagEnd, end: tagEnd };
      at = tagEnd;
      continue;
    }
    const innerEnd = markAt(xml, `</${name}`, tagEnd);
    if (innerEnd === undefined) return;
    const end = endOfTag(xml, innerEnd) ?? xml.length;
    yield { start, tagEnd, innerEnd, end };
    at = end;
  }
}

/** Where a mark stands that is not merely the beginning of a longer name. */
function markAt(xml: string, mark: string, from: number): number | undefined {
  for (let at = xml.indexOf(mark, from); at >= 0; at = xml.indexOf(mark, at + 1)) {
    if (/[\s/>]/.test(xml[at + mark.length] ?? "")) return at;
  }
  return undefined;
}

function endOfTag(xml: string, start: number): number | undefined {
  let quote = "";
  for (let at = start; at < xml.length; at += 1) {
    const letter = xml[at] ?? "";
    if (quote) quote = letter === quote ? "" : quote;
    else if (letter === '"' || letter === "'") quote = letter;
    else if (letter === ">") return at + 1;
  }
  return undefined;
}

function attributesOf(tag: string): Record<string, string> {
  const found: Record<string, string> = {};
  for (const [, name = "", double, single] of tag.matchAll(/([\w:.-]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g)) {
    found[name] = unescaped(double ?? single ?? "");
  }
  return found;
}

const marks: Readonly<Record<string, string>> = { lt: "<", gt: ">", quot: '"', apos: "'", amp: "&" };

export function unescaped(text: string): string {
  return text.replace(/&(?:#x([\da-f]{1,6})|#(\d{1,7})|(lt|gt|quot|apos|amp));/gi, (all, hex, decimal, name) => {
    if (name) return marks[String(name).toLowerCase()] ?? all;
    const code = hex ? Number.parseInt(hex, 16) : Number(decimal);
    return code <= 0x10ffff ? String.fromCodePoint(code) : all;
  });
}

/** Text as it stands in a part, between marks or in an attribute. */
export function escaped(text: string): string {
  return (
    text
      // What no part may hold at all.
      .replace(/(?![\t\n\r])\p{Cc}|[\ufffe\uffff]/gu, "")
      .replaceAll("&", "&amp;")
      .replaceAll("<", "&lt;")
      .replaceAll(">", "&gt;")
      .replaceAll('"', "&quot;")
  );
}

/** A number that an attribute or element holds, kept within bounds; `plain` where it holds none. */
export function numberIn(text: string | undefined, plain: number, least: number, most: number): number {
  const number = Number.parseFloat(text ?? "");
  return Number.isNaN(number) ? plain : Math.min(most, Math.max(least, number));
}
