import { rowNamed } from "./tables";

/** A kind of soil and how much more room it takes once dug. */
export interface Soil {
  /** As the user types it: lower case, whole words. */
  readonly name: string;
  /** Loose volume over bank volume, less 1. */
  readonly swell: number;
}

/** Soils and their swell from the bank to loose. Where each figure comes from is in `tableSources.ts`. */
export const SOILS: readonly Soil[] = [
  { name: "sand", swell: 0.11 },
  { name: "loam", swell: 0.25 },
  { name: "clay", swell: 0.43 },
  { name: "blasted rock", swell: 0.5 },
];

/**
 * The row of a kind of soil.
 *
 * @param name such as "loam"; capitals and hyphens do not matter.
 * @throws Problem "name" with the nearest name of the table.
 * @example soilNamed("clay").swell // 0.43
 */
export function soilNamed(name: string, argument = "soil"): Soil {
  return rowNamed(SOILS, name, argument, "the swell as a share");
}
