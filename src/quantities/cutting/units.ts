import { WHOLE_TOLERANCE } from "../whole";

/** Lengths in whole numbers of one small unit. */
export interface WholeLengths {
  readonly lengths: readonly number[];
  readonly stock: number;
  readonly loss: number;
  /**
   * What pieces, each with the loss of one cut, may come to. A stock is full when n pieces and n − 1 cuts use it up,
   * so that is the stock and one loss more; and a 1e-9th of the stock more again, so that an exact fit is one.
   */
  readonly capacity: number;
  /** Back from whole numbers to the caller's unit. */
  readonly lengthOf: (units: number) => number;
}

/** Common parts looked for go up to this many to the unit: 24,384 to the foot measures sixteenths and millimeters. */
const MOST_PARTS = 25_000;
/** How far from whole a number of parts may be, as a share of it, and still be whole: what binary arithmetic leaves. */
const PART_TOLERANCE = 1e-12;
/** Where there are no common parts, the stock is divided into this many. */
const FINEST = 1e12;
/** Digits of a length that are left after such rounding and some adding. */
const SURE_DIGITS = 9;

/**
 * Puts lengths into whole numbers, so that the solver adds and compares exactly.
 *
 * Lengths from a tape are whole numbers of some common part: a sixteenth of an inch is 1/192 ft, a tenth of a
 * millimeter 1/3048 ft, and thirds and decimals are parts of their own. The largest such part is the unit. Where
 * there is none, each length is rounded to a 1e-12th of the stock.
 *
 * @example inWholeUnits(1, 0, [1 / 3, 0.25]).lengths // [4, 3]
 */
export function inWholeUnits(stock: number, loss: number, lengths: readonly number[]): WholeLengths {
  const full = stock + loss;
  const parts = commonParts([stock, loss, ...lengths]);
  const units = parts === undefined ? (length: number) => (length / full) * FINEST : (length: number) => length * parts;
  const whole = (length: number) => Math.round(units(length));
  return {
    lengths: lengths.map((length) => Math.max(1, whole(length))),
    stock: whole(stock),
    loss: whole(loss),
    capacity: whole(stock) + whole(loss) + Math.floor(whole(stock) * WHOLE_TOLERANCE),
    lengthOf: (count) =>
      parts === undefined ? Number(((count / FINEST) * full).toPrecision(SURE_DIGITS)) : count / parts,
  };
}

/** The fewest equal parts of the unit of which every length is a whole number; undefined where there are too many. */
function commonParts(lengths: readonly number[]): number | undefined {
  const longest = Math.max(...lengths);
  for (let parts = 1; parts <= MOST_PARTS && longest * parts <= FINEST; parts++) {
    const isWhole = (length: number) => {
      const count = length * parts;
      return Math.abs(count - Math.round(count)) <= count * PART_TOLERANCE;
    };
    if (lengths.every(isWhole)) return parts;
  }
  return undefined;
}
