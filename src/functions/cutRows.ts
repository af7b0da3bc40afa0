import type { CutPlan } from "../quantities/cutting/planCuts";

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
    ...padded(cuts.map((place) => lengthsFt[place]!)),
    leftOver,
  ]);
  const unproven = plan.proven ? [] : [[`at least ${plan.atLeast}`, ...padded([]), ""]];
  return [["Stock", ...headings, "Left over, ft"], ...rows, ...unproven];
}
