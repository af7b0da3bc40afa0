import {
  CUBIC_FEET_PER_CUBIC_YARD,
  FEET_PER_YARD,
  INCHES_PER_FOOT,
  METERS_PER_FOOT,
  POUNDS_PER_SHORT_TON,
  SQUARE_FOOT_INCHES_PER_CUBIC_YARD,
} from "../../quantities/units";

/** Factors by which a quantity is off when a unit was mistaken, each with what to do about it. */
const FACTORS: readonly (readonly [factor: number, words: string])[] = [
  [INCHES_PER_FOOT, "feet and inches"],
  [INCHES_PER_FOOT ** 2, "square feet and square inches"],
  [INCHES_PER_FOOT ** 3, "feet and inches, three times over"],
  [CUBIC_FEET_PER_CUBIC_YARD, "cubic feet and cubic yards"],
  [SQUARE_FOOT_INCHES_PER_CUBIC_YARD, "square feet times inches and cubic yards"],
  [FEET_PER_YARD ** 2, "square feet and square yards"],
  [FEET_PER_YARD, "feet and yards"],
  [INCHES_PER_FOOT * FEET_PER_YARD, "inches and yards"],
  [POUNDS_PER_SHORT_TON, "pounds and tons"],
  [CUBIC_FEET_PER_CUBIC_YARD * POUNDS_PER_SHORT_TON, "pounds a cubic foot and tons a cubic yard"],
  [POUNDS_PER_SHORT_TON / CUBIC_FEET_PER_CUBIC_YARD, "pounds a cubic foot and tons a cubic yard"],
  [INCHES_PER_FOOT / METERS_PER_FOOT, "inches and meters"],
  [(1000 * METERS_PER_FOOT) / INCHES_PER_FOOT, "inches and millimeters"],
  [1000 * METERS_PER_FOOT, "feet and millimeters"],
  [(100 * METERS_PER_FOOT) / INCHES_PER_FOOT, "inches and centimeters"],
  [1 / METERS_PER_FOOT, "feet and meters"],
  [METERS_PER_FOOT ** -2, "square feet and square meters"],
];

/** Conversions are typed with few digits. */
const CLOSE = 0.003;

export interface UnitSlip {
  /** The number is this many times what it should be. */
  readonly times: number;
  readonly words: string;
}

/**
 * The mistaken unit behind a factor; undefined where it is none.
 *
 * @param times how many times too large a number is, by its units.
 * @example unitSlip(12) // { times: 12, words: "feet and inches" }
 */
export function unitSlip(times: number): UnitSlip | undefined {
  for (const [factor, words] of FACTORS) {
    for (const one of [factor, 1 / factor]) if (Math.abs(times / one - 1) < CLOSE) return { times: one, words };
  }
  return undefined;
}

/** `12 times too large`, `12 times too small`. */
export function timesOff(times: number): string {
  const many = times >= 1 ? times : 1 / times;
  return `${Number(many.toPrecision(4)).toLocaleString("en-US")} times too ${times >= 1 ? "large" : "small"}`;
}
