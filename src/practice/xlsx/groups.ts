import { SHEET_ROWS } from "../../spreadsheet/areas";
import { numberIn } from "../../xlsx/read/xml";
import type { NewSheet } from "../../xlsx/write/sheet";
import type { RowGroup } from "../grid/port";

/** A row of a file is in at most so many groups: ECMA-376 18.3.1.73. */
const DEEPEST = 7;

/** In how many groups a row of a file is, by its attributes. */
export const levelOf = ({ outlineLevel }: Readonly<Record<string, string>>): number =>
  Math.round(numberIn(outlineLevel, 0, 0, DEEPEST));

/**
 * The groups behind the levels of rows, outer ones first.
 *
 * @param levels each row with the number of groups that it is in; rows in none may be left out.
 * @example groupsOf([[4, 1], [5, 2], [6, 1]]) // rows 4 to 6, and inside them row 5
 */
export function groupsOf(levels: readonly (readonly [row: number, level: number])[]): RowGroup[] {
  const inOrder = [...levels].filter(([row]) => row < SHEET_ROWS).sort(([one], [other]) => one - other);
  return Array.from({ length: DEEPEST }, (_, outside) => outside).flatMap((outside) => {
    const groups: { row: number; rowCount: number }[] = [];
    for (const [row, level] of inOrder) {
      if (level <= outside) continue;
      const last = groups.at(-1);
      if (last && last.row + last.rowCount === row) last.rowCount += 1;
      else groups.push({ row, rowCount: 1 });
    }
    return groups;
  });
}

type FileRows = NonNullable<NewSheet["rows"]>;

/** Rows of a file with the levels of their groups, and the marks by which programs know collapsed ones. */
export function withGroups(rows: FileRows, groups: readonly RowGroup[]): FileRows {
  const all = new Map(rows);
  const isHidden = (row: number) => rows.get(row)?.hidden === true;
  for (const { row: first, rowCount } of groups) {
    const end = first + rowCount;
    for (let row = first; row < end; row += 1) {
      const outlineLevel = Math.min(DEEPEST, (all.get(row)?.outlineLevel ?? 0) + 1);
      all.set(row, { ...all.get(row), outlineLevel });
    }
    if (isHidden(first) && !isHidden(end)) all.set(end, { ...all.get(end), collapsed: true });
  }
  return all;
}
