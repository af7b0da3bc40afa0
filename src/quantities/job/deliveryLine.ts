import { must } from "../must";
import { orderUp } from "../stoneAmounts";
import { addedUp } from "./addedUp";
import { type Ask, orderOf, ownOf, partsOf } from "./asks";
import { type LineWithWarnings, lineOf, type OrderedPart } from "./lineOf";
import { neededOf, type StoneOfBed, tonsEach } from "./stoneLines";
import { type Haul, loadsFor, truckTerms, truckWarnings } from "./truck";

/** Stone that the yard sells together, and what of it is ordered. */
export interface StoneLot {
  readonly stones: readonly StoneOfBed[];
  readonly orderTons: number;
}

interface OrderedDelivery extends OrderedPart<StoneOfBed> {
  readonly hauls: readonly Haul[];
}

/**
 * Loads that bring the stone: what is ordered, by volume and by weight. Undefined where nothing is delivered.
 *
 * @param stone in words.
 * @param lots of one kind and size.
 */
export function deliveryLine(key: string, stone: string, lots: readonly StoneLot[]): LineWithWarnings | undefined {
  const parts = lots.flatMap(deliveriesOf);
  if (parts.every(({ bedByBed, order }) => bedByBed === 0 && order === 0)) return undefined;
  const line = lineOf(
    {
      key,
      supplier: "hauling",
      item: "Delivery",
      specification: stone,
      neededUnit: "tons",
      orderUnit: "loads",
    },
    parts,
    { weightTons: addedUp(lots.map(({ orderTons }) => orderTons)) },
  );
  const warnings = parts.flatMap(({ hauls }) => hauls.flatMap((haul) => truckWarnings(`Delivery of ${stone}`, haul)));
  return { line, warnings: [...new Set(warnings)] };
}

function deliveriesOf({ stones, orderTons }: StoneLot): OrderedDelivery[] {
  const parts = partsOf(stones.map(askOf));
  // Where trucks differ no one knows which of them brings the stone of which bed; so each brings its own.
  const isOneTruck = parts.filter(({ joined }) => joined.length > 0).length === 1;
  const typedTons = addedUp(stones.filter(({ deliveries }) => deliveries.typed).map(ownTons));
  const restTons = Math.max(0, orderTons - typedTons);
  return parts.map((part) => {
    const { joined, bedByBed } = part;
    const together = joined.length > 1 && isOneTruck ? must(joined[0]).source : undefined;
    if (!together) return { ...part, order: bedByBed, hauls: part.asks.map(({ source }) => haulOf(source)) };
    const { tonsPerYard, truck, yardStep, yardMinimum } = together;
    // Where only the amount was typed, the bed's own block still counts loads of what it works out.
    const needed = addedUp(joined.map(({ source }) => neededOf(source)));
    const shared = orderUp(needed, yardStep, yardMinimum) * tonsEach(together);
    const order = orderOf(part, () => loadsFor(shared / tonsPerYard, tonsPerYard, truck));
    const loads = order - ownOf(part.beside);
    const joinedHaul = { yards: restTons / tonsPerYard, tonsPerYard, loads, truck };
    return { ...part, order, hauls: [joinedHaul, ...part.beside.map(({ source }) => haulOf(source))] };
  });
}

function askOf(stone: StoneOfBed): Ask<StoneOfBed> {
  return {
    bed: stone.bed,
    source: stone,
    needed: stone.tons,
    own: stone.deliveries,
    terms: truckTerms(stone.truck),
  };
}

/** Short tons on the bed's own line. */
const ownTons = (stone: StoneOfBed) => stone.order.quantity * tonsEach(stone);

/** What the bed's own loads carry. */
function haulOf(stone: StoneOfBed): Haul {
  const { tonsPerYard, deliveries, truck } = stone;
  return { yards: ownTons(stone) / tonsPerYard, tonsPerYard, loads: deliveries.quantity, truck };
}
