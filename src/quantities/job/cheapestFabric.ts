import { must } from "../must";
import { rollsTogether } from "./together";

/** A roll that the office can buy. */
export interface FabricRoll {
  readonly name: string;
  /** More than every end lap. */
  readonly lengthFt: number;
  /** Of a whole roll, 0 or more. */
  readonly cost: number;
}

/** A bed that gets fabric. */
export interface BedToCover {
  readonly bed: string;
  readonly endLapIn: number;
  /** For each roll, the lengths to cut if the bed is laid with it; undefined where it can't be. */
  readonly stripsFt: readonly (readonly number[] | undefined)[];
}

/** Rolls of one kind, and the beds that they are for. */
export interface FabricShare {
  readonly roll: FabricRoll;
  readonly rolls: number;
  readonly beds: readonly string[];
}

/** More beds than this are given one roll all together, since the ways to share rolls out double with each. */
export const MOST_BEDS_SHARED_OUT = 6;

/**
 * Which rolls cover all beds for the least money. Each bed is laid with one kind of roll; beds with the same kind share its
 * rolls, by the rule of BED.JOB_ROLLS. For up to {@link MOST_BEDS_SHARED_OUT} beds no other way costs less; for more, it is
 * the cheapest roll for all of them.
 *
 * @returns undefined where no roll can cover the beds.
 * @source Every way to share the beds out among the rolls is tried (dynamic programming over sets of beds).
 * @example two beds of one 30 ft strip each, rolls of 50 ft for 64 and of 100 ft for 80: one of 100 ft, for both
 */
export function cheapestFabric(
  rolls: readonly FabricRoll[],
  beds: readonly BedToCover[],
): { readonly cost: number; readonly shares: readonly FabricShare[] } | undefined {
  const all = 2 ** beds.length - 1;
  const isEach = beds.length <= MOST_BEDS_SHARED_OUT;
  const inSet = (set: number) => beds.filter((_, bed) => set & (1 << bed));

  const share = (at: number, set: number): FabricShare | undefined => {
    const [roll, own] = [must(rolls[at]), isEach ? inSet(set) : beds];
    const strips = own.map(({ stripsFt }) => stripsFt[at]);
    if (!strips.every((some) => some !== undefined)) return undefined;
    const endLapIn = Math.max(...own.map((bed) => bed.endLapIn));
    return { roll, rolls: rollsTogether(strips.flat(), roll.lengthFt, endLapIn), beds: own.map(({ bed }) => bed) };
  };
  const costOf = (shares: readonly FabricShare[]) => shares.reduce((sum, one) => sum + one.rolls * one.roll.cost, 0);

  if (!isEach) {
    const ways = rolls.flatMap((_, at) => share(at, all) ?? []);
    const best = ways.sort((one, other) => costOf([one]) - costOf([other]))[0];
    return best && { cost: costOf([best]), shares: [best] };
  }
  /** The cheapest way to cover a set of beds with the rolls so far. */
  let best = new Map<number, readonly FabricShare[]>([[0, []]]);
  for (const at of rolls.keys()) {
    const next = new Map(best);
    for (let set = 1; set <= all; set += 1) {
      const added = share(at, set);
      if (!added) continue;
      for (const [before, shares] of best) {
        if (before & set) continue;
        const way = [...shares, added];
        const known = next.get(before | set);
        if (!known || costOf(way) < costOf(known)) next.set(before | set, way);
      }
    }
    best = next;
  }
  const shares = best.get(all);
  return shares && { cost: costOf(shares), shares };
}
