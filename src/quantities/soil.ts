import { rowNamed, type TableRow } from "./tables";

/** A kind of soil and how much more room it takes once dug. */
export interface Soil extends TableRow {
  /** Loose volume over bank volume, less 1. */
  readonly swell: number;
}

const SOURCE = "US Army FM 5-434 (2000), Table 1-1, and NAVEDTRA 14080, Table 4-1: bank to loose";

/** Soils and their swell from the bank to loose. */
export const SOILS: readonly Soil[] = [
  {
    name: "sand",
    swell: 0.11,
    source: `${SOURCE} 1.11 (from memory; read where others quote it, not in the source)`,
    sure: "memory",
  },
  { name: "loam", swell: 0.25, source: `${SOURCE} 1.25 (from memory)`, sure: "memory" },
  { name: "clay", swell: 0.43, source: `${SOURCE} 1.43 (from memory)`, sure: "memory" },
  { name: "blasted rock", swell: 0.5, source: `${SOURCE} 1.50 (from memory)`, sure: "memory" },
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
