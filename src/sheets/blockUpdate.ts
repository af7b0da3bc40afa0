import { type Anchor, cellAddress } from "../spreadsheet/areas";
import type { DraftCell, DraftRow } from "./compose";

/*
 * A block is updated where it is: the rows it was printed from, the rows it is to have, and what is in the sheet by now
 * are compared cell by cell. What the person changed in the sheet is told from what the product wrote there, and kept.
 */

export type Content = string | number | boolean;

/** A block's columns as they are in the sheet, from its first row to its last. */
export interface BlockCells {
  readonly at: Anchor;
  /** Contents: formulas with their "=", text that begins like one with its mark. */
  readonly contents: readonly (readonly Content[])[];
}

/** A cell that is to change, or that holds what the person put there. */
export interface CellUpdate extends Anchor {
  /** What the cell is, for the person: "Width", "Stone, markup". */
  readonly label: string;
  readonly before: Content;
  readonly after: Content;
}

/** What an update comes to. */
export interface BlockUpdate {
  /** Cells that the new rows change. */
  readonly changes: readonly CellUpdate[];
  /** Cells that were changed by hand in the sheet, with what the new rows have for them. */
  readonly byHand: readonly CellUpdate[];
  /** Labels of rows that the person put in. */
  readonly ownRows: readonly string[];
  /** Whether the new rows are other rows, so that cells would have to move. */
  readonly isReshaped: boolean;
  /** Labels of rows that are gone from the sheet, where a changed formula needs them. */
  readonly missing: readonly string[];
}

/**
 * Compares a block's rows with the rows that it is to have, and with its cells.
 *
 * @param previous the rows for what the sheet holds now; further ones that would be just as right, such as with a rate
 *   followed that was typed over.
 * @param next the rows that it is to have.
 */
export function blockUpdate(
  [previous, ...others]: readonly [readonly DraftRow[], ...(readonly DraftRow[])[]],
  next: readonly DraftRow[],
  there: BlockCells,
): BlockUpdate {
  const places = alignRows(previous, there.contents);
  const isReshaped = !haveSameShape(previous, next);
  const changes: CellUpdate[] = [];
  const byHand: CellUpdate[] = [];
  const missing = new Set<string>();
  const addresses = addressesOf(previous, places, there.at);
  previous.forEach(({ cells }, index) => {
    const place = places[index];
    if (place === undefined) return;
    const wanted = isReshaped ? cells : (next[index]?.cells ?? []);
    for (let column = 0; column < Math.max(cells.length, wanted.length); column += 1) {
      const [was, is] = [cells[column], wanted[column]];
      if (!was && !is) continue;
      const before = there.contents[place]?.[column] ?? "";
      const [after, ...lacking] = resolved(is?.content ?? "", addresses);
      const isChanged = (was?.content ?? "") !== (is?.content ?? "");
      if (isSame(before, after)) continue;
      const made = [was, ...others.map((rows) => rows[index]?.cells[column])].map((cell) =>
        resolved(cell?.content ?? "", addresses),
      );
      // A formula that read a row which is gone is in error, and no work of anybody's.
      const isAsMade = made.some(([content, ...gone]) => gone.length > 0 || isSame(before, content));
      const update = {
        row: there.at.row + place,
        column: there.at.column + column,
        label: labelOf(previous, index, column, is ?? was, there.contents[place]?.[0]),
        before,
        after,
      };
      if (!isAsMade) byHand.push(update);
      else if (isChanged && lacking.length > 0) for (const key of lacking) missing.add(rowLabel(previous, key));
      else if (isChanged) changes.push(update);
    }
  });
  const taken = new Set(places);
  const ownRows = there.contents.flatMap((cells, row) =>
    taken.has(row) || cells.every((cell) => cell === "") ? [] : [String(cells.find((cell) => cell !== ""))],
  );
  return { changes, byHand, ownRows, isReshaped, missing: [...missing] };
}

/** Whether rows have the same keys in the same places. */
function haveSameShape(one: readonly DraftRow[], other: readonly DraftRow[]): boolean {
  const shape = (rows: readonly DraftRow[]) =>
    rows.map(({ cells }) => cells.map((cell) => cell?.key ?? "").join()).join(";");
  return shape(one) === shape(other);
}

/** What each matching cell of a row counts, when rows are told apart: its label says most. */
const LABEL_COUNTS = 4;

/**
 * Finds the rows of a block in the sheet, where rows were put in, deleted, or renamed meanwhile: the order of both is
 * kept, and as much as possible matches.
 *
 * @param rows the block's rows as they were printed.
 * @param contents the block's columns in the sheet.
 * @returns for each row its place in the sheet, counted from the block's first; undefined where it is gone.
 */
export function alignRows(
  rows: readonly DraftRow[],
  contents: readonly (readonly Content[])[],
): readonly (number | undefined)[] {
  const printed = rows.map(({ cells }) => cells.map((cell) => shapeOf(cell?.content ?? "")));
  const sheet = contents.map((cells) => cells.map(shapeOf));
  const width = sheet.length + 1;
  /** The best score of the rows from here on, on either side. */
  const best = new Int32Array((printed.length + 1) * width);
  const scoreAt = (row: number, place: number) => best[row * width + place] ?? 0;
  for (let row = printed.length - 1; row >= 0; row -= 1) {
    for (let place = sheet.length - 1; place >= 0; place -= 1) {
      const alike = likeness(printed[row] ?? [], sheet[place] ?? []);
      const pair = alike > 0 ? alike + scoreAt(row + 1, place + 1) : 0;
      best[row * width + place] = Math.max(pair, scoreAt(row + 1, place), scoreAt(row, place + 1));
    }
  }
  let place = 0;
  return printed.map((cells, row) => {
    for (; place < sheet.length; place += 1) {
      const alike = likeness(cells, sheet[place] ?? []);
      if (alike > 0 && alike + scoreAt(row + 1, place + 1) === scoreAt(row, place)) {
        place += 1;
        return place - 1;
      }
      if (scoreAt(row, place + 1) < scoreAt(row, place)) return undefined;
    }
    return undefined;
  });
}

function likeness(printed: readonly string[], sheet: readonly string[]): number {
  let score = 0;
  for (let column = 0; column < sheet.length; column += 1) {
    const cell = sheet[column] ?? "";
    if (cell !== "" && cell === (printed[column] ?? "")) score += column === 0 ? LABEL_COUNTS : 1;
  }
  if (score > 0) return score;
  return sheet.every((cell) => cell === "") && printed.every((cell) => cell === "") ? 1 : 0;
}

const KEY = /\{([A-Za-z][\w.]*)\}/g;
const ADDRESS = /(?<![\w.!'"])\$?[A-Z]{1,3}\$?\d{1,7}(?![\w(.])/g;

/** Content without the places that a formula reads. */
function shapeOf(content: Content): string {
  const plain = comparable(content);
  return plain.startsWith("=") ? plain.replace(KEY, "#").replace(ADDRESS, "#") : plain;
}

function isSame(one: Content, other: Content): boolean {
  return comparable(one) === comparable(other);
}

/** The host leaves the text mark out, writes some names in capitals, and sets spaces its own way. */
function comparable(content: Content): string {
  const text = String(content);
  if (text.startsWith("="))
    return text.replace(/\{[\w.]+\}|[^{]+/g, (part) =>
      part.startsWith("{") ? part : part.replace(/[\s@]/g, "").toUpperCase(),
    );
  return text.startsWith("'") && !text.startsWith("'=") ? text.slice(1) : text;
}

function addressesOf(
  rows: readonly DraftRow[],
  places: readonly (number | undefined)[],
  at: Anchor,
): ReadonlyMap<string, string> {
  const addresses = new Map<string, string>();
  rows.forEach(({ cells }, index) => {
    const place = places[index];
    if (place === undefined) return;
    cells.forEach((cell, column) => {
      if (cell?.key) addresses.set(cell.key, cellAddress({ row: at.row + place, column: at.column + column }));
    });
  });
  return addresses;
}

/** Content with the addresses of its keys, and the keys that have none. */
function resolved(
  content: string | number,
  addresses: ReadonlyMap<string, string>,
): readonly [content: Content, ...lacking: string[]] {
  if (typeof content === "number" || !content.startsWith("=")) return [content];
  const lacking: string[] = [];
  const text = content.replace(KEY, (given, key: string) => {
    const address = addresses.get(key);
    if (address === undefined) lacking.push(key);
    return address ?? given;
  });
  return [text, ...lacking];
}

/** What the parts of a line's row are called. */
const PART_WORDS: Readonly<Record<string, string>> = {
  quantity: "quantity",
  unitCost: "unit cost",
  cost: "cost",
  markup: "markup",
  price: "price",
  kind: "kind",
  remark: "remark",
  decimal: "reads as",
  note: "note",
};

function labelOf(
  rows: readonly DraftRow[],
  index: number,
  column: number,
  cell: DraftCell | undefined,
  shown: Content | undefined,
): string {
  const label = String(rows[index]?.cells[0]?.content || shown || "").replace(/^'/, "") || `row ${index + 1}`;
  if (column === 0) return `${label}, label`;
  const key = cell?.key ?? "";
  const part = PART_WORDS[key.slice(key.lastIndexOf(".") + 1)];
  return key.includes(".") && part ? `${label}, ${part}` : label;
}

function rowLabel(rows: readonly DraftRow[], key: string): string {
  const row = rows.find(({ cells }) => cells.some((cell) => cell?.key === key));
  return String(row?.cells[0]?.content || key);
}
