/** How far above a whole number a count may lie, as a share of it, and still be that whole number. */
export const WHOLE_TOLERANCE = 1e-9;

/**
 * Whole things to buy: rounds up to the next whole number, but not for a difference that only comes from
 * binary arithmetic, so an exact fit is not bumped by one. 2.0000000001 gives 2; 2.001 gives 3.
 *
 * @param amount how many are needed, 0 or more.
 * @returns a whole number, 0 or more.
 */
export function wholeUp(amount: number): number {
  const nearest = Math.round(amount);
  if (Math.abs(amount - nearest) <= WHOLE_TOLERANCE * Math.max(1, Math.abs(amount))) return nearest;
  return Math.ceil(amount);
}
