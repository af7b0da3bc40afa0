import type { Layout } from "../../layout/layout";
import { countsInPlan } from "../../layout/planOfEstimate";
import type { Estimate } from "../../quantities/bed/estimate";
import type { Bed } from "../../quantities/bed/read";
import { shapeAmounts } from "../../quantities/bed/shape";
import type { BedNeeds, BedWork, BorderRunNeed, HoursStep, OwnQuantity } from "../../quantities/job/bedNeeds";
import type { BedLine, JobBed } from "../../sheets/job/jobBeds";

/** A bed with what its inputs come to. */
export interface WorkedOutBed {
  readonly bed: Bed;
  readonly plan: Layout | undefined;
  readonly estimate: Estimate;
}

/** Which line of an estimate has the hours of which step. */
const HOURS: Readonly<Record<HoursStep, string>> = {
  scrape: "scrape",
  border: "setEdging",
  fabric: "layFabric",
  stone: "spread",
  cleanUp: "cleanUp",
};

/** Quantities on the sheet that differ by less than this share are the same number, worked out twice. */
const SAME_SHARE = 1e-6;

/**
 * What a bed takes, for an order of all beds together: what its inputs come to, beside what its block's lines order. A
 * line that the estimator took out of the block is not ordered; one whose quantity was typed over is ordered as typed.
 */
export function needsOf(jobBed: JobBed, { bed, plan, estimate }: WorkedOutBed): BedNeeds {
  const { numbers: n, names } = bed;
  const { amounts } = estimate;
  const line = (key: string) => jobBed.lines.find((one) => one.key === key);
  const own = (key: string) => ownQuantity(line(key), estimate.lines.find((one) => one.key === key)?.amount ?? 0);
  return {
    name: jobBed.name || jobBed.sheet,
    ...(line("stoneLine") && {
      stone: {
        kind: names.stone.trim(),
        sizeIn: n.stoneSize,
        tons: amounts.stoneTons,
        allowance: n.waste,
        tonsPerYard: amounts.stoneDensity,
        yardStep: n.orderStep,
        yardMinimum: n.orderMinimum,
        order: own("stoneLine"),
        truck: { yards: n.deliveryYards, payloadTons: n.deliveryPayload },
        deliveries: own("delivery"),
      },
    }),
    ...(line("edging") &&
      amounts.pieces + own("edging").quantity > 0 && {
        border: {
          heightIn: n.borderHeight,
          pieceLengthFt: n.pieceLength,
          lapIn: n.pieceLap,
          runs: runsOf(bed),
          stakes: amounts.stakes,
          stakesPerPiece: n.stakesPerPiece,
          pieces: own("edging"),
          extraStakes: own("stakeLine"),
        },
      }),
    ...(line("fabric") && {
      fabric: {
        rollWidthFt: n.rollWidth,
        rollLengthFt: n.rollLength,
        endLapIn: n.endLap,
        stripsFt: stripsOf(bed, plan, estimate),
        rolls: own("fabric"),
      },
    }),
    ...(line("pinLine") && { pins: { count: amounts.pins, pinsPerBox: n.pinsPerBox, boxes: own("pinLine") } }),
    ...(line("haul") && {
      spoil: {
        yards: amounts.spoilYards,
        tonsPerYard: n.soilTonsPerYard,
        truck: { yards: n.truckYards, payloadTons: n.truckPayload },
        haul: own("haul"),
        ...(line("dump") && { dump: own("dump") }),
      },
    }),
    others: jobBed.lines
      .filter(({ key, kind }) => key === undefined && kind !== "labor")
      .map((one) => ({ item: one.label || "Not named", unit: one.unit, order: ownQuantity(one, one.quantity) })),
    work: workOf(jobBed, estimate),
  };
}

function ownQuantity(line: BedLine | undefined, workedOut: number): OwnQuantity {
  if (!line) return { quantity: 0 };
  const differs = Math.abs(line.quantity - workedOut) > SAME_SHARE * Math.max(1, Math.abs(workedOut));
  return {
    quantity: line.quantity,
    ...((line.typed || differs) && { typed: true }),
    ...(line.unitCost !== undefined && { unitCost: line.unitCost }),
  };
}

function runsOf(bed: Bed): BorderRunNeed[] {
  const { borderRun, innerRun, closed } = shapeAmounts(bed);
  const runs = [
    { feet: borderRun, closed },
    { feet: innerRun, closed: true },
  ];
  return runs.filter(({ feet }) => feet > 0);
}

/** Lengths to cut: of the bed laid out in plan where it is counted so, else every strip over the whole length. */
function stripsOf(bed: Bed, plan: Layout | undefined, { amounts }: Estimate): number[] {
  if (plan && countsInPlan(bed, plan)) return plan.cuts.map(({ lengthFt }) => lengthFt);
  return Array<number>(amounts.fabricStrips).fill(amounts.fabricLength);
}

function workOf(jobBed: JobBed, { amounts }: Estimate): BedWork {
  const hours = Object.entries(HOURS).flatMap(([step, key]) => {
    const line = jobBed.lines.find((one) => one.key === key);
    return line ? [[step, line.quantity] as const] : [];
  });
  return {
    areaSqFt: amounts.stoneArea,
    bankYards: amounts.digYards,
    fabricSqFt: amounts.fabricArea,
    stoneYards: amounts.stoneYards,
    barrowTrips: amounts.barrowTrips,
    hours: Object.fromEntries(hours),
    otherHours: jobBed.lines
      .filter(({ key, kind }) => key === undefined && kind === "labor")
      .map(({ label, quantity }) => ({ label: label || "Other work", hours: quantity })),
  };
}
