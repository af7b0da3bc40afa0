import { type CutTapes, cutTapes, downToStep, EDGING_STEP_IN, FABRIC_STEP_IN, upToStep } from "../cutTape";
import { must } from "../must";
import { printTape } from "../tape";
import { INCHES_PER_FOOT } from "../units";
import type { JobOrder, OrderLine, Stock } from "./order";

/** A length of edging or fabric of one bed, and what the order cuts it from. */
export interface OrderedCut {
  /** The number in the bed's drawing: of a piece of edging, or of a cut of fabric. */
  readonly part: number;
  readonly lengthFt: number;
  /** As the crew cuts it. */
  readonly length: string;
  /** The piece or roll, as the cut list numbers them from 1; undefined for one that is used whole. */
  readonly stock?: number;
  /** It comes from what an earlier cut left of that piece or roll. */
  readonly isOffCut: boolean;
}

/** All cuts of one bed. */
export interface OrderedCuts {
  readonly edging: readonly OrderedCut[];
  readonly fabric: readonly OrderedCut[];
}

/**
 * The lengths that are cut from each piece or roll of a line, as the crew cuts them, and what is left over. Where a roll
 * runs out inside a strip, the lengths before it are rounded up, the strip gets what they leave, and the next roll the rest.
 */
export function stockTapes({ supplier, cutting }: Pick<OrderLine, "supplier" | "cutting">): CutTapes[] {
  const stocks = cutting?.stocks ?? [];
  const stepIn = supplier === "border" ? EDGING_STEP_IN : FABRIC_STEP_IN;
  /** What an earlier roll leaves to the first length of a later one, in feet, by the later roll's place. */
  const passedOn = new Map<number, number>();
  return stocks.map(({ cuts, leftOverFt }, place) => {
    const more = passedOn.get(place) ?? 0;
    const lengths = cuts.map(({ lengthFt }, at) => lengthFt + (at === 0 ? more : 0));
    const tapes = cutTapes(lengths, leftOverFt - more, stepIn);
    const next = goesOnAt(stocks, place);
    if (next === undefined || tapes.stepIn === stepIn || !endsWithRoom(stocks, place, stepIn)) return tapes;
    const before = lengths.slice(0, -1).map((feet) => upToStep(feet, stepIn));
    const rollFt = cuts.reduce((sum, { lengthFt }) => sum + lengthFt, leftOverFt);
    const rest = downToStep(rollFt - before.reduce((sum, feet) => sum + feet, 0), stepIn);
    passedOn.set(next, must(lengths.at(-1)) - rest);
    const left = rollFt - before.reduce((sum, feet) => sum + feet, rest);
    return { lengths: [...before, rest].map(printTape), leftOver: printTape(left), stepIn };
  });
}

/** Whether the last of the rolls that pass lengths on has room for all that rounding up can add to it. */
function endsWithRoom(stocks: readonly Stock[], place: number, stepIn: number): boolean {
  let end = place;
  let cuts = 0;
  for (let at: number | undefined = place; at !== undefined; at = goesOnAt(stocks, at)) {
    end = at;
    cuts += must(stocks[at]).cuts.length;
  }
  return must(stocks[end]).leftOverFt >= (cuts * stepIn) / INCHES_PER_FOOT;
}

/** The later roll off which the last strip of a roll goes on; undefined where it ends there. */
function goesOnAt(stocks: readonly Stock[], place: number): number | undefined {
  const last = must(must(stocks[place]).cuts.at(-1));
  const next = stocks.findIndex(
    ({ cuts }, later) => later > place && cuts[0]?.bed === last.bed && cuts[0].part === last.part,
  );
  return next < 0 ? undefined : next;
}

/**
 * What a job's order cuts for one bed, for its drawing.
 *
 * @param bed the name that the order has for it, which no other bed of the job has.
 * @example cutsOfBed(orderJob(beds), "Walk").edging // P4 from the offcut of piece 2
 */
export function cutsOfBed({ lines }: JobOrder, bed: string): OrderedCuts {
  const cutsOf = (supplier: OrderLine["supplier"]) =>
    lines.filter((line) => line.supplier === supplier).flatMap((line) => cutsOfLine(line, bed));
  return { edging: cutsOf("border"), fabric: cutsOf("fabric and pins") };
}

function cutsOfLine(line: OrderLine, bed: string): OrderedCut[] {
  const { whole = [], stocks = [] } = line.cutting ?? {};
  // A strip longer than a roll starts with whole ones; whole pieces of edging need no cut, so no word.
  const uncut = whole.flatMap(({ bed: of, part, count, lengthFt }) =>
    of === bed && line.supplier !== "border"
      ? Array.from({ length: count }, () => ({ part, lengthFt, length: printTape(lengthFt), isOffCut: false }))
      : [],
  );
  const tapes = stockTapes(line);
  const cut = stocks.flatMap((stock, index) => {
    const { lengths } = must(tapes[index]);
    return stock.cuts.flatMap(({ bed: of, part, lengthFt }, place) =>
      of === bed ? [{ part, lengthFt, length: must(lengths[place]), stock: index + 1, isOffCut: place > 0 }] : [],
    );
  });
  return [...uncut, ...cut];
}
