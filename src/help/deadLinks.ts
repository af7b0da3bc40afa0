/**
 * Links that lead nowhere within the help.
 *
 * @param links such as `papers.html` or `looks-wrong.html#check`.
 * @param pages the text of each page by its name.
 * @returns those whose page does not exist, or has no element with that id.
 */
export function deadLinks(links: readonly string[], pages: ReadonlyMap<string, string>): string[] {
  return links.filter((link) => {
    const [page = "", place] = link.split("#");
    const html = pages.get(page);
    return html === undefined || (place !== undefined && !html.includes(` id="${place}"`));
  });
}

/** The links of a page to pages of the help, and to places on itself. */
export function linksOn(page: string, html: string): string[] {
  const links = [...html.matchAll(/ href="([^"]*)"/g)].map(([, link = ""]) =>
    link.startsWith("#") ? page + link : link,
  );
  return links.filter((link) => /\.html(#|$)/.test(link));
}
