/** Past jobs do not tell a rate more closely than this share of it. */
export const COARSEST_STEP = 0.05;
const SURE_DIGITS = 9;

/**
 * A rate as an office would write it: rounded to the largest step of 1, 2 or 5 at any decimal place that is no more than
 * a twentieth of it.
 *
 * @param rate more than 0.
 * @example sensible(12.46) // 12.5
 * @example sensible(1.317) // 1.3
 * @example sensible(107.9) // 110
 */
export function sensible(rate: number): number {
  const most = rate * COARSEST_STEP;
  const place = 10 ** Math.floor(Math.log10(most));
  const step = place * (most >= 5 * place ? 5 : most >= 2 * place ? 2 : 1);
  return Number((Math.round(rate / step) * step).toPrecision(SURE_DIGITS));
}

/** A share to whole percents, 0 to 99 %. */
export function sensibleShare(share: number): number {
  return Math.min(99, Math.max(0, Math.round(share * 100))) / 100;
}
