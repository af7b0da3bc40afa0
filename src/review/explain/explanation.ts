import type { Value } from "../formula/values";

/** Works out a part of a formula where it stands: `B5*12` or `BED.FEET(B5)`; undefined where that is not known. */
export type Evaluate = (text: string) => Value | undefined;

/** One argument of a function as it is explained. */
export interface ExplainedArgument {
  /** As the function calls it: `depth_in`. */
  readonly name: string;
  /** As it is written in the formula; "" where it is left out. */
  readonly text: string;
  /** What the cell that it reads is called on the sheet. */
  readonly reads?: string;
  /** What arrived, with its unit: `2.5 in`, `18' 6", which is 18.5 ft`, `left out: 12 in`. */
  readonly value: string;
  /** Where the figure of a name comes from. */
  readonly source?: string;
  /** What is wrong with it, where anything is. */
  readonly trouble?: string;
}

export interface Explanation {
  /** The part of the formula that is explained, as it is written. */
  readonly text: string;
  /** `BED.STONE_TONS: stone by weight`. */
  readonly title: string;
  /** The rule in words; "" for a plain formula. */
  readonly rule: string;
  readonly arguments: readonly ExplainedArgument[];
  /** Line by line with the numbers in it. */
  readonly working: readonly string[];
  /** With its unit, or the error. */
  readonly result: string;
  /** Why it is an error, and what to do; hosts do not always show it. */
  readonly error?: { readonly reason: string; readonly mend: string };
  /** Functions inside it, to step into, as they are written from left to right. */
  readonly inside: readonly Explanation[];
}
