import type { DraftCell, DraftRow } from "../compose";
import type { LookName, PageSetup } from "../plan";
import { sentence } from "../typed";

/** The sizes of paper that an office prints on. */
export type Paper = PageSetup["paper"];

const MARGINS_IN = { top: 0.6, bottom: 0.7, left: 0.6, right: 0.6 };

/** A page of a job's papers: as wide as the paper, with its number at the foot. */
export function pageOf(paper: Paper, more: Partial<PageSetup> = {}): PageSetup {
  return { paper, landscape: false, pagesWide: 1, marginsIn: MARGINS_IN, footer: "Page &P of &N", ...more };
}

/** A cell with text, whatever it begins with. */
export function textCell(text: string, look?: LookName): DraftCell {
  return { content: sentence(text), ...(look && { look }) };
}

export const blankLine: DraftRow = { cells: [] };

export function titleLine(text: string): DraftRow {
  return { look: "title", cells: [textCell(text)] };
}

/** A heading across the page; the columns behind it say what they hold. */
export function headingLine(text: string, ...columns: readonly string[]): DraftRow {
  return { look: "section", cells: [textCell(text), ...columns.map((column) => textCell(column, "textHeading"))] };
}

/** A fact beside its label; a fact that is not known yet leaves a blank to write in. */
export function factLine(label: string, fact: string): DraftRow {
  return { cells: [textCell(label, "label"), fact ? textCell(fact, "wrapped") : { content: "", look: "blankToFill" }] };
}

/** A text in lines of at most so many characters, for cells that cannot grow with what stands in them. */
export function inLines(text: string, characters: number): string[] {
  const lines = [""];
  for (const word of text.split(" ")) {
    const line = lines.at(-1)!;
    if (line === "") lines[lines.length - 1] = word;
    else if (line.length + 1 + word.length <= characters) lines[lines.length - 1] = `${line} ${word}`;
    else lines.push(word);
  }
  return lines;
}
