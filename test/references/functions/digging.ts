import { WORKDAY } from "@formulajs/formulajs";
import fc from "fast-check";
import { expect } from "vitest";
import { iso, serial } from "../../dates";
import { figure, type OutsideCheck } from "../../outside";

const TABLE =
  "US Army FM 5-434 Table 1-1 and NAVEDTRA 14080 Table 4-1: from memory; the sand row read where others quote it";
const THIRTY = "earthwork text: 10 yd³ in the ground are 13 yd³ dug, seen";
const HAULED = "earthwork text: 3,400 lb/yd³ in the bank, 2,700 loose, 126 yd³ hauled for 100, seen";
const LOAM = "by hand: 400 ft² × 3 in ÷ 324; × 1.25 for loam";
const TRENCH = "by hand: length × width × depth ÷ 27, beside a yard that was scraped";
const ARTICLE = "by hand: 0.0216049 yd³ a foot for a base of 14 × 6 in; the 1-1/4 yd³ printed for 60 ft is short";
const PAYLOAD = "GVWR rule, maximum loaded weight less empty weight, seen; (7,000 − 1,900) ÷ 2,000 tons, by hand";
/** 5 U.S.C. 6103 (seen): a holiday on a Saturday, as July 4, 2026, is kept on the Friday before. */
const FEDERAL = "by hand: full working days after the day of notice, federal holidays of 5 U.S.C. 6103";
const HOLIDAYS = ["2026-05-25", "2026-07-03", "2026-09-07", "2026-11-11", "2026-11-26", "2026-12-25"];

/** Bank to loose, loose to compacted, and bank to compacted, as the table has them. */
const SWELL = [
  { soil: "sand", loose: 1.11, packing: 0.86, compacted: 0.95 },
  { soil: "loam", loose: 1.25, packing: 0.72, compacted: 0.9 },
  { soil: "clay", loose: 1.43, packing: 0.63, compacted: 0.9 },
  { soil: "blasted rock", loose: 1.5, packing: 0.87, compacted: 1.3 },
] as const;

const digOn = (notice: string, days: number, first: string): OutsideCheck => ({
  what: `notice on ${notice} and ${days} working days: dig on ${first}`,
  source: FEDERAL,
  compare: (BED) => {
    const holidays = [...HOLIDAYS.map((day) => [serial(day)]), [""], [null]];
    expect(iso(BED.DIG_DATE(serial(notice), days, holidays))).toBe(first);
    expect(iso(BED.DIG_DATE(notice, days, [HOLIDAYS]))).toBe(first);
  },
});

export const checks: readonly OutsideCheck[] = [
  ...SWELL.flatMap(({ soil, loose, packing, compacted }): OutsideCheck[] => [
    {
      ...figure(TABLE, (BED) => BED.SPOIL_YARDS(100, soil), 100 * loose),
      what: `100 yd³ of ${soil} swell to ${100 * loose}`,
    },
    {
      ...figure(TABLE, (BED) => (BED.SPOIL_YARDS(100, soil) / 100) * packing, compacted, 0.006),
      what: `and packed by ${packing} come to the ${compacted} of the same table`,
    },
  ]),
  figure(THIRTY, (BED) => BED.SPOIL_YARDS(10, "30%"), 13),
  figure(HAULED, (BED) => BED.SPOIL_YARDS(100, 3400 / 2700 - 1), 126, 0.5),
  figure(LOAM, (BED) => BED.DIG_YARDS(400, 3), 3.7037, 5e-5),
  figure(LOAM, (BED) => BED.SPOIL_YARDS(BED.DIG_YARDS(400, 3)), 4.6296, 5e-5),
  figure(TRENCH, (BED) => BED.DIG_YARDS(324, 1, 50, 8, 1) - 1, 0.10288, 5e-6),
  figure(TRENCH, (BED) => BED.DIG_YARDS(324, 1, 60, 16, 4) - 1, 0.98765, 5e-6),
  figure(TRENCH, (BED) => BED.DIG_YARDS(324, 1, 100, 12, 4) - 1, 1.23457, 5e-6),
  figure(ARTICLE, (BED) => BED.DIG_YARDS(324, 1, 60, 14, 6) - 1, 1.2963, 5e-5),
  figure(PAYLOAD, (BED) => BED.LOADS(6.0185 / 1.3, 10, 1.3, (7000 - 1900) / 2000), 3),
  figure("by hand: 10.1 yd³ in trucks of 5, weight unknown", (BED) => BED.LOADS(10.1, 5), 3),

  digOn("2026-03-02", 2, "2026-03-05"),
  digOn("2026-03-06", 2, "2026-03-11"),
  digOn("2026-07-02", 2, "2026-07-08"),
  digOn("2026-05-21", 2, "2026-05-27"),
  digOn("2026-05-21", 3, "2026-05-28"),
  digOn("2026-07-01", 3, "2026-07-08"),
  digOn("2026-09-03", 2, "2026-09-09"),
  // The tenth business day after the notice follows nine full ones: the last day to begin where a state allows ten.
  digOn("2026-03-02", 9, "2026-03-16"),
  digOn("2026-11-23", 9, "2026-12-08"),
  {
    what: "a time of day in the notice changes nothing",
    source: FEDERAL,
    compare: (BED) => expect(iso(BED.DIG_DATE(serial("2026-03-02") + 0.99, 2))).toBe("2026-03-05"),
  },
  {
    what: "any day of notice, number of days, and holidays, with one day more",
    source: "WORKDAY of @formulajs/formulajs",
    compare: (BED) => {
      const date = fc.integer({ min: serial("2000-01-01"), max: serial("2060-12-31") });
      const afterwards = fc.array(fc.integer({ min: 0, max: 40 }), { maxLength: 8 });
      fc.assert(
        fc.property(date, fc.integer({ min: 1, max: 20 }), afterwards, (notice, days, offsets) => {
          const holidays = offsets.map((offset) => notice + offset);
          const asDate = (day: number) => new Date(`${iso(day)}T00:00:00`);
          const expected = WORKDAY(asDate(notice), days + 1, holidays.map(asDate));
          expect(expected).toBeInstanceOf(Date);
          const [y, m, d] = [expected.getFullYear(), expected.getMonth(), expected.getDate()];
          const given = holidays.map((day) => [day]);
          expect(BED.DIG_DATE(notice, days, given)).toBe(serial(new Date(Date.UTC(y, m, d)).toISOString()));
        }),
      );
    },
  },
];
