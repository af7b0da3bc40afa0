import { quoted } from "./evaluate";

/** Limits of a sensible depth: common practice, no source. */
export const DEPTH_LIMITS = { leastIn: 1.5, mostIn: 6, stoneShare: 2 / 3 } as const;

/** What happens to a bed too shallow, too deep, or too shallow for its stone. */
export const depthVerdicts = {
  stoneTooLarge: "Stone is over two-thirds of the depth, so fabric will show. Use smaller stone or taller edging.",
  shallow: "Under 1.5 in: fabric will show through.",
  deep: "Over 6 in: you'd pay for stone no one sees.",
  fits: "Depth works for this stone.",
} as const;

/** Exact in a formula, where a decimal would be rounded. */
const inThirds = (share: number): string => `${share * 3}/3`;

/** Whether a depth suits its stone, in words, as an expression of the estimate. */
export const DEPTH_CHECK =
  `IF({stoneDepth}<${DEPTH_LIMITS.leastIn},${quoted(depthVerdicts.shallow)},` +
  `IF({stoneSize.decimal}>{stoneDepth}*${inThirds(DEPTH_LIMITS.stoneShare)},${quoted(depthVerdicts.stoneTooLarge)},` +
  `IF({stoneDepth}>${DEPTH_LIMITS.mostIn},${quoted(depthVerdicts.deep)},${quoted(depthVerdicts.fits)})))`;
