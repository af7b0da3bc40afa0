import { isPriced, type RateKey, rateKeys, rateNames, stoneListNames, whoseName } from "../../quantities/bed/rates";
import { must } from "../../quantities/must";
import type { Anchor, Area } from "../../spreadsheet/areas";
import { compose, type DraftRow } from "../compose";
import type { Plan } from "../plan";
import { headingRow, rateRow, whoseKey } from "./rows";
import { rateSections } from "./sections";
import { FIRST_STONE, LAST_STONE, STONE_PARTS, stoneRows } from "./stoneRows";

/** What the sheet is called when it is new; it may be renamed, since everything goes by the names of its cells. */
export const RATES_SHEET = "Rates";

/** Which rates are to be written. */
export interface WantedRates {
  readonly keys: readonly RateKey[];
  /** Whether the list of stone by kind is among them. */
  readonly stones: boolean;
  /** Names that the workbook has already. */
  readonly taken?: readonly string[];
}

export const allRates: WantedRates = { keys: rateKeys, stones: true };

const WIDTHS = [37, 12, 14, 30, 13, 13, 60];
const TITLE = "Rates of the office";
const HOW = [
  "Prices and markups are invented examples until you type your own over them: then the row says “own”.",
  "Sizes, paces and shares start with common practice; yours will differ.",
  "Estimates and job rows follow these cells by their names, such as Rate_fabric_roll, wherever the cells are moved to.",
  "A price that happens to be the same as the one it started with: choose “own” in the column Whose.",
];

/** The rates as plain cells, each with its unit, whose it is and a note, and with names that formulas read well by. */
export function ratesSheet(at: Anchor, wanted: WantedRates = allRates): Plan {
  const rows = ratesRows(wanted);
  const taken = new Set(wanted.taken?.map((name) => name.toLowerCase()));
  const names = namesOf(rows, wanted).filter(({ name }) => !taken.has(name.toLowerCase()));
  return { ...compose("sheet of rates", rows, WIDTHS, at), names };
}

function ratesRows({ keys, stones }: WantedRates): DraftRow[] {
  const sections = rateSections.map(({ heading, rates }) => ({
    heading,
    rates: Object.entries(rates).filter(([key]) => keys.includes(key as RateKey)) as [RateKey, string][],
  }));
  return [
    { look: "title", cells: [{ content: TITLE }] },
    ...HOW.map((content): DraftRow => ({ cells: [{ content, look: "caution" }] })),
    ...(stones
      ? [headingRow("Stone by kind", "Price", "Unit", "Whose", "Started with", "Tons a cu yd", "Note"), ...stoneRows()]
      : []),
    ...sections
      .filter(({ rates }) => rates.length > 0)
      .flatMap(({ heading, rates }) => [
        headingRow(heading, "Rate", "Unit", "Whose", "Started with", "", "Note"),
        ...rates.map(([key, note]) => rateRow(key, note)),
      ]),
  ];
}

function namesOf(rows: readonly DraftRow[], { keys, stones }: WantedRates): { name: string; area: Area }[] {
  const places = placesOf(rows);
  const cell = (name: string, key: string) => ({ name, area: { ...must(places.get(key)), rows: 1, columns: 1 } });
  const single = keys.flatMap((key) => [
    cell(rateNames[key], key),
    ...(isPriced(key) ? [cell(whoseName(key), whoseKey(key))] : []),
  ]);
  if (!stones) return single;
  const parts = Object.keys(stoneListNames) as (keyof typeof stoneListNames)[];
  const lists = parts.map((part) => {
    const first = must(places.get(`${FIRST_STONE}.${STONE_PARTS[part]}`));
    const last = must(places.get(`${LAST_STONE}.${STONE_PARTS[part]}`));
    return { name: stoneListNames[part], area: { ...first, rows: last.row - first.row + 1, columns: 1 } };
  });
  return [...single, ...lists];
}

/** Where in the plan the keyed cells stand. */
function placesOf(rows: readonly DraftRow[]): Map<string, Anchor> {
  const keyed = rows.flatMap(({ cells }, row) =>
    cells.flatMap((cell, column) => (cell?.key === undefined ? [] : [[cell.key, { row, column }] as const])),
  );
  return new Map(keyed);
}
