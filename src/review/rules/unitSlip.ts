/** Factors by which a quantity is off when a unit was mistaken, each with what to do about it. */
const FACTORS: readonly (readonly [factor: number, words: string])[] = [
  [12, "feet and inches"],
  [144, "square feet and square inches"],
  [1728, "feet and inches, three times over"],
  [27, "cubic feet and cubic yards"],
  [324, "square feet times inches and cubic yards"],
  [9, "square feet and square yards"],
  [3, "feet and yards"],
  [36, "inches and yards"],
  [2000, "pounds and tons"],
  [27 * 2000, "pounds a cubic foot and tons a cubic yard"],
  [2000 / 27, "pounds a cubic foot and tons a cubic yard"],
  [1000 / 25.4, "inches and meters"],
  [25.4, "inches and millimeters"],
  [304.8, "feet and millimeters"],
  [2.54, "inches and centimeters"],
  [3.280839895, "feet and meters"],
  [10.76391042, "square feet and square meters"],
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
