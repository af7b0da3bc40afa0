import { type EdgingKind, edgingKindOf } from "../edgingKinds";
import { addedUp } from "./addedUp";
import type { BedNeeds } from "./bedNeeds";
import type { JobOrder } from "./order";

/** What the crew handles in all the beds of a job. */
export interface CrewAmounts {
  readonly beds: number;
  readonly areaSqFt: number;
  readonly bankYards: number;
  readonly spoilYards: number;
  readonly spoilLoads: number;
  readonly borderFt: number;
  readonly pieces: number;
  /** Pieces of metal or plastic cut to length. */
  readonly cutPieces: number;
  readonly cutPavers: number;
  readonly cutTimbers: number;
  readonly stakes: number;
  /** Of these, spikes of timber. */
  readonly spikes: number;
  /** Of the edging, an edge that is only cut. */
  readonly cutEdgeFt: number;
  /** Sand on the order. */
  readonly sandYards: number;
  readonly fabricSqFt: number;
  readonly strips: number;
  readonly rolls: number;
  readonly pins: number;
  readonly stoneTons: number;
  readonly stoneYards: number;
  readonly deliveries: number;
  /** Bed by bed, since a barrow is emptied in one bed. */
  readonly barrowTrips: number;
}

/**
 * The amounts of a crew sheet. Needs are those of the beds; what is bought and hauled is that of the order.
 *
 * @param beds as given to `orderJob`; @param order what it gave.
 */
export function crewAmounts(beds: readonly BedNeeds[], order: JobOrder): CrewAmounts {
  const sumOf = (amount: (bed: BedNeeds) => number | undefined) => addedUp(beds.map((bed) => amount(bed) ?? 0));
  const ordered = (key: string) =>
    addedUp(order.lines.filter((line) => line.key.split("|")[0] === key).map((line) => line.order));
  const ofKinds = (is: (kind: EdgingKind) => boolean) => beds.filter((bed) => is(edgingKindOf(bed.border?.kind)));
  const feetOf = (some: readonly BedNeeds[]) =>
    addedUp(some.flatMap(({ border }) => (border?.runs ?? []).map(({ feet }) => feet)));
  const cutOf = (is: (kind: EdgingKind) => boolean) => {
    const cut = order.lines.filter(({ key, supplier }) => supplier === "border" && is(edgingKindOf(key.split("|")[1])));
    return cut.flatMap(({ cutting }) => (cutting?.stocks ?? []).flatMap(({ cuts }) => cuts)).length;
  };
  return {
    // What was added for the whole job is no bed.
    beds: beds.filter(({ work }) => !work || work.areaSqFt > 0).length,
    areaSqFt: sumOf(({ work }) => work?.areaSqFt),
    bankYards: sumOf(({ work }) => work?.bankYards),
    spoilYards: sumOf(({ spoil }) => spoil?.yards),
    spoilLoads: ordered("haul"),
    borderFt: feetOf(beds),
    pieces: ordered("border"),
    cutPieces: cutOf(({ fastened }) => fastened === "along"),
    cutPavers: cutOf(({ inSand = false }) => inSand),
    cutTimbers: cutOf(({ fastened }) => fastened === "each"),
    stakes: sumOf(({ border }) => border?.stakes),
    spikes: addedUp(ofKinds(({ fastened }) => fastened === "each").map(({ border }) => border?.stakes ?? 0)),
    cutEdgeFt: feetOf(ofKinds(({ drawn }) => drawn === "cut")),
    sandYards: ordered("sand"),
    fabricSqFt: sumOf(({ work }) => work?.fabricSqFt),
    strips: sumOf(({ fabric }) => fabric?.stripsFt?.length),
    rolls: ordered("fabric"),
    pins: sumOf(({ pins }) => pins?.count),
    stoneTons: sumOf(({ stone }) => stone?.tons),
    stoneYards: sumOf(({ work }) => work?.stoneYards),
    deliveries: ordered("delivery"),
    barrowTrips: sumOf(({ work }) => work?.barrowTrips),
  };
}
