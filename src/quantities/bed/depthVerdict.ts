/** Limits of a sensible depth: common practice, no source. */
export const DEPTH_LIMITS = { leastIn: 1.5, mostIn: 6, stoneShare: 2 / 3 } as const;

/** What happens to a bed too shallow, too deep, or too shallow for its stone. */
export const depthVerdicts = {
  stoneTooLarge: "Stone is over two thirds of the depth: fabric will show. Take smaller stone or a higher border.",
  shallow: "Under 1.5 in: fabric will show through.",
  deep: "Over 6 in: tons are wasted where nobody sees them.",
  fits: "Depth suits the stone.",
} as const;

/**
 * Whether a depth suits its stone.
 *
 * @param depthIn finished depth of the stone in inches, more than 0.
 * @param stoneIn the largest stone in inches, more than 0.
 * @example depthVerdict(2, 1.5).text // depthVerdicts.stoneTooLarge
 */
export function depthVerdict(depthIn: number, stoneIn: number): { readonly fits: boolean; readonly text: string } {
  const { leastIn, mostIn, stoneShare } = DEPTH_LIMITS;
  if (depthIn < leastIn) return { fits: false, text: depthVerdicts.shallow };
  if (stoneIn > depthIn * stoneShare) return { fits: false, text: depthVerdicts.stoneTooLarge };
  if (depthIn > mostIn) return { fits: false, text: depthVerdicts.deep };
  return { fits: true, text: depthVerdicts.fits };
}
