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
