import { must } from "../must";
import { orderUp } from "../stoneAmounts";
import { addedUp } from "./addedUp";
import { type Ask, grouped, orderOf, partsOf } from "./asks";
import type { BedNeeds, StoneNeed } from "./bedNeeds";
import { deliveryLine, type StoneLot } from "./deliveryLine";
import { type LineWithWarnings, lineOf } from "./lineOf";
import type { OrderLine } from "./order";
import { plain, sameName, spellingOf } from "./plain";

/** Stone of a bed, with the bed's name. */
export type StoneOfBed = StoneNeed & { readonly bed: string };

/**
 * Stone by kind, size, and what it is sold by: what all beds need is added, then rounded once to the yard's step and
 * minimum; and its deliveries, each kind and size on trucks of its own (common practice).
 */
export function stoneLines(beds: readonly BedNeeds[]): LineWithWarnings[] {
  const all = beds.flatMap(({ name, stone }) => (stone && isWanted(stone) ? [{ ...stone, bed: name }] : []));
  return grouped(all, keyOf).flatMap(linesOfOneStone);
}

const isWanted = ({ tons, order, deliveries }: StoneNeed) => tons > 0 || order.quantity > 0 || deliveries.quantity > 0;

const keyOf = ({ kind, sizeIn, soldBy }: StoneNeed) => `${sameName(kind)}|${plain(sizeIn)}${soldBy?.words ?? ""}`;

function linesOfOneStone(stones: readonly StoneOfBed[]): LineWithWarnings[] {
  const first = must(stones[0]);
  const item = spellingOf(stones.map(({ kind }) => kind));
  const { unit = "tons", words = "" } = first.soldBy ?? {};
  const specification = `to ${plain(first.sizeIn)} in${words}`;
  const parts = partsOf(stones.map(askOf)).map((part) => ({ ...part, order: orderOf(part, inYardSteps) }));
  const lots = parts.map(({ asks, order }) => {
    const sources = asks.map(({ source }) => source);
    return { stones: sources, orderTons: order * tonsEach(must(sources[0])) };
  });
  const line = lineOf(
    {
      key: `stone|${keyOf(first)}`,
      supplier: "stone yard",
      item,
      specification,
      neededUnit: unit,
      orderUnit: unit,
    },
    parts,
    { weightTons: addedUp(lots.map(({ orderTons }) => orderTons)), volume: volumeOf(lots) },
  );
  const delivery = deliveryLine(`delivery|${keyOf(first)}`, `${item}, ${specification}`, lots);
  return [{ line, warnings: [] }, ...(delivery ? [delivery] : [])];
}

/** Short tons in one of what it is sold by. */
export const tonsEach = ({ soldBy }: StoneNeed): number => soldBy?.tonsEach ?? 1;

/** What is needed, in what it is sold by. */
export const neededOf = (stone: StoneNeed): number => stone.tons / tonsEach(stone);

/** What is ordered by volume, with the weights that it was counted by. */
function volumeOf(lots: readonly StoneLot[]): NonNullable<OrderLine["volume"]> {
  const tonsPerYard = lots.map(({ stones }) => must(stones[0]).tonsPerYard);
  return {
    yards: addedUp(lots.map(({ orderTons }, index) => orderTons / must(tonsPerYard[index]))),
    tonsPerYard: [...new Set(tonsPerYard)],
  };
}

function askOf(stone: StoneOfBed): Ask<StoneOfBed> {
  const { bed, allowance, order, tonsPerYard, yardStep, yardMinimum } = stone;
  const needed = neededOf(stone);
  return {
    bed,
    source: stone,
    needed,
    // The net amount and the share of it on top make what is needed.
    allowance: (needed * allowance) / (1 + allowance),
    own: order,
    terms: { "order increment": yardStep, "minimum order": yardMinimum, "weight per cu yd": tonsPerYard },
  };
}

/** Beds that join have the same step and minimum. */
function inYardSteps(stones: readonly StoneOfBed[]): number {
  const { yardStep, yardMinimum } = must(stones[0]);
  return orderUp(addedUp(stones.map(neededOf)), yardStep, yardMinimum);
}
