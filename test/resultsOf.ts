import type { Estimate } from "../src/quantities/bed/estimate";

/** What job rows show of a bed, from its own estimate. */
export function resultsOf({ amounts, laborHours, lines }: Estimate) {
  const cost = (kind: string) =>
    lines.filter((line) => line.kind === kind).reduce((sum, line) => sum + line.costSum, 0);
  return {
    area: amounts.stoneArea,
    border: amounts.borderRun,
    pieces: amounts.pieces,
    stakes: amounts.extraStakes,
    tons: amounts.stoneTons,
    order: amounts.orderTons,
    rolls: amounts.rolls,
    pins: amounts.pins,
    boxes: amounts.pinBoxes,
    dig: amounts.digYards,
    spoilLoads: amounts.spoilLoads,
    deliveries: amounts.deliveries,
    hours: laborHours,
    materialCost: cost("material"),
    laborCost: cost("labor"),
    haulingCost: cost("hauling"),
  };
}
