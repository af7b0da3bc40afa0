import { parseA1Range, parseA1Ref, stringifyA1Ref } from "@borgar/fx";
import type { Rectangle } from "../../grid/a1";

/** A cell or a range as a file names it, without a sheet: `B2`, `$A$1:C4`; undefined for anything else. */
export function rectangleOf(address: string): Rectangle | undefined {
  const range = parseA1Range(address);
  if (!range || range.top === null || range.left === null) return undefined;
  const { top, left, bottom = top, right = left } = range;
  if (bottom === null || right === null) return undefined;
  return { row: top, column: left, rowCount: bottom - top + 1, columnCount: right - left + 1 };
}

/** The rectangles of a list of addresses with blanks between them, as files have them. */
export function rectanglesOf(list: string): Rectangle[] {
  return list.split(/\s+/).flatMap((address) => rectangleOf(address) ?? []);
}

/** Written for a file; `fixed` with dollar signs. */
export function addressOf({ row, column, rowCount, columnCount }: Rectangle, fixed = false): string {
  const [bottom, right] = [row + rowCount - 1, column + columnCount - 1];
  const signs = { $top: fixed, $left: fixed, $bottom: fixed, $right: fixed };
  return stringifyA1Ref({ range: { top: row, left: column, bottom, right, ...signs } });
}

/** A reference with dollar signs before all its parts; any other text as it is. */
export function fixedRange(reference: string): string {
  const parsed = parseA1Ref(reference);
  if (!parsed || !("range" in parsed) || !parsed.range) return reference;
  return stringifyA1Ref({
    ...parsed,
    range: { ...parsed.range, $top: true, $left: true, $bottom: true, $right: true },
  });
}
