import { loads } from "../hauling";
import { WHOLE_TOLERANCE } from "../whole";
import type { Truck } from "./bedNeeds";
import { truckWords } from "./messages";

/** What one truck carries in so many loads. */
export interface Haul {
  readonly yards: number;
  /** 0 where it is not known. */
  readonly tonsPerYard: number;
  readonly loads: number;
  readonly truck: Truck;
}

/** Whole loads for an amount, by volume and by weight. */
export function loadsFor(yards: number, tonsPerYard: number, { yards: truckYards, payloadTons }: Truck): number {
  return loads(yards, truckYards, tonsPerYard, payloadTons);
}

/**
 * What to know about a truck before it is loaded.
 *
 * @param what is hauled, such as "Delivery of river rock".
 * @param haul loads are taken as even.
 * @returns sentences; none where all is known and fits.
 */
export function truckWarnings(what: string, { yards, tonsPerYard, loads: count, truck }: Haul): string[] {
  const warnings: string[] = [];
  const { payloadTons } = truck;
  if (yards === 0) return warnings;
  const isOver = (amount: number, limit: number) => amount > limit * (1 + WHOLE_TOLERANCE);
  // No one hauls something in no load: then all of it is over.
  const [yardsEach, tonsEach] = [yards / Math.max(1, count), (yards * tonsPerYard) / Math.max(1, count)];
  if (payloadTons === 0 || tonsPerYard === 0) warnings.push(truckWords.noPayload(what));
  else if (isOver(tonsEach, payloadTons)) warnings.push(truckWords.overloaded(what, count, tonsEach, payloadTons));
  if (isOver(yardsEach, truck.yards)) warnings.push(truckWords.overfull(what, count, yardsEach, truck.yards));
  return warnings;
}

/** What must be the same for loads to be put on one truck. */
export function truckTerms({ yards, payloadTons }: Truck): Record<string, number> {
  return {
    "truck size": yards,
    "truck payload": payloadTons,
  };
}
