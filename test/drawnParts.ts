/** An element of a drawing: its name, its attributes, and the text right behind its opening tag. */
export interface DrawnPart {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly text: string;
}

/** The elements of SVG text in order, with text as a reader sees it. */
export function partsOf(svg: string, name?: string): DrawnPart[] {
  const parts = [...svg.matchAll(/<([a-zA-Z]+)((?: [\w:-]+="[^"]*")*)\/?>([^<]*)/g)].map(
    ([, found, attributes, text]) => ({
      name: found!,
      attributes: Object.fromEntries(
        [...attributes!.matchAll(/ ([\w:-]+)="([^"]*)"/g)].map(([, key, value]) => [key, value]),
      ),
      text: plain(text!),
    }),
  );
  return name === undefined ? parts : parts.filter((part) => part.name === name);
}

/** The words of a drawing, each with where its middle stands. */
export const wordsOf = (svg: string): string[] => partsOf(svg, "text").map(({ text }) => text);

const plain = (text: string): string =>
  text.replaceAll("&quot;", '"').replaceAll("&lt;", "<").replaceAll("&gt;", ">").replaceAll("&amp;", "&");

/** Paths of a drawing as "data, color, width". */
export const pathsOf = (svg: string): string[] =>
  partsOf(svg, "path").map(({ attributes: { d, stroke, "stroke-width": width } }) => `${d}, ${stroke}, ${width}`);

/** Text as "words at x,y" of its middle, with " turned n" where it is turned. */
export const placedWordsOf = (svg: string): string[] =>
  partsOf(svg, "text").map(({ text, attributes: { x, y, "font-size": size, transform } }) => {
    const turn = transform === undefined ? "" : ` turned ${/rotate\((\S+)/.exec(transform)![1]}`;
    return `${text} at ${x},${Math.round((Number(y) - Number(size) * 0.36) * 100) / 100}${turn}`;
  });
