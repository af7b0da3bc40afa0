/** Whole numbers from least to most, both included, the same for the same seed (the generator mulberry32). */
export function randomFrom(seed: number): (least: number, most: number) => number {
  let state = seed * 0x9e3779b1;
  return (least, most) => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    const share = ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
    return Math.floor(least + share * (Math.floor(most) - least + 1));
  };
}

/**
 * Lengths of pieces that stocks were broken into, in whole units, each then trimmed a little: so they are known to fit
 * back into as many stocks, with as little waste as one likes.
 */
export function brokenStocks(seed: number, capacity: number, stocks: number, parts: number, trim: number): number[] {
  const random = randomFrom(seed);
  return Array.from({ length: stocks }, () => {
    const weights = Array.from({ length: parts }, () => random(10, 40));
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    const lengths = weights.map((weight) => Math.floor((weight / total) * capacity));
    lengths[0]! += capacity - lengths.reduce((sum, length) => sum + length, 0);
    return lengths.map((length) => Math.max(1, length - random(0, trim)));
  }).flat();
}
