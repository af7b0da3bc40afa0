import type { IWorkbookData } from "@univerjs/core";
import type { ColorReader } from "../../xlsx/colors";
import type { BookParts } from "../../xlsx/read/bookParts";
import type { GridLibrary, OpenGrid } from "../grid/library";
import type { CellsPort } from "../grid/port";
import type { FunctionNames } from "./formulas";
import type { FileTable } from "./tableReferences";

/** What the readers of a file's parts share. */
export interface Opening {
  readonly library: GridLibrary;
  readonly functions: FunctionNames;
  readonly book: BookParts;
  readonly tables: readonly FileTable[];
  /** Whether a name stands for several cells. */
  readonly isSeveral: (name: string) => boolean;
  readonly colorOf: ColorReader;
  readonly findings: Findings;
}

/** The id that a sheet of a file gets in the grid, by its place among the sheets of cells. */
export const sheetId = (place: number): string => `sheet-${place + 1}`;

/** The id that the page's workbook has, and its pictures name. */
export const unitId = "practice-1";

/** What the makers of a file's parts share. */
export interface Saving {
  readonly grid: OpenGrid;
  readonly cells: Pick<CellsPort, "read">;
  readonly functions: FunctionNames;
  /** The workbook as the grid keeps it. */
  readonly kept: IWorkbookData;
  /** Whether the file counts days from 1904. */
  readonly startsIn1904: boolean;
  /** What the file does not hold. */
  readonly findings: Findings;
}

/** What a part of the grid keeps with the workbook, by the sheets' ids. */
export function keptBySheet<T>({ kept }: Saving, name: string): Readonly<Record<string, T>> {
  const data = kept.resources?.find((one) => one.name === name)?.data;
  return data ? (JSON.parse(data) as Record<string, T>) : {};
}

/** What is lost or changed when a file is opened or saved, in words for the person who decides about it. */
export class Findings {
  private readonly counts = new Map<string, { count: number; readonly say: (count: number) => string }>();
  private readonly places = new Map<string, { readonly at: string[]; readonly say: (count: number) => string }>();

  /** Adds to a count, such as "3 charts". */
  count(one: string, count = 1, many = `${one}s`): void {
    if (count <= 0) return;
    const before = this.counts.get(one)?.count ?? 0;
    this.counts.set(one, { count: before + count, say: (all) => counted(all, one, many) });
  }

  /** Adds a single fact. */
  fact(words: string): void {
    this.counts.set(words, { count: 1, say: () => words });
  }

  /** Adds a place to those of its kind. `say` makes the start of the sentence, and the places end it. */
  place(kind: string, at: string, say: (count: number) => string): void {
    const known = this.places.get(kind);
    if (known) known.at.push(at);
    else this.places.set(kind, { at: [at], say });
  }

  /** Adds all that others hold. */
  add(others: Findings): void {
    for (const [one, { count, say }] of others.counts)
      this.counts.set(one, { count: (this.counts.get(one)?.count ?? 0) + count, say });
    for (const [kind, { at, say }] of others.places) for (const place of at) this.place(kind, place, say);
  }

  /** One line each, without a full stop. */
  lines(): string[] {
    return [
      ...[...this.counts.values()].map(({ count, say }) => say(count)),
      ...[...this.places.values()].map(({ at, say }) => `${say(at.length)}: ${named(at)}`),
    ];
  }
}

/** "1 chart", "3 charts", "1,200 cells". */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count.toLocaleString("en-US")} ${count === 1 ? one : many}`;
}

const mostNamed = 4;

/** "Jobs!B2, Jobs!B3 and 5 more". */
function named(places: readonly string[]): string {
  const shown = places.slice(0, mostNamed);
  const rest = places.length - shown.length;
  if (rest > 0) return `${shown.join(", ")} and ${rest.toLocaleString("en-US")} more`;
  return shown.length > 1 ? `${shown.slice(0, -1).join(", ")} and ${shown.at(-1)}` : (shown[0] ?? "");
}
