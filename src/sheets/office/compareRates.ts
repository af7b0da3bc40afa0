import { exampleStonePrices } from "../../quantities/bed/examples";
import { type Field, fields } from "../../quantities/bed/fields";
import { isPriced, type RateKey, type Rates, rateLabel, rateNames, whoseName } from "../../quantities/bed/rates";
import { startingContent } from "../rates/rows";
import {
  changed,
  compareRows,
  contentWords,
  type Found,
  markCell,
  noRoom,
  type OfficeCell,
  type RateDifference,
  type RowOfFile,
  type RowsComparison,
  sampleWords,
  shownOf,
} from "./compareRows";
import type { OfficeRates, OfficeStone } from "./officeFile";
import { cellNamed, isSample, type NamedRates, stoneListOf } from "./officeRates";
import { compareLists } from "./officeRows";
import { rateWords, stoneCells, stoneWords } from "./rateWords";
import { rateNamed } from "./readOffice";

export type { OfficeCell, RateDifference } from "./compareRows";

export interface RatesComparison {
  readonly differences: readonly RateDifference[];
  /** The cells in which the workbook's rates become the file's. */
  readonly cells: readonly OfficeCell[];
  /** Kinds of stone of the workbook's own that the file doesn't list: they stay. */
  readonly stays: readonly string[];
  /** What the file has and the workbook has no cell for. */
  readonly missing: readonly string[];
  /** Why a list can't take the file's rows. */
  readonly problems: readonly string[];
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
  for (const [name, value] of Object.entries(file.values)) {
    const key = rateNamed(name);
    if (!key) continue;
    const one = compareRate(named, rates, key, value, file.samples.includes(name));
    if (one) found.push(one);
    else missing.push(rateLabel(key));
  }
  const stones = compareStones(named, rates, file.stones);
  const lists = compareLists(named, rates, file.lists);
  const all = [...stones.found, ...lists.found, ...found];
  return {
    differences: all.flatMap(({ difference }) => difference ?? []),
    cells: all.flatMap(({ cells }) => cells),
    stays: [...stones.stays, ...lists.stays],
    missing: [...lists.missing, ...missing],
    problems: [...(stones.problem === undefined ? [] : [stones.problem]), ...lists.problems],
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

function compareStones(named: NamedRates, rates: Rates, stones: readonly OfficeStone[]): RowsComparison {
  const list = stoneListOf(named, rates);
  if (!list) return { found: [], stays: [], ...(stones.length > 0 && { problem: LIST_DAMAGED }) };
  const { kinds, prices, weights, whose, units, steps, minimums } = list;
  const sold = [units, steps, minimums].filter((cells) => cells !== undefined);
  // On a sheet of before, a price by another unit would be one per ton.
  const leftOut =
    sold.length > 0
      ? []
      : stones.filter((stone) =>
          stoneCells(stone)
            .slice(2)
            .some((cell) => cell !== ""),
        );
  const rows = stones
    .filter((stone) => !leftOut.includes(stone))
    .map((stone): RowOfFile => {
      const { name, sample = false } = stone;
      return { name, cells: stoneCells(stone).slice(0, 2 + sold.length), sample };
    });
  const compared = compareRows(
    {
      label: "Stone",
      names: kinds,
      columns: [prices, weights, ...sold],
      whose,
      startOf: (kind, row) => Number(exampleOf(kind, row)?.perTon ?? Number.NaN),
      words: stoneWords,
      noRoom: noRoom("stone", "Prices of stone stay as they are."),
    },
    rows,
  );
  if (leftOut.length === 0 || compared.problem !== undefined) return compared;
  return { ...compared, problem: `${NO_UNITS} ${leftOut.map(({ name }) => name).join(", ")}.` };
}

const NO_UNITS =
  "The list of stone on the Rates sheet has no columns for what it's sold by, its increment, and its minimum. Left out:";

/** The sample that a row of the list started with, as far as its kind and its place say. */
function exampleOf(kind: string, row: number) {
  return exampleStonePrices.find(({ stone }) => stone === kind) ?? exampleStonePrices[row];
}

const LIST_DAMAGED = "The list of stone on the Rates sheet is missing or damaged, so prices of stone stay as they are.";
