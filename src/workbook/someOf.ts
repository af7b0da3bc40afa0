/**
 * The first few of a list of cells, for a sentence.
 *
 * @example someOf(["B2", "B3", "B4", "B5"]) // "B2, B3, B4 and 1 more"
 */
export function someOf(cells: readonly string[]): string {
  return cells.slice(0, 3).join(", ") + (cells.length > 3 ? ` and ${cells.length - 3} more` : "");
}
