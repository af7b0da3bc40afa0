import { type CutPlan, planCuts } from "../quantities/cutting/planCuts";
import { messages } from "../quantities/messages";
import { Problem } from "../quantities/problem";
import { INCHES_PER_FOOT } from "../quantities/units";
import { isBlank, rowsOf } from "./cell";
import { cellError, sound } from "./cellError";
import { cutRows } from "./cutRows";
import { feet, inchesOrZero, positiveOrZero } from "./read";

/**
 * The fewest stock lengths (rolls, border pieces) from which all the pieces can be cut without joints.
 * @customfunction CUT_COUNT
 * @param stock_length Length of one stock piece: feet, or text such as 16'.
 * @param lengths Lengths to cut: a cell, row or column of feet or text. Blank ones without a count are skipped.
 * @param counts How many of each length, beside it. Left out: 1 of each.
 * @param loss_in What each cut takes: inches, or text such as 1/8". Left out: 0.
 * @returns Whole stock lengths.
 * @example =BED.CUT_COUNT(16, A1:A6) gives 2 for 8, 7, 6, 5, 4, 2
 * @source One-dimensional cutting stock, solved exactly by patterns of cuts (Gilmore and Gomory 1961) and search.
 * @see BED.CUT_LIST, BED.EDGING_PIECES
 */
export function CUT_COUNT(
  stock_length: unknown,
  lengths: unknown[][],
  counts?: unknown[][],
  loss_in?: unknown,
): number {
  try {
    return sound(planOf(stock_length, lengths, counts, loss_in).plan.count);
  } catch (reason) {
    throw cellError(reason);
  }
}

/**
 * How to cut all the pieces from the fewest stock lengths: a row for each, with what is left over.
 * @customfunction CUT_LIST
 * @param stock_length Length of one stock piece: feet, or text such as 16'.
 * @param lengths Lengths to cut: a cell, row or column of feet or text. Blank ones without a count are skipped.
 * @param counts How many of each length, beside it. Left out: 1 of each.
 * @param loss_in What each cut takes: inches, or text such as 1/8". Left out: 0.
 * @returns A heading row, then stock, cuts and what is left over, in feet; "at least" where fewer might do.
 * @example =INDEX(BED.CUT_LIST(16, A1:A6), 2, 2) gives 7 for 8, 7, 6, 5, 4, 2
 * @source One-dimensional cutting stock, solved exactly by patterns of cuts (Gilmore and Gomory 1961) and search.
 * @see BED.CUT_COUNT, BED.FABRIC_CUTS
 */
export function CUT_LIST(
  stock_length: unknown,
  lengths: unknown[][],
  counts?: unknown[][],
  loss_in?: unknown,
): unknown[][] {
  try {
    const { plan, lengthsFt } = planOf(stock_length, lengths, counts, loss_in);
    return cutRows(plan, lengthsFt);
  } catch (reason) {
    throw cellError(reason);
  }
}

interface Planned {
  readonly plan: CutPlan;
  readonly lengthsFt: readonly number[];
}

/** The last list and its plan: a sheet asks for the count and the plan of the same list in two cells. */
let last: { readonly key: string; readonly planned: Planned } | undefined;

function planOf(stock_length: unknown, lengths: unknown, counts: unknown, loss_in: unknown): Planned {
  const stockLength = feet(stock_length, "stock_length");
  const pieces = piecesOf(lengths, counts);
  const lengthsFt = pieces.map(({ lengthFt }) => lengthFt);
  const loss = inchesOrZero(loss_in, "loss_in", 0) / INCHES_PER_FOOT;
  const list = { stockLength, lengths: lengthsFt, counts: pieces.map(({ count }) => count), loss };
  const key = JSON.stringify(list);
  if (last?.key === key) return last.planned;
  const planned = { plan: planCuts(list), lengthsFt };
  last = { key, planned };
  return planned;
}

/** The lengths to cut with their counts. A blank length is skipped where it has no count either. */
function piecesOf(lengths: unknown, counts: unknown): { lengthFt: number; count: number }[] {
  const at = (argument: string, place: number) => `${argument} (place ${place + 1})`;
  const lengthsFt = rowsOf(lengths)
    .flat()
    .map((cell, place) => (isNone(cell) ? undefined : feet(cell, at("lengths", place))));
  if (lengthsFt.every((length) => length === undefined)) missing("lengths", "6' 8\" in one of its cells");
  const typed = rowsOf(counts ?? [])
    .flat()
    .map((cell, place) => (isBlank(cell) ? undefined : positiveOrZero(cell, at("counts", place))));
  const isLeftOut = typed.every((number) => number === undefined);
  const numbers = isLeftOut ? lengthsFt.map((length) => length && 1) : typed;
  if (numbers.length !== lengthsFt.length) {
    throw new Problem("value", messages.countsBesideLengths(numbers.length, lengthsFt.length), "counts");
  }
  return lengthsFt.flatMap((lengthFt, place) => {
    const count = numbers[place];
    if (lengthFt === undefined && !count) return [];
    if (lengthFt === undefined) return missing(at("lengths", place), "6' 8\"");
    if (count === undefined) return missing(at("counts", place), "2");
    return [{ lengthFt, count }];
  });
}

function missing(argument: string, example: string): never {
  throw new Problem("value", messages.missing(argument, example), argument);
}

/** A blank, which some hosts send as 0: no piece is 0 long. */
function isNone(cell: unknown): boolean {
  return cell === 0 || isBlank(cell);
}
