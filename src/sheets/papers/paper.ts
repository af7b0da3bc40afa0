import type { DraftCell, DraftRow } from "../compose";
import type { LookName, PageSetup } from "../plan";
import { sentence } from "../typed";

/** The sizes of paper that an office prints on. */
export type Paper = PageSetup["paper"];

const MARGINS_IN = { top: 0.6, bottom: 0.7, left: 0.6, right: 0.6 };

/** A page of a job's papers: as wide as the paper, its title on each page, with its number at the foot. */
export function pageOf(paper: Paper, more: Partial<PageSetup> = {}): PageSetup {
  return {
    paper,
    landscape: false,
    pagesWide: 1,
    headingRows: 1,
    marginsIn: MARGINS_IN,
    footer: "Page &P of &N",
    ...more,
  };
}

/** A cell with text, whatever it begins with. */
export function textCell(text: string, look?: LookName): DraftCell {
  return { content: sentence(text), ...(look && { look }) };
}

export const blankLine: DraftRow = { cells: [] };

export function titleLine(text: string): DraftRow {
  return { look: "title", cells: [textCell(text)] };
}

/** Headings of columns that hold numbers, which stand at the right of their cells. */
const NUMBER_HEADINGS = ["To order", "Needed", "Allowance", "Price", "Person-h", "Planned"];

/** A heading across the page; the columns behind it say what they hold. */
export function headingLine(text: string, ...columns: readonly string[]): DraftRow {
  const cells = columns.map((column) =>
    textCell(column, NUMBER_HEADINGS.includes(column) ? "numberHeading" : undefined),
  );
  return { look: "section", cells: [textCell(text), ...cells] };
}

/** A fact beside its label; a fact that is not known yet leaves a blank to write in. */
export function factLine(label: string, fact: string): DraftRow {
  return {
    cells: [textCell(label, "topLabel"), fact ? textCell(fact, "wrapped") : { content: "", look: "blankToFill" }],
  };
}
