import { parseA1Ref, type RangeA1 } from "@borgar/fx";
import { a1, prefix } from "../plain/spelling";
import { hiddenCharacter } from "./hiddenCharacters";
import { isOrdinaryFunction } from "./ordinaryFunctions";
import { refusedFunction } from "./refusedFunctions";

/** What a reference in a formula refers to, as far as its text tells. */
export type Reference =
  /** `sheet` is undefined where the reference names none. */
  | { readonly kind: "cells"; readonly sheet: string | undefined; readonly range: RangeA1 }
  | { readonly kind: "workbook" }
  | { readonly kind: "sheets" }
  | { readonly kind: "unread" };

const LONGEST_SHEET_NAME = 31;

/** Reads a reference to cells: `$B$2`, `Rates!B2:B9`, `'Front yard'!A:A`. */
export function referenceOf(text: string): Reference {
  if (text.includes("[")) return { kind: "workbook" };
  const read = parseA1Ref(text, { allowNamed: false });
  if (!read || !("range" in read)) return { kind: "unread" };
  const [sheet, ...more] = read.context ?? [];
  if (more.length > 0) return { kind: "workbook" };
  if (sheet?.includes(":")) return { kind: "sheets" };
  if (sheet !== undefined && !isSheetName(sheet)) return { kind: "workbook" };
  return { kind: "cells", sheet, range: read.range };
}

/** How cells of a named sheet are listed, however a formula spells them: `Rates!$B$2`. */
export function listed(sheet: string, range: RangeA1): string {
  return prefix(sheet) + a1({ ...range, $top: true, $left: true, $bottom: true, $right: true });
}

/** `Rates!b2` as it is listed; undefined where it is no reference to cells of one named sheet of the workbook. */
export function canonical(text: string): string | undefined {
  const reference = referenceOf(text);
  return reference.kind === "cells" && reference.sheet !== undefined
    ? listed(reference.sheet, reference.range)
    : undefined;
}

/** Whether a text can be a name of the workbook, which no function and no cell is called by. */
export function isWorkbookName(text: string): boolean {
  return (
    /^[\p{L}_][\p{L}\p{N}_.]{0,254}$/u.test(text) &&
    !/^(?:[rc]|r\d*c\d*|true|false)$/i.test(text) &&
    referenceOf(text).kind === "unread" &&
    !isOrdinaryFunction(text.toUpperCase()) &&
    refusedFunction(text.toUpperCase()) === undefined
  );
}

/** The one cell of a range; undefined where it is more, or has no end. */
export function oneCell({ top, left, bottom = top, right = left }: RangeA1) {
  if (typeof top !== "number" || typeof left !== "number" || top !== bottom || left !== right) return undefined;
  return { row: top, column: left };
}

/** Whether a range has four edges, all of them within so many rows and columns. */
export function isWithin(
  { top, left, bottom = top, right = left }: RangeA1,
  area: { readonly row: number; readonly column: number; readonly rows: number; readonly columns: number },
): boolean {
  if (typeof top !== "number" || typeof left !== "number") return false;
  if (typeof bottom !== "number" || typeof right !== "number") return false;
  const { row, column, rows, columns } = area;
  return top >= row && left >= column && bottom < row + rows && right < column + columns;
}

/** A range as it is written so many rows and columns further down and to the right, with its "$". */
export function movedBy(range: RangeA1, down: number, across: number): string {
  const by = (edge: number | null | undefined, distance: number) => (typeof edge === "number" ? edge + distance : null);
  const { top, left, bottom = top, right = left } = range;
  return a1({
    ...range,
    top: by(top, down),
    bottom: by(bottom, down),
    left: by(left, across),
    right: by(right, across),
  });
}

function isSheetName(name: string): boolean {
  return (
    name.length <= LONGEST_SHEET_NAME &&
    !/[[\]:*?/\\|]/.test(name) &&
    hiddenCharacter(name) === undefined &&
    name !== ""
  );
}
