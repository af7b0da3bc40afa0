import { isSame } from "../bed/evaluate";
import { must } from "../must";
import { orderUp } from "../stoneAmounts";
import { wholeUp } from "../whole";
import type { BedNeeds, OwnQuantity } from "./bedNeeds";
import { plain } from "./plain";
import { neededOf, tonsEach } from "./stoneLines";
import { loadsFor } from "./truck";

/**
 * What beds take, on the terms of one job: trucks, boxes, and hauling prices are those of the first bed, what is bought
 * of one kind has the price and the steps of the first bed of that kind, and all the spoil weighs alike. What a bed
 * orders by itself is rounded on these terms too, unless it was typed. The lines of `jobAmounts.ts` are priced on the
 * same terms, so an order of these needs is what the job's estimate counts.
 *
 * @param beds at least one.
 * @example two beds with trucks of 5 and 10 cu yd: both come out with trucks of 5 cu yd
 */
export function inOneJob(beds: readonly BedNeeds[]): BedNeeds[] {
  const spoils = beds.flatMap(({ spoil }) => spoil ?? []);
  const yards = spoils.reduce((sum, spoil) => sum + spoil.yards, 0);
  const tons = spoils.reduce((sum, spoil) => sum + spoil.yards * spoil.tonsPerYard, 0);
  const firstOf = <Part>(
    part: (bed: BedNeeds) => Part | undefined,
    isLike: (one: Part) => boolean = () => true,
  ): Part => must(beds.flatMap((bed) => part(bed) ?? []).find(isLike));
  const cleanUps = beds.map(({ work }) => work?.hours.cleanUp ?? 0);
  const longest = cleanUps.indexOf(Math.max(...cleanUps));
  return beds.map((bed, index) => {
    const { work, stone, border, sand, fabric, pins, spoil } = bed;
    const made: { -readonly [Key in keyof BedNeeds]?: BedNeeds[Key] } = { ...bed };
    if (stone) {
      const first = firstOf(
        (one) => one.stone,
        ({ kind, sizeIn, soldBy }) =>
          isSame(kind, stone.kind) &&
          isSameSize(sizeIn, stone.sizeIn) &&
          (soldBy?.words ?? "") === (stone.soldBy?.words ?? ""),
      );
      const { deliveries, truck } = firstOf((one) => one.stone);
      const order = orderUp(neededOf(stone), first.yardStep, first.yardMinimum);
      const tons = order * tonsEach(first);
      made.stone = {
        ...stone,
        ...(first.soldBy && { tons: neededOf(stone) * tonsEach(first), soldBy: first.soldBy }),
        tonsPerYard: first.tonsPerYard,
        yardStep: first.yardStep,
        yardMinimum: first.yardMinimum,
        truck,
        order: onTerms(stone.order, first.order, order),
        deliveries: onTerms(stone.deliveries, deliveries, loadsFor(tons / first.tonsPerYard, first.tonsPerYard, truck)),
      };
    }
    if (border) {
      const first = firstOf(
        (one) => one.border,
        ({ kind, heightIn, pieceLengthFt, finish = "" }) =>
          kind === border.kind &&
          isSameSize(heightIn, border.heightIn) &&
          isSameSize(pieceLengthFt, border.pieceLengthFt) &&
          isSame(finish, border.finish ?? ""),
      );
      made.border = {
        ...border,
        lapIn: first.lapIn,
        stakesPerPiece: first.stakesPerPiece,
        pieces: onTerms(border.pieces, first.pieces),
        extraStakes: onTerms(
          border.extraStakes,
          first.extraStakes,
          border.pieces.typed
            ? border.extraStakes.quantity
            : Math.max(0, border.stakes - border.pieces.quantity * first.stakesPerPiece),
        ),
      };
    }
    if (sand) {
      const first = firstOf((one) => one.sand);
      made.sand = {
        ...sand,
        step: first.step,
        order: onTerms(sand.order, first.order, orderUp(sand.yards, first.step)),
      };
    }
    if (fabric) {
      const first = firstOf(
        (one) => one.fabric,
        ({ rollWidthFt, rollLengthFt }) =>
          isSameSize(rollWidthFt, fabric.rollWidthFt) && isSameSize(rollLengthFt, fabric.rollLengthFt),
      );
      made.fabric = { ...fabric, endLapIn: first.endLapIn, rolls: onTerms(fabric.rolls, first.rolls) };
    }
    if (pins) {
      const first = firstOf((one) => one.pins);
      const boxes = onTerms(pins.boxes, first.boxes, wholeUp(pins.count / first.pinsPerBox));
      made.pins = { ...pins, pinsPerBox: first.pinsPerBox, boxes };
    }
    if (spoil) {
      const first = firstOf((one) => one.spoil);
      const tonsPerYard = yards > 0 ? tons / yards : spoil.tonsPerYard;
      const loads = loadsFor(spoil.yards, tonsPerYard, first.truck);
      made.spoil = {
        ...spoil,
        truck: first.truck,
        tonsPerYard,
        haul: onTerms(spoil.haul, first.haul, loads),
        ...(spoil.dump && first.dump && { dump: onTerms(spoil.dump, first.dump, loads) }),
      };
    }
    // The site is cleaned up once, as long as the longest of its beds asks for.
    if (work && index !== longest) made.work = { ...work, hours: { ...work.hours, cleanUp: 0 } };
    return made as BedNeeds;
  });
}

const isSameSize = (one: number, other: number) => plain(one) === plain(other);

/** A quantity at the price of another, and as many as its terms make it, unless it was typed. */
function onTerms(
  { unitCost: _, ...own }: OwnQuantity,
  { unitCost }: OwnQuantity,
  quantity = own.quantity,
): OwnQuantity {
  return { ...own, ...(!own.typed && { quantity }), ...(unitCost !== undefined && { unitCost }) };
}
