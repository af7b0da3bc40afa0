import { exampleStonePrices } from "../../quantities/bed/examples";
import { type Field, fields } from "../../quantities/bed/fields";
import {
  isPriced,
  isSampleMark,
  type RateKey,
  type Rates,
  rateLabel,
  rateNames,
  SAMPLE,
  whoseName,
} from "../../quantities/bed/rates";
import { startingContent } from "../rates/rows";
import type { OfficeRates, OfficeStone } from "./officeFile";
import {
  type CellContent,
  type CellsOfName,
  cellNamed,
  isSample,
  type NamedRates,
  type StoneRow,
  stoneListOf,
} from "./officeRates";
import { rateWords, stoneWords } from "./rateWords";
import { rateNamed } from "./readOffice";

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

export interface RatesComparison {
  readonly differences: readonly RateDifference[];
  /** The cells in which the workbook's rates become the file's. */
  readonly cells: readonly OfficeCell[];
  /** Kinds of stone of the workbook's own that the file doesn't list: they stay. */
  readonly stays: readonly string[];
  /** What the file has and the workbook has no cell for. */
  readonly missing: readonly string[];
  /** Names in the file that this version doesn't have. */
  readonly unknown: readonly string[];
  /** Why the list of stone can't take the file's. */
  readonly stonesProblem?: string;
}

interface Found {
  readonly difference?: RateDifference;
  readonly cells: readonly OfficeCell[];
}

/**
 * Where the rates of a workbook differ from a file's, and the cells in which they become the file's.
 *
 * @param named the cells of the Rates sheet.
 * @param rates what was read from them.
 */
export function compareRates(named: NamedRates, rates: Rates, file: OfficeRates): RatesComparison {
  const found: Found[] = [];
  const missing: string[] = [];
  const unknown: string[] = [];
  for (const [name, value] of Object.entries(file.values)) {
    const key = rateNamed(name);
    if (!key) unknown.push(name);
    else {
      const one = compareRate(named, rates, key, value, file.samples.includes(name));
      if (one) found.push(one);
      else missing.push(rateLabel(key));
    }
  }
  const stones = compareStones(named, rates, file.stones);
  const all = [...stones.found, ...found];
  return {
    differences: all.flatMap(({ difference }) => difference ?? []),
    cells: all.flatMap(({ cells }) => cells),
    stays: stones.stays,
    missing,
    unknown,
    ...(stones.problem !== undefined && { stonesProblem: stones.problem }),
  };
}

function compareRate(
  named: NamedRates,
  rates: Rates,
  key: RateKey,
  value: number | string,
  fileSample: boolean,
): Found | undefined {
  const cell = cellNamed(named, rateNames[key]);
  if (!cell) return undefined;
  const field: Field = fields[key];
  const nowSample = isSample(rates, key);
  const isSame = cell.value === value;
  const whose = isPriced(key) ? cellNamed(named, whoseName(key)) : undefined;
  const mark = whose && markCell({ ...whose, isSame, nowSample, startsAt: startingContent(field), value, fileSample });
  if (isSame && !mark) return { cells: [] };
  const problem = rates.byField[key].problem !== undefined;
  const isDefault = isPriced(key) ? nowSample : cell.value === startingContent(field);
  return {
    difference: {
      label: rateLabel(key),
      now: contentWords(cell.content, rateWords(key, shownOf(cell.value)) || "(blank)", nowSample),
      file: sampleWords(rateWords(key, value), fileSample),
      typed: problem || !isDefault,
    },
    cells: [...(isSame ? [] : [changed(cell, cell.content, value)]), ...(mark ? [mark] : [])],
  };
}

interface Mark {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly content: CellContent;
  /** Whether the price stays what it is. */
  readonly isSame: boolean;
  readonly nowSample: boolean;
  /** The price that the row started with. */
  readonly startsAt: string | number;
  readonly value: number | string;
  readonly fileSample: boolean;
}

/** The cell that says whose a price is, where the price alone wouldn't make it say what the file says. */
function markCell({ isSame, nowSample, startsAt, value, fileSample, ...cell }: Mark): OfficeCell | undefined {
  const isFormula = typeof cell.content === "string" && cell.content.startsWith("=");
  const isStart = isFormula ? value === startsAt : isSampleMark(cell.content);
  const wouldBe = isSame ? nowSample : isStart;
  return wouldBe === fileSample ? undefined : changed(cell, cell.content, fileSample ? SAMPLE : "own");
}

function compareStones(named: NamedRates, rates: Rates, stones: readonly OfficeStone[]) {
  const nothing = { found: [] as Found[], stays: [] as string[] };
  const list = stoneListOf(named, rates);
  if (!list) return { ...nothing, problem: stones.length > 0 ? LIST_DAMAGED : undefined };
  const { rows, kinds, prices, weights, whose, blank } = list;
  const nameOf = (row: number) => plain(rows[row]?.shows.kind);
  const rowOf = (name: string) => rows.findIndex((_, row) => nameOf(row) === plain(name));
  const isSampleRow = (row: number) => isSampleMark(rows[row]?.shows.whose);
  const listed = new Set(stones.map(({ name }) => plain(name)));
  const others = rows.flatMap((_, row) => (nameOf(row) !== "" && !listed.has(nameOf(row)) ? [row] : []));
  const goes = others.filter(isSampleRow);
  const free = [...blank, ...goes];
  const added = stones.filter(({ name }) => rowOf(name) < 0);
  const stays = others.filter((row) => !isSampleRow(row)).map((row) => String(rows[row]?.shows.kind));
  if (added.length > free.length) return { ...nothing, problem: noRoom(added.length, free.length) };

  const set = (cells: CellsOfName, row: number, after: CellContent): OfficeCell[] => {
    const before = cells.contents[row]?.[0] ?? "";
    if (cells.values[row]?.[0] === after && before !== "") return [];
    const { sheet, column } = cells;
    return before === after ? [] : [{ sheet, row: cells.row + row, column, before, after }];
  };
  const put = (row: number, stone: OfficeStone, isNew: boolean): Found => {
    const { name, perTon, tonsPerYard = "", sample = false } = stone;
    const now = rows[row];
    const nowSample = isSampleRow(row);
    const start = Number(exampleOf(nameOf(row), row)?.perTon ?? Number.NaN);
    const isSame = !isNew && now?.shows.price === perTon;
    const mark =
      whose &&
      markCell({
        sheet: whose.sheet,
        row: whose.row + row,
        column: whose.column,
        content: whose.contents[row]?.[0] ?? "",
        isSame,
        nowSample,
        startsAt: start,
        value: perTon,
        fileSample: sample,
      });
    const cells = [
      ...(isNew ? set(kinds, row, name) : []),
      ...set(prices, row, perTon),
      ...set(weights, row, tonsPerYard),
      ...(mark ? [mark] : []),
    ];
    if (cells.length === 0) return { cells };
    const label = `Stone: ${name}`;
    const file = sampleWords(stoneWords(perTon, tonsPerYard), sample);
    if (isNew) return { cells, difference: { label, now: "(not listed)", file, typed: false } };
    const before = rowWords(now, nowSample);
    return { cells, difference: { label, now: before, file, typed: !nowSample } };
  };
  const gone = goes.map((row): Found => {
    const cells = [...set(kinds, row, ""), ...set(prices, row, ""), ...set(weights, row, "")];
    const now = rows[row];
    return {
      cells,
      difference: {
        label: `Stone: ${String(now?.shows.kind)}`,
        now: rowWords(now, true),
        file: "(removed)",
        typed: false,
      },
    };
  });
  const places = free.slice(0, added.length);
  // A row that a sample leaves may be taken by a stone that is new: its cells are written once.
  const leaving = gone.map((one, index) => (places.includes(goes[index] ?? -1) ? { ...one, cells: [] } : one));
  const found = stones.map((stone) => {
    const row = rowOf(stone.name);
    return row < 0 ? put(places[added.indexOf(stone)] ?? -1, stone, true) : put(row, stone, false);
  });
  return { found: [...found, ...leaving], stays, problem: undefined };
}

/** The sample that a row of the list started with, as far as its kind and its place say. */
function exampleOf(kind: string, row: number) {
  return exampleStonePrices.find(({ stone }) => stone === kind) ?? exampleStonePrices[row];
}

const LIST_DAMAGED = "The list of stone on the Rates sheet is missing or damaged, so prices of stone stay as they are.";

function noRoom(wanted: number, free: number): string {
  return `The list of stone has room for ${free} more, and the file adds ${wanted}. Insert rows inside the list on the Rates sheet, then load again. Prices of stone stay as they are.`;
}

/** A stone's name as the sheet finds it: capitals and spaces around it don't matter. */
function plain(name: unknown): string {
  return typeof name === "string" ? name.replace(/ +/g, " ").replace(/^ | $/g, "").toLowerCase() : "";
}

/** What a row of the list of stone has, in words. */
function rowWords(row: StoneRow | undefined, sample: boolean): string {
  const words = stoneWords(shownOf(row?.shows.price), shownOf(row?.shows.weight));
  return contentWords(row?.price ?? "", words, sample);
}

/** What a cell has, in words: a formula with what it shows. */
function contentWords(content: CellContent, shown: string, sample: boolean): string {
  const formula = typeof content === "string" && content.startsWith("=") ? `${content}, ` : "";
  return formula + sampleWords(shown, sample);
}

const sampleWords = (shown: string, sample: boolean) => `${shown}${sample ? " (sample)" : ""}`;

const shownOf = (value: unknown): number | string => (typeof value === "number" ? value : String(value ?? ""));

function changed(cell: Omit<OfficeCell, "before" | "after">, before: CellContent, after: CellContent): OfficeCell {
  const { sheet, row, column } = cell;
  return { sheet, row, column, before, after };
}
