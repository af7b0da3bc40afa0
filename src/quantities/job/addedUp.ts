/**
 * The sum of amounts, to the last digit the same in whatever order they come: the smallest are added first.
 *
 * @example addedUp([0.3, 0.1, 0.2]) === addedUp([0.1, 0.2, 0.3]) // true
 */
export function addedUp(amounts: readonly number[]): number {
  return [...amounts].sort((a, b) => a - b).reduce((sum, amount) => sum + amount, 0);
}
