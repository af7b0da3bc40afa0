import type { Anchor, Area } from "./plan";

/** The letters of a zero-based column: 0 is A, 26 is AA. */
export function columnLetters(column: number): string {
  let letters = "";
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return letters;
}

/** The relative A1 address of a zero-based cell: row 4, column 1 is B5. */
export function cellAddress({ row, column }: Anchor): string {
  return `${columnLetters(column)}${row + 1}`;
}

/** The relative A1 address of an area: `B5:D7`, or `B5` where it is one cell. */
export function areaAddress(area: Area): string {
  const first = cellAddress(area);
  if (area.rows === 1 && area.columns === 1) return first;
  return `${first}:${cellAddress({ row: area.row + area.rows - 1, column: area.column + area.columns - 1 })}`;
}
