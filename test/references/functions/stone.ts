import { expect } from "vitest";
import { STONES } from "../../../src/quantities/stone";
import { figure, type OutsideCheck } from "../../outside";

const COVERAGE = "by hand: 27 ft³ a yard ÷ d/12 ft is 324/d ft²; 324 seen in print";
const EXACT = "by hand, in exact fractions: area × depth ÷ 324 × pounds a yard ÷ 2,000";
const METRIC = "by hand, from 1 yd = 0.9144 m and 1 lb = 0.45359237 kg exactly: 50 m² × 75 mm at 1,600 kg/m³";
const FLORIDA = "UF/IFAS Miami-Dade, Florida Yards Workbook, Maximize Mulch: seen";
const BUCKS = "Bucks County (PA) Consumer Protection, Weights and Measures, 2024: seen";
const OHIO = "Hamilton County (OH) Auditor, Weights and Measures: a 9 × 16 × 36 in box is 3 ft³, seen";
const BAGS_PER_YARD = "by hand: 27 ft³ ÷ the bag, rounded up";
const BAGS = "by hand: 500 ft² × 3 in are 125 ft³";
const BAG_WEIGHT = "by hand: half a cubic foot is 1/54 yd³";
const ARMY = "US Army TM 9-2320-366-10-1, Table 2-15, Material Weight by Volume: seen";
const CALRECYCLE = "CalRecycle, Weights and Volumes for Project Estimates: seen";
const ASCE = "ASCE 7 commentary, minimum densities for design loads from materials: from memory, so within 5 %";
const LAVA =
  "common practice: 48 to 56 lb/ft³ for scoria, under the 70 lb/ft³ for lightweight aggregate in a dictionary";
const SPALDING = "Spalding, Masonry Structures (1921): screened sand, 2,400 to 2,500 lb/yd³, seen";
const RULE_OF_THUMB = "by hand: a short ton at 2,600 lb/yd³ covers 2,000 ÷ 2,600 × 324/d ft²";

const SQUARE_FEET_PER_SQUARE_METER = 1 / 0.09290304;
const SHORT_TONS_PER_YARD = 0.842777467777952;
const SHORT_TONS_PER_TONNE = 1.102311310924388;
const area = 50 * SQUARE_FEET_PER_SQUARE_METER;
/** Square feet that hold a cubic yard at 1 in. */
const YARD = 324;

const pounds = (source: string, name: string, perYard: number, within?: number): OutsideCheck => ({
  ...figure(source, (BED) => BED.STONE_DENSITY(name) * 2000, perYard, within),
  what: `${name} weighs ${perYard} lb/yd³`,
});

export const checks: readonly OutsideCheck[] = [
  ...[1, 2, 3, 4].flatMap((depth): OutsideCheck[] => [
    { ...figure(COVERAGE, (BED) => BED.STONE_YARDS(YARD / depth, depth), 1), what: `a yard covers 324/${depth} ft²` },
    {
      ...figure(COVERAGE, (BED) => BED.STONE_COVERS(1.35, depth, 1.35), YARD / depth),
      what: `and so do 1.35 tons of which a yard weighs as much, at ${depth} in`,
    },
  ]),
  figure(FLORIDA, (BED) => BED.STONE_YARDS(108, 3), 1),
  figure(`${FLORIDA}: a small pickup's 1.5 yd³ cover 162 ft²`, (BED) => BED.STONE_YARDS(162, 3), 1.5),
  figure(`${FLORIDA}: a full-size pickup's 2.5 yd³ cover 270 ft²`, (BED) => BED.STONE_YARDS(270, 3), 2.5),
  figure(`${FLORIDA}: a bag of 2 ft³ covers 8 ft²`, (BED) => BED.STONE_BAGS(8, 3, 2), 1),
  figure(BUCKS, (BED) => BED.STONE_YARDS(162, 2), 1),
  figure(OHIO, (BED) => 27 * BED.STONE_YARDS((16 * 36) / 144, 9), 3),
  figure(RULE_OF_THUMB, (BED) => BED.STONE_COVERS(1, 2, 2600 / 2000), 124.6, 0.05),
  figure(RULE_OF_THUMB, (BED) => BED.STONE_COVERS(1, 3, 2600 / 2000), 83.1, 0.05),
  figure(`${RULE_OF_THUMB}; 100 ft² only at 2.492 in`, (BED) => BED.STONE_COVERS(1, 2.492, 2600 / 2000), 100, 0.02),

  figure(EXACT, (BED) => BED.STONE_TONS(108, 3, 2700 / 2000), 1.35),
  figure(EXACT, (BED) => BED.STONE_YARDS(500, 3), 4.62963, 5e-6),
  figure(EXACT, (BED) => BED.STONE_TONS(500, 3, "gravel"), 6.018519, 5e-7),
  figure(`${EXACT}; wet, 20 % more`, (BED) => BED.STONE_TONS(500, 3, (2600 * 1.2) / 2000), 7.222222, 5e-7),
  figure(EXACT, (BED) => BED.STONE_TONS(1000, 2, "crushed limestone"), 8.333333, 5e-7),
  figure(METRIC, (BED) => BED.STONE_YARDS(area, "75 mm") * 0.764554857984, 3.75),
  figure(METRIC, (BED) => BED.STONE_TONS(area, "75 mm", 1.6 * SHORT_TONS_PER_YARD) / SHORT_TONS_PER_TONNE, 6),
  figure("by hand: 1 yd³ and 8 % of it", (BED) => BED.STONE_YARDS(108, 3, 0.08), 1.08),

  figure(BAGS_PER_YARD, (BED) => BED.STONE_BAGS(YARD, 1, 2), 14),
  figure(BAGS_PER_YARD, (BED) => BED.STONE_BAGS(YARD, 1, 3), 9),
  figure(BAGS_PER_YARD, (BED) => BED.STONE_BAGS(YARD, 1, 1.5), 18),
  figure(BAGS_PER_YARD, (BED) => BED.STONE_BAGS(YARD, 1, 1), 27),
  figure(BAGS_PER_YARD, (BED) => BED.STONE_BAGS(YARD, 1, 0.5), 54),
  figure(BAGS, (BED) => BED.STONE_BAGS(500, 3, 2), 63),
  figure(BAGS, (BED) => BED.STONE_BAGS(500, 3, 3), 42),
  figure(BAGS, (BED) => BED.STONE_BAGS(500, 3, 0.5), 250),
  figure("by hand: 125 ft³ are 4.63 yd³", (BED) => BED.STONE_BULK_BAGS(500, 3), 5),
  figure("by hand: 125 ft³ and a tenth more are 5.09 yd³", (BED) => BED.STONE_BULK_BAGS(500, 3, 1, 0.1), 6),
  figure("by hand: 4.63 yd³ in bags of half a yard", (BED) => BED.STONE_BULK_BAGS(500, 3, 0.5), 10),
  figure("by hand: 324 ft² an inch deep fill a yard, and no second bag", (BED) => BED.STONE_BULK_BAGS(324, 1), 1),
  figure(BAG_WEIGHT, (BED) => 2000 * BED.STONE_TONS(6, 1, 2600 / 2000), 48.1, 0.05),
  figure(BAG_WEIGHT, (BED) => 2000 * BED.STONE_TONS(6, 1, 2850 / 2000), 52.8, 0.05),
  figure(BAG_WEIGHT, (BED) => 2000 * BED.STONE_TONS(6, 1, 2970 / 2000), 55, 0.05),

  pounds(ARMY, "crushed limestone", 2700),
  pounds(CALRECYCLE, "crushed stone", 2600),
  pounds(CALRECYCLE, "gravel", 2600),
  pounds(CALRECYCLE, "cobble", 2700),
  pounds(CALRECYCLE, "sand", 2400),
  pounds(SPALDING, "sand", 2450, 50),
  ...(
    [
      ["crushed granite", 96],
      ["crushed basalt", 96],
      ["crushed marble", 95],
      ["crushed quartz", 95],
      ["crushed sandstone", 82],
    ] as const
  ).map(([name, perFoot]) => pounds(ASCE, name, perFoot * 27, perFoot * 27 * 0.05)),
  pounds(`${CALRECYCLE}, asphalt or concrete debris, loose`, "crushed concrete", 2400),
  pounds("by hand: clay brick of 120 lb/ft³ with Spalding's 45 % voids is 66 lb/ft³", "crushed brick", 66 * 27),
  pounds(
    "EPA530-R-97-011, Appendix B: crushed glass, from memory; quoted as 1,800 to 2,700",
    "crushed glass",
    2250,
    450,
  ),
  pounds("by hand: half of 1,800 and 2,700 lb/yd³", "crushed glass", 2250),
  pounds(`${CALRECYCLE}, wood chips, shredded and dry`, "wood chips", 300),
  pounds("Oregon DEQ, conversion factors for the Materials Recovery Survey: seen", "green wood chips", 473),
  pounds("common practice: 400 to 800 lb/yd³", "shredded bark", 600, 200),
  pounds("by hand: half of 400 and 800 lb/yd³", "shredded bark", 600),
  pounds("common practice: 400 to 800 lb/yd³", "hardwood mulch", 600, 200),
  pounds("by hand: half of 400 and 800 lb/yd³", "hardwood mulch", 600),
  pounds("common practice: between green wood chips of 473 and bark of 600 lb/yd³", "bark nuggets", 500),
  pounds("FHWA-RD-97-148: tire shreds of 24 to 33 lb/ft³, from memory; half of them", "shredded rubber", 28.5 * 27),
  pounds("FHWA-RD-97-148: tire chips of 20 to 30 lb/ft³, from memory; half of them", "rubber nuggets", 25 * 27),
  pounds("a seller's pallet of 75 ft³ with 2,000 lb of rubber nuggets: seen", "rubber nuggets", 720, 50),
  // What weighs no figure of its own in print: the ranges below, and these rows by hand.
  ...(
    [
      ["decomposed granite", 95],
      ["river rock", 100],
      ["pea gravel", 100],
      ["pebbles", 100],
      ["crushed slate", 92],
      ["pumice", 40],
    ] as const
  ).map(([name, perFoot]) => pounds(`common practice: ${perFoot} lb/ft³`, name, perFoot * 27)),
  ...STONES.map(({ name }): OutsideCheck => {
    const [least, most] =
      name === "lava rock" || name === "pumice"
        ? [30, 60]
        : /wood|bark/.test(name)
          ? [300 / 27, 1000 / 27]
          : name.includes("rubber")
            ? [20, 33]
            : name.includes("brick") || name.includes("glass")
              ? [50, 100]
              : [75, 125];
    return {
      what: `${name} weighs ${least} to ${most} lb/ft³`,
      source: "common practice: what ordinary stone weighs, and what lava, pumice, wood, rubber, brick, and glass do",
      compare: (BED) => {
        const perFoot = (BED.STONE_DENSITY(name) * 2000) / 27;
        expect(perFoot).toBeGreaterThanOrEqual(least!);
        expect(perFoot).toBeLessThanOrEqual(most!);
      },
    };
  }),
  pounds(LAVA, "lava rock", 52 * 27, 4 * 27),
  // A heaped load of 7.78 yd³ in the same table.
  figure(ARMY, (BED) => 7.78 * 2000 * BED.STONE_DENSITY("crushed limestone"), 21_006, 1),
  figure(ARMY, (BED) => 2000 * BED.STONE_TONS(7.78 * YARD, 1, (110 * 27) / 2000), 23_107, 1),
  figure(ARMY, (BED) => 2000 * BED.STONE_TONS(7.78 * YARD, 1, (75 * 27) / 2000), 15_755, 1),

  figure(
    "common practice: half an inch below a border of 4 in set 1.5 in deep",
    (BED) => BED.STONE_DEPTH("4 in", `1 1/2"`),
    2,
  ),
];
