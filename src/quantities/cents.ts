/**
 * Money in whole cents, so that lines add up to their total exactly.
 *
 * @param amount money, 0 or more.
 * @returns a whole number of cents; half a cent that binary arithmetic left just below itself still goes up.
 * @example toCents(1.005) // 101
 */
export function toCents(amount: number): number {
  return Math.round(amount * 100 * (1 + Number.EPSILON));
}
