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
  /** Half a cent that binary arithmetic left just below itself still counts as half a cent, as in the sheet. */
function roundToCents(amount: number): number {
  return Math.round(amount * 100 * (1 + Number.EPSILON)) / 100;
}
