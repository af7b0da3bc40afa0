import { addedUp } from "./addedUp";
import type { OwnQuantity } from "./bedNeeds";

/** What one bed asks of a line of the order. */
export interface Ask<Source> {
  readonly bed: string;
  /** What the bed says about it. */
  readonly source: Source;
  /** In the line's unit of need; undefined where it is not known. */
  readonly needed: number | undefined;
  /** How much of it is allowance. Left out: none. */
  readonly allowance?: number;
  readonly own: OwnQuantity;
  /** The bed tells enough to be worked out together with others. Left out: it does. */
  readonly canJoin?: boolean;
  /** In words what must be the same for beds to be ordered together, beside the unit cost. */
  readonly terms: Readonly<Record<string, string | number>>;
}

/** Beds of a line whose terms are the same. */
export interface Part<Source> {
  readonly asks: readonly Ask<Source>[];
  /** Whose needs are worked out together. */
  readonly joined: readonly Ask<Source>[];
  /** Typed by hand, or not known but as whole pieces: ordered as it stands, beside the rest. */
  readonly beside: readonly Ask<Source>[];
  readonly bedByBed: number;
}

/**
 * Sorts the beds of a line into those that can be ordered together. Where steps, prices or trucks differ, each lot is
 * ordered by itself, so that ordering together never takes more than bed by bed.
 */
export function partsOf<Source>(asks: readonly Ask<Source>[]): Part<Source>[] {
  return grouped(asks, ({ own, terms }) => JSON.stringify([own.unitCost ?? null, terms])).map((part) => {
    const joins = ({ own, canJoin = true }: Ask<Source>) => canJoin && !own.typed;
    return {
      asks: part,
      joined: part.filter(joins),
      beside: part.filter((ask) => !joins(ask)),
      bedByBed: ownOf(part),
    };
  });
}

/**
 * What a part orders: the joined beds together, and beside it what stands as it is. One bed by itself is ordered as its
 * own line says, and together never takes more than bed by bed.
 *
 * @param together works out what the joined beds take together.
 */
export function orderOf<Source>(part: Part<Source>, together: (sources: readonly Source[]) => number): number {
  const { joined, beside, bedByBed } = part;
  if (joined.length < 2) return bedByBed;
  const combined = together(joined.map(({ source }) => source));
  return combined < ownOf(joined) ? addedUp([combined, ownOf(beside)]) : bedByBed;
}

/** What beds order each by itself. */
export function ownOf<Source>(asks: readonly Ask<Source>[]): number {
  return addedUp(asks.map(({ own }) => own.quantity));
}

/** Lots with the same key, sorted by their keys. */
export function grouped<Item>(items: readonly Item[], keyOf: (item: Item) => string): Item[][] {
  const lots = new Map<string, Item[]>();
  for (const item of items) {
    const key = keyOf(item);
    lots.set(key, [...(lots.get(key) ?? []), item]);
  }
  return [...lots].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, lot]) => lot);
}
