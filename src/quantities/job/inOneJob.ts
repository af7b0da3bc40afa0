import { isSame } from "../bed/estimate";
import { must } from "../must";
import type { BedNeeds, OwnQuantity } from "./bedNeeds";

/**
 * What beds take, on the terms of one job: trucks, boxes, and hauling prices are those of the first bed, what is bought
 * of one kind has the price and the steps of the first bed of that kind, and all the spoil weighs alike. The lines of
 * `jobAmounts.ts` are priced on the same terms, so an order of these needs is what the job's estimate counts.
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
    const { work, stone, border, fabric, pins, spoil } = bed;
    const made: { -readonly [Key in keyof BedNeeds]?: BedNeeds[Key] } = { ...bed };
    if (stone) {
      const first = firstOf(
        (one) => one.stone,
        ({ kind, sizeIn }) => isSame(kind, stone.kind) && sizeIn === stone.sizeIn,
      );
      const { deliveries, truck } = firstOf((one) => one.stone);
      made.stone = {
        ...stone,
        tonsPerYard: first.tonsPerYard,
        yardStep: first.yardStep,
        yardMinimum: first.yardMinimum,
        truck,
        order: priced(stone.order, first.order),
        deliveries: priced(stone.deliveries, deliveries),
      };
    }
    if (border) {
      const first = firstOf(
        (one) => one.border,
        ({ heightIn, pieceLengthFt, finish = "" }) =>
          heightIn === border.heightIn && pieceLengthFt === border.pieceLengthFt && isSame(finish, border.finish ?? ""),
      );
      made.border = {
        ...border,
        lapIn: first.lapIn,
        stakesPerPiece: first.stakesPerPiece,
        pieces: priced(border.pieces, first.pieces),
        extraStakes: priced(border.extraStakes, first.extraStakes),
      };
    }
    if (fabric) {
      const first = firstOf(
        (one) => one.fabric,
        ({ rollWidthFt, rollLengthFt }) => rollWidthFt === fabric.rollWidthFt && rollLengthFt === fabric.rollLengthFt,
      );
      made.fabric = { ...fabric, endLapIn: first.endLapIn, rolls: priced(fabric.rolls, first.rolls) };
    }
    if (pins) {
      const first = firstOf((one) => one.pins);
      made.pins = { ...pins, pinsPerBox: first.pinsPerBox, boxes: priced(pins.boxes, first.boxes) };
    }
    if (spoil) {
      const first = firstOf((one) => one.spoil);
      made.spoil = {
        ...spoil,
        truck: first.truck,
        tonsPerYard: yards > 0 ? tons / yards : spoil.tonsPerYard,
        haul: priced(spoil.haul, first.haul),
        ...(spoil.dump && first.dump && { dump: priced(spoil.dump, first.dump) }),
      };
    }
    // The site is cleaned up once, as long as the longest of its beds asks for.
    if (work && index !== longest) made.work = { ...work, hours: { ...work.hours, cleanUp: 0 } };
    return made as BedNeeds;
  });
}

/** A quantity at the price of another. */
function priced({ unitCost: _, ...own }: OwnQuantity, { unitCost }: OwnQuantity): OwnQuantity {
  return { ...own, ...(unitCost !== undefined && { unitCost }) };
}
