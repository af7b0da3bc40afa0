import { isTotalLabel } from "../../headings/words";
import { must } from "../../quantities/must";
import type { Book } from "../book";
import { calledName, isCall, walk } from "../formula/tree";
import type { Knowledge } from "../knowledge";
import { fullName } from "../knowledge";
import type { Study } from "../study";

/** What an estimate may be about, by the words that say so and the functions that calculate it. */
const SUBJECTS = {
  stone: {
    words: /\b(stone|rock|gravel|pebbles?|cobbles?|granite|limestone|marble|lava|river\s?rock)\b/i,
    functions: ["STONE_TONS", "STONE_YARDS", "STONE_BAGS", "STONE_BULK_BAGS"],
  },
  fabric: {
    words: /\b(fabric|weed barrier|landscape cloth|geotextile|underlay)\b/i,
    functions: ["FABRIC_ROLLS", "FABRIC_AREA", "FABRIC_STRIPS"],
  },
  pins: { words: /\b(pins?|staples?)\b/i, functions: ["PINS"] },
  border: { words: /\b(border|edging|edge restraint)\b/i, functions: ["EDGING_PIECES", "PAVERS"] },
  stakes: { words: /\b(stakes?|spikes?)\b/i, functions: ["STAKES"] },
  digging: { words: /\b(dig|digging|dug|scrape|excavat\w+|sod removal|strip sod)\b/i, functions: ["DIG_YARDS"] },
  hauling: { words: /\b(haul\w*|dump\w*|dispos\w+|cart away|spoil loads?)\b/i, functions: ["SPOIL_YARDS", "LOADS"] },
  delivery: { words: /\b(deliver\w*|freight|trucking|drop fee)\b/i, functions: [] },
  "clean-up": { words: /\b(clean[\s-]?up|cleaning|sweep\w*)\b/i, functions: [] },
  waste: { words: /\b(waste|low spots|overage|extra stone)\b/i, functions: [] },
} as const satisfies Record<string, { words: RegExp; functions: readonly string[] }>;

export type Subject = keyof typeof SUBJECTS;
export const subjects = Object.keys(SUBJECTS) as Subject[];

/** Where a sheet speaks of a subject, and the most that is counted of it there. */
export interface Mention {
  readonly row: number;
  readonly column: number;
  /** The largest number that belongs to it: 0 where all are 0; undefined where it is only spoken of. */
  readonly most: number | undefined;
}

/** Notes that are longer than this are prose, and no label of a line. */
const LONGEST_LABEL = 60;

/** Words that say something was given notice of before digging. */
export const NOTICE =
  /\b811\b|\bone[\s-]?call\b|\bcall before\b|\bdig (notice|ticket|date)\b|\b(notice|locate|ticket)\b|\butilit(y|ies)\b|\bmark(ed|s|ing)?\b.*\b(lines?|utilit\w+)\b/i;

/** What a sheet speaks of, with the numbers that belong to it. */
export function* mentionsOf(study: Study, sheet: number): Generator<undefined, Map<Subject, Mention[]>> {
  const { book, knowledge } = study;
  const grid = must(book.grids[sheet]);
  const found = new Map<Subject, Mention[]>();
  const add = (subject: Subject, mention: Mention) => {
    const list = found.get(subject);
    if (list) list.push(mention);
    else found.set(subject, [mention]);
  };
  const headings = new Map(must(book.places[sheet]).headingRows.map((heading) => [heading.row, heading]));
  for (let row = grid.top; row <= grid.bottom; row++) {
    if (row % 200 === 0) yield undefined;
    for (let column = grid.left; column <= grid.right; column++) {
      if (!grid.isTypedText(row, column)) continue;
      const text = String(grid.value(row, column));
      if (text.length > LONGEST_LABEL) continue;
      for (const subject of subjects) {
        if (!SUBJECTS[subject].words.test(text)) continue;
        add(subject, {
          row,
          column,
          most: headings.has(row) ? mostBelow(book, sheet, row, column) : mostBeside(book, sheet, row, column),
        });
      }
    }
  }
  for (const pattern of new Set([...book.formulaCells(sheet)].map((cell) => cell.pattern))) {
    for (const { part } of walk(pattern.tree ?? null)) {
      if (!isCall(part)) continue;
      for (const subject of subjects) {
        if (isOneOf(knowledge, SUBJECTS[subject].functions, calledName(part)))
          add(subject, { row: pattern.row, column: pattern.column, most: 1 });
      }
      const waste = wasteGiven(knowledge, calledName(part), part.arguments.length);
      if (waste) add("waste", { row: pattern.row, column: pattern.column, most: 1 });
    }
  }
  return found;
}

function isOneOf(knowledge: Knowledge, names: readonly string[], called: string): boolean {
  return names.some((name) => fullName(knowledge, name).toUpperCase() === called);
}

/** Whether a function that takes waste as its last argument was given one. */
function wasteGiven(knowledge: Knowledge, called: string, given: number): boolean {
  const known = knowledge.functions.find(({ name }) => fullName(knowledge, name).toUpperCase() === called);
  return known !== undefined && known.arguments.at(-1)?.name === "waste" && given >= known.arguments.length;
}

function mostBelow(book: Book, sheet: number, head: number, column: number): number {
  const grid = must(book.grids[sheet]);
  let most = 0;
  for (let row = head + 1; row <= grid.bottom; row++) {
    const isNext = must(book.places[sheet]).headingRows.some(
      (heading) => heading.row === row && heading.first <= column && column <= heading.last,
    );
    if (isNext) break;
    most = Math.max(most, worthOf(book, sheet, row, column) ?? 0);
  }
  return most;
}

function mostBeside(book: Book, sheet: number, row: number, column: number): number | undefined {
  const grid = must(book.grids[sheet]);
  if (isTotalLabel(String(grid.value(row, column)))) return 0;
  let most: number | undefined;
  for (let right = column + 1; right <= grid.right; right++) {
    const worth = worthOf(book, sheet, row, right);
    if (worth !== undefined) most = Math.max(most ?? 0, worth);
  }
  return most;
}

/** A unit cost does not make a line that is charged; tape text counts as something. */
function worthOf(book: Book, sheet: number, row: number, column: number): number | undefined {
  const grid = must(book.grids[sheet]);
  const number = grid.number(row, column);
  if (number === undefined) return /^\s*\d/.test(String(grid.value(row, column))) ? 1 : undefined;
  const { role } = must(book.places[sheet]).roleAt(row, column);
  return role === "unit cost" || role === "unit price" || role === "markup" || role === "margin" ? 0 : number;
}
