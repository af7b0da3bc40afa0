import { BLANK, type Given } from "./given";
import type { Reading } from "./textReading";
import { type Layers, type Least, merged, type Worked } from "./worked";

/** One argument of a native form: how text in its cells is read, and how it is in a formula. */
export interface Parameter<Operand extends { readonly layers: Layers }> {
  readonly reading: Reading;
  /**
   * @throws Problem where the function would refuse what was typed into the formula.
   * @throws NoNative where ordinary formulas cannot take it.
   */
  operand(given: Given): Operand;
}

/** A function as ordinary spreadsheet arithmetic. */
export interface NativeForm {
  readonly takes: readonly Reading[];
  /**
   * The formula for a call, in parts.
   *
   * @param given one for each argument, in order; those left out at the end may be missing.
   * @throws Problem where the function would refuse what was typed into the formula.
   * @throws NoNative where ordinary formulas cannot take what was given.
   */
  build(given: readonly Given[]): Worked;
}

/** A function that has no ordinary arithmetic, and why. */
export interface NoNativeForm {
  readonly none: string;
}

/** What a form makes of its operands: the arithmetic, and what must hold besides each argument's own rules. */
export interface Working {
  readonly text: string;
  readonly least?: Least;
  readonly when?: Layers;
}

type AnyOperand = { readonly layers: Layers };
type OperandsOf<Parameters extends readonly Parameter<AnyOperand>[]> = {
  [Place in keyof Parameters]: Parameters[Place] extends Parameter<infer Operand> ? Operand : never;
};

/**
 * A native form from its arguments and its arithmetic.
 *
 * @param parameters the arguments in the function's order.
 * @param work the arithmetic; `when` are conditions besides those of each argument.
 */
export function form<const Parameters extends readonly Parameter<AnyOperand>[]>(
  parameters: Parameters,
  work: (...operands: OperandsOf<Parameters>) => Working,
): NativeForm {
  return {
    takes: parameters.map(({ reading }) => reading),
    build(given) {
      const operands = parameters.map((parameter, place) => parameter.operand(given[place] ?? BLANK));
      // The list holds what each parameter gives, in order; the compiler cannot follow it through map.
      const { text, least = "over 0", when = [] } = work(...(operands as unknown as OperandsOf<Parameters>));
      const conditions = when.filter((layer) => layer.length > 0);
      return { text, least, layers: [...merged(operands.map(({ layers }) => layers)), ...conditions] };
    },
  };
}
