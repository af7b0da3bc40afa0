import { must } from "../quantities/must";
import { areaAddress, quotedSheet } from "../spreadsheet/areas";
import type { Book, Cell, Target } from "./book";

/** `Jobs!F7`, `'Front yard'!F7:F9`. */
export function address(book: Book, place: Cell & { readonly rows?: number; readonly columns?: number }): string {
  return `${quotedSheet(must(book.grids[place.sheet]).name)}!${areaAddress(place)}`;
}

/** The address as it reads from a cell: without the sheet where it is the cell's own. */
export function addressFrom(book: Book, from: Cell, place: Cell | Target): string {
  return place.sheet === from.sheet ? areaAddress(place) : address(book, place);
}

/** A number as a finding shows it: cents of what is large, three digits of what is small, thousands apart. */
export function short(value: number): string {
  const size = Math.abs(value);
  if (size < 1) return value.toLocaleString("en-US", { maximumSignificantDigits: 3 });
  return value.toLocaleString("en-US", { maximumFractionDigits: size < 100 ? 3 : 2 });
}

/** A share as a finding shows it: `8 %`, `12.5 %`. */
export const percent = (share: number): string => `${short(Number((share * 100).toPrecision(4)))}%`;

/** `a`, `a and b`, `a, b and c`; of many the first few and how many more. */
export function list(items: readonly string[], most = 5): string {
  const shown = items.length > most ? [...items.slice(0, most - 1), `${items.length - most + 1} more`] : items;
  return shown.length < 2 ? (shown[0] ?? "") : `${shown.slice(0, -1).join(", ")} and ${shown.at(-1)}`;
}

/** What a cell is called in words: its label and heading in quotes, or its address. */
export function nameOf(book: Book, cell: Cell): string {
  const places = must(book.places[cell.sheet]);
  const words = [places.labelOf(cell.row, cell.column), places.headingOf(cell.row, cell.column)].filter(Boolean);
  return words.length > 0 ? words.map((word) => `“${word}”`).join(", ") : areaAddress(cell);
}

/** `1 row`, `3 rows`. */
export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;
