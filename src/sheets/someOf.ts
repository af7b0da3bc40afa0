/**
 * The first few of a list of cells, for a sentence.
 *
 * @param most how many are named.
 * @example someOf(["B2", "B3", "B4", "B5"], 3) // "B2, B3, B4 and 1 more"
 */
export function someOf(cells: readonly string[], most: number): string {
  const more = cells.length - most;
  return cells.slice(0, most).join(", ") + (more > 0 ? ` and ${more} more` : "");
}
