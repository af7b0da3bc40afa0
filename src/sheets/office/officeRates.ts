import {
  isPriced,
  type RateKey,
  type Rates,
  rateKeys,
  rateLabel,
  rateNames,
  stoneListNames,
} from "../../quantities/bed/rates";
import type { OfficeRates, OfficeStone } from "./officeFile";

/** What a cell holds: a number, text, or a formula with its "=". */
export type CellContent = string | number | boolean;

/** The cells of a name: where they are, what they hold, and what they show. */
export interface CellsOfName {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly contents: readonly (readonly CellContent[])[];
  readonly values: readonly (readonly unknown[])[];
}

/** The cells of the Rates sheet by the lowercase names that they have. */
export type NamedRates = ReadonlyMap<string, CellsOfName>;

export function cellsNamed(named: NamedRates, name: string): CellsOfName | undefined {
  return named.get(name.toLowerCase());
}

/** The cell of a name; undefined for a name that is gone, or that stands for several cells. */
export function cellNamed(named: NamedRates, name: string) {
  const cells = cellsNamed(named, name);
  const [[content, ...beside] = [], ...below] = cells?.contents ?? [];
  if (!cells || content === undefined || beside.length > 0 || below.length > 0) return undefined;
  const { sheet, row, column, values } = cells;
  return { sheet, row, column, content, value: values[0]?.[0] };
}

/** One row of the list of stone. */
export interface StoneRow {
  readonly kind: CellContent;
  readonly price: CellContent;
  readonly weight: CellContent;
  /** What the cells show; formulas may be behind them. */
  readonly shows: {
    readonly kind: unknown;
    readonly price: unknown;
    readonly weight: unknown;
    readonly whose: unknown;
  };
}

/** Where the list of stone is, and its rows; undefined where it is damaged. */
export function stoneListOf(named: NamedRates, { stonesProblem }: Rates) {
  const [kinds, prices, weights] = [stoneListNames.kinds, stoneListNames.prices, stoneListNames.weights].map((name) =>
    cellsNamed(named, name),
  );
  if (stonesProblem !== undefined || !kinds || !prices || !weights) return undefined;
  const whose = cellsNamed(named, stoneListNames.whose);
  const rows = kinds.contents.map((cells, row): StoneRow => {
    const content = (list: CellsOfName) => list.contents[row]?.[0] ?? "";
    const value = (list: CellsOfName | undefined) => list?.values[row]?.[0] ?? "";
    return {
      kind: cells[0] ?? "",
      price: content(prices),
      weight: content(weights),
      shows: { kind: value(kinds), price: value(prices), weight: value(weights), whose: value(whose) },
    };
  });
  const blank = rows.flatMap(({ kind, price, weight }, row) =>
    [kind, price, weight].every((content) => content === "") ? [row] : [],
  );
  return { kinds, prices, weights, whose, rows, blank };
}

/** The office's rates for a file, and what had to be left out. */
export interface RatesToSave {
  readonly rates: OfficeRates;
  /** Labels of rates that are missing or damaged. */
  readonly leftOut: readonly string[];
}

/**
 * The rates of a workbook, to be saved. What is missing or damaged is left out, so that no file passes it on.
 *
 * @param named the cells of the Rates sheet.
 * @param rates what was read from them.
 */
export function ratesToSave(named: NamedRates, rates: Rates): RatesToSave {
  const values: Record<string, number | string> = {};
  const samples: string[] = [];
  const leftOut: string[] = [];
  for (const key of rateKeys) {
    const value = soundValue(named, rates, key);
    if (value === undefined) leftOut.push(rateLabel(key));
    else values[rateNames[key]] = value;
    if (value !== undefined && isSample(rates, key)) samples.push(rateNames[key]);
  }
  const list = stoneListOf(named, rates);
  if (!list) return { rates: { values, samples, stones: [] }, leftOut: [...leftOut, "the list of stone"] };
  const stones: OfficeStone[] = [];
  const seen = new Set<string>();
  let left = 0;
  for (const { shows } of list.rows) {
    const { kind, price, weight } = shows;
    if (typeof kind !== "string" || kind === "") continue;
    const found = rates.stones[stones.length + left];
    const isBad = !found || found.perTon.problem !== undefined || found.tonsPerYard?.problem !== undefined;
    if (isBad || typeof price !== "number" || seen.has(kind.toLowerCase())) {
      left += 1;
      leftOut.push(`Stone: ${kind}`);
      continue;
    }
    seen.add(kind.toLowerCase());
    stones.push({
      name: kind,
      perTon: price,
      ...(typeof weight === "number" && { tonsPerYard: weight }),
      ...(found.perTon.isExample && { sample: true as const }),
    });
  }
  return { rates: { values, samples, stones }, leftOut };
}

/** What a rate's cell shows, where it can be used. */
function soundValue(named: NamedRates, rates: Rates, key: RateKey): number | string | undefined {
  const value = cellNamed(named, rateNames[key])?.value;
  if (rates.byField[key].problem !== undefined) return undefined;
  return typeof value === "number" || typeof value === "string" ? value : undefined;
}

export function isSample({ byField }: Rates, key: RateKey): boolean {
  const rate = byField[key];
  return isPriced(key) && rate.problem === undefined && rate.isExample;
}
