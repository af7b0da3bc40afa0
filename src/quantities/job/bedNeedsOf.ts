import type { Estimate } from "../bed/estimate";
import { fields, type NumberFieldKey } from "../bed/fields";
import { type EstimateLine, lines, secondLines } from "../bed/lines";
import type { Bed } from "../bed/read";
import { readField } from "../bed/readField";
import { edgingKindOf, hasPieces, METAL } from "../edgingKinds";
import { must } from "../must";
import { type SoldBy, soldByOf } from "../soldBy";
import { stoneOnLine } from "../stone";
import type { BedNeeds, BorderNeed, HoursStep, OwnQuantity, SoldByNeed } from "./bedNeeds";

/** What someone typed over on a line of the bed's sheet. */
export interface TypedLine {
  /** Its key in `bed/lines`, such as "edging". */
  readonly line: string;
  readonly quantity?: number;
  readonly unitCost?: number;
}

/** What an estimate does not say of itself. */
export interface MoreAboutBed {
  readonly name: string;
  readonly typed?: readonly TypedLine[];
  readonly others?: BedNeeds["others"];
  readonly otherHours?: NonNullable<BedNeeds["work"]>["otherHours"];
}

/** The lines of labor, by the step that takes their hours. */
export const lineOfStep = {
  scrape: "scrape",
  border: "setEdging",
  fabric: "layFabric",
  stone: "spread",
  cleanUp: "cleanUp",
} as const satisfies Record<HoursStep, string>;

/**
 * The needs of a bed behind its estimate.
 *
 * @param bed from `readForm`; @param estimate of it, from `estimateBed`.
 * @param more its name, and what was typed over in its sheet.
 * @example bedNeedsOf(bed, estimateBed(bed), { name: "Front walk" }).stone?.tons
 */
export function bedNeedsOf(bed: Bed, estimate: Estimate, more: MoreAboutBed): BedNeeds {
  const { numbers: n } = bed;
  const { amounts: a } = estimate;
  const own = ownOn(lines, bed, estimate, more);
  const edging = edgingKindOf(bed.names.edgingKind);
  const sand = own("sandLine");
  const soldBy = soldByOf(bed.names.soldBy);
  const truck = (yards: NumberFieldKey, payload: NumberFieldKey) => ({ yards: n[yards], payloadTons: n[payload] });
  return {
    name: more.name,
    stone: {
      kind: stoneOnLine(bed.names.stone),
      sizeIn: n.stoneSize,
      tons: a.stoneTons,
      allowance: n.waste,
      tonsPerYard: a.stoneDensity,
      ...(soldBy.isWeight ? {} : { soldBy: soldByNeed(bed, estimate, soldBy) }),
      yardStep: n.orderStep,
      yardMinimum: n.orderMinimum,
      order: own("stoneLine"),
      truck: truck("deliveryYards", "deliveryPayload"),
      deliveries: own("delivery"),
    },
    border: {
      ...(edging === METAL ? {} : { kind: edging.name }),
      heightIn: n.borderHeight,
      ...(isUsual(bed.names.borderFinish) ? {} : { finish: bed.names.borderFinish }),
      pieceLengthFt: n.pieceLength,
      lapIn: edging.inSand ? -n.joint : n.pieceLap,
      runs: estimate.runs,
      stakes: a.stakes,
      stakesPerPiece: n.stakesPerPiece,
      pieces: own("edging"),
      extraStakes: own("stakeLine"),
    },
    ...(sand.quantity > 0 && {
      sand: { yards: a.sandYards + a.secondSandYards, step: n.sandStep || SAND_STEP_YARDS, order: sand },
    }),
    fabric: {
      rollWidthFt: n.rollWidth,
      rollLengthFt: n.rollLength,
      endLapIn: n.endLap,
      stripsFt: estimate.stripsFt,
      ...(n.fabricLayers > 1 && { layers: n.fabricLayers }),
      rolls: own("fabric"),
    },
    pins: { count: a.pins, pinsPerBox: n.pinsPerBox, boxes: own("pinLine") },
    spoil: {
      yards: a.spoilYards,
      tonsPerYard: n.soilTonsPerYard,
      truck: truck("truckYards", "truckPayload"),
      haul: own("haul"),
      dump: own("dump"),
    },
    ...(more.others ? { others: more.others } : {}),
    work: {
      areaSqFt: a.stoneArea,
      bankYards: a.digYards,
      fabricSqFt: a.fabricArea,
      stoneYards: a.stoneYards,
      barrowTrips: a.barrowTrips,
      hours: Object.fromEntries(Object.entries(lineOfStep).map(([step, key]) => [step, own(key).quantity])),
      ...(more.otherHours ? { otherHours: more.otherHours } : {}),
    },
  };
}

/** A line's quantity in the bed's own estimate, which may be typed over. */
const ownOn =
  (among: readonly EstimateLine[], { numbers }: Bed, { amounts }: Estimate, { typed = [] }: MoreAboutBed) =>
  (key: string): OwnQuantity => {
    const line = must(among.find((one) => one.key === key));
    const { quantity, unitCost = numbers[line.cost] } = typed.find((one) => one.line === key) ?? {};
    return {
      quantity: quantity ?? amounts[line.quantity],
      ...(quantity === undefined ? {} : { typed: true }),
      unitCost,
    };
  };

/**
 * What a second edging takes, as the needs of one more bed that has nothing else; none for a bed without. Its soil, its
 * sand, and its stone are among the bed's own.
 *
 * @param bed, @param estimate, @param more as for {@link bedNeedsOf}.
 * @example secondNeedsOf(bed, estimateBed(bed), { name: "Front walk" })[0]?.name // "Front walk, second edging"
 */
export function secondNeedsOf(bed: Bed, estimate: Estimate, more: MoreAboutBed): BedNeeds[] {
  const { numbers: n, names } = bed;
  const { amounts: a } = estimate;
  const kind = edgingKindOf(names.secondKind);
  const among = secondLines(kind);
  if (among.length === 0) return [];
  const own = ownOn(among, bed, estimate, more);
  const none = { quantity: 0 };
  const border: BorderNeed = {
    ...(kind === METAL ? {} : { kind: kind.name }),
    heightIn: n.secondHeight,
    ...(isUsual(names.secondFinish) ? {} : { finish: names.secondFinish }),
    pieceLengthFt: n.secondPieceLength,
    lapIn: kind.inSand ? -n.secondJoint : n.secondPieceLap,
    runs: estimate.secondRuns,
    stakes: a.secondStakes,
    stakesPerPiece: n.secondStakesPerPiece,
    pieces: hasPieces(kind) ? own("secondEdging") : none,
    extraStakes: kind.fastened ? own("secondStakeLine") : none,
  };
  const nothing = { areaSqFt: 0, bankYards: 0, fabricSqFt: 0, stoneYards: 0, barrowTrips: 0 };
  const hours = { border: own("setSecondEdging").quantity };
  return [{ name: `${more.name}, second edging`, border, work: { ...nothing, hours } }];
}

function soldByNeed({ numbers }: Bed, { amounts }: Estimate, { unit, inKind, size }: SoldBy): SoldByNeed {
  return {
    unit,
    words: inKind + (size ? numbers[size.key] + size.unit : ""),
    tonsEach: amounts.orderTons / amounts.stoneOrder,
  };
}

/** Where sand was typed for a bed that needs none. */
const SAND_STEP_YARDS = readField(fields.sandStep, fields.sandStep.initial);

/** The finish that the office usually takes need not be said. */
function isUsual(finish: string): boolean {
  return finish.trim().toLowerCase() === fields.borderFinish.initial;
}
