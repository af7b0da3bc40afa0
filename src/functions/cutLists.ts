import { type CutPlan, planCuts } from "../quantities/cutting/planCuts";
import { messages } from "../quantities/messages";
import { must } from "../quantities/must";
import { Problem } from "../quantities/problem";
import { INCHES_PER_FOOT } from "../quantities/units";
import { may, needs } from "./argument";
import { isBlank, rowsOf } from "./cell";
import { feet, inchesOrZero, positiveOrZero } from "./read";

/** Lengths and counts belong together, so they are read once both are there. */
export const cutListLengths = (value: unknown): unknown => value;

export const stockLength = needs("stock_length", feet);
export const cutLengths = needs("lengths", cutListLengths);
export const cutCounts = may("counts", cutListLengths);
export const lossIn = may("loss_in", inchesOrZero, 0);

/** What the functions of cutting take. */
export const cutListArguments = [stockLength, cutLengths, cutCounts, lossIn] as const;

interface Planned {
  readonly plan: CutPlan;
  readonly lengthsFt: readonly number[];
}

/** The last list and its plan: a sheet asks for the count and the plan of the same list in two cells. */
let last: { readonly key: string; readonly planned: Planned } | undefined;

/**
 * The cutting plan of a list.
 *
 * @param lengths cells of lengths.
 * @param counts cells with how many of each; none where it is one of each.
 */
export function planOf(stockFt: number, lengths: unknown, counts: unknown, cutLossIn: number): Planned {
  const pieces = piecesOf(lengths, counts);
  const lengthsFt = pieces.map(({ lengthFt }) => lengthFt);
  const loss = cutLossIn / INCHES_PER_FOOT;
  const list = { stockLength: stockFt, lengths: lengthsFt, counts: pieces.map(({ count }) => count), loss };
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

/** Feet of all the lengths to cut. */
export function totalLength(lengths: unknown, counts: unknown): number {
  return piecesOf(lengths, counts).reduce((sum, { lengthFt, count }) => sum + lengthFt * count, 0);
}

/**
 * A cutting plan as rows of cells: a stock length a row, and at the end how few might do where that is not proven.
 *
 * @param lengthsFt the lengths that the plan's cuts stand for.
 */
export function cutRows(plan: CutPlan, lengthsFt: readonly number[]): (string | number)[][] {
  const most = Math.max(1, ...plan.stocks.map(({ cuts }) => cuts.length));
  const padded = (cells: readonly (string | number)[]) => [...cells, ...Array(most - cells.length).fill("")];
  const headings = Array.from({ length: most }, (_, index) => `Cut ${index + 1}, ft`);
  const rows = plan.stocks.map(({ cuts, leftOver }, index) => [
    index + 1,
    ...padded(cuts.map((place) => must(lengthsFt[place]))),
    leftOver,
  ]);
  const unproven = plan.proven ? [] : [[`at least ${plan.atLeast}`, ...padded([]), ""]];
  return [["Stock", ...headings, "Left over, ft"], ...rows, ...unproven];
}
