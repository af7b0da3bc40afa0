/**
 * The first cell of a range, or one below it.
 *
 * @example blockAddress("A4:A9", 2) // "A6"
 */
export function blockAddress(range: string, down = 0): string {
  const [, column = "", row = ""] = /^\$?([A-Z]+)\$?(\d+)/.exec(range) ?? [];
  return `${column}${Number(row) + down}`;
}
