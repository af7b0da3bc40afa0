import { areaAddress, quotedSheet } from "../spreadsheet/areas";
import type { Unchecked } from "./collect";
import type { Sorted } from "./dismissals";
import type { CellValue } from "./facts";
import type { Change, Level } from "./finding";

/** One row of a report, to be put on a sheet. Every cell is plain text, also where it shows a formula. */
export interface ReportRow {
  readonly kind: "title" | "heading" | "finding" | "note";
  /** Of a finding, for its look. */
  readonly level?: Level;
  readonly cells: readonly string[];
}

export const reportHeadings = [
  "Severity",
  "Where",
  "What",
  "What we found",
  "Why it matters",
  "What to do",
  "Suggested fix",
] as const;

export const LEVEL_WORDS: Readonly<Record<Level, string>> = {
  error: "Error",
  warning: "Warning",
  question: "Question",
};

/**
 * A check as rows for a sheet: the open findings, those that were dismissed with their reasons, and what was not
 * looked at.
 *
 * @param sorted findings parted by dismissals.
 * @param about what was checked and when, for the first row: "Yard office.xlsx, 2026-03-02".
 */
export function reportRows(sorted: Sorted, unchecked: readonly Unchecked[], about: string): ReportRow[] {
  const { open, dismissed } = sorted;
  const rows: ReportRow[] = [{ kind: "title", cells: [`Sheet check: ${about}`] }];
  rows.push({ kind: "note", cells: [summaryOf(sorted)] });
  if (open.length > 0) rows.push({ kind: "heading", cells: reportHeadings });
  for (const { level, where, title, seen, matters, todo, fix } of open) {
    rows.push({
      kind: "finding",
      level,
      cells: [LEVEL_WORDS[level], where, title, seen, matters, todo, fix ? fixWords(fix) : ""],
    });
  }
  if (dismissed.length > 0) {
    rows.push({ kind: "heading", cells: ["Ignored", "Where", "What", "Reason", "Date"] });
    for (const { finding, dismissal } of dismissed) {
      rows.push({ kind: "note", cells: ["Ignored", finding.where, finding.title, dismissal.reason, dismissal.on] });
    }
  }
  rows.push({ kind: "heading", cells: ["Not checked", "Where", "Why"] });
  for (const { what, where, why } of unchecked) rows.push({ kind: "note", cells: [what, where, why] });
  return rows;
}

/** The first line of a report and of the pane: how much was found, or that nothing was. */
export function summaryOf({ open, dismissed }: Sorted): string {
  const count = (level: Level, one: string, many: string) => {
    const number = open.filter((finding) => finding.level === level).length;
    return number === 0 ? [] : [`${number} ${number === 1 ? one : many}`];
  };
  const parts = [
    ...count("error", "error", "errors"),
    ...count("warning", "warning", "warnings"),
    ...count("question", "question", "questions"),
  ];
  const left = dismissed.length > 0 ? ` ${dismissed.length} ignored.` : "";
  return (parts.length === 0 ? "Nothing found. What wasn't checked is below." : `${parts.join(", ")}.`) + left;
}

/** `F7: 62 → =D7*E7`; of many the first. */
function fixWords(fix: readonly Change[]): string {
  const [first, ...rest] = fix;
  if (!first) return "";
  const more = rest.length > 0 ? ` and ${rest.length} more` : "";
  return `${quotedSheet(first.sheet)}!${areaAddress(first)}: ${shown(first.before)} → ${shown(first.after)}${more}`;
}

const shown = (value: CellValue) => (value === "" ? "blank" : String(value));
