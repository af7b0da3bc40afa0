/**
 * The fewest stock lengths by trying every order of cutting, worked out over all subsets of the pieces: for each
 * subset the fewest stocks and, of those, the most room left in the last. Exact, independent, and only for a dozen
 * pieces or so.
 *
 * @param room length of a stock, and `pieces` the lengths to cut from it, with no loss.
 */
export function fewestBySubsets(room: number, pieces: readonly number[]): number {
  const subsets = 2 ** pieces.length;
  const stocks = new Float64Array(subsets).fill(Number.POSITIVE_INFINITY);
  const left = new Float64Array(subsets);
  stocks[0] = 0;
  for (let subset = 1; subset < subsets; subset++) {
    pieces.forEach((length, n) => {
      if ((subset & (1 << n)) === 0) return;
      const before = subset ^ (1 << n);
      const fits = left[before]! >= length;
      const count = stocks[before]! + (fits ? 0 : 1);
      const rest = (fits ? left[before]! : room) - length;
      if (count < stocks[subset]! || (count === stocks[subset]! && rest > left[subset]!)) {
        stocks[subset] = count;
        left[subset] = rest;
      }
    });
  }
  return stocks[subsets - 1]!;
}
