import { printTape } from "../../quantities/tape";
import { INCHES_PER_FOOT } from "../../quantities/units";

/** A length as taped, to the nearest quarter inch. */
export const taped = (feet: number): string => printTape(Math.round(feet * QUARTERS_PER_FOOT) / QUARTERS_PER_FOOT);

/** A distance from the zero point: as taped, and a plain 0 there. */
export const coordinate = (feet: number): string => (Math.abs(feet) * QUARTERS_PER_FOOT < 0.5 ? "0" : taped(feet));

/** A length to cut fabric to: up to the next inch. */
export const cutLength = (feet: number): string =>
  printTape(Math.ceil(feet * INCHES_PER_FOOT - ROUNDING_INCHES) / INCHES_PER_FOOT);

export const inches = (feet: number): string => `${Number((feet * INCHES_PER_FOOT).toFixed(2))}"`;

export const countOf = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;

const QUARTERS_PER_FOOT = 4 * INCHES_PER_FOOT;
/** What binary arithmetic may leave above a whole inch. */
const ROUNDING_INCHES = 1e-6;
