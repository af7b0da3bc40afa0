import { unescaped } from "./html";
import type { Page } from "./page";

/** A part of a help page, as the pane searches it: a heading with the text below it. */
export interface HelpPart {
  /** The page with the place on it, such as `limits.html#stone`. */
  readonly address: string;
  readonly page: string;
  /** Blank for what comes before a page's first heading. */
  readonly heading: string;
  readonly text: string;
}

/** Gives every heading of a page a place to link to. */
export function withPlaces(page: Page): Page {
  const taken = new Set([...page.content.matchAll(/ id="([^"]+)"/g)].flatMap(([, id]) => id ?? []));
  const content = page.content.replace(/<(h[23])>([\s\S]*?)<\/\1>/g, (_, tag: string, inner: string) => {
    const slug =
      plainText(inner)
        .toLowerCase()
        .replace(/[^a-z0-9]+/g, "-")
        .replace(/^-|-$/g, "") || "part";
    let id = slug;
    for (let count = 2; taken.has(id); count += 1) id = `${slug}-${count}`;
    taken.add(id);
    return `<${tag} id="${id}">${inner}</${tag}>`;
  });
  return { ...page, content };
}

/** The full text of pages whose headings have places, part by part. */
export function searchIndex(pages: readonly Page[]): HelpPart[] {
  return pages.flatMap(({ address, title, about, content }) => {
    const [before = "", ...parts] = content.split(/(?=<h[23] id=)/);
    return [
      { address, page: title, heading: "", text: `${about} ${plainText(before)}`.trim() },
      ...parts.map((part): HelpPart => {
        const [whole = "", id = "", heading = ""] = /^<h[23] id="([^"]+)">([\s\S]*?)<\/h[23]>/.exec(part) ?? [];
        const text = plainText(part.slice(whole.length));
        return { address: `${address}#${id}`, page: title, heading: plainText(heading), text };
      }),
    ].filter(({ text }) => text !== "");
  });
}

/** Markup as text: a row of a table is a sentence, its cells apart. */
function plainText(markup: string): string {
  return unescaped(
    markup
      .replace(/<\/tr>/g, ". ")
      .replace(/<[^>]*>/g, (tag) => (/^<\/?(?:a|b|code|data|em|kbd|output|strong|var)\b/.test(tag) ? "" : " ")),
  );
}
