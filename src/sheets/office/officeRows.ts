import { fields } from "../../quantities/bed/fields";
import { listSamples } from "../../quantities/bed/listSamples";
import { type ListKey, listFields, listKeys, listOf, listWhose, quotedNames } from "../../quantities/bed/officeLists";
import type { RateKey, Rates } from "../../quantities/bed/rates";
import { isoDate } from "../../quantities/calendar/calendarDay";
import { readDate } from "../../quantities/dateText";
import { sampleContent } from "../rates/rows";
import { compareRows, noRoom, type RowOfFile, type RowsComparison } from "./compareRows";
import { isCalendarDay, type OfficeLists, type OfficeRow } from "./officeFile";
import { type CellContent, type CellsOfName, cellsNamed, type NamedRates } from "./officeRates";
import { rateWords } from "./rateWords";

/** A column of a list beside its names. */
interface ListColumn {
  readonly name: string;
  /** The field that it feeds; who quoted a price, and when, feeds none. */
  readonly field?: RateKey | undefined;
}

/** The columns of a list beside its names, the price first. */
export function columnsOf(key: ListKey): readonly ListColumn[] {
  const list = listOf(key);
  const { by, on } = quotedNames(list);
  const fed = listFields(key).map((field) => ({ name: list.columns[field] ?? "", field: field as RateKey }));
  return [...fed, { name: by }, { name: on }];
}

/** The list whose column of names has a name; undefined for a list that this version doesn't have. */
export function listNamed(name: string): ListKey | undefined {
  return listKeys.find((key) => listOf(key).names === name);
}

/** What a row of a list is called where it is one of many things. */
const labelOf = (key: ListKey) => `${listOf(key).of.charAt(0).toUpperCase()}${listOf(key).of.slice(1)}`;

export const rowLabel = (key: ListKey, { name }: Pick<OfficeRow, "name">) => `${labelOf(key)}: ${name}`;

/** The cells of a list; undefined where it is damaged, or the workbook has none. */
function listCells(named: NamedRates, { lists }: Rates, key: ListKey) {
  const list = listOf(key);
  const names = cellsNamed(named, list.names);
  if (!names || lists?.[key] === undefined || lists[key].problem !== undefined) return undefined;
  const columns = columnsOf(key).map(({ name, field }) => ({ name, field, cells: cellsNamed(named, name) }));
  // Who quoted a price is no part of it, so a list may have lost those columns.
  const there = columns.flatMap(({ cells, ...column }) =>
    cells?.contents.length === names.contents.length ? [{ ...column, cells }] : [],
  );
  return { names, columns: there, whose: cellsNamed(named, listWhose(list)) };
}

/** A day as a file has it, so that no program reads it as another. */
const FILE_DAY = /^\d{4}-\d{2}-\d{2}$/;
const isQuotedOn = (key: ListKey, name: string) => name === quotedNames(listOf(key)).on;

const toFile = (key: ListKey, name: string, value: string | number) =>
  isQuotedOn(key, name) && typeof value === "number" && isCalendarDay(value) ? isoDate(value) : value;

/** What a cell of a list holds of a file's row. */
export function fromFile(key: ListKey, name: string, value: string | number): string | number {
  return isFileDay(key, name, value) ? readDate(value, "Quoted on") : value;
}

/** Whether a value of a file's row is the day on which a price was quoted. */
export function isFileDay(key: ListKey, name: string, value: string | number): value is string {
  return isQuotedOn(key, name) && typeof value === "string" && FILE_DAY.test(value);
}

/** The office's lists for a file, and labels of what had to be left out. */
export function listsToSave(named: NamedRates, rates: Rates) {
  const lists: Record<string, readonly OfficeRow[]> = {};
  const leftOut: string[] = [];
  for (const key of listKeys) {
    if (rates.lists?.[key] === undefined) continue;
    const cells = listCells(named, rates, key);
    if (!cells) {
      leftOut.push(`the list of ${listOf(key).of}`);
      continue;
    }
    const read = [...rates.lists[key].rows];
    const seen = new Set<string>();
    lists[listOf(key).names] = cells.names.values.flatMap(([name], row): OfficeRow[] => {
      if (typeof name !== "string" || name === "") return [];
      const found = read.shift();
      const isBad = !found || Object.values(found.cells).some(({ problem }) => problem !== undefined);
      if (isBad || seen.has(name.toLowerCase())) {
        leftOut.push(rowLabel(key, { name }));
        return [];
      }
      seen.add(name.toLowerCase());
      const values = cells.columns.flatMap(({ name: column, cells: { values } }) => {
        const value = values[row]?.[0];
        const isHeld = typeof value === "number" || (typeof value === "string" && value !== "");
        return isHeld ? [[column, toFile(key, column, value)] as const] : [];
      });
      return [{ name, cells: Object.fromEntries(values), ...(found.isSample && { sample: true as const }) }];
    });
  }
  return { lists, leftOut };
}

/** Where the lists of a workbook differ from a file's. */
export function compareLists(named: NamedRates, rates: Rates, lists: OfficeLists = {}) {
  const found: RowsComparison["found"][number][] = [];
  const stays: string[] = [];
  const missing: string[] = [];
  const problems: string[] = [];
  for (const key of listKeys) {
    const rows = lists[listOf(key).names];
    if (!rows) continue;
    if (rates.lists?.[key] === undefined) {
      missing.push(`the list of ${listOf(key).of}`);
      continue;
    }
    const compared = compareList(named, rates, key, rows);
    found.push(...compared.found);
    stays.push(...compared.stays.map((name) => rowLabel(key, { name })));
    if (compared.problem !== undefined) problems.push(compared.problem);
  }
  return { found, stays, missing, problems };
}

function compareList(named: NamedRates, rates: Rates, key: ListKey, rows: readonly OfficeRow[]): RowsComparison {
  const { of } = listOf(key);
  const cells = listCells(named, rates, key);
  const [price, ...others] = cells?.columns ?? [];
  if (!cells || !price) {
    const problem = `The list of ${of} on the Rates sheet is missing or damaged, so it stays as it is.`;
    return { found: [], stays: [], problem };
  }
  const columns = [price, ...others];
  const list = {
    label: labelOf(key),
    names: cells.names,
    columns: [price.cells, ...others.map((column) => column.cells)] as [CellsOfName, ...CellsOfName[]],
    whose: cells.whose,
    startOf: (name: string, row: number) => startOf(key, name, row),
    words: (values: readonly CellContent[]) => wordsOf(columns, values),
    noRoom: noRoom(of, "It stays as it is."),
  };
  const wanted = rows.map(({ name, cells: values, sample = false }): RowOfFile => {
    const held = columns.map((column) => fromFile(key, column.name, values[column.name] ?? ""));
    return { name, cells: held, sample };
  });
  return compareRows(list, wanted);
}

/** The price that a row of a list starts with on a new sheet: that of the sample of its name, or else of its place. */
function startOf(key: ListKey, name: string, row: number): string | number {
  const samples = listSamples[key];
  const sample = samples.find((one) => one.name.toLowerCase() === name) ?? samples[row];
  const { price } = listOf(key);
  return sampleContent(price, sample?.fills[price]);
}

/** A row of a file's list in words. */
export function rowWords(key: ListKey, { cells }: OfficeRow): string {
  const columns = columnsOf(key);
  return wordsOf(
    columns,
    columns.map(({ name }) => cells[name] ?? ""),
  );
}

/** @example "$24.00, Edging height 4 in" */
function wordsOf(columns: readonly ListColumn[], values: readonly CellContent[]): string {
  const parts = columns.flatMap(({ field }, place) => {
    const value = values[place] ?? "";
    if (!field || value === "" || typeof value === "boolean") return [];
    const words = rateWords(field, value);
    return place === 0 ? words : `${fields[field].label} ${words}`;
  });
  return parts.length === 0 ? "(nothing else)" : parts.join(", ");
}

/** Names in a file's lists that this version doesn't have. */
export function unknownInLists(lists: OfficeLists = {}): string[] {
  const unknown = Object.entries(lists).flatMap(([name, rows]) => {
    const key = listNamed(name);
    if (!key) return name;
    const known = columnsOf(key).map((column) => column.name);
    return rows.flatMap(({ cells }) => Object.keys(cells).filter((column) => !known.includes(column)));
  });
  return [...new Set(unknown)];
}
