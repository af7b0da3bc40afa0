import { escaped, link } from "./html";

/** A page of the help: where it lies within the help's folder, what it is called, and what it is for. */
export interface Page {
  readonly address: string;
  readonly title: string;
  readonly about: string;
  /** What is in it, as markup, without its title. */
  readonly content: string;
}

export const HOME = "index.html";

/** Nothing but the help's own style and pictures is fetched, and nothing runs. */
const POLICY = "default-src 'none'; style-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none'";

/** Where another page is, and what it is called. */
export type Way = Pick<Page, "address" | "title">;

/**
 * A page as a whole, with a way back to the list of all pages, the pages of the guide, and for a page of the guide the
 * one before and the one after it.
 *
 * @param guide the pages of the guide in their order.
 */
export function framed(page: Page, guide: readonly Way[]): string {
  const { address, title, about, content } = page;
  const place = guide.findIndex((way) => way.address === address);
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="${POLICY}">
<title>${escaped(title)} – Bedrow help</title>
<link rel="stylesheet" href="help.css">
</head>
<body>
<header>
<p>${address === HOME ? "Bedrow help" : link(HOME, "Bedrow help")}</p>
</header>
<div class="frame">
<main>
<h1>${escaped(title)}</h1>
<p class="about">${escaped(about)}</p>
${content}
${place < 0 ? "" : turning(guide[place - 1], guide[place + 1])}
</main>
${address === HOME ? "" : pagesOf(guide, address)}
</div>
</body>
</html>
`;
}

/** From one page of the guide to the next. */
function turning(before: Way | undefined, after: Way | undefined): string {
  const to = (way: Way | undefined, words: string, rel: string) =>
    way ? `<p>${words}<br><a rel="${rel}" href="${escaped(way.address)}">${escaped(way.title)}</a></p>` : "";
  return `<nav class="turning" aria-label="Before and after">
${to(before, "Before", "prev")}
${to(after, "Next", "next")}
</nav>`;
}

/** The guide's pages, beside a page where there is room and below it where there is none. */
function pagesOf(guide: readonly Way[], address: string): string {
  const shown = guide.map((way) =>
    way.address === address ? `<span aria-current="page">${escaped(way.title)}</span>` : link(way.address, way.title),
  );
  return `<nav class="pages" aria-label="Guide">
<h2>Guide</h2>
<ol>
${shown.map((way) => `<li>${way}</li>`).join("\n")}
</ol>
<p>${link(HOME, "All functions")}</p>
</nav>`;
}
