import { must } from "./must";
import { plainName } from "./nearestName";
import { SOILS, type Soil } from "./soil";
import { STONES, type Stone, tonsFromPoundsPerFoot, tonsFromPoundsPerYard } from "./stone";
import type { Caution, TableRow } from "./tables";

/** A kind of stone or another covering, with where its weight comes from. */
export interface SourcedStone extends Stone, TableRow {
  /** The lowest and the highest figure that is still ordinary for it, in tons a loose cubic yard. */
  readonly low: number;
  readonly high: number;
  /** How deep it usually is; undefined where that depends on the size of the stone. */
  readonly usualDepth?: UsualDepth;
  readonly cautions: readonly Caution[];
}

/** A usual depth in inches. */
export interface UsualDepth {
  readonly leastIn: number;
  readonly mostIn: number;
  readonly source: string;
}

/** What to mind about coverings. Each text is short: those of one covering are one line of the estimate. */
export const coveringCautions = {
  silica: {
    about: "Silica",
    text: "Dumped dry, it raises silica dust: wet it down first.",
    source:
      "29 CFR 1926.1153, read in the source: stone, sand, concrete, and brick hold silica. Wetting: common practice",
  },
  fire: {
    about: "Fire",
    text: "Can burn: keep it 5 ft from the house.",
    source:
      "University of Nevada Extension, Choose Mulches Carefully, read in the source: no wood, bark, or rubber within 3 to 5 ft",
  },
  floating: {
    about: "Floating",
    text: "Floats away in hard rain.",
    source: "Common practice; dry, its pieces are lighter than water",
  },
  siding: {
    about: "Siding",
    text: "Damp and insects: keep it off siding.",
    source: "Common practice; go by local code and the siding's maker",
  },
  sharp: {
    about: "Sharp edges",
    text: "Can have sharp edges: wear cut-resistant gloves.",
    source: "Common practice; FHWA-RD-97-148 asks for crushing that leaves no sharp edges (from memory)",
  },
} as const satisfies Record<string, Caution>;

const ARMY = "US Army TM 9-2320-366-10-1, Table 2-15, Material Weight by Volume";
const CALRECYCLE = "CalRecycle, Weights and Volumes for Project Estimates";
const ASCE = "ASCE 7 commentary, minimum densities for design loads from materials";

/** Any ordinary stone, loose: 75 to 125 lb a cubic foot (common practice). */
const ORDINARY = { low: tonsFromPoundsPerFoot(75), high: tonsFromPoundsPerFoot(125) };
/** Lava and pumice, loose: 30 to 60 lb a cubic foot (common practice). */
const LIGHT = { low: tonsFromPoundsPerFoot(30), high: tonsFromPoundsPerFoot(60) };

/** Wood and bark, loose: 300 lb a cubic yard dry to 1,000 wet (CalRecycle; common practice). */
const WOODY = { low: tonsFromPoundsPerYard(300), high: tonsFromPoundsPerYard(1000) };

const SPALDING = "Spalding, Masonry Structures (1921)";
const SCRAP_TIRES = "FHWA-RD-97-148, Scrap Tires, Material Description";
const OREGON = "Oregon DEQ, conversion factors for the Materials Recovery Survey";

const { silica, fire, floating, siding, sharp } = coveringCautions;
const OF_WOOD = [fire, floating, siding];

const STONE_DEPTH: UsualDepth = {
  leastIn: 2,
  mostIn: 3,
  source: "Common practice; NRCS CPS 484 asks for 2 in of gravel or more (from memory)",
};
const CHIPS_DEPTH: UsualDepth = {
  leastIn: 3,
  mostIn: 4,
  source: "Iowa State Extension, How deep should the mulch layer be, read in the source: 2 to 3 in on heavy soil",
};
const MULCH_DEPTH: UsualDepth = {
  leastIn: 2,
  mostIn: 3,
  source: "UF/IFAS Miami-Dade, Florida Yards Workbook, Maximize Mulch, read in the source",
};
const RUBBER_DEPTH: UsualDepth = { leastIn: 2, mostIn: 3, source: "Common practice" };

const ROUNDED = `Common practice; lies between gravel in ${CALRECYCLE} (2,600 lb/yd³) and in ${ARMY} (110 lb/ft³)`;

interface RowSource extends TableRowSource {
  readonly low: number;
  readonly high: number;
  /** As of stone where left out; null where it depends on the size. */
  readonly usualDepth?: UsualDepth | null;
  readonly cautions?: readonly Caution[];
}
type TableRowSource = Omit<TableRow, "name">;

const stoneFrom: Readonly<Record<string, RowSource>> = {
  "crushed stone": {
    low: tonsFromPoundsPerFoot(95),
    high: tonsFromPoundsPerYard(3120),
    source: `${CALRECYCLE}: gravel or crushed stone, loose and dry, 2,600 lb/yd³; wet 3,120`,
    sure: "seen",
    cautions: [silica],
  },
  gravel: {
    low: tonsFromPoundsPerYard(2600),
    high: tonsFromPoundsPerYard(3120),
    source: `${CALRECYCLE}: gravel or crushed stone, loose and dry, 2,600 lb/yd³; wet 3,120`,
    sure: "seen",
  },
  "crushed limestone": { ...ORDINARY, source: `${ARMY}: limestone, crushed, 100 lb/ft³`, sure: "seen" },
  cobble: {
    ...ORDINARY,
    source: `${CALRECYCLE}: stone graded to 8 in, loose, 2,700 lb/yd³`,
    sure: "seen",
    usualDepth: null,
  },
  sand: {
    ...ORDINARY,
    source: `${CALRECYCLE}: sand, loose and dry, 2,400 lb/yd³`,
    sure: "seen",
    usualDepth: null,
    cautions: [silica],
  },
  "decomposed granite": {
    ...ORDINARY,
    source: `Common practice; taken as gravel and sand, dry and loose, in ${ARMY} (95 lb/ft³)`,
    sure: "practice",
    cautions: [silica],
  },
  "river rock": { ...ORDINARY, source: ROUNDED, sure: "practice" },
  "pea gravel": { ...ORDINARY, source: ROUNDED, sure: "practice" },
  pebbles: { ...ORDINARY, source: ROUNDED, sure: "practice" },
  "crushed granite": {
    ...ORDINARY,
    source: `${ASCE}: quarried stone, piled; basalt, granite, gneiss 96 lb/ft³ (from memory)`,
    sure: "memory",
    cautions: [silica],
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
    cautions: [silica],
  },
  "crushed sandstone": {
    ...ORDINARY,
    source: `${ASCE}: quarried stone, piled; sandstone 82 lb/ft³ (from memory)`,
    sure: "memory",
    cautions: [silica],
  },
  "crushed slate": {
    ...ORDINARY,
    source: `Common practice; taken as shale, 92 lb/ft³, in ${ASCE} (from memory)`,
    sure: "practice",
    cautions: [silica],
  },
  "lava rock": {
    ...LIGHT,
    source: "Common practice; 48 to 56 lb/ft³ for scoria, no publication found",
    sure: "practice",
    cautions: [floating],
  },
  pumice: {
    ...LIGHT,
    source: "Common practice; 30 to 60 lb/ft³ for lava and pumice",
    sure: "practice",
    cautions: [floating],
  },
  "crushed concrete": {
    ...ORDINARY,
    source: `${CALRECYCLE}: asphalt or concrete debris, loose, 2,400 lb/yd³`,
    sure: "seen",
    cautions: [silica],
  },
  "crushed brick": {
    low: tonsFromPoundsPerFoot(50),
    high: tonsFromPoundsPerFoot(80),
    source: `Common practice; solid clay brick of 120 lb/ft³ with 45 % voids, as of sand in ${SPALDING}`,
    sure: "practice",
    cautions: [silica],
  },
  "crushed glass": {
    low: tonsFromPoundsPerYard(1800),
    high: tonsFromPoundsPerYard(2700),
    source:
      "EPA530-R-97-011, Measuring Recycling, Appendix B: crushed glass, 1,800 to 2,700 lb/yd³; its middle (from memory; read where others quote it)",
    sure: "memory",
    cautions: [sharp],
  },
  "wood chips": {
    ...WOODY,
    source: `${CALRECYCLE}: wood chips, shredded and dry, 300 lb/yd³`,
    sure: "seen",
    usualDepth: CHIPS_DEPTH,
    cautions: OF_WOOD,
  },
  "green wood chips": {
    ...WOODY,
    source: `${OREGON} (2005): wood chips, green, 473 lb/yd³`,
    sure: "seen",
    usualDepth: CHIPS_DEPTH,
    cautions: OF_WOOD,
  },
  "shredded bark": {
    ...WOODY,
    source: "Common practice; 400 to 800 lb/yd³, wet 1,000; no publication found",
    sure: "practice",
    usualDepth: CHIPS_DEPTH,
    cautions: OF_WOOD,
  },
  "hardwood mulch": {
    ...WOODY,
    source: "Common practice; 400 to 800 lb/yd³, wet 1,000; no publication found",
    sure: "practice",
    usualDepth: MULCH_DEPTH,
    cautions: OF_WOOD,
  },
  "bark nuggets": {
    ...WOODY,
    source: `Common practice; lies between green wood chips in ${OREGON} (473 lb/yd³) and shredded bark`,
    sure: "practice",
    usualDepth: MULCH_DEPTH,
    cautions: OF_WOOD,
  },
  "shredded rubber": {
    low: tonsFromPoundsPerFoot(24),
    high: tonsFromPoundsPerFoot(33),
    source: `${SCRAP_TIRES}: tire shreds, loose, 24 to 33 lb/ft³; their middle (from memory)`,
    sure: "memory",
    usualDepth: RUBBER_DEPTH,
    cautions: [fire],
  },
  "rubber nuggets": {
    low: tonsFromPoundsPerFoot(20),
    high: tonsFromPoundsPerFoot(30),
    source: `${SCRAP_TIRES}: tire chips, loose, 20 to 30 lb/ft³; their middle (from memory)`,
    sure: "memory",
    usualDepth: RUBBER_DEPTH,
    cautions: [fire],
  },
};

/** The list of stone and other coverings with a source a row. */
export const SOURCED_STONES: readonly SourcedStone[] = STONES.map((stone) => {
  const { usualDepth = STONE_DEPTH, cautions = [], ...from } = must(stoneFrom[stone.name]);
  return { ...stone, ...from, cautions, ...(usualDepth && { usualDepth }) };
});

/** The row of a covering, however its name is written; undefined for a weight or a name of the office's own. */
export function coveringNamed(name: string): SourcedStone | undefined {
  const plain = plainName(name);
  return SOURCED_STONES.find((one) => one.name === plain);
}

/** A usual depth in words. @example depthWords({ leastIn: 2, mostIn: 3, source: "" }) // "2 to 3 in" */
export const depthWords = ({ leastIn, mostIn }: UsualDepth): string => `${leastIn} to ${mostIn} in`;

/** What to mind about some coverings together, each caution once. */
export function cautionsOf(names: readonly string[]): readonly Caution[] {
  return [...new Set(names.flatMap((name) => coveringNamed(name)?.cautions ?? []))];
}

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
