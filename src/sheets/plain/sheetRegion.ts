import type { CellContent, Region } from "./region";

/** A sheet's used range, as the host gives it. */
export interface UsedRange {
  readonly row: number;
  readonly column: number;
  readonly formulas: readonly (readonly CellContent[])[];
  readonly values: readonly (readonly CellContent[])[];
  readonly numberFormat: readonly (readonly string[])[];
}

/**
 * A whole sheet as a region that begins at A1, so that a copy on a sheet of its own has every cell at its address.
 *
 * @param used what is used of the sheet.
 */
export function sheetRegion(sheetName: string, { row, column, formulas, values, numberFormat }: UsedRange): Region {
  const width = column + (formulas[0]?.length ?? 0);
  const padded = <T>(table: readonly (readonly T[])[], blank: T): T[][] => [
    ...Array.from({ length: row }, () => Array<T>(width).fill(blank)),
    ...table.map((cells) => [...Array<T>(column).fill(blank), ...cells]),
  ];
  return {
    sheetName,
    row: 0,
    column: 0,
    formulas: padded<CellContent>(formulas, ""),
    values: padded<CellContent>(values, ""),
    formats: padded(numberFormat, "General"),
  };
}
