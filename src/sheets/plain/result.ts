import type { Plan } from "../plan";

/** A cell whose text was replaced, since ordinary arithmetic cannot read it. */
export interface ReplacedInput {
  /** Its address in the original, and in the copy. */
  readonly from: string;
  readonly to: string;
  readonly was: string;
  readonly is: number | string;
  /** The unit of the number, where it was a length. */
  readonly unit?: "ft" | "in";
}

/** A formula that the copy holds as its value. */
export interface LeftAsValue {
  readonly from: string;
  /** Its cell in the copy, or its cells where it gives a list. */
  readonly to: string;
  readonly formula: string;
  /** Why, in words for the person. */
  readonly reason: string;
}

/** A copy for people without the add-in, and what became of the original's cells. */
export interface PlainCopy {
  readonly plan: Plan;
  /** Addresses in the copy of the formulas whose calls are ordinary arithmetic now. */
  readonly converted: readonly string[];
  readonly replaced: readonly ReplacedInput[];
  readonly leftAsValues: readonly LeftAsValue[];
  /** Addresses in the copy of formulas that read a replaced text by themselves, and may show something else there. */
  readonly alsoRead: readonly string[];
  /** Addresses in the copy of formulas that a file must hold as array formulas, for programs older than 2021. */
  readonly arrays: readonly string[];
}
