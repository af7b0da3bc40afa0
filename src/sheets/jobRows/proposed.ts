import { isTyped } from "./columnFacts";
import { type Corrections, type ListFit, settleColumns } from "./fitList";
import { resultOrder, results } from "./results";
import { isResult, type ResultRole } from "./roles";
import { rateKeysOf } from "./setting";

/** What most lists have: how large, how much border, how much stone, and what to order. */
const USUAL: readonly ResultRole[] = ["area", "border", "tons", "order", "pins"];

/**
 * The results that are proposed first: those that the list has columns for, left to right, as far as they are not typed
 * by hand; where it has none, the usual ones.
 */
export function proposedResults(fit: ListFit, corrections: Corrections = new Map()): ResultRole[] {
  const columns = settleColumns(fit.columns, corrections);
  const there = columns.flatMap(({ role, facts }) =>
    role && isResult(role) ? [{ role, isTyped: isTyped(facts) }] : [],
  );
  const rates = rateKeysOf(fit.cells.sheet.names);
  // A result that would bring other columns along is offered, and not proposed.
  const has = new Set(there.map(({ role }) => role));
  const open = there.filter(
    ({ role, isTyped }) =>
      !isTyped &&
      results[role].rates.every((key) => rates.has(key)) &&
      results[role].columns.every((one) => has.has(one)),
  );
  const wanted = open.map(({ role }) => role);
  if (wanted.length > 0) return wanted;
  return USUAL.filter((role) => !there.some((one) => one.role === role));
}

/** Results that can be added, in the order of the work. */
export const offeredResults: readonly ResultRole[] = resultOrder;
