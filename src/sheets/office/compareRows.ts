import { isSampleMark, nameFound, SAMPLE } from "../../quantities/bed/rates";
import type { CellContent, CellsOfName } from "./officeRates";

/** A rate that isn't the same in the workbook and in the file. */
export interface RateDifference {
  readonly label: string;
  /** What the workbook has, in words. */
  readonly now: string;
  /** What the file has, in words. */
  readonly file: string;
  /** Whether the workbook's was typed by hand: it is neither a sample nor a default. */
  readonly typed: boolean;
}

/** A cell of the workbook, what it holds, and what it is to hold. */
export interface OfficeCell {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly before: CellContent;
  readonly after: CellContent;
  readonly numberFormat?: string;
}

export interface Found {
  readonly difference?: RateDifference;
  readonly cells: readonly OfficeCell[];
}

/** A list of the Rates sheet: the columns of its rows, and how they are said. */
export interface ListOnSheet {
  /** What a row of it is: "Stone". */
  readonly label: string;
  readonly names: CellsOfName;
  /** All others that hold something of a row, the price first. */
  readonly columns: readonly [CellsOfName, ...CellsOfName[]];
  readonly whose: CellsOfName | undefined;
  /** The price that a row started with: that of a sample of its name, or of its place. */
  readonly startOf: (name: string, row: number) => string | number;
  /** A row in words, from what its columns show. */
  readonly words: (cells: readonly (string | number)[]) => string;
  readonly noRoom: (wanted: number, free: number) => string;
}

/** A row of the same list in a file: what its columns are to hold, in the same order; "" where it has nothing. */
export interface RowOfFile {
  readonly name: string;
  readonly cells: readonly CellContent[];
  readonly sample: boolean;
}

/** Where a list of the workbook differs from a file's, and the cells in which it becomes the file's. */
export interface RowsComparison {
  readonly found: readonly Found[];
  /** Rows of the workbook's own that the file doesn't list: they stay. */
  readonly stays: readonly string[];
  /** Why the list can't take the file's rows. */
  readonly problem?: string;
}

/**
 * Compares a list with a file's, row by row, by the rows' names. Sample rows that the file doesn't list give way, and so
 * do blank rows; rows of the office's own stay.
 */
export function compareRows(list: ListOnSheet, rows: readonly RowOfFile[]): RowsComparison {
  const { label, names, columns, whose, startOf, words, noRoom } = list;
  const nameOf = (row: number) => plain(names.values[row]?.[0]);
  const shownName = (row: number) => String(names.values[row]?.[0] ?? "");
  const rowOf = (name: string) => names.values.findIndex((_, row) => nameOf(row) === plain(name));
  const isSampleRow = (row: number) => isSampleMark(whose?.values[row]?.[0]);
  const listed = new Set(rows.map(({ name }) => plain(name)));
  const all = names.contents.map((_, row) => row);
  const others = all.filter((row) => nameOf(row) !== "" && !listed.has(nameOf(row)));
  const blank = all.filter((row) => [names, ...columns].every(({ contents }) => (contents[row]?.[0] ?? "") === ""));
  const goes = others.filter(isSampleRow);
  const free = [...blank, ...goes];
  const added = rows.filter(({ name }) => rowOf(name) < 0);
  if (added.length > free.length) return { found: [], stays: [], problem: noRoom(added.length, free.length) };

  const set = (cells: CellsOfName, row: number, after: CellContent): OfficeCell[] => {
    const before = cells.contents[row]?.[0] ?? "";
    if (cells.values[row]?.[0] === after && before !== "") return [];
    const { sheet, column } = cells;
    return before === after ? [] : [{ sheet, row: cells.row + row, column, before, after }];
  };
  const rowWords = (row: number, sample: boolean) =>
    contentWords(
      columns[0].contents[row]?.[0] ?? "",
      words(columns.map(({ values }) => shownOf(values[row]?.[0]))),
      sample,
    );
  const put = (row: number, file: RowOfFile, isNew: boolean): Found => {
    const [price = ""] = file.cells;
    const nowSample = isSampleRow(row);
    const isSame = !isNew && columns[0].values[row]?.[0] === price;
    const mark =
      whose &&
      markCell({
        sheet: whose.sheet,
        row: whose.row + row,
        column: whose.column,
        content: whose.contents[row]?.[0] ?? "",
        isSame,
        nowSample,
        startsAt: startOf(nameOf(row), row),
        value: price,
        fileSample: file.sample,
      });
    const cells = [
      ...(isNew ? set(names, row, file.name) : []),
      ...columns.flatMap((column, place) => set(column, row, file.cells[place] ?? "")),
      ...(mark ? [mark] : []),
    ];
    if (cells.length === 0) return { cells };
    const said = { label: `${label}: ${file.name}`, file: sampleWords(words(file.cells.map(shownOf)), file.sample) };
    if (isNew) return { cells, difference: { ...said, now: "(not listed)", typed: false } };
    return { cells, difference: { ...said, now: rowWords(row, nowSample), typed: !nowSample } };
  };
  const gone = goes.map((row): Found => {
    const cells = [names, ...columns].flatMap((column) => set(column, row, ""));
    const now = rowWords(row, true);
    return { cells, difference: { label: `${label}: ${shownName(row)}`, now, file: "(removed)", typed: false } };
  });
  const places = free.slice(0, added.length);
  // A row that a sample leaves may be taken by one that is new: its cells are written once.
  const leaving = gone.map((one, index) => (places.includes(goes[index] ?? -1) ? { ...one, cells: [] } : one));
  const found = rows.map((file) => {
    const row = rowOf(file.name);
    return row < 0 ? put(places[added.indexOf(file)] ?? -1, file, true) : put(row, file, false);
  });
  const stays = others.filter((row) => !isSampleRow(row)).map(shownName);
  return { found: [...found, ...leaving], stays };
}

interface Mark {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly content: CellContent;
  /** Whether the price stays what it is. */
  readonly isSame: boolean;
  readonly nowSample: boolean;
  /** The price that the row started with; "" for one that started blank. */
  readonly startsAt: string | number;
  readonly value: CellContent;
  readonly fileSample: boolean;
}

/** The cell that says whose a price is, where the price alone wouldn't make it say what the file says. */
export function markCell(mark: Mark): OfficeCell | undefined {
  const { isSame, nowSample, startsAt, value, fileSample, ...cell } = mark;
  const isFormula = typeof cell.content === "string" && cell.content.startsWith("=");
  const isStart = isFormula ? value !== "" && value === startsAt : isSampleMark(cell.content);
  const wouldBe = isSame ? nowSample : isStart;
  return wouldBe === fileSample ? undefined : changed(cell, cell.content, fileSample ? SAMPLE : "own");
}

const plain = (name: unknown): string => (typeof name === "string" ? nameFound(name) : "");

/** What is said where a list has fewer rows for new names than the file has. */
export const noRoom = (of: string, stays: string) => (wanted: number, free: number) =>
  `The list of ${of} has room for ${free} more, and the file adds ${wanted}. Insert rows inside the list on the Rates sheet, then load again. ${stays}`;

/** What a cell has, in words: a formula with what it shows. */
export function contentWords(content: CellContent, shown: string, sample: boolean): string {
  const formula = typeof content === "string" && content.startsWith("=") ? `${content}, ` : "";
  return formula + sampleWords(shown, sample);
}

export const sampleWords = (shown: string, sample: boolean) => `${shown}${sample ? " (sample)" : ""}`;

export const shownOf = (value: unknown): number | string => (typeof value === "number" ? value : String(value ?? ""));

export function changed(
  { sheet, row, column }: Omit<OfficeCell, "before" | "after">,
  before: CellContent,
  after: CellContent,
): OfficeCell {
  return { sheet, row, column, before, after };
}
