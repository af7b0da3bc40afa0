import type { Estimate } from "../bed/estimate";
import { fields, type NumberFieldKey } from "../bed/fields";
import { lines } from "../bed/lines";
import type { Bed } from "../bed/read";
import { readField } from "../bed/readField";
import { edgingKindOf, METAL } from "../edgingKinds";
import { must } from "../must";
import { type SoldBy, soldByOf } from "../soldBy";
import { stoneOnLine } from "../stone";
import type { BedNeeds, HoursStep, OwnQuantity, SoldByNeed } from "./bedNeeds";

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
  const own = (key: string): OwnQuantity => {
    const line = must(lines.find((one) => one.key === key));
    const { quantity, unitCost = n[line.cost] } = more.typed?.find((one) => one.line === key) ?? {};
    return { quantity: quantity ?? a[line.quantity], ...(quantity === undefined ? {} : { typed: true }), unitCost };
  };
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
    ...(sand.quantity > 0 && { sand: { yards: a.sandYards, step: n.sandStep || SAND_STEP_YARDS, order: sand } }),
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
