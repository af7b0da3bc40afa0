import type { Anchor, Area } from "../../spreadsheet/areas";
import { compose, type DraftRow } from "../compose";
import type { Plan } from "../plan";
import { sentence } from "../typed";

/** What a line of the list tells: a measure of one job, estimated and actual. */
export interface PastLine {
  readonly job: string;
  /** Serial number of the workbook's 1900 calendar. */
  readonly date: number;
  readonly measure: string;
  readonly unit: string;
  readonly estimated: number;
  readonly actual: number;
  /** The rate by which it was estimated; undefined where none is behind it. */
  readonly setThen?: number;
}

/** The sheet's name when it is new; the list is found by its heading row wherever it stands. */
export const PAST_JOBS_SHEET = "Past jobs";

export const PAST_JOBS_HEADING = [
  "Job",
  "Date",
  "What",
  "Unit",
  "Estimated",
  "Actual",
  "By rate of",
  "Actual ÷ estimated",
] as const;
const WIDTHS = [26, 13, 30, 12, 12, 12, 12, 19];
const TITLE = "Past jobs: estimated and actual";
const HOW =
  "One line per job and item. You can add, change, and delete lines by hand. Suggested rates come from this list.";

/** The list of past jobs with its first lines, for a workbook that has none yet. */
export function pastJobsSheet(lines: readonly PastLine[], at: Anchor): Plan {
  const rows: DraftRow[] = [
    { look: "title", cells: [{ content: TITLE }] },
    { cells: [{ content: HOW, look: "caution" }] },
    { cells: [] },
    { look: "section", cells: PAST_JOBS_HEADING.map((content) => ({ content })) },
    ...rowsOf(lines),
  ];
  return compose("list of past jobs", rows, WIDTHS, at);
}

/** More lines, to stand right below the list. */
export function morePastJobs(lines: readonly PastLine[], at: Anchor): Plan {
  return compose("lines of past jobs", rowsOf(lines), WIDTHS, at);
}

function rowsOf(lines: readonly PastLine[]): DraftRow[] {
  return lines.map(({ job, date, measure, unit, estimated, actual, setThen }, index) => ({
    cells: [
      { content: sentence(job) },
      { content: date, format: "date" },
      { content: sentence(measure) },
      { content: sentence(unit) },
      { content: estimated, format: "two", key: `estimated${index}` },
      { content: actual, format: "two", look: "input", key: `actual${index}` },
      { content: setThen ?? "" },
      {
        content: `=IF(AND(ISNUMBER({estimated${index}}),ISNUMBER({actual${index}}),{estimated${index}}>0),{actual${index}}/{estimated${index}},"")`,
        format: "two",
        look: "result",
      },
    ],
  }));
}

/** A list of past jobs that was found on a sheet. */
export interface FoundPastJobs {
  /** Heading row and lines. */
  readonly area: Area;
  readonly lines: readonly PastLine[];
  /** Sheet rows, counted from 0, whose figures cannot be used, such as a blank or text for a number. */
  readonly unusable: readonly number[];
}

/**
 * The list of past jobs on a sheet, found by its heading row.
 *
 * @param values what the sheet's used range shows.
 * @param at where that range begins.
 * @returns undefined where the sheet has none.
 */
export function findPastJobs(values: readonly (readonly unknown[])[], at: Anchor): FoundPastJobs | undefined {
  for (const [row, cells] of values.entries()) {
    const column = cells.findIndex((_, start) =>
      PAST_JOBS_HEADING.every((heading, index) => cells[start + index] === heading),
    );
    if (column < 0) continue;
    const below = values.slice(row + 1).map((line) => line.slice(column, column + PAST_JOBS_HEADING.length));
    const end = below.findIndex((line) => line.every((cell) => cell === "" || cell === null || cell === undefined));
    const listed = end < 0 ? below : below.slice(0, end);
    const lines = listed.map(lineOf);
    return {
      area: {
        row: at.row + row,
        column: at.column + column,
        rows: listed.length + 1,
        columns: PAST_JOBS_HEADING.length,
      },
      lines: lines.filter((line) => line !== undefined),
      unusable: lines.flatMap((line, index) => (line ? [] : [at.row + row + 1 + index])),
    };
  }
  return undefined;
}

function lineOf([job, date, measure, unit, estimated, actual, setThen]: readonly unknown[]): PastLine | undefined {
  if (!isAmount(estimated) || !isAmount(actual) || typeof measure !== "string" || measure === "") return undefined;
  return {
    job: String(job ?? ""),
    date: typeof date === "number" ? date : 0,
    measure,
    unit: String(unit ?? ""),
    estimated,
    actual,
    ...(isAmount(setThen) && { setThen }),
  };
}

function isAmount(value: unknown): value is number {
  return typeof value === "number" && Number.isFinite(value) && value >= 0;
}
