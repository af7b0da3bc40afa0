import { must } from "./must";
import { SOILS, type Soil } from "./soil";
import { STONES, type Stone, tonsFromPoundsPerFoot, tonsFromPoundsPerYard } from "./stone";
import type { TableRow } from "./tables";

/** A kind of stone with where its weight comes from. */
export interface SourcedStone extends Stone, TableRow {
  /** The lowest and the highest figure that is still ordinary for it, in tons a loose cubic yard. */
  readonly low: number;
  readonly high: number;
}

const ARMY = "US Army TM 9-2320-366-10-1, Table 2-15, Material Weight by Volume";
const CALRECYCLE = "CalRecycle, Weights and Volumes for Project Estimates";
const ASCE = "ASCE 7 commentary, minimum densities for design loads from materials";

/** Any ordinary stone, loose: 75 to 125 lb a cubic foot (common practice). */
const ORDINARY = { low: tonsFromPoundsPerFoot(75), high: tonsFromPoundsPerFoot(125) };
/** Lava and pumice, loose: 30 to 60 lb a cubic foot (common practice). */
const LIGHT = { low: tonsFromPoundsPerFoot(30), high: tonsFromPoundsPerFoot(60) };

const ROUNDED = `Common practice; lies between gravel in ${CALRECYCLE} (2,600 lb/yd³) and in ${ARMY} (110 lb/ft³)`;

const stoneFrom: Readonly<Record<string, Omit<SourcedStone, keyof Stone>>> = {
  "crushed stone": {
    low: tonsFromPoundsPerFoot(95),
    high: tonsFromPoundsPerYard(3120),
    source: `${CALRECYCLE}: gravel or crushed stone, loose and dry, 2,600 lb/yd³; wet 3,120`,
    sure: "seen",
  },
  gravel: {
    low: tonsFromPoundsPerYard(2600),
    high: tonsFromPoundsPerYard(3120),
    source: `${CALRECYCLE}: gravel or crushed stone, loose and dry, 2,600 lb/yd³; wet 3,120`,
    sure: "seen",
  },
  "crushed limestone": { ...ORDINARY, source: `${ARMY}: limestone, crushed, 100 lb/ft³`, sure: "seen" },
  cobble: { ...ORDINARY, source: `${CALRECYCLE}: stone graded to 8 in, loose, 2,700 lb/yd³`, sure: "seen" },
  sand: { ...ORDINARY, source: `${CALRECYCLE}: sand, loose and dry, 2,400 lb/yd³`, sure: "seen" },
  "decomposed granite": {
    ...ORDINARY,
    source: `Common practice; taken as gravel and sand, dry and loose, in ${ARMY} (95 lb/ft³)`,
    sure: "practice",
  },
  "river rock": { ...ORDINARY, source: ROUNDED, sure: "practice" },
  "pea gravel": { ...ORDINARY, source: ROUNDED, sure: "practice" },
  pebbles: { ...ORDINARY, source: ROUNDED, sure: "practice" },
  "crushed granite": {
    ...ORDINARY,
    source: `${ASCE}: quarried stone, piled; basalt, granite, gneiss 96 lb/ft³ (from memory)`,
    sure: "memory",
  },
  "crushed basalt": {
    ...ORDINARY,
    source: `${ASCE}: quarried stone, piled; basalt, granite, gneiss 96 lb/ft³ (from memory)`,
    sure: "memory",
  },
  "crushed marble": {
    ...ORDINARY,
    source: `${ASCE}: quarried stone, piled; limestone, marble, quartz 95 lb/ft³ (from memory)`,
    sure: "memory",
  },
  "crushed quartz": {
    ...ORDINARY,
    source: `${ASCE}: quarried stone, piled; limestone, marble, quartz 95 lb/ft³ (from memory)`,
    sure: "memory",
  },
  "crushed sandstone": {
    ...ORDINARY,
    source: `${ASCE}: quarried stone, piled; sandstone 82 lb/ft³ (from memory)`,
    sure: "memory",
  },
  "crushed slate": {
    ...ORDINARY,
    source: `Common practice; taken as shale, 92 lb/ft³, in ${ASCE} (from memory)`,
    sure: "practice",
  },
  "lava rock": {
    ...LIGHT,
    source: "Common practice; 48 to 56 lb/ft³ for scoria, no publication found",
    sure: "practice",
  },
  pumice: { ...LIGHT, source: "Common practice; 30 to 60 lb/ft³ for lava and pumice", sure: "practice" },
};

/** The list of stone with a source a row. */
export const SOURCED_STONES: readonly SourcedStone[] = STONES.map((stone) => ({
  ...stone,
  ...must(stoneFrom[stone.name]),
}));

const SWELL = "US Army FM 5-434 (2000), Table 1-1, and NAVEDTRA 14080, Table 4-1: bank to loose";
const soilFrom: Readonly<Record<string, string>> = {
  sand: `${SWELL} 1.11 (from memory; read where others quote it, not in the source)`,
  loam: `${SWELL} 1.25 (from memory)`,
  clay: `${SWELL} 1.43 (from memory)`,
  "blasted rock": `${SWELL} 1.50 (from memory)`,
};

/** The list of soils with a source a row. */
export const SOURCED_SOILS: readonly (Soil & TableRow)[] = SOILS.map((soil) => ({
  ...soil,
  source: must(soilFrom[soil.name]),
  sure: "memory",
}));
