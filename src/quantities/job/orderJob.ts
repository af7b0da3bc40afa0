import type { BedNeeds } from "./bedNeeds";
import { borderLines } from "./borderLines";
import { checkNeeds } from "./checkNeeds";
import { fabricLines } from "./fabricLines";
import { type JobOrder, type LineMoney, suppliers } from "./order";
import { otherLines } from "./otherLines";
import { pinLines } from "./pinLines";
import { sandLines } from "./sandLines";
import { spoilLines } from "./spoilLines";
import { stoneLines } from "./stoneLines";
import { USUAL_CUT_LOSS_IN } from "./together";

export interface OrderChoices {
  /** What each cut of a border piece takes, in inches, 0 or more. Left out: 1/8 in. */
  readonly cutLossIn?: number;
  /** Work allowed for each list of cuts, in steps of the solver. Left out: well under a second's worth. */
  readonly steps?: number;
}

/**
 * One order for a job of one or many beds. What the beds need is added before it is rounded to what is sold: stone to
 * the yard's step and minimum, pins to boxes, deliveries and spoil to loads; border pieces and rolls are cut across
 * beds. The order of the beds does not matter, and one bed alone is ordered as its own sheet says.
 *
 * A quantity that someone typed over in a bed's sheet is ordered as typed, as whole units beside what the other beds
 * take together: it is neither lost nor worked into the cutting. Ordering together never takes more than the beds' own
 * lines together; for stakes alone that holds for pieces and stakes in money.
 *
 * @param beds at least one.
 * @throws Problem where there is no bed or a bed's number cannot be used.
 * @example two beds that need 1.2 tons each, sold by half tons: orders 2.5 tons and not 1.5 + 1.5
 */
export function orderJob(
  beds: readonly BedNeeds[],
  { cutLossIn = USUAL_CUT_LOSS_IN, steps }: OrderChoices = {},
): JobOrder {
  checkNeeds(beds);
  const hauled = [...stoneLines(beds), ...spoilLines(beds)];
  const lines = [
    ...hauled.map(({ line }) => line),
    ...borderLines(beds, cutLossIn, steps),
    ...sandLines(beds),
    ...fabricLines(beds, steps),
    ...pinLines(beds),
    ...otherLines(beds),
  ].sort((a, b) => suppliers.indexOf(a.supplier) - suppliers.indexOf(b.supplier));
  return {
    lines,
    money: sumOfMoney(lines.flatMap(({ money }) => money ?? [])),
    unpriced: lines
      .filter(({ money }) => !money)
      .map(({ item, specification }) => [item, specification].filter(Boolean).join(", ")),
    warnings: hauled.flatMap(({ line, warnings }) => warnings.map((text) => ({ line: line.key, text }))),
  };
}

function sumOfMoney(sums: readonly LineMoney[]): LineMoney {
  const total = (key: keyof LineMoney) => sums.reduce((sum, money) => sum + money[key], 0);
  return { orderCents: total("orderCents"), bedByBedCents: total("bedByBedCents"), savedCents: total("savedCents") };
}
