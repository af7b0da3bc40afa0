import { must } from "../quantities/must";
import { areaAddress } from "../spreadsheet/areas";
import type { Book, Cell } from "./book";
import type { Finding } from "./finding";

/** A finding that someone looked at and let be. It is kept with the workbook, and is plain data. */
export interface Dismissal {
  /** The finding's key. */
  readonly key: string;
  /** In the words of whoever dismissed it. */
  readonly reason: string;
  /** What was dismissed, to show it again: its title and where it was. */
  readonly title: string;
  readonly where: string;
  /** The day, such as 2026-03-02. */
  readonly on: string;
}

export interface Sorted {
  readonly open: readonly Finding[];
  readonly dismissed: readonly { readonly finding: Finding; readonly dismissal: Dismissal }[];
  /** Dismissals of what is no longer there. They can be forgotten. */
  readonly gone: readonly Dismissal[];
}

/** The dismissal of a finding. `on` is the day, such as "2026-03-02". */
export function dismiss({ key, title, where }: Finding, reason: string, on: string): Dismissal {
  return { key, reason: reason.trim(), title, where, on };
}

/** Parts findings into those that are open and those that were dismissed with a reason. */
export function sortDismissed(findings: readonly Finding[], dismissals: readonly Dismissal[]): Sorted {
  const byKey = new Map(dismissals.map((dismissal) => [dismissal.key, dismissal]));
  const found = new Set(findings.map(({ key }) => key));
  return {
    open: findings.filter(({ key }) => !byKey.has(key)),
    dismissed: findings.flatMap((finding) => {
      const dismissal = byKey.get(finding.key);
      return dismissal ? [{ finding, dismissal }] : [];
    }),
    gone: dismissals.filter(({ key }) => !found.has(key)),
  };
}

/** A finding in many cells is known by its first ones and their number. */
const MOST_LANDMARKS = 40;

/**
 * The key of a finding: its rule, what was seen, and where by the headings and labels around it, so that it stays
 * the same when rows are inserted above, and becomes another when the cell itself is changed.
 */
export function keyOf(book: Book, rule: string, cells: readonly Cell[], about: readonly string[]): string {
  const marks = cells.slice(0, MOST_LANDMARKS).map((cell) => landmarkOf(book, cell));
  return `${rule}:${hashOf([...marks, ...about.slice(0, MOST_LANDMARKS), String(cells.length)].join("\u0001"))}`;
}

function landmarkOf(book: Book, cell: Cell): string {
  const grid = must(book.grids[cell.sheet]);
  const places = must(book.places[cell.sheet]);
  const heading = places.headingRowOf(cell.row, cell.column);
  const texts: string[] = [];
  for (let column = heading?.first ?? grid.left; column <= (heading?.last ?? grid.right); column++) {
    if (column !== cell.column && grid.isTypedText(cell.row, column)) texts.push(String(grid.value(cell.row, column)));
  }
  const around = [places.headingOf(cell.row, cell.column), ...texts].filter(Boolean);
  return [grid.name, ...(around.length > 0 ? around : [areaAddress(cell)])].join("|");
}

/** Two 32-bit sums in the style of FNV-1a: short, and no two findings of a workbook are likely to share both. */
function hashOf(text: string): string {
  let [low, high] = [0x811c9dc5, 0x01000193];
  for (const letter of text) {
    const code = must(letter.codePointAt(0));
    low = Math.imul(low ^ code, 0x01000193) >>> 0;
    high = Math.imul(high ^ code, 0x85ebca6b) >>> 0;
  }
  return low.toString(36) + high.toString(36);
}
