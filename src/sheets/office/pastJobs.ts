import { type FoundPastJobs, morePastJobs, type PastLine } from "../papers/pastJobs";
import type { OfficeCell } from "./compareRates";
import { type OfficePastLine, pastLineFromFile } from "./officeFile";

/** The lines of a file that a workbook's list doesn't have: the same job, day, and measure is listed once. */
export function newPastLines(file: readonly OfficePastLine[], there: readonly PastLine[]): PastLine[] {
  const known = new Set(there.map(identity));
  return file.map(pastLineFromFile).filter((line) => {
    const isNew = !known.has(identity(line));
    known.add(identity(line));
    return isNew;
  });
}

function identity({ job, date, measure, unit }: PastLine): string {
  return JSON.stringify([job.trim().toLowerCase(), date, measure.toLowerCase(), unit.toLowerCase()]);
}

/** How many jobs lines tell of. */
export function countJobs(lines: readonly PastLine[]): number {
  return new Set(lines.map(({ job, date }) => JSON.stringify([job.trim().toLowerCase(), date]))).size;
}

/** The cells right below a list in which more of its lines go. */
export function cellsBelow(lines: readonly PastLine[], list: FoundPastJobs & { readonly sheet: string }): OfficeCell[] {
  const at = { row: list.area.row + list.area.rows, column: list.area.column };
  const { formulas, formats } = morePastJobs(lines, at);
  return formulas.flatMap((cells, row) =>
    cells.flatMap((content, column) => {
      if (content === "") return [];
      const numberFormat = formats[row]?.[column];
      const after = typeof content === "string" && content.startsWith("'") ? content.slice(1) : content;
      return {
        sheet: list.sheet,
        row: at.row + row,
        column: at.column + column,
        before: "",
        after,
        ...(numberFormat !== undefined && numberFormat !== "General" && { numberFormat }),
      };
    }),
  );
}
