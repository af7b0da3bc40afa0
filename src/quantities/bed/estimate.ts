import { toCents } from "../cents";
import { digYards, spoilYards } from "../digging";
import { edgingPieces, stakes } from "../edging";
import { fabricArea, fabricStrips } from "../fabric";
import { fabricRolls } from "../fabricRolls";
import { barrowTrips, haulHours, loads } from "../hauling";
import { readNumber } from "../numberText";
import { pins } from "../pins";
import { soilNamed } from "../soil";
import { stoneNamed } from "../stone";
import { orderUp, stoneDepth, stoneTons, stoneYards } from "../stoneAmounts";
import { INCHES_PER_FOOT } from "../units";
import { wholeUp } from "../whole";
import { type AmountKey, type EstimateLine, lines } from "./lines";
import type { Bed } from "./read";
import { type ShapeAmounts, shapeAmounts } from "./shape";
import { sum } from "./sum";

export interface PricedLine extends EstimateLine {
  readonly amount: number;
  readonly unitCost: number;
  readonly costSum: number;
  readonly priceSum: number;
}

/** What a bed takes and costs. Amounts carry the units of their rows in the block. */
export interface Estimate {
  readonly amounts: Readonly<Record<AmountKey, number>>;
  readonly lines: readonly PricedLine[];
  readonly directCost: number;
  readonly overheadCost: number;
  readonly fullCost: number;
  /** To the cent, before tax; the smallest job charge where that is more. */
  readonly price: number;
  readonly minimumApplies: boolean;
  /** Of the whole price, to the cent. */
  readonly taxSum: number;
  readonly priceWithTax: number;
  /** Profit over cost, and profit over price; undefined where there is no cost or price to divide by. */
  readonly markupOnCost: number | undefined;
  readonly marginOnPrice: number | undefined;
  readonly laborHours: number;
  readonly crewDays: number;
}

/** What was counted on the bed laid out in plan. */
export interface LaidCounts {
  readonly strips: number;
  readonly fabricSqFt: number;
  readonly rolls: number;
  readonly pins: number;
}

export const HAUL = { loadMinutes: 2, dumpMinutes: 0.5, walkFtPerMinute: 200 };

/**
 * The estimate of a bed, as the block in the sheet works it out from the same inputs; a test holds the two equal.
 *
 * @param bed from `readForm`.
 * @param laid counts of the bed laid out in plan; left out, fabric and pins are counted on its length by its width.
 * @throws Problem for inputs that do not go together: no depth left, a lap longer than a piece, an unknown stone.
 */
export function estimateBed(bed: Bed, laid?: LaidCounts): Estimate {
  const amounts = amountsOf(bed, laid);
  const { numbers } = bed;
  const markups = {
    material: numbers.materialMarkup,
    labor: numbers.laborMarkup,
    hauling: numbers.haulingMarkup,
  };
  const priced = lines.map((line): PricedLine => {
    const amount = amounts[line.quantity];
    const unitCost = numbers[line.cost];
    const costSum = amount * unitCost;
    return { ...line, amount, unitCost, costSum, priceSum: costSum * (1 + markups[line.kind]) };
  });
  const directCost = sum(priced.map(({ costSum }) => costSum));
  const overheadCost = numbers.overhead * directCost;
  const fullCost = directCost + overheadCost;
  const fromLines = sum(priced.map(({ priceSum }) => priceSum)) + overheadCost;
  const price = toCents(Math.max(numbers.minimumCharge, fromLines)) / 100;
  const taxSum = toCents(numbers.salesTax * price) / 100;
  const laborHours = sum(priced.filter(({ kind }) => kind === "labor").map(({ amount }) => amount));
  return {
    amounts,
    lines: priced,
    directCost,
    overheadCost,
    fullCost,
    price,
    minimumApplies: numbers.minimumCharge > fromLines,
    taxSum,
    priceWithTax: price + taxSum,
    markupOnCost: fullCost > 0 ? price / fullCost - 1 : undefined,
    marginOnPrice: price > 0 ? 1 - fullCost / price : undefined,
    laborHours,
    crewDays: laborHours / (numbers.crewSize * numbers.crewDay),
  };
}

function amountsOf(bed: Bed, laid: LaidCounts | undefined): Record<AmountKey, number> {
  const { numbers: n } = bed;
  const shape = shapeAmounts(bed);
  const stoneDensity =
    bed.weighedTonsPerYard ?? numberOr(bed.names.stone, "stone", (name) => stoneNamed(name).tonsPerYard);
  const swell = numberOr(bed.names.soil, "soil", (name) => soilNamed(name).swell);

  const depth = stoneDepth(n.borderHeight, n.trenchDepth, n.topGap);
  const yards = stoneYards(shape.stoneArea, depth, n.waste);
  const tons = stoneTons(shape.stoneArea, depth, stoneDensity, n.waste);
  const orderTons = orderUp(tons, n.orderStep, n.orderMinimum);

  const bank = digYards(shape.stoneArea, n.scrapeDepth, shape.borderRun + shape.innerRun, n.trenchWidth, n.trenchDepth);
  const spoil = spoilYards(bank, swell);

  const border = borderOf(bed, shape);
  const fabric = laid ? withPinsRoundOthers(laid, bed) : countsByRule(bed, shape);
  const trips = barrowTrips(yards, stoneDensity, n.barrowSize, n.barrowLoad);
  const hauling = haulHours(trips, n.barrowDistance, HAUL.loadMinutes, HAUL.dumpMinutes, HAUL.walkFtPerMinute);
  return {
    stoneArea: shape.stoneArea,
    fabricLength: shape.fabricLength,
    fabricWidth: shape.fabricWidth,
    borderRun: shape.borderRun,
    innerRun: shape.innerRun,
    squareCorners: shape.squareCorners,
    stoneDepth: depth,
    stoneDensity,
    stoneYards: yards,
    stoneTons: tons,
    orderTons,
    digYards: bank,
    spoilYards: spoil,
    spoilLoads: loads(spoil, n.truckYards, n.soilTonsPerYard, n.truckPayload),
    deliveries: loads(orderTons / stoneDensity, n.deliveryYards, stoneDensity, n.deliveryPayload),
    ...border,
    fabricStrips: fabric.strips,
    fabricArea: fabric.fabricSqFt,
    rolls: fabric.rolls,
    pins: fabric.pins,
    pinBoxes: wholeUp(fabric.pins / n.pinsPerBox),
    barrowTrips: trips,
    scrapeTime: bank * n.scrapeHours,
    edgingTime: (shape.borderRun + shape.innerRun) / n.edgingRate,
    fabricTime: fabric.fabricSqFt / n.fabricRate,
    spreadTime: hauling + shape.stoneArea / n.rakeRate,
    cleanUpHours: n.cleanUpHours,
  };
}

/** Fabric and pins of a plain rectangle, or of a bed of which no more than length and width is known. */
function countsByRule({ numbers: n }: Bed, { fabricLength: long, fabricWidth: wide }: ShapeAmounts): LaidCounts {
  return {
    strips: fabricStrips(wide, n.rollWidth, n.overlap),
    fabricSqFt: fabricArea(long, wide, n.rollWidth, n.overlap, n.rollLength, n.endLap),
    rolls: fabricRolls(long, wide, n.rollWidth, n.rollLength, n.overlap, n.endLap),
    pins: pins(long, wide, n.rollWidth, n.overlap, n.pinSpacing, n.cutAround, n.pinBay),
  };
}

/** A layout pins round what was placed in it; what is known by the length of its edge alone is added here. */
function withPinsRoundOthers(laid: LaidCounts, { numbers: n }: Bed): LaidCounts {
  return { ...laid, pins: laid.pins + wholeUp(n.cutAround / (n.pinSpacing / INCHES_PER_FOOT)) };
}

function borderOf({ numbers: n }: Bed, shape: ShapeAmounts): Record<"pieces" | "stakes" | "extraStakes", number> {
  const runs = [
    { lengthFt: shape.borderRun, corners: shape.squareCorners, closed: shape.closed },
    { lengthFt: shape.innerRun, corners: 0, closed: true },
  ];
  const pieces = sum(runs.map(({ lengthFt, closed }) => edgingPieces(lengthFt, n.pieceLength, n.pieceLap, closed)));
  const stakeCount = sum(
    runs.map(({ lengthFt, corners, closed }) =>
      stakes(lengthFt, n.pieceLength, n.stakeSpacing, n.pieceLap, corners, closed),
    ),
  );
  return { pieces, stakes: stakeCount, extraStakes: Math.max(0, stakeCount - pieces * n.stakesPerPiece) };
}

/** A name that may also be the number it stands for. */
function numberOr(text: string, argument: string, named: (name: string) => number): number {
  return /^[\d.,\s]+$/.test(text) ? readNumber(text, argument) : named(text);
}
