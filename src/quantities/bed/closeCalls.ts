import { edgingPieces } from "../edging";
import { edgingKindOf } from "../edgingKinds";
import { loads } from "../hauling";
import { cutRollsInTurn } from "../rollsInTurn";
import { printTape } from "../tape";
import { INCHES_PER_FOOT } from "../units";
import { wholeUp } from "../whole";
import type { Estimate } from "./estimate";
import type { NumberFieldKey } from "./fields";
import type { Bed } from "./read";

/** A last piece, roll, box, or load that is used by less than this is worth a look. */
export const HARDLY_USED = 1 / 8;
/** Less than this in cost is not worth a word. */
export const LEAST_SAVING = 10;

/** Something that is bought for little, and what going without it would save in cost. */
export interface CloseCall {
  readonly text: string;
  /** How to save it, as the beginning of a sentence. */
  readonly by: string;
  readonly saves: number;
}

/**
 * What the estimate buys one more of for very little: a piece of edging for 3 in., a load for a few shovels. It only
 * says so; whether to do with less is for the estimator.
 *
 * @param bed from `readForm`; @param estimate of it, from `estimateBed`.
 * @returns the dearest first; none that would save less than {@link LEAST_SAVING}.
 * @source Common practice: an estimator who sees it shortens the run, laps less, or heaps the last load.
 * @example closeCalls(bed, estimateBed(bed))[0]?.text // `The last of 4 pieces covers only 3": 3 reach 23' 8" of 23' 11".`
 */
export function closeCalls(bed: Bed, estimate: Estimate): CloseCall[] {
  const { numbers } = bed;
  const { amounts, lines } = estimate;
  const spends = (text: string | undefined, ...costs: readonly NumberFieldKey[]): CloseCall[] =>
    text === undefined ? [] : [{ text, by: WITHOUT, saves: costs.reduce((sum, key) => sum + numbers[key], 0) }];
  const order = lines.find(({ key }) => key === "stoneLine");
  const haul = lastLoad(amounts.spoilYards, numbers.soilTonsPerYard, numbers.truckYards, numbers.truckPayload);
  const brought = lastLoad(amounts.orderYards, amounts.stoneDensity, numbers.deliveryYards, numbers.deliveryPayload);
  return [
    ...spends(lastPiece(bed, estimate), "pieceCost"),
    ...spends(lastRoll(bed, estimate), "rollCost"),
    ...spends(lastBox(amounts.pins, numbers.pinsPerBox), "pinBoxCost"),
    ...spends(haul && `The last of ${haul.of} loads hauls off only ${cubicYards(haul.yards)}.`, "haulCost", "dumpFee"),
    ...spends(
      brought && `The last of ${brought.of} deliveries brings only ${cubicYards(brought.yards)}.`,
      "deliveryCost",
    ),
    ...(order ? lastStep(bed, estimate, order.unit) : []),
  ]
    .filter(({ saves }) => saves >= LEAST_SAVING)
    .sort((one, other) => other.saves - one.saves);
}

/** A last piece of a run that the others nearly reach without it. */
function lastPiece({ numbers, names }: Bed, { runs, lines, shortPieces }: Estimate): string | undefined {
  const edging = edgingKindOf(names.edgingKind);
  const line = lines.find(({ key }) => key === "edging");
  // A last paver is cut as others are, and a last piece of less than an inch has its own warning.
  if (!line || edging.inSand || shortPieces.length > 0) return undefined;
  const lapIn = edging.fastened === "along" ? numbers.pieceLap : 0;
  const lapFt = lapIn / INCHES_PER_FOOT;
  for (const { feet, closed } of runs) {
    const others = edgingPieces(feet, numbers.pieceLength, lapIn, closed) - 1;
    const reachFt = others * (numbers.pieceLength - lapFt) + (closed ? 0 : lapFt);
    if (others < 1 || feet - reachFt > HARDLY_USED * numbers.pieceLength) continue;
    const rest = others === 1 ? "the other reaches" : `the other ${others} reach`;
    const reach = `${rest} ${printTape(reachFt)} of ${printTape(feet)}`;
    return `The last of ${others + 1} ${line.unit} covers only ${printTape(feet - reachFt)}: ${reach}.`;
  }
  return undefined;
}

/** A last roll that is opened for a short piece. */
function lastRoll({ numbers }: Bed, { amounts, stripsFt }: Estimate): string | undefined {
  const { rollLength, endLap } = numbers;
  const last = { rolls: 0, usedFt: 0 };
  const stripAt = (strip: number) => ({ lengthFt: stripsFt[strip] ?? 0, endLapFt: endLap / INCHES_PER_FOOT });
  cutRollsInTurn(stripsFt.length, stripAt, rollLength, (_strip, _piece, roll, _startsAt, _length, leftFt) => {
    last.rolls = roll;
    last.usedFt = rollLength - leftFt;
  });
  if (last.rolls < 2 || last.rolls !== amounts.rolls || last.usedFt > HARDLY_USED * rollLength) return undefined;
  return `The last of ${last.rolls} fabric rolls is opened for only ${printTape(last.usedFt)}.`;
}

/** A last box that is opened for a few pins. */
function lastBox(pins: number, perBox: number): string | undefined {
  const boxes = wholeUp(pins / perBox);
  const over = pins - (boxes - 1) * perBox;
  if (boxes < 2 || over > HARDLY_USED * perBox) return undefined;
  return `The last of ${boxes} boxes of pins is opened for only ${over === 1 ? "1 pin" : `${over} pins`}.`;
}

/** A last load that is nearly empty: how many loads, and its cubic yards. */
function lastLoad(yards: number, tonsPerYard: number, truckYards: number, payloadTons: number) {
  const of = loads(yards, truckYards, tonsPerYard, payloadTons);
  const fullYards = payloadTons > 0 ? Math.min(truckYards, payloadTons / tonsPerYard) : truckYards;
  const over = yards - (of - 1) * fullYards;
  return of < 2 || over > HARDLY_USED * fullYards ? undefined : { of, yards: over };
}

/** A step of the yard's that could be left out with at least half of the waste still covered. */
function lastStep({ numbers }: Bed, { amounts }: Estimate, unit: string): CloseCall[] {
  const { waste, orderStep, orderMinimum, stoneCost } = numbers;
  const less = amounts.stoneOrder - orderStep;
  const yardsEach = amounts.orderYards / amounts.stoneOrder;
  const net = amounts.stoneYards / (1 + waste) / yardsEach;
  if (less < Math.max(orderMinimum, net * (1 + waste / 2)) || waste === 0) return [];
  const still = Math.floor((less / net - 1) * 100);
  const text = `${rounded(less)} ${unit} would still leave ${still}% for waste and low spots, in place of ${Math.round(waste * 100)}%.`;
  return [{ text, by: WITHOUT, saves: orderStep * stoneCost }];
}

const WITHOUT = "Doing without";
const cubicYards = (amount: number) => `${rounded(amount)} cu yd`;
const rounded = (amount: number) => String(Math.round(amount * 100) / 100);
