import { cutTapes, EDGING_STEP_IN, FABRIC_STEP_IN } from "../cutTape";
import { must } from "../must";
import { printTape } from "../tape";
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

/** The lengths that are cut from one piece or roll of a line, as the crew cuts them, and what is left over. */
export function stockTapes({ supplier }: Pick<OrderLine, "supplier">, { cuts, leftOverFt }: Stock) {
  const lengths = cuts.map(({ lengthFt }) => lengthFt);
  return cutTapes(lengths, leftOverFt, supplier === "border" ? EDGING_STEP_IN : FABRIC_STEP_IN);
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
  const cut = stocks.flatMap((stock, index) => {
    const { lengths } = stockTapes(line, stock);
    return stock.cuts.flatMap(({ bed: of, part, lengthFt }, place) =>
      of === bed ? [{ part, lengthFt, length: must(lengths[place]), stock: index + 1, isOffCut: place > 0 }] : [],
    );
  });
  return [...uncut, ...cut];
}
