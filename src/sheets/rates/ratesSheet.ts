import { type ListKey, listKeys, listOf } from "../../quantities/bed/officeLists";
import { isPriced, type RateKey, rateKeys, rateNames, stoneListNames, whoseName } from "../../quantities/bed/rates";
import { must } from "../../quantities/must";
import type { Anchor, Area } from "../../spreadsheet/areas";
import { compose, type DraftRow } from "../compose";
import { type OfficeRates, type OfficeVersion, versionRow } from "../office/officeFile";
import type { Plan } from "../plan";
import { sentence } from "../typed";
import { listEnds, listRows } from "./listRows";
import { headingRow, rateRow, whoseKey } from "./rows";
import { rateSections } from "./sections";
import { STONE_COLUMNS, STONE_HEADING, stoneEnds, stoneRows } from "./stoneRows";

/** What the sheet is called when it is new; it may be renamed, since everything goes by the names of its cells. */
export const RATES_SHEET = "Rates";

/** Which rates are to be written. */
export interface WantedRates {
  readonly keys: readonly RateKey[];
  /** Whether the list of stone by kind is among them. */
  readonly stones: boolean;
  /** Which of the office's lists are among them. */
  readonly lists: readonly ListKey[];
  /** Names that the workbook has already, where what its Rates sheet lacks is added to that. */
  readonly taken?: readonly string[];
  /** The office's own rates and which they are, for a sheet that starts with them and not with samples. */
  readonly loaded?: { readonly rates: OfficeRates; readonly version: OfficeVersion };
}

export const allRates: WantedRates = { keys: rateKeys, stones: true, lists: listKeys };

/** Notes run on over the columns behind theirs, which only the lists fill. */
const WIDTHS = [37, 12, 14, 30, 13, 13, 13, 13, 13, 13, 13, 13];
const BLANK: DraftRow = { cells: [] };
const TITLE = "Your rates";
const HOW = [
  "Prices and markups are samples until you type your own over them; then the row says “own”.",
  "Sizes, production rates, and percentages start at common practice; yours will differ.",
  "Estimates and job rows follow these cells by name, such as Rate_fabric_roll, even if you move them.",
  "If your price happens to match the sample, choose “own” in the Source column.",
];
const HOW_LISTS = "Pick a row of a list by its name. What the row leaves blank comes from the single rates.";

/** The rates as plain cells, each with its unit, whose it is and a note, and with names that formulas read well by. */
export function ratesSheet(at: Anchor, wanted: WantedRates = allRates): Plan {
  const stones = wanted.stones ? stoneRows(wanted.loaded?.rates.stones) : [];
  const rows = ratesRows(wanted, stones);
  const taken = new Set(wanted.taken?.map((name) => name.toLowerCase()));
  const names = namesOf(rows, wanted, stones).filter(({ name }) => !taken.has(name.toLowerCase()));
  return { ...compose("sheet of rates", rows, WIDTHS, at), names };
}

function ratesRows({ keys, lists, taken, loaded }: WantedRates, stones: readonly DraftRow[]): DraftRow[] {
  const sections = rateSections.map(({ heading, rates }) => ({
    heading,
    rates: Object.entries(rates).filter(([key]) => keys.includes(key as RateKey)) as [RateKey, string][],
  }));
  const caution = (content: string): DraftRow => ({ cells: [{ content, look: "caution" }] });
  const top: DraftRow[] = [
    { look: "title", cells: [{ content: TITLE }] },
    ...(loaded ? [{ cells: [{ content: sentence(versionRow(loaded.version)), look: "label" as const }] }] : []),
    ...HOW.map(caution),
  ];
  return [
    ...(taken ? [] : top),
    ...(lists.length > 0 ? [caution(HOW_LISTS)] : []),
    ...(stones.length > 0 ? [headingRow(STONE_HEADING, ...STONE_COLUMNS), ...stones] : []),
    // A blank row above tells headings from another row of the list before.
    ...lists.flatMap((key) => [BLANK, ...listRows(key, loadedRows(loaded, key))]),
    ...sections
      .filter(({ rates }) => rates.length > 0)
      .flatMap(({ heading, rates }) => [
        headingRow(heading, "Rate", "Unit", "Source", "Sample", "", "Note"),
        ...rates.map(([key, note]) => rateRow(key, note, loaded?.rates)),
      ]),
  ];
}

/** The office's own rows of a list; a file of before has no lists, and then it starts as in any sheet. */
const loadedRows = (loaded: WantedRates["loaded"], key: ListKey) => loaded?.rates.lists?.[listOf(key).names];

function namesOf(
  rows: readonly DraftRow[],
  { keys, lists: wantedLists, loaded }: WantedRates,
  stones: readonly DraftRow[],
): { name: string; area: Area }[] {
  const places = placesOf(rows);
  const cell = (name: string, key: string) => ({ name, area: { ...must(places.get(key)), rows: 1, columns: 1 } });
  const single = keys.flatMap((key) => [
    cell(rateNames[key], key),
    ...(isPriced(key) ? [cell(whoseName(key), whoseKey(key))] : []),
  ]);
  const parts = stones.length === 0 ? [] : (Object.keys(stoneListNames) as (keyof typeof stoneListNames)[]);
  const columns = [
    ...parts.map((part) => {
      const [first, last] = stoneEnds(part, stones);
      return { name: stoneListNames[part], first, last };
    }),
    ...wantedLists.flatMap((key) => listEnds(key, loadedRows(loaded, key))),
  ].map(({ name, ...ends }) => {
    const [first, last] = [must(places.get(ends.first)), must(places.get(ends.last))];
    return { name, area: { ...first, rows: last.row - first.row + 1, columns: 1 } };
  });
  return [...single, ...columns];
}

/** Where in the plan the keyed cells stand. */
function placesOf(rows: readonly DraftRow[]): Map<string, Anchor> {
  const keyed = rows.flatMap(({ cells }, row) =>
    cells.flatMap((cell, column) => (cell?.key === undefined ? [] : [[cell.key, { row, column }] as const])),
  );
  return new Map(keyed);
}
