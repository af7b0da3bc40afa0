import { type FieldKey, fields } from "../../quantities/bed/fields";
import { listSamples } from "../../quantities/bed/listSamples";
import { type ListKey, listFields, listOf, listWhose, quotedNames } from "../../quantities/bed/officeLists";
import type { DraftCell, DraftRow } from "../compose";
import type { OfficeRow } from "../office/officeFile";
import { fromFile } from "../office/officeRows";
import { sentence, typed } from "../typed";
import {
  formatOf,
  headingRow,
  ifFilledWrong,
  markOf,
  namedOrWrong,
  sampleContent,
  startKey,
  whoseCell,
  whoseInList,
} from "./rows";

/** Rows for the office's own, below the samples. */
const BLANK_ROWS = 4;
export const listHeadings: Readonly<Record<ListKey, string>> = {
  edging: "Edging by name",
  fabric: "Fabric by name",
  pins: "Pins by name",
  haul: "Haul-off by name",
  delivery: "Delivery by name",
  crew: "Crews by name",
};
const HEADING = { by: "Quoted by", on: "Quoted on" };

/**
 * One of the office's lists: its heading and its rows. The columns up to the sample are those of all rates; the sizes and
 * other prices, and who quoted it and when, are behind them.
 *
 * @param loaded the office's own rows; without them, the list starts with samples.
 */
export function listRows(key: ListKey, loaded?: readonly OfficeRow[]): DraftRow[] {
  const [, ...others] = listFields(key);
  const headings = others.map((field) => `${fields[field].label}, ${fields[field].unit}`);
  return [
    headingRow(listHeadings[key], "Price", "Unit", "Source", "Sample", ...headings, HEADING.by, HEADING.on),
    ...Array.from({ length: rowCount(key, loaded) }, (_, index) => listRow(key, index, loaded)),
  ];
}

type Loaded = readonly OfficeRow[] | undefined;

const rowCount = (key: ListKey, loaded: Loaded) => (loaded ?? listSamples[key]).length + BLANK_ROWS;

const cellKey = (key: ListKey, index: number, part: string) => `${key}${index + 1}.${part}`;

function listRow(key: ListKey, index: number, loaded: Loaded): DraftRow {
  const own = loaded?.[index];
  const isCalled = (name: string) => name.toLowerCase() === own?.name.toLowerCase();
  const sample = loaded ? listSamples[key].find(({ name }) => isCalled(name)) : listSamples[key][index];
  const [price, ...others] = listFields(key) as [FieldKey, ...FieldKey[]];
  const at = (part: string) => cellKey(key, index, part);
  const list = listOf(key);
  const { by, on } = quotedNames(list);
  const start = (field: FieldKey) => sampleContent(field, sample?.fills[field]);
  const loadedContent = (column: string) => {
    const value = fromFile(key, column, own?.cells[column] ?? "");
    return typeof value === "string" ? typed(value) : value;
  };
  const content = (field: FieldKey) => (loaded ? loadedContent(list.columns[field] ?? "") : start(field));
  const cell = (field: FieldKey): DraftCell => ({
    content: content(field),
    key: at(field),
    format: formatOf(fields[field]),
    look: "input",
  });
  const mark = own && content(price) !== "" && markOf(content(price), start(price), own.sample);
  return {
    cells: [
      { content: sentence((loaded ? own : sample)?.name ?? ""), key: at("name"), look: "inputWords" },
      cell(price),
      { content: fields[price].unit, look: "note" },
      whoseCell(at(price), mark || `=${whose(key, index, rowCount(key, loaded))}`),
      { content: start(price), key: startKey(at(price)), format: "money", look: "aside" },
      ...others.map(cell),
      { content: loadedContent(by), key: at("by"), look: "inputWords" },
      { content: loadedContent(on), key: at("on"), look: "inputWords", format: "date" },
    ],
  };
}

/** Whose a row's price is, or what is wrong with the row. */
function whose(key: ListKey, index: number, count: number): string {
  const list = listOf(key);
  const cell = (part: string, row = index) => `{${cellKey(key, row, part)}}`;
  const [name, price, start] = [cell("name"), cell(list.price), `{${startKey(cellKey(key, index, list.price))}}`];
  const names = `${cell("name", 0)}:${cell("name", count - 1)}`;
  const known = `IF(LEN(${price})=0,"",${whoseInList(price, start)})`;
  const checked = listFields(key).reduceRight((rest, field) => ifFilledWrong(fields[field], cell(field), rest), known);
  return namedOrWrong({ name, names, price, lacks: "name" }, checked);
}

/** The names of a list's cells, each with the keys of its first and its last cell. */
export function listEnds(
  key: ListKey,
  loaded?: readonly OfficeRow[],
): { readonly name: string; readonly first: string; readonly last: string }[] {
  const list = listOf(key);
  const { by, on } = quotedNames(list);
  const ends = (name: string, part: string) => ({
    name,
    first: cellKey(key, 0, part),
    last: cellKey(key, rowCount(key, loaded) - 1, part),
  });
  return [
    ends(list.names, "name"),
    ...listFields(key).map((field) => ends(list.columns[field] ?? "", field)),
    ends(listWhose(list), `${list.price}.whose`),
    ends(by, "by"),
    ends(on, "on"),
  ];
}
