import { must } from "../../quantities/must";

export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** An SVG element as text; numbers are written to the hundredth, attributes that are undefined are left out. */
export function element(name: string, attributes: Attributes, ...children: readonly string[]): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${typeof value === "number" ? short(value) : escaped(must(value))}"`)
    .join("");
  return children.length === 0 ? `<${name}${written}/>` : `<${name}${written}>${children.join("")}</${name}>`;
}

/** Text as it may be in an element or an attribute. Control characters, which XML forbids, are dropped. */
export function escaped(text: string): string {
  return (
    text
      // biome-ignore lint/suspicious/noControlCharactersInRegex: those are what is taken out
      .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, "")
      .replace(/&/g, "&amp;")
      .replace(/</g, "&lt;")
      .replace(/>/g, "&gt;")
      .replace(/"/g, "&quot;")
  );
}

/** A number to the hundredth, without zeros that say nothing. */
export const short = (value: number): string => String(Math.round(value * 100) / 100 + 0);
