import { figure, type OutsideCheck } from "../../outside";

const NAVY = "Navy and Army practice, hours = quantity × rate, seen; worked by hand";
const TRAUTWINE =
  "Trautwine, Civil Engineer's Pocket-Book, earthwork by wheelbarrow: 1/14 yd³ a trip, 1.25 min and a minute for each 100 ft of lead; from memory";
const ARMY_WEIGHT =
  "US Army TM 9-2320-366-10-1, Table 2-15, crushed stone 95 lb/ft³, seen; 300 lb ÷ 95 = 3.158 ft³ by hand";
const CENTENNIAL =
  "Centennial College library guide: markup is on cost, margin on price; 100, 125, 25 % and 20 %, seen";
const ELECTRICAL =
  "electrical trade newsletter no. 53 (2002): cost 100,000, profit 15 % of the price, seen; exact by hand";
const FLOORING = "wood flooring trade magazine: cost 1,000, markup 30 %, price 1,300, seen; margin 3/13 by hand";
const BY_HAND = "by hand: price = cost ÷ (1 − margin)";

const NO_LIMIT_LB = 1e6;

export const checks: readonly OutsideCheck[] = [
  figure(NAVY, (BED) => BED.BARROW_TRIPS(13.5, 0.5, 6, NO_LIMIT_LB), 61),
  figure(ARMY_WEIGHT, (BED) => BED.BARROW_TRIPS(13.5, (95 * 27) / 2000), Math.ceil((13.5 * 27) / 3.158)),
  figure(TRAUTWINE, (BED) => BED.BARROW_TRIPS(1, 0.5, 27 / 14, NO_LIMIT_LB), 14),
  figure(NAVY, (BED) => BED.HAUL_HOURS(61, 150, 2, 0.5, 200), 4.0667, 5e-5),
  figure(NAVY, (BED) => BED.HAUL_HOURS(61, "50 yd"), 4.0667, 5e-5),
  // 540 minutes worked of 600: 14.03 yd³ a day, 0.713 man-hours a yard.
  figure(TRAUTWINE, (BED) => (BED.HAUL_HOURS(14, 150, 1.25, 0, 200) * 600) / 540, 0.713, 5e-4),

  figure(CENTENNIAL, (BED) => BED.PRICE_MARKUP(100, "25%"), 125),
  figure(CENTENNIAL, (BED) => BED.PRICE_MARGIN(100, "20%"), 125),
  figure(CENTENNIAL, (BED) => BED.MARKUP_FOR_MARGIN(0.2), 0.25),
  figure(ELECTRICAL, (BED) => BED.MARKUP_FOR_MARGIN(0.15), 0.1765, 5e-5),
  figure(ELECTRICAL, (BED) => BED.PRICE_MARGIN(100_000, 0.15), 117_647.06, 0.005),
  figure(FLOORING, (BED) => BED.PRICE_MARKUP(1000, 0.3), 1300),
  figure(FLOORING, (BED) => BED.MARKUP_FOR_MARGIN(3 / 13), 0.3),
  figure(BY_HAND, (BED) => BED.MARKUP_FOR_MARGIN(0.35), 0.53846154, 5e-9),
  figure(BY_HAND, (BED) => BED.PRICE_MARGIN(4000, 0.35), 6153.85, 0.005),
  figure("by hand: 4,000 × 1.35, which is no margin of 35 %", (BED) => BED.PRICE_MARKUP(4000, 0.35), 5400),
];
