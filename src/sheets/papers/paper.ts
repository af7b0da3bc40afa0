import type { DraftCell, DraftRow } from "../compose";
import type { LookName, PageSetup } from "../plan";
import { sentence } from "../typed";

/** The sizes of paper that an office prints on. */
export type Paper = NonNullable<PageSetup["paper"]>;

const MARGINS_IN = { top: 0.5, bottom: 0.625, left: 0.6, right: 0.6 };

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

/** A cell over several columns, and the blanks behind it. */
export function over(columns: number, cell: DraftCell): (DraftCell | undefined)[] {
  return [columns > 1 ? { ...cell, across: columns } : cell, ...Array<undefined>(columns - 1).fill(undefined)];
}

/** The first row of each group of rows that stay on one page. */
export function startsOf(groups: readonly (readonly DraftRow[])[]): number[] {
  let row = 0;
  return groups.map(({ length }) => {
    row += length;
    return row - length;
  });
}

/** Groups of rows under a heading, which stays on one page with the first of them. */
export function underHeading(heading: DraftRow, groups: readonly (readonly DraftRow[])[]): DraftRow[][] {
  const [first = [], ...others] = groups;
  return [[heading, ...first], ...others.map((rows) => [...rows])];
}

export const blankLine: DraftRow = { cells: [] };

export function titleLine(text: string): DraftRow {
  return { look: "title", cells: [textCell(text)] };
}

/** Headings of columns that hold numbers, which are at the right of their cells, and of those behind them. */
const NUMBER_HEADINGS = ["To order", "Needed", "Allowance", "Price", "Labor hr", "Planned"];
const NEXT_HEADINGS = ["Unit", "Where used", "Actual hr", "Actual"];

/** A heading across the page; the columns behind it say what they hold. */
export function headingLine(text: string, ...columns: readonly string[]): DraftRow {
  const lookOf = (column: string) =>
    NUMBER_HEADINGS.includes(column) ? "numberHeading" : NEXT_HEADINGS.includes(column) ? "textHeading" : undefined;
  return { look: "section", cells: [textCell(text), ...columns.map((column) => textCell(column, lookOf(column)))] };
}

/** A fact beside its label; a fact that is not known yet leaves a blank to write in. */
export function factLine(label: string, fact: string): DraftRow {
  return {
    cells: [textCell(label, "topLabel"), fact ? textCell(fact, "wrapped") : { content: "", look: "blankToFill" }],
  };
}
