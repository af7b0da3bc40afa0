import { quoted } from "./evaluate";

/** Limits of a sensible depth: common practice, no source. */
export const DEPTH_LIMITS = { leastIn: 1.5, mostIn: 6, stoneShare: 2 / 3 } as const;

/** What happens to a bed too shallow, too deep, or too shallow for its stone. */
export const depthVerdicts = {
  stoneTooLarge: "Stone is over two thirds of the depth: fabric will show. Take smaller stone or a higher border.",
  shallow: "Under 1.5 in: fabric will show through.",
  deep: "Over 6 in: tons are wasted where nobody sees them.",
  fits: "Depth suits the stone.",
} as const;

/** Exact in a formula, where a decimal would be rounded. */
const inThirds = (share: number): string => `${share * 3}/3`;

/** Whether a depth suits its stone, in words, as an expression of the estimate. */
export const DEPTH_CHECK =
  `IF({stoneDepth}<${DEPTH_LIMITS.leastIn},${quoted(depthVerdicts.shallow)},` +
  `IF({stoneSize.decimal}>{stoneDepth}*${inThirds(DEPTH_LIMITS.stoneShare)},${quoted(depthVerdicts.stoneTooLarge)},` +
  `IF({stoneDepth}>${DEPTH_LIMITS.mostIn},${quoted(depthVerdicts.deep)},${quoted(depthVerdicts.fits)})))`;
