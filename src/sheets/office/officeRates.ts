import { isPriced, type RateKey, type Rates, stoneListNames, stoneUnitNames } from "../../quantities/bed/rates";

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
  /** What it is sold by, its step, and its minimum; none on a sheet of before. */
  readonly sold: readonly CellContent[];
  /** What the cells show; formulas may be behind them. */
  readonly shows: {
    readonly kind: unknown;
    readonly price: unknown;
    readonly weight: unknown;
    readonly whose: unknown;
    readonly sold: readonly unknown[];
  };
}

/** Where the list of stone is, and its rows; undefined where it is damaged. */
export function stoneListOf(named: NamedRates, { stonesProblem }: Rates) {
  const [kinds, prices, weights] = [stoneListNames.kinds, stoneListNames.prices, stoneListNames.weights].map((name) =>
    cellsNamed(named, name),
  );
  if (stonesProblem !== undefined || !kinds || !prices || !weights) return undefined;
  const whose = cellsNamed(named, stoneListNames.whose);
  const sold = stoneUnitNames.flatMap((name) => cellsNamed(named, name) ?? []);
  const rows = kinds.contents.map((cells, row): StoneRow => {
    const content = (list: CellsOfName) => list.contents[row]?.[0] ?? "";
    const value = (list: CellsOfName | undefined) => list?.values[row]?.[0] ?? "";
    return {
      kind: cells[0] ?? "",
      price: content(prices),
      weight: content(weights),
      sold: sold.map(content),
      shows: {
        kind: value(kinds),
        price: value(prices),
        weight: value(weights),
        whose: value(whose),
        sold: sold.map(value),
      },
    };
  });
  const blank = rows.flatMap(({ kind, price, weight, sold }, row) =>
    [kind, price, weight, ...sold].every((content) => content === "") ? [row] : [],
  );
  const [units, steps, minimums] = sold;
  return { kinds, prices, weights, whose, units, steps, minimums, rows, blank };
}

export function isSample({ byField }: Rates, key: RateKey): boolean {
  const rate = byField[key];
  return isPriced(key) && rate.problem === undefined && rate.isExample;
}
