import { toCents } from "../cents";
import { addedUp } from "./addedUp";
import type { Part } from "./asks";
import { orderNotes } from "./messages";
import type { Cutting, LineMoney, OrderLine } from "./order";

/** What is the same for all beds of a line. */
export type LineHead = Pick<OrderLine, "key" | "supplier" | "item" | "specification" | "neededUnit" | "orderUnit">;

/** A line with what is to be known about its trucks. */
export interface LineWithWarnings {
  readonly line: OrderLine;
  readonly warnings: readonly string[];
}

/** A part of a line with what it orders. */
export interface OrderedPart<Source> extends Part<Source> {
  readonly order: number;
}

/** Where a line carries more than its sums. */
interface LineExtras {
  readonly weightTons?: number;
  readonly volume?: OrderLine["volume"];
  readonly cutting?: Cutting;
  readonly notes?: readonly string[];
  readonly warnings?: readonly string[];
}

/** A line of the order from its parts: sums, money, where used, and what to know about it. */
export function lineOf<Source>(
  head: LineHead,
  parts: readonly OrderedPart<Source>[],
  extras: LineExtras = {},
): OrderLine {
  const asks = parts.flatMap((part) => part.asks);
  const order = addedUp(parts.map((part) => part.order));
  const bedByBed = addedUp(parts.map((part) => part.bedByBed));
  return {
    ...head,
    needed: addedUp(asks.map(({ needed = 0 }) => needed)),
    allowance: addedUp(asks.map(({ allowance = 0 }) => allowance)),
    order,
    bedByBed,
    saved: bedByBed - order,
    money: moneyOf(parts),
    ...(extras.weightTons === undefined ? {} : { weightTons: extras.weightTons }),
    ...(extras.volume ? { volume: extras.volume } : {}),
    whereUsed: asks.map(({ bed, needed, own }) => ({
      bed,
      needed,
      ownQuantity: own.quantity,
      typed: own.typed === true,
    })),
    ...(extras.cutting ? { cutting: extras.cutting } : {}),
    notes: [...notesOf(head.orderUnit, parts), ...(extras.notes ?? []), ...(extras.warnings ?? [])],
    ...(extras.warnings?.length ? { warnings: extras.warnings } : {}),
  };
}

function moneyOf<Source>(parts: readonly OrderedPart<Source>[]): LineMoney | undefined {
  let orderCents = 0;
  let bedByBedCents = 0;
  for (const { asks, order, bedByBed } of parts) {
    const unitCost = asks[0]?.own.unitCost;
    if (unitCost === undefined) return undefined;
    orderCents += toCents(order * unitCost);
    bedByBedCents += toCents(bedByBed * unitCost);
  }
  return { orderCents, bedByBedCents, savedCents: bedByBedCents - orderCents };
}

function notesOf<Source>(orderUnit: string, parts: readonly OrderedPart<Source>[]): string[] {
  const asks = parts.flatMap((part) => part.asks);
  const differ = Object.keys(asks[0]?.terms ?? {}).filter(
    (term) => new Set(asks.map(({ terms }) => terms[term])).size > 1,
  );
  if (new Set(asks.map(({ own }) => own.unitCost)).size > 1) differ.push("price");
  return [
    ...(differ.length > 0 ? [orderNotes.apart(differ)] : []),
    ...asks.flatMap(({ bed, own, canJoin = true }) => {
      if (own.typed) return [orderNotes.typed(bed, own.quantity, orderUnit)];
      return !canJoin && asks.length > 1 ? [orderNotes.notKnown(bed)] : [];
    }),
  ];
}
