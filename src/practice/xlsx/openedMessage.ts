import { writeAddress } from "../grid/a1";
import type { CellContent, CellsPort, SheetFacts } from "../grid/port";
import { counted } from "./context";
import type { ShownResult } from "./open/cells";
import type { OpenedBook } from "./open/openBook";

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
/** A cell may hold 32,767 letters. */
const longestShown = 60;

export function openedWords(
  news: OpenedNews,
  cells: Pick<CellsPort, "read">,
  sheets: readonly SheetFacts[],
): OpenedWords {
  const found = differences(cells, news.shown);
  const title = `“${news.fileName}” is open: ${counted(news.sheets, "sheet")}, ${counted(news.cells, "cell with contents", "cells with contents")}.`;
  if (news.formulas === 0) return { title, text: "", lines: [] };
  if (found.length === 0) {
    return {
      title,
      text: `All ${counted(news.formulas, "formula")} show the same results as in the file.`,
      lines: [],
    };
  }
  const lines = found.slice(0, mostLines).map((one) => differenceLine(one, sheets));
  const rest = found.length - lines.length;
  return {
    title,
    text:
      `${counted(found.length, "formula shows", "formulas show")} something different here than in the file. The practice ` +
      "workbook may lack a function or read one differently. Saving keeps the values from the file.",
    lines: rest > 0 ? [...lines, `and ${rest.toLocaleString("en-US")} more`] : lines,
  };
}

/** A formula that shows something else here than in the file it came from. */
export interface Difference {
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
  readonly inFile: string;
  readonly here: string;
}

/** Such as `Jobs!B7: 3 in the file, 4 here`. */
export function differenceLine(
  { sheetId, row, column, inFile, here }: Difference,
  sheets: readonly Pick<SheetFacts, "id" | "name">[],
): string {
  const sheet = sheets.find(({ id }) => id === sheetId)?.name;
  return `${writeAddress(sheet, { row, column, rowCount: 1, columnCount: 1 })}: ${inFile} in the file, ${here} here`;
}

/** Programs work with about fifteen digits, and not all of them in the same order. */
const tolerance = 1e-9;
const changing = /\b(?:NOW|TODAY|RAND|RANDBETWEEN|RANDARRAY)\s*\(/i;

/** Notes the formulas that give an error here and gave none in the file, so that no one takes it for the workbook's. */
export function noteBeyond(
  cells: Pick<CellsPort, "read" | "noteBeyond">,
  found: readonly Pick<Difference, "sheetId" | "row" | "column">[],
): void {
  for (const { sheetId, row, column } of found) {
    const [[content] = []] = cells.read({ sheetId, row, column, rowCount: 1, columnCount: 1 });
    if (content?.kind === "error") cells.noteBeyond(sheetId, row, column);
  }
}

/** Compares what formulas show with what they showed in the file. */
export function differences(cells: Pick<CellsPort, "read">, shown: readonly ShownResult[]): Difference[] {
  return shown.flatMap(({ sheetId, row, column, value }) => {
    const [[content] = []] = cells.read({ sheetId, row, column, rowCount: 1, columnCount: 1 });
    if (!content || isVolatile(content.formula) || isSame(value, content)) return [];
    return [{ sheetId, row, column, inFile: words(value), here: words(content.value) }];
  });
}

/** Whether a formula shows something else at any time, in any program. */
export function isVolatile(formula = ""): boolean {
  return changing.test(formula);
}

/** Whether a cell shows what its formula shows in the file. */
export function isSame(inFile: ShownResult["value"], { value: here, kind }: CellContent): boolean {
  if (typeof inFile === "number" && typeof here === "number") {
    return Math.abs(inFile - here) <= tolerance * Math.max(1, Math.abs(inFile), Math.abs(here));
  }
  // Files have room for the older errors only.
  if (kind === "error" && typeof inFile === "string" && inFile.startsWith("#")) return true;
  return inFile === here;
}

/** What a formula shows, in words. */
export function words(value: ShownResult["value"]): string {
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (value === "") return "nothing";
  const text = String(value);
  return text.length > longestShown ? `${text.slice(0, longestShown)}…` : text;
}
