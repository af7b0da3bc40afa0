import { rowNamed } from "./tables";
import { CUBIC_FEET_PER_CUBIC_YARD, POUNDS_PER_SHORT_TON } from "./units";

/** A kind of stone, or another covering, with its loose weight. */
export interface Stone {
  /** As the user types it: lower case, whole words. */
  readonly name: string;
  /** Short tons in a loose cubic yard, as delivered and dry. */
  readonly tonsPerYard: number;
  /** Mulch, which is sold by volume. */
  readonly isMulch?: boolean;
}

export const tonsFromPoundsPerYard = (pounds: number) => pounds / POUNDS_PER_SHORT_TON;
export const tonsFromPoundsPerFoot = (pounds: number) => (pounds * CUBIC_FEET_PER_CUBIC_YARD) / POUNDS_PER_SHORT_TON;

/**
 * Common stone and other coverings with their loose weight. A supplier's scale ticket beats every row of it: weights
 * change with the quarry, the size, and how wet the stone is loaded. Where each figure comes from is in
 * `tableSources.ts`, which isn't loaded with every workbook.
 */
export const STONES: readonly Stone[] = [
  { name: "crushed stone", tonsPerYard: tonsFromPoundsPerYard(2600) },
  { name: "gravel", tonsPerYard: tonsFromPoundsPerYard(2600) },
  { name: "crushed limestone", tonsPerYard: tonsFromPoundsPerFoot(100) },
  { name: "cobble", tonsPerYard: tonsFromPoundsPerYard(2700) },
  { name: "sand", tonsPerYard: tonsFromPoundsPerYard(2400) },
  { name: "decomposed granite", tonsPerYard: tonsFromPoundsPerFoot(95) },
  { name: "river rock", tonsPerYard: 1.35 },
  { name: "pea gravel", tonsPerYard: 1.35 },
  { name: "pebbles", tonsPerYard: 1.35 },
  { name: "crushed granite", tonsPerYard: tonsFromPoundsPerFoot(96) },
  { name: "crushed basalt", tonsPerYard: tonsFromPoundsPerFoot(96) },
  { name: "crushed marble", tonsPerYard: tonsFromPoundsPerFoot(95) },
  { name: "crushed quartz", tonsPerYard: tonsFromPoundsPerFoot(95) },
  { name: "crushed sandstone", tonsPerYard: tonsFromPoundsPerFoot(82) },
  { name: "crushed slate", tonsPerYard: tonsFromPoundsPerFoot(92) },
  { name: "lava rock", tonsPerYard: tonsFromPoundsPerFoot(52) },
  { name: "pumice", tonsPerYard: tonsFromPoundsPerFoot(40) },
  { name: "crushed concrete", tonsPerYard: tonsFromPoundsPerYard(2400) },
  { name: "crushed brick", tonsPerYard: tonsFromPoundsPerFoot(66) },
  { name: "crushed glass", tonsPerYard: tonsFromPoundsPerYard(2250) },
  { name: "wood chips", tonsPerYard: tonsFromPoundsPerYard(300), isMulch: true },
  { name: "green wood chips", tonsPerYard: tonsFromPoundsPerYard(473), isMulch: true },
  { name: "shredded bark", tonsPerYard: tonsFromPoundsPerYard(600), isMulch: true },
  { name: "hardwood mulch", tonsPerYard: tonsFromPoundsPerYard(600), isMulch: true },
  { name: "bark nuggets", tonsPerYard: tonsFromPoundsPerYard(500), isMulch: true },
  { name: "shredded rubber", tonsPerYard: tonsFromPoundsPerFoot(28.5), isMulch: true },
  { name: "rubber nuggets", tonsPerYard: tonsFromPoundsPerFoot(25), isMulch: true },
];

/** More than any loose stone weighs, in short tons a cubic yard; above it, pounds were typed for tons. */
export const MOST_TONS_PER_YARD = 10;

/**
 * The row of a kind of stone.
 *
 * @param name such as "river rock"; capitals and hyphens do not matter.
 * @throws Problem "name" with the nearest name of the table.
 * @example stoneNamed("River Rock").tonsPerYard // 1.35
 */
export function stoneNamed(name: string, argument = "stone"): Stone {
  return rowNamed(STONES, name, argument, "the tons per cubic yard");
}

/** The short tons in a loose cubic yard, where a stone was given by them in place of a name; undefined for a name. */
export function weightAsName(stone: string): number | undefined {
  return /^(?:\d+\.?\d*|\.\d+)$/.test(stone.trim()) ? Number(stone) : undefined;
}

/**
 * What a line calls a stone: by its weight, where that was given in place of a name.
 *
 * @example stoneOnLine("1.40") // "stone of 1.4 tons/cu yd"
 */
export function stoneOnLine(stone: string): string {
  const weight = weightAsName(stone);
  return weight === undefined ? stone : `stone of ${weight} tons/cu yd`;
}
