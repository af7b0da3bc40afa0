import { FileRefusal } from "../../../xlsx/limits";
import { writeBook } from "../../../xlsx/write/book";
import type { OpenGrid } from "../../grid/library";
import type { CellsPort } from "../../grid/port";
import { Findings, type Saving } from "../context";
import type { FunctionNames } from "../formulas";
import type { OpenedFile } from "../open/openBook";
import type { Difference } from "../openedMessage";
import { saveIntoFile } from "./intoFile";
import { namesToFile, tablesToFile } from "./names";
import { pageOf, sheetToFile } from "./sheet";

/** A workbook's file, and what it does not hold. */
export interface SavedBook {
  readonly bytes: Uint8Array<ArrayBuffer>;
  /** A line each. */
  readonly lost: readonly string[];
  /** Formulas that no one touched, that show something else here, and keep what they show in the file. */
  readonly kept: readonly Difference[];
}

/** The file that a workbook was opened from. */
export interface FileBefore {
  readonly bytes: Uint8Array;
  /** What is read of it. */
  readonly opened: OpenedFile;
}

/** The author of every file; never a person or a machine. */
const author = "Practice workbook";
const longestName = 31;

/**
 * Makes an .xlsx file of the workbook: values, formulas with their results, looks, widths, names, rules, pictures, pages,
 * tables, and what the add-in keeps with the workbook. Of one that was opened from a file it makes a copy of that file
 * in which only what was changed is other. The workbook itself doesn't change.
 *
 * @param functions the add-in's functions, which have other names in files.
 * @param file the one that the workbook was opened from.
 * @throws FileRefusal in words for a sheet whose name no file may hold.
 */
export function saveBook(
  grid: OpenGrid,
  cells: Pick<CellsPort, "read">,
  functions: FunctionNames,
  file?: FileBefore,
): SavedBook {
  const startsIn1904 = file?.opened.parts.startsIn1904 === true;
  const saving: Saving = { grid, cells, functions, startsIn1904, kept: grid.workbook.save(), findings: new Findings() };
  checkNames(Object.values(saving.kept.sheets).map(({ name = "" }) => name));
  if (!file) return { bytes: newFile(saving), lost: saving.findings.lines(), kept: [] };
  const saved = saveIntoFile(saving, file.bytes, file.opened);
  return { ...saved, lost: saving.findings.lines() };
}

function newFile(saving: Saving): Uint8Array<ArrayBuffer> {
  const sheets = saving.kept.sheetOrder.map((id) => ({ id, data: saving.kept.sheets[id] ?? {} }));
  const front = saving.kept.sheetOrder.indexOf(saving.grid.workbook.getActiveSheet().getSheetId());
  return writeBook({
    sheets: sheets.map(({ id, data }) => ({ ...sheetToFile(saving, id, data), tables: tablesToFile(saving, id) })),
    names: namesToFile(
      saving,
      sheets.map(({ data }) => pageOf(data)),
    ),
    author,
    title: saving.kept.name,
    front: Math.max(0, front),
    settings: (saving.kept.custom?.settings ?? {}) as Record<string, unknown>,
  });
}

/** What a file forbids in the names of sheets. */
function checkNames(names: readonly string[]): void {
  for (const name of names) {
    const isFree = names.filter((other) => other.toLowerCase() === name.toLowerCase()).length === 1;
    if (name.length <= longestName && !/[[\]:*?/\\]|^'|'$|^$/.test(name) && name.toLowerCase() !== "history" && isFree)
      continue;
    throw new FileRefusal(
      `A file can't have a sheet named “${name}”: names have up to ${longestName} characters, none of [ ] : * ? / \\, and no two can match. Rename it, then save.`,
    );
  }
}
