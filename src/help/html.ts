/** Text as it is in a page: nothing in it is markup. */
export function escaped(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");
}

/** Text of a page as it reads: the reverse of {@link escaped}, each run of blanks as one space. */
export const unescaped = (markup: string): string =>
  markup
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&#39;", "'")
    .replaceAll("&amp;", "&")
    .replace(/\s+/g, " ")
    .trim();

export const code = (text: string) => `<code>${escaped(text)}</code>`;

export const link = (address: string, text: string) => `<a href="${escaped(address)}">${escaped(text)}</a>`;

/** A table that can be pushed sideways by itself, by keyboard too, and says what it is. */
export const wide = (markup: string, headings: readonly string[]) =>
  `<div class="wide" role="group" tabindex="0" aria-label="Table: ${escaped(headings.filter(Boolean).join(", "))}">${markup}</div>`;

/** A table with a heading row; the cells are markup. */
export function table(headings: readonly string[], rows: readonly (readonly string[])[]): string {
  const head = headings
    .map((heading) => (heading === "" ? "<td></td>" : `<th scope="col">${escaped(heading)}</th>`))
    .join("");
  const body = rows.map((row) => `<tr>${row.map((cell) => `<td>${cell}</td>`).join("")}</tr>`).join("\n");
  return wide(`<table><thead><tr>${head}</tr></thead><tbody>\n${body}\n</tbody></table>`, headings);
}

export const section = (title: string, ...content: readonly string[]) =>
  `<section>\n<h2>${escaped(title)}</h2>\n${content.join("\n")}\n</section>`;

/** A number as a page shows it: six digits are plenty for a bed. */
export const number = (value: number) =>
  Number(value.toPrecision(6)).toLocaleString("en-US", { maximumFractionDigits: 6 });
