import { escaped, link } from "./html";

/** A page of the help: where it lies within the help's folder, what it is called, and what it is for. */
export interface Page {
  readonly address: string;
  readonly title: string;
  readonly about: string;
  /** What stands in it, as markup, without its title. */
  readonly content: string;
}

export const HOME = "index.html";

/** Nothing but the help's own style and pictures is fetched, and nothing runs. */
const POLICY = "default-src 'none'; style-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none'";

/** A page as a whole, with the ways to the others. */
export function framed(
  { address, title, about, content }: Page,
  ways: readonly Pick<Page, "address" | "title">[],
): string {
  const shown = ways.map((way) =>
    way.address === address ? `<span aria-current="page">${escaped(way.title)}</span>` : link(way.address, way.title),
  );
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
<nav aria-label="Help">
<ul>
${shown.map((way) => `<li>${way}</li>`).join("\n")}
</ul>
</nav>
</header>
<main>
<h1>${escaped(title)}</h1>
<p class="about">${escaped(about)}</p>
${content}
</main>
</body>
</html>
`;
}
