import { rowNamed, type TableRow } from "./tables";
import { CUBIC_FEET_PER_CUBIC_YARD, POUNDS_PER_SHORT_TON } from "./units";

/** A kind of stone with its loose weight. */
export interface Stone extends TableRow {
  /** Short tons in a loose cubic yard, as delivered and dry. */
  readonly tonsPerYard: number;
  /** The lowest and the highest figure that is still ordinary for it, in the same unit. */
  readonly low: number;
  readonly high: number;
}

const tonsFromPoundsPerYard = (pounds: number) => pounds / POUNDS_PER_SHORT_TON;
const tonsFromPoundsPerFoot = (pounds: number) => (pounds * CUBIC_FEET_PER_CUBIC_YARD) / POUNDS_PER_SHORT_TON;

const ARMY = "US Army TM 9-2320-366-10-1, Table 2-15, Material Weight by Volume";
const CALRECYCLE = "CalRecycle, Weights and Volumes for Project Estimates";
const ASCE = "ASCE 7 commentary, minimum densities for design loads from materials";

/** Any ordinary stone, loose: 75 to 125 lb a cubic foot (common practice). */
const ORDINARY = { low: tonsFromPoundsPerFoot(75), high: tonsFromPoundsPerFoot(125) };
/** Lava and pumice, loose: 30 to 60 lb a cubic foot (common practice). */
const LIGHT = { low: tonsFromPoundsPerFoot(30), high: tonsFromPoundsPerFoot(60) };

const ROUNDED = `Common practice; lies between gravel in ${CALRECYCLE} (2,600 lb/yd³) and in ${ARMY} (110 lb/ft³)`;

/**
 * Common stone and its loose weight. A supplier's scale ticket beats every row of it: weights change with the
 * quarry, the size, and how wet the stone is loaded.
 */
export const STONES: readonly Stone[] = [
  {
    name: "crushed stone",
    tonsPerYard: tonsFromPoundsPerYard(2600),
    low: tonsFromPoundsPerFoot(95),
    high: tonsFromPoundsPerYard(3120),
    source: `${CALRECYCLE}: gravel or crushed stone, loose and dry, 2,600 lb/yd³; wet 3,120`,
    sure: "seen",
  },
  {
    name: "gravel",
    tonsPerYard: tonsFromPoundsPerYard(2600),
    low: tonsFromPoundsPerYard(2600),
    high: tonsFromPoundsPerYard(3120),
    source: `${CALRECYCLE}: gravel or crushed stone, loose and dry, 2,600 lb/yd³; wet 3,120`,
    sure: "seen",
  },
  {
    name: "crushed limestone",
    tonsPerYard: tonsFromPoundsPerFoot(100),
    ...ORDINARY,
    source: `${ARMY}: limestone, crushed, 100 lb/ft³`,
    sure: "seen",
  },
  {
    name: "cobble",
    tonsPerYard: tonsFromPoundsPerYard(2700),
    ...ORDINARY,
    source: `${CALRECYCLE}: stone graded to 8 in, loose, 2,700 lb/yd³`,
    sure: "seen",
  },
  {
    name: "sand",
    tonsPerYard: tonsFromPoundsPerYard(2400),
    ...ORDINARY,
    source: `${CALRECYCLE}: sand, loose and dry, 2,400 lb/yd³`,
    sure: "seen",
  },
  {
    name: "decomposed granite",
    tonsPerYard: tonsFromPoundsPerFoot(95),
    ...ORDINARY,
    source: `Common practice; taken as gravel and sand, dry and loose, in ${ARMY} (95 lb/ft³)`,
    sure: "practice",
  },
  { name: "river rock", tonsPerYard: 1.35, ...ORDINARY, source: ROUNDED, sure: "practice" },
  { name: "pea gravel", tonsPerYard: 1.35, ...ORDINARY, source: ROUNDED, sure: "practice" },
  { name: "pebbles", tonsPerYard: 1.35, ...ORDINARY, source: ROUNDED, sure: "practice" },
  {
    name: "crushed granite",
    tonsPerYard: tonsFromPoundsPerFoot(96),
    ...ORDINARY,
    source: `${ASCE}: quarried stone, piled; basalt, granite, gneiss 96 lb/ft³ (from memory)`,
    sure: "memory",
  },
  {
    name: "crushed basalt",
    tonsPerYard: tonsFromPoundsPerFoot(96),
    ...ORDINARY,
    source: `${ASCE}: quarried stone, piled; basalt, granite, gneiss 96 lb/ft³ (from memory)`,
    sure: "memory",
  },
  {
    name: "crushed marble",
    tonsPerYard: tonsFromPoundsPerFoot(95),
    ...ORDINARY,
    source: `${ASCE}: quarried stone, piled; limestone, marble, quartz 95 lb/ft³ (from memory)`,
    sure: "memory",
  },
  {
    name: "crushed quartz",
    tonsPerYard: tonsFromPoundsPerFoot(95),
    ...ORDINARY,
    source: `${ASCE}: quarried stone, piled; limestone, marble, quartz 95 lb/ft³ (from memory)`,
    sure: "memory",
  },
  {
    name: "crushed sandstone",
    tonsPerYard: tonsFromPoundsPerFoot(82),
    ...ORDINARY,
    source: `${ASCE}: quarried stone, piled; sandstone 82 lb/ft³ (from memory)`,
    sure: "memory",
  },
  {
    name: "crushed slate",
    tonsPerYard: tonsFromPoundsPerFoot(92),
    ...ORDINARY,
    source: `Common practice; taken as shale, 92 lb/ft³, in ${ASCE} (from memory)`,
    sure: "practice",
  },
  {
    name: "lava rock",
    tonsPerYard: tonsFromPoundsPerFoot(52),
    ...LIGHT,
    source: "Common practice; 48 to 56 lb/ft³ for scoria, no publication found",
    sure: "practice",
  },
  {
    name: "pumice",
    tonsPerYard: tonsFromPoundsPerFoot(40),
    ...LIGHT,
    source: "Common practice; 30 to 60 lb/ft³ for lava and pumice",
    sure: "practice",
  },
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
