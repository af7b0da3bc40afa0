import { printTape, SIXTEENTHS_PER_INCH } from "./tape";
import { INCHES_PER_FOOT } from "./units";

/** Fabric is cut with scissors to the half inch, and edging with a saw to the quarter: common practice. */
export const FABRIC_STEP_IN = 1 / 2;
export const EDGING_STEP_IN = 1 / 4;

/** What binary arithmetic may leave above a whole step, in steps. */
const ROUNDING_STEPS = 1e-5;

/** A length to cut, up to the next step, so that nothing comes out short. */
export const upToStep = (feet: number, stepIn: number): number =>
  (Math.ceil((feet * INCHES_PER_FOOT) / stepIn - ROUNDING_STEPS) * stepIn) / INCHES_PER_FOOT;

/**
 * A length as the crew cuts it.
 *
 * @param feet what is needed; @param stepIn what the hand that cuts works to, in inches.
 * @example cutTape(6.9282, FABRIC_STEP_IN) // 6' 11 1/2"
 */
export const cutTape = (feet: number, stepIn: number): string => printTape(upToStep(feet, stepIn));

/** A length down to the last step: what can be had of so much. */
export const downToStep = (feet: number, stepIn: number): number =>
  (Math.floor((feet * INCHES_PER_FOOT) / stepIn + ROUNDING_STEPS) * stepIn) / INCHES_PER_FOOT;

/** Lengths to cut from one piece or roll, and what is left over of it, in words. */
export interface CutTapes {
  readonly lengths: readonly string[];
  readonly leftOver: string;
  /** The step that they were rounded up to; 0 where they are as they are. */
  readonly stepIn: number;
}

/**
 * The lengths cut from one piece or roll, each up to the next step. Where they would not all come out of it so, half that
 * step is tried, down to a sixteenth of an inch; where not even that fits, they are as they are.
 *
 * @param leftOverFt what the lengths as they are leave of it.
 */
export function cutTapes(lengthsFt: readonly number[], leftOverFt: number, stepIn: number): CutTapes {
  const rounded = lengthsFt.map((feet) => upToStep(feet, stepIn));
  const leftFt = lengthsFt.reduce((left, feet, i) => left + feet - (rounded[i] ?? feet), leftOverFt);
  const fits = leftFt >= -ROUNDING_STEPS;
  if (!fits && stepIn * SIXTEENTHS_PER_INCH > 1) return cutTapes(lengthsFt, leftOverFt, stepIn / 2);
  return {
    lengths: (fits ? rounded : lengthsFt).map(printTape),
    leftOver: printTape(fits ? leftFt : leftOverFt),
    stepIn: fits ? stepIn : 0,
  };
}
