import { type Rate, type Rates, SAMPLE, stoneRateOf } from "../../quantities/bed/rates";
import { plainName } from "../../quantities/nearestName";
import { STONES, weightAsName } from "../../quantities/stone";
import type { CellChange } from "../jobRows/fill";
import { type NamedRates, stoneListOf } from "../office/officeRates";

/** Whether the formulas know a stone by this name: from the office's list, from ours, or as a weight. */
export function isKnownStone(name: string, rates: Rates | undefined): boolean {
  if (weightAsName(name) !== undefined || STONES.some((stone) => stone.name === plainName(name))) return true;
  return rates !== undefined && stoneRateOf(rates, name)?.tonsPerYard !== undefined;
}

/** What an office says about a name that isn't known: which of the stones it is, or what it weighs. */
export interface StoneAnswer {
  readonly name: string;
  /** A stone of the office's list or of ours, or short tons in a loose cubic yard. */
  readonly is: string | number;
}

/** The list has no blank row left for another name. */
export class StoneListFull extends Error {}

/**
 * Cells to write so that the office's list of stone has a name from now on: the name, the price with its unit, and the
 * weight of the stone that it is. A price that is still a sample stays marked as one.
 *
 * @param named the cells of the office's rates.
 * @returns undefined where the list is damaged.
 * @throws StoneListFull where it has fewer blank rows than there are new names.
 */
export function stoneNameChanges(
  named: NamedRates,
  rates: Rates,
  answers: readonly StoneAnswer[],
): CellChange[] | undefined {
  const list = stoneListOf(named, rates);
  if (!list) return undefined;
  const blanks = [...list.blank];
  return answers.flatMap(({ name, is }) => {
    const own = list.rows.findIndex(({ shows: { kind } }) => String(kind).toLowerCase() === name.trim().toLowerCase());
    const index = own >= 0 ? own : blanks.shift();
    if (index === undefined) throw new StoneListFull();
    const listed = typeof is === "string" ? stoneRateOf(rates, is) : undefined;
    const weight = typeof is === "number" ? is : weightOf(is, listed?.tonsPerYard);
    const price = listed?.soldBy?.problem === undefined ? (listed ?? rates.byField).stoneCost : listed.soldBy;
    const cell = (
      part: "kinds" | "prices" | "weights" | "whose" | "units" | "steps" | "minimums",
      after: string | number,
    ): CellChange[] => {
      const cells = list[part];
      if (!cells) return [];
      const before = cells.contents[index]?.[0] ?? "";
      return before === after
        ? []
        : [{ sheet: cells.sheet, row: cells.row + index, column: cells.column, before, after }];
    };
    // A name that has its own price or unit already only lacks its weight.
    const ownRow = own >= 0 ? list.rows[index] : undefined;
    const isOwn = [ownRow?.price, ...(ownRow?.sold ?? [])].some((content) => content !== undefined && content !== "");
    const priced = price.problem === undefined && !isOwn;
    return [
      ...(own >= 0 ? [] : cell("kinds", name.trim())),
      ...(priced ? cell("prices", Number(price.text)) : []),
      ...(priced ? cell("units", textIn(listed?.soldBy)) : []),
      ...(priced ? cell("steps", numberIn(listed?.orderStep)) : []),
      ...(priced ? cell("minimums", numberIn(listed?.orderMinimum)) : []),
      ...(priced && price.isExample ? cell("whose", SAMPLE) : []),
      ...cell("weights", weight),
    ];
  });
}

const textIn = (rate: Rate | undefined): string => (rate?.problem === undefined ? (rate?.text ?? "") : "");
const numberIn = (rate: Rate | undefined): number | "" => (textIn(rate) === "" ? "" : Number(textIn(rate)));

function weightOf(stone: string, weighed: Rate | undefined): number {
  if (weighed && weighed.problem === undefined) return Number(weighed.text);
  return STONES.find(({ name }) => name === plainName(stone))?.tonsPerYard ?? 0;
}
