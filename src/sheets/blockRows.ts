import { currentText } from "../quantities/bed/olderTexts";
import type { DraftRow } from "./compose";

/*
 * The rows of a block and the rows of the sheet: which is which, and how they move when the block gets others.
 */

export type Content = string | number | boolean;

/** Rows that come or go, of the whole sheet. */
export interface RowOperation {
  readonly kind: "insert" | "delete";
  readonly row: number;
  readonly count: number;
}

/** What each matching cell of a row counts, when rows are told apart: its label says most. */
const LABEL_COUNTS = 4;

/**
 * Finds the rows of a block on the sheet, where rows were put in, deleted, or renamed meanwhile: the order of both is
 * kept, and as much as possible matches.
 *
 * @param rows the block's rows as they were printed.
 * @param contents the block's columns on the sheet.
 * @returns for each row its place on the sheet, counted from the block's first; undefined where it is gone.
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

export function isSame(one: Content, other: Content): boolean {
  return comparable(one) === comparable(other);
}

/** A range of one cell, which the host may write as that cell. */
const ONE_CELL = /(\{[\w.]+\}|\$?\b[A-Z]{1,3}\$?\d{1,7}):\1(?![\w(.])/g;

/**
 * The host leaves the text mark out, writes some names in capitals, and sets spaces its own way; earlier versions wrote
 * other words.
 */
function comparable(content: Content): string {
  const text = String(currentText(content));
  if (!text.startsWith("=")) return text.startsWith("'") && !text.startsWith("'=") ? text.slice(1) : text;
  const plain = text.replace(/\{[\w.]+\}|[^{]+/g, (part) =>
    part.startsWith("{") ? part : part.replace(/[\s@]/g, "").toUpperCase(),
  );
  return plain.replace(ONE_CELL, "$1");
}

/** How rows move when a block's rows become others; places are counted from the block's first row on the sheet. */
export function movesOf(
  previous: readonly DraftRow[],
  next: readonly DraftRow[],
  places: readonly (number | undefined)[],
  count: number,
) {
  const previousOf = pairsOf(previous.map(identityOf), next.map(identityOf));
  const kept = new Set(previousOf);
  const goes = new Map<number, number>();
  places.forEach((place, index) => {
    if (place !== undefined && !kept.has(index)) goes.set(place, index);
  });
  /** New rows by the place that they follow. */
  const following = new Map<number, number[]>();
  let last = -1;
  next.forEach((_, nextIndex) => {
    const index = previousOf[nextIndex];
    if (index === undefined) following.set(last, [...(following.get(last) ?? []), nextIndex]);
    else last = places[index] ?? last;
  });
  const placesAfter: (number | undefined)[] = next.map(() => undefined);
  /** The rows that stay, above and below a place between two rows of the sheet. */
  const around = (place: number) => {
    const stays = (index: number | undefined) => index !== undefined && kept.has(index);
    const rowAt = (at: number) => (stays(indexAt.get(at)) ? previous[indexAt.get(at) ?? -1] : undefined);
    const upTo = Array.from({ length: Math.max(0, place) }, (_, one) => place - 1 - one);
    const from = Array.from({ length: Math.max(0, count - place) }, (_, one) => place + one);
    const first = (all: readonly number[]) => rowAt(all.find((at) => !goes.has(at)) ?? -1);
    return [first(upTo), first(from)] as const;
  };
  const inserted: { place: number; rows: readonly DraftRow[]; around: ReturnType<typeof around> }[] = [];
  const operations: RowOperation[] = [];
  const nextOf = new Map(previousOf.flatMap((index, nextIndex) => (index === undefined ? [] : [[index, nextIndex]])));
  const indexAt = new Map(places.flatMap((place, index) => (place === undefined ? [] : [[place, index]])));
  let sequence = 0;
  for (let place = -1; place < count; place += 1) {
    if (goes.has(place)) {
      const above = operations.at(-1);
      if (above?.kind === "delete" && above.row + above.count === place)
        operations[operations.length - 1] = { ...above, count: above.count + 1 };
      else operations.push({ kind: "delete", row: place, count: 1 });
    } else if (place >= 0) {
      const nextIndex = nextOf.get(indexAt.get(place) ?? -1);
      if (nextIndex !== undefined) placesAfter[nextIndex] = sequence;
      sequence += 1;
    }
    const fresh = following.get(place);
    if (!fresh) continue;
    inserted.push({ place: sequence, rows: fresh.flatMap((index) => next[index] ?? []), around: around(place + 1) });
    operations.push({ kind: "insert", row: place + 1, count: fresh.length });
    for (const nextIndex of fresh) {
      placesAfter[nextIndex] = sequence;
      sequence += 1;
    }
  }
  return {
    previousOf,
    placesAfter,
    inserted,
    // From the bottom up, each at the place that it has before any of them.
    operations: operations.reverse(),
    removed: [...goes].map(([place, index]) => ({ place, index, around: around(place) })),
  };
}

/** What a row is, whatever it holds: its keys, or its words where it has none. */
function identityOf({ cells, look, id }: DraftRow): string {
  if (id !== undefined) return id;
  const keys = cells.flatMap((cell) => cell?.key ?? []);
  if (keys.length > 0) return keys.join();
  const words = cells.map((cell) => String(cell?.content ?? ""));
  // The heading of a part may say how it came about after a colon.
  return look === "section" ? words.join().replace(/:[^,]*/, "") : words.join();
}

/** For each item of a list the one of another that it is, in the order of both, as many as possible. */
function pairsOf(one: readonly string[], other: readonly string[]): readonly (number | undefined)[] {
  const width = other.length + 1;
  const best = new Int32Array((one.length + 1) * width);
  const at = (row: number, column: number) => best[row * width + column] ?? 0;
  for (let row = one.length - 1; row >= 0; row -= 1) {
    for (let column = other.length - 1; column >= 0; column -= 1) {
      best[row * width + column] =
        one[row] === other[column] ? 1 + at(row + 1, column + 1) : Math.max(at(row + 1, column), at(row, column + 1));
    }
  }
  const pairs: (number | undefined)[] = other.map(() => undefined);
  for (let row = 0, column = 0; row < one.length && column < other.length; ) {
    if (one[row] === other[column]) {
      pairs[column] = row;
      row += 1;
      column += 1;
    } else if (at(row + 1, column) >= at(row, column + 1)) row += 1;
    else column += 1;
  }
  return pairs;
}
