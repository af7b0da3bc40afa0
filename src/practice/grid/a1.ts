import { MAX_COLS, MAX_ROWS, parseA1Ref, stringifyA1Ref } from "@borgar/fx";
import type { Area } from "./port";

export const sheetRows = MAX_ROWS + 1;
export const sheetColumns = MAX_COLS + 1;

/** The part of an area that does not depend on a sheet. */
export type Rectangle = Omit<Area, "sheetId">;

/**
 * Reads an address as a person writes it: `B2`, `$A$1:C4`, `A:C`, `3:5`, `'Spring jobs'!A1`.
 *
 * @param address The address; a sheet's name before it is optional.
 * @returns The rectangle, counted from 0, and the sheet's name where one was given; undefined for anything else.
 */
export function readAddress(address: string): { sheetName: string | undefined; rectangle: Rectangle } | undefined {
  const reference = parseA1Ref(address.trim());
  if (!reference || !("range" in reference) || !reference.range) return undefined;
  const { top, left, bottom, right } = reference.range;
  const row = top ?? 0;
  const column = left ?? 0;
  return {
    sheetName: reference.context?.[0],
    rectangle: {
      row,
      column,
      rowCount: (bottom ?? MAX_ROWS) - row + 1,
      columnCount: (right ?? MAX_COLS) - column + 1,
    },
  };
}

/**
 * Writes an address as the host does: `Jobs!A1:B3`, `'Spring jobs'!C2`, `Jobs!A:A`.
 *
 * @param sheetName The sheet's name, or nothing for an address without one.
 */
export function writeAddress(sheetName: string | undefined, rectangle: Rectangle): string {
  const wholeRows = rectangle.column === 0 && rectangle.columnCount >= sheetColumns;
  const wholeColumns = rectangle.row === 0 && rectangle.rowCount >= sheetRows;
  return stringifyA1Ref({
    ...(sheetName === undefined ? {} : { context: [sheetName] }),
    range: {
      top: wholeColumns ? null : rectangle.row,
      bottom: wholeColumns ? null : rectangle.row + rectangle.rowCount - 1,
      left: wholeRows ? null : rectangle.column,
      right: wholeRows ? null : rectangle.column + rectangle.columnCount - 1,
    },
  });
}
