import type { Plan } from "../plan";
import type { CarriedValue } from "./carried";
import type { OutsideRead } from "./outsideReads";
import type { CellContent } from "./region";

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
  /**
   * Addresses in the copy of formulas that a file must hold as array formulas, and of lists by all their cells: `C4`,
   * `C4:D9`.
   */
  readonly arrays: readonly string[];
  /** What the copied cells show, so that a file can hold it beside the formulas. */
  readonly results: readonly (readonly CellContent[])[];
  /** What formulas of the copy read outside of it. */
  readonly outside: readonly OutsideRead[];
  /** Values from outside that are below the copied cells, in a workbook of its own. */
  readonly carried: readonly CarriedValue[];
}
