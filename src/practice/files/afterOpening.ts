import { writeAddress } from "../grid/a1";
import type { CellsPort, SheetFacts } from "../grid/port";
import { differences } from "./compare";
import type { OpenedBook } from "./open/openBook";
import { counted } from "./words";

/** What is kept over the reload that opening a file takes. */
export interface OpenedNews extends Pick<OpenedBook, "sheets" | "front" | "cells" | "formulas" | "shown"> {
  readonly fileName: string;
}

/** What is said once a file is open. */
export interface OpenedWords {
  readonly title: string;
  readonly text: string;
  /** The formulas that show something else here than in the file. */
  readonly lines: readonly string[];
}

const mostLines = 12;

export function openedWords(
  news: OpenedNews,
  cells: Pick<CellsPort, "read">,
  sheets: readonly SheetFacts[],
): OpenedWords {
  const found = differences(cells, news.shown);
  const title = `“${news.fileName}” is open: ${counted(news.sheets, "sheet")}, ${counted(news.cells, "cell that holds", "cells that hold")} something.`;
  if (news.formulas === 0) return { title, text: "", lines: [] };
  if (found.length === 0) {
    return {
      title,
      text: `What the file showed for its ${counted(news.formulas, "formula")} is shown here, too.`,
      lines: [],
    };
  }
  const lines = found.slice(0, mostLines).map(({ sheetId, row, column, inFile, here }) => {
    const sheet = sheets.find(({ id }) => id === sheetId)?.name;
    const address = writeAddress(sheet, { row, column, rowCount: 1, columnCount: 1 });
    return `${address}: ${inFile} in the file, ${here} here`;
  });
  const rest = found.length - lines.length;
  return {
    title,
    text:
      `${counted(found.length, "formula shows", "formulas show")} something else here than in the file. The practice ` +
      "workbook may lack a function, or read one otherwise; go by your spreadsheet program.",
    lines: rest > 0 ? [...lines, `and ${rest.toLocaleString("en-US")} more`] : lines,
  };
}
