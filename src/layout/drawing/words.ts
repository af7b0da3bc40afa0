import { cutTape, FABRIC_STEP_IN } from "../../quantities/cutTape";
import { printTape } from "../../quantities/tape";
import { INCHES_PER_FOOT } from "../../quantities/units";

/** A length as taped, to the nearest quarter inch. */
export const taped = (feet: number): string => printTape(Math.round(feet * QUARTERS_PER_FOOT) / QUARTERS_PER_FOOT);

/** A distance from the zero point: as taped, and a plain 0 there. */
export const coordinate = (feet: number): string => (Math.abs(feet) * QUARTERS_PER_FOOT < 0.5 ? "0" : taped(feet));

/** A length to cut fabric to. */
export const cutLength = (feet: number): string => cutTape(feet, FABRIC_STEP_IN);

export const inches = (feet: number): string => `${Number((feet * INCHES_PER_FOOT).toFixed(2))}"`;

export const countOf = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;

/** One of what is counted. @example oneOf("timbers") // "timber" */
export const oneOf = (many: string): string => many.replace(/s$/, "");

/** A depth, to the nearest eighth of an inch: pavers are 2 3/8 in thick. */
export const depthTaped = (depthIn: number): string =>
  printTape(Math.round(depthIn * EIGHTHS_PER_INCH) / EIGHTHS_PER_INCH / INCHES_PER_FOOT);

const EIGHTHS_PER_INCH = 8;
const QUARTERS_PER_FOOT = 4 * INCHES_PER_FOOT;
