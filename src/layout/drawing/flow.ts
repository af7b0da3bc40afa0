import { type Pen, textWidth } from "./pen";

/** A block of text under a drawing, and how high it is. */
export interface Block {
  readonly svg: string;
  readonly height: number;
}

/** A heading in bold, and items that follow one another in lines, or each on lines of its own. */
export interface Paragraph {
  readonly heading: string;
  readonly items: readonly string[];
  readonly stacked?: boolean;
}

/** Sets paragraphs under one another. */
export function paragraphs(pen: Pen, texts: readonly Paragraph[], left: number, top: number, width: number): Block {
  const step = pen.size * 1.4;
  let y = top + step / 2;
  const drawn: string[] = [];
  for (const { heading, items, stacked } of texts) {
    drawn.push(
      pen.text(heading, { x: left, y }, { size: pen.size, color: pen.colors.ink, anchor: "start", bold: true }),
    );
    y += step;
    const lines = stacked ? items.flatMap((item) => wrapped([item], width, pen.size)) : wrapped(items, width, pen.size);
    for (const line of lines) {
      drawn.push(pen.text(line, { x: left, y }, { size: pen.size, color: pen.colors.ink, anchor: "start" }));
      y += step;
    }
    y += step * 0.35;
  }
  return { svg: drawn.join(""), height: y - top - step / 2 };
}

/** Items one after another in lines of a width; an item that is too long by itself is broken between words. */
export function wrapped(items: readonly string[], width: number, size: number): string[] {
  const lines: string[] = [];
  let line = "";
  const add = (part: string, between: string) => {
    const longer = line === "" ? part : line + between + part;
    if (line !== "" && textWidth(longer, size) > width) {
      lines.push(line);
      line = part;
    } else line = longer;
  };
  for (const item of items) {
    if (textWidth(item, size) <= width) add(item, GAP);
    else
      item.split(" ").forEach((word, i) => {
        add(word, i === 0 ? GAP : " ");
      });
  }
  return line === "" ? lines : [...lines, line];
}

const GAP = " · ";
