import type { Area } from "../sheets/plan";

const CELL = /\$?([A-Z]+)\$?(\d+)/g;

/**
 * The area of an address that the host gives, such as `Jobs!B2:D7` or `B2`.
 *
 * @example areaOfAddress("Jobs!B2:D7") // { row: 1, column: 1, rows: 6, columns: 3 }
 */
export function areaOfAddress(address: string): Area {
  const cells = address.slice(address.lastIndexOf("!") + 1).toUpperCase();
  const [first, last = first] = [...cells.matchAll(CELL)].map(([, letters, row]) => ({
    row: Number(row) - 1,
    column: columnOf(letters!),
  }));
  if (!first || !last) throw new RangeError(`${address} is no address of cells.`);
  return { ...first, rows: last.row - first.row + 1, columns: last.column - first.column + 1 };
}

function columnOf(letters: string): number {
  return [...letters].reduce((column, letter) => column * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}
