import { translateFormulaToA1, translateFormulaToR1C1 } from "@borgar/fx";

/**
 * A formula that a file keeps once for several cells, as it is in another one of them.
 *
 * @param formula without "=", as it stands in its first cell.
 * @param from the address of the first cell.
 * @param to the address of the other one.
 * @example movedFormula("A1*$B$1", "C1", "C3") // "A3*$B$1"
 */
export function movedFormula(formula: string, from: string, to: string): string {
  return translateFormulaToA1(translateFormulaToR1C1(`=${formula}`, from), to).slice(1);
}
