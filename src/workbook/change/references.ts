import { type Anchor, cellAddress } from "../../spreadsheet/areas";
import { anchorOf } from "../read/areas";

/** What formulas elsewhere can read of something that is about to be removed. */
export interface PendingRemoval {
  /** Names of the workbook. */
  readonly names: readonly string[];
  /** Names of the sheets that are deleted. */
  readonly sheets: readonly string[];
  /** Whether a cell is removed, too. */
  readonly goes: (sheetId: string, cell: Anchor) => boolean;
}

/** Asks for all formulas of a workbook; readable after the request. */
export function queueReaders(worksheets: readonly Excel.Worksheet[]) {
  const sheets = worksheets.map(({ id, name }, index) => {
    const used = worksheets[index]!.getUsedRangeOrNullObject(true);
    used.load("rowIndex,columnIndex,formulas");
    return { id, name, used };
  });
  return {
    /** The cells whose formulas would show errors without what is removed. */
    cells: ({ names, sheets: goingSheets, goes }: PendingRemoval): string[] =>
      sheets.flatMap(({ id, name, used }) => {
        if (used.isNullObject) return [];
        const { row, column } = anchorOf(used);
        return used.formulas.flatMap((cells, down) =>
          cells.flatMap((formula: unknown, right) => {
            const cell = { row: row + down, column: column + right };
            if (!reads(formula, names, goingSheets) || goes(id, cell)) return [];
            return [`${name}!${cellAddress(cell)}`];
          }),
        );
      }),
  };
}

const TEXTS = /"(?:[^"]|"")*"/g;
/** A sheet before its "!", in quotes where it has more than letters and figures. */
const SHEETS = /(?:'((?:[^']|'')*)'|([^\s!'"(),;+\-*/^&=<>{}]+))!/g;
const NAMES = /[\p{L}_\\][\p{L}\d_.\\]*/gu;

/**
 * Whether a formula reads one of some names or sheets.
 *
 * @example reads("=Rate_waste*2", ["Rate_waste"], []) // true
 */
export function reads(formula: unknown, names: readonly string[], sheets: readonly string[]): boolean {
  if (typeof formula !== "string" || !formula.startsWith("=")) return false;
  const bare = formula.replace(TEXTS, '""');
  const isOneOf = (wanted: readonly string[], name: string) =>
    wanted.some((one) => one.toLowerCase() === name.toLowerCase());
  const read = [...bare.matchAll(SHEETS)].flatMap(([, quoted, plain = ""]) =>
    // A formula may read from one sheet to another: First:Last!B2.
    (quoted?.replaceAll("''", "'") ?? plain).split(":"),
  );
  if (read.some((name) => isOneOf(sheets, name))) return true;
  return [...bare.replace(SHEETS, " ").matchAll(NAMES)].some(([name]) => isOneOf(names, name));
}
