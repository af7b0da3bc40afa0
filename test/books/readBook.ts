import { readFile, writeFile } from "node:fs/promises";
import { basename } from "node:path";
import { callFunction } from "../../src/pane/callFunction";
import { differenceLine, differences, noteBeyond } from "../../src/practice/xlsx/openedMessage";
import type { WorkbookFacts } from "../../src/review/facts";
import { reviewAtOnce } from "../../src/review/review";
import { cellAddress } from "../../src/spreadsheet/areas";
import { readForCheck } from "../../src/workbook/read/workbook";
import { FileRefusal } from "../../src/xlsx/limits";
import { openFile, savedFile } from "../files";
import { createProductHost } from "../productHost";
import { knowledge } from "../reviewWorkbook";

/** What became of one workbook. */
export interface BookReport {
  readonly name: string;
  /** Refused in words, or failed in a way that nobody foresaw; the one that runs this adds "stopped". */
  readonly status: "opened" | "refused" | "failed" | "stopped";
  /** What a person is told. */
  readonly words: string;
  /** What isn't shown here and stays in the copy, a line each. */
  readonly unseen: readonly string[];
  /** What the copy lacks, a line each. */
  readonly lost: readonly string[];
  /** Formulas that show something else than in the file, such as `Sheet1!B7: 3 in the file, 4 here`. */
  readonly differs: readonly string[];
  readonly findings: readonly BookFinding[];
  readonly milliseconds: { readonly open?: number; readonly check?: number; readonly save?: number };
  /** The path of the copy. */
  readonly saved?: string;
}

interface BookFinding {
  readonly sheet: string;
  readonly rule: string;
  readonly level: string;
  readonly cells: readonly string[];
  readonly seen: string;
}

/** Opens a workbook as the practice page does, checks it as the pane does, and saves it. */
export async function readBook(path: string, copy?: string): Promise<BookReport> {
  const milliseconds: { open?: number; check?: number; save?: number } = {};
  const timed = async <T>(step: keyof typeof milliseconds, work: () => Promise<T>): Promise<T> => {
    const start = performance.now();
    try {
      return await work();
    } finally {
      milliseconds[step] = Math.round(performance.now() - start);
    }
  };
  const report = { name: basename(path), unseen: [], lost: [], differs: [], findings: [], milliseconds };
  const reader = await createProductHost();
  let host: typeof reader | undefined;
  try {
    const bytes = await readFile(path);
    const opened = await timed("open", () => openFile(reader, bytes));
    host = opened.host;
    const { unseen, lost, notes, shown } = opened.opened;
    const sheets = host.grid.sheets.list();
    const found = differences(host.grid.cells, shown);
    noteBeyond(host.grid.cells, found);
    const differs = found.map((one) => differenceLine(one, sheets));
    const { findings, why } = await timed("check", checkNow);
    const saved = await timed("save", () => savedFile(opened.host));
    if (copy) await writeFile(copy, saved.bytes);
    return {
      ...report,
      status: "opened",
      words: [...notes, ...why].join(" "),
      unseen,
      lost: [...new Set([...lost, ...saved.lost])],
      differs,
      findings,
      ...(copy && { saved: copy }),
    };
  } catch (error) {
    if (error instanceof FileRefusal) return { ...report, status: "refused", words: error.message };
    return { ...report, status: "failed", words: (error as Error).stack ?? String(error) };
  } finally {
    host?.dispose();
    reader.dispose();
  }
}

/** What the check finds; or why it can't, in the words that the pane has for it. */
async function checkNow(): Promise<{ readonly findings: readonly BookFinding[]; readonly why: readonly string[] }> {
  const read = await readForCheck().catch((error: Error) => {
    if (error.name !== "WorkbookFailure") throw error;
    return error.message;
  });
  if (typeof read === "string") return { findings: [], why: [`Check: ${read}`] };
  return { findings: findingsIn(read.facts), why: [] };
}

function findingsIn(facts: WorkbookFacts): BookFinding[] {
  const { findings } = reviewAtOnce(facts, knowledge, { scope: { kind: "workbook" }, call: callFunction });
  return findings.map(({ rule, level, places, seen }) => ({
    sheet: places[0]?.sheet ?? "",
    rule,
    level,
    cells: places.flatMap(({ row, column, rows, columns }) =>
      Array.from({ length: rows * columns }, (_, place) =>
        cellAddress({ row: row + Math.floor(place / columns), column: column + (place % columns) }),
      ),
    ),
    seen,
  }));
}
