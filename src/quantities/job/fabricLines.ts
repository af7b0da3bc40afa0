import { must } from "../must";
import { wholeUp } from "../whole";
import { addedUp } from "./addedUp";
import { type Ask, grouped, ownOf, type Part, partsOf } from "./asks";
import type { BedNeeds, FabricNeed } from "./bedNeeds";
import { cutAcross } from "./cutAcross";
import { joinCuttings } from "./joinCuttings";
import { lineOf, type OrderedPart } from "./lineOf";
import { orderNotes } from "./messages";
import type { Cutting, OrderLine } from "./order";
import { plain } from "./plain";
import { rollsInTurn, type StripOfBed } from "./rollsInTurn";
import { stripCuts } from "./stripCuts";

type FabricOfBed = FabricNeed & { readonly bed: string };

/**
 * Rolls by width and length. The strips of all beds are cut without a joint from as few rolls as they fit in; or, where
 * that takes fewer, off rolls used up one after another, the longest strips first, with a lap where a roll runs out, as
 * BED.FABRIC_ROLLS does within one bed; or else bed by bed.
 */
export function fabricLines(beds: readonly BedNeeds[], steps?: number): OrderLine[] {
  const all = beds.flatMap(({ name, fabric }) => (fabric && isWanted(fabric) ? [{ ...fabric, bed: name }] : []));
  return grouped(all, keyOf).map((fabrics) => {
    const { rollWidthFt, rollLengthFt } = must(fabrics[0]);
    const ordered = partsOf(fabrics.map(askOf)).map((part) => orderPart(part, rollLengthFt, steps));
    const cutting = joinCuttings(ordered.map((part) => part.cutting));
    return lineOf(
      {
        key: `fabric|${keyOf(must(fabrics[0]))}`,
        supplier: "fabric and pins",
        item: "Fabric rolls",
        specification: `${plain(rollWidthFt)} ft × ${plain(rollLengthFt)} ft`,
        neededUnit: "ft",
        orderUnit: "rolls",
      },
      ordered,
      { cutting, notes: cutting.proven ? [] : [orderNotes.unproven()] },
    );
  });
}

const isWanted = ({ rolls, stripsFt = [] }: FabricNeed) => rolls.quantity > 0 || stripsFt.length > 0;

const keyOf = ({ rollWidthFt, rollLengthFt }: FabricNeed) => `${plain(rollWidthFt)}|${plain(rollLengthFt)}`;

function askOf(fabric: FabricOfBed): Ask<FabricOfBed> {
  const { bed, stripsFt, rolls } = fabric;
  return { bed, source: fabric, needed: stripsFt && addedUp(stripsFt), own: rolls, canJoin: !!stripsFt, terms: {} };
}

interface OrderedFabric extends OrderedPart<FabricOfBed> {
  readonly cutting: Cutting;
}

function orderPart(part: Part<FabricOfBed>, rollLengthFt: number, steps: number | undefined): OrderedFabric {
  const { joined, beside, asks, bedByBed } = part;
  const inTurn = (some: readonly Ask<FabricOfBed>[]) => inTurnOf(some.flatMap(stripsOf), rollLengthFt);
  const eachAlone = (some: readonly Ask<FabricOfBed>[]) => joinCuttings(some.map((ask) => inTurn([ask])));
  const apart = { ...part, order: bedByBed, cutting: eachAlone(asks) };
  if (joined.length < 2) return apart;
  const strips = joined.flatMap(stripsOf).sort((a, b) => b.lengthFt - a.lengthFt);
  const { count, ...across } = cutAcross(
    rollLengthFt,
    strips.map((strip) => ({ ...strip, ...stripCuts(strip.lengthFt, rollLengthFt, strip.endLapIn) })),
    0,
    steps,
  );
  const turned = inTurnOf(strips, rollLengthFt);
  const fewest = Math.min(count, turned.stocks.length);
  if (fewest > ownOf(joined) || (fewest === ownOf(joined) && fewest < count)) return apart;
  return {
    ...part,
    order: addedUp([fewest, ownOf(beside)]),
    cutting: joinCuttings([fewest === count ? across : turned, eachAlone(beside)]),
  };
}

function stripsOf({ bed, source }: Ask<FabricOfBed>): StripOfBed[] {
  const { stripsFt = [], layers = 1, endLapIn } = source;
  // A strip has the same number in each layer, as in the bed's drawing.
  const inLayer = stripsFt.length / layers;
  return stripsFt.map((lengthFt, n) => ({ bed, part: (n % inLayer) + 1, lengthFt, endLapIn }));
}

function inTurnOf(strips: readonly StripOfBed[], rollLengthFt: number): Cutting {
  const { stocks, moreJoints } = rollsInTurn(strips, rollLengthFt);
  const cutFt = addedUp(stocks.flatMap(({ cuts }) => cuts.map(({ lengthFt }) => lengthFt)));
  // Where the strips fill so many rolls, no cutting takes fewer.
  return { whole: [], stocks, moreJoints, proven: stocks.length === wholeUp(cutFt / rollLengthFt) };
}
