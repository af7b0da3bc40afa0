import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { wide } from "./html";
import type { Page } from "./page";

/**
 * The pages of the guide, in the order of the numbers before their names: `1-first-estimate.html` becomes
 * `first-estimate.html`. Each file is a fragment that begins with its title in `<h1>` and, in the first `<p>`, what
 * it is about, in plain text; pictures lie in `guide/pictures` and are addressed as `pictures/name.png`.
 *
 * @throws Error for a file that does not begin so.
 */
export function guidePages(folder: string): Page[] {
  if (!existsSync(folder)) return [];
  const names = readdirSync(folder)
    .filter((name) => name.endsWith(".html"))
    .sort((one, other) => Number.parseInt(one, 10) - Number.parseInt(other, 10));
  return names.map((name) => {
    const text = readFileSync(join(folder, name), "utf8");
    const [, title, about, content] = BEGINNING.exec(text) ?? [];
    if (title === undefined || about === undefined || content === undefined)
      throw new Error(`The guide page ${name} must begin with <h1>its title</h1> and <p>what it is about</p>.`);
    return {
      address: name.replace(/^\d+-/, ""),
      title: plain(title),
      about: plain(about),
      content: `<div class="guide">${scrollable(openable(content))}</div>`,
    };
  });
}

/** A picture of a sheet is wide: pressing it opens it alone, where it can be made larger. */
const openable = (content: string) =>
  content.replace(/<figure>\s*(<img src="([^"]+)"[^>]*>)/g, '<figure>\n<a href="$2">$1</a>');

/** Tables of the guide are as wide as their words; the page is not. */
const scrollable = (content: string) =>
  content.replace(/<table>[\s\S]*?<\/table>/g, (markup) =>
    wide(
      markup,
      [...markup.matchAll(/<th[^>]*>([^<]*)</g)].map(([, heading = ""]) => plain(heading)),
    ),
  );

const BEGINNING = /^\s*<h1>([^<]+)<\/h1>\s*<p>([^<]+)<\/p>([\s\S]*)$/;

const plain = (text: string) =>
  text
    .replace(/\s+/g, " ")
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&amp;", "&")
    .trim();
