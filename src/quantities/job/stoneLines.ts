import { must } from "../must";
import { orderUp } from "../stoneAmounts";
import { addedUp } from "./addedUp";
import { type Ask, grouped, orderOf, partsOf } from "./asks";
import type { BedNeeds, StoneNeed } from "./bedNeeds";
import { deliveryLine } from "./deliveryLine";
import { type LineWithWarnings, lineOf } from "./lineOf";
import { plain, sameName, spellingOf } from "./plain";

/** Stone of a bed, with the bed's name. */
export type StoneOfBed = StoneNeed & { readonly bed: string };

/**
 * Stone by kind and size: the tons of all beds are added, then rounded once to the yard's step and minimum; and its
 * deliveries, each kind and size on trucks of its own (common practice).
 */
export function stoneLines(beds: readonly BedNeeds[]): LineWithWarnings[] {
  const all = beds.flatMap(({ name, stone }) => (stone && isWanted(stone) ? [{ ...stone, bed: name }] : []));
  return grouped(all, keyOf).flatMap(linesOfOneStone);
}

const isWanted = ({ tons, order, deliveries }: StoneNeed) => tons > 0 || order.quantity > 0 || deliveries.quantity > 0;

const keyOf = ({ kind, sizeIn }: StoneNeed) => `${sameName(kind)}|${plain(sizeIn)}`;

function linesOfOneStone(stones: readonly StoneOfBed[]): LineWithWarnings[] {
  const first = must(stones[0]);
  const item = spellingOf(stones.map(({ kind }) => kind));
  const specification = `to ${plain(first.sizeIn)} in`;
  const parts = partsOf(stones.map(askOf)).map((part) => ({ ...part, order: orderOf(part, inYardSteps) }));
  const line = lineOf(
    {
      key: `stone|${keyOf(first)}`,
      supplier: "stone yard",
      item,
      specification,
      neededUnit: "tons",
      orderUnit: "tons",
    },
    parts,
    { weightTons: addedUp(parts.map(({ order }) => order)) },
  );
  const lots = parts.map(({ asks, order }) => ({ stones: asks.map(({ source }) => source), orderTons: order }));
  const delivery = deliveryLine(`delivery|${keyOf(first)}`, `${item}, ${specification}`, lots);
  return [{ line, warnings: [] }, ...(delivery ? [delivery] : [])];
}

function askOf(stone: StoneOfBed): Ask<StoneOfBed> {
  const { bed, tons, allowance, order, tonsPerYard, yardStep, yardMinimum } = stone;
  return {
    bed,
    source: stone,
    needed: tons,
    // Net tons and the share of them on top make what is needed.
    allowance: (tons * allowance) / (1 + allowance),
    own: order,
    terms: { "order increment": yardStep, "minimum order": yardMinimum, "weight per cu yd": tonsPerYard },
  };
}

/** Beds that join have the same step and minimum. */
function inYardSteps(stones: readonly StoneOfBed[]): number {
  const { yardStep, yardMinimum } = must(stones[0]);
  return orderUp(addedUp(stones.map(({ tons }) => tons)), yardStep, yardMinimum);
}
