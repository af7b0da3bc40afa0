import { shown } from "../numbers";
import { roundedUp, upTo, type Working } from "./figures";

const SQUARE_FOOT_INCHES_PER_YARD = 324;
const CUBIC_FEET_PER_YARD = 27;
const POUNDS_PER_TON = 2000;
const MINUTES_PER_HOUR = 60;

export const digging: Readonly<Record<string, Working>> = {
  DIG_YARDS(figures) {
    const [area, depth, length] = [figures.number("area"), figures.number("depth_in"), figures.number("trench_length")];
    const [wide, deep] = [figures.number("trench_width_in"), figures.number("trench_depth_in")];
    const scrape = (area * depth) / SQUARE_FOOT_INCHES_PER_YARD;
    const trench = (length * (wide / 12) * (deep / 12)) / CUBIC_FEET_PER_YARD;
    const lines = [`scrape: ${shown(area)} × ${shown(depth)} ÷ 324 = ${shown(scrape)} cu yd`];
    if (trench > 0) {
      lines.push(
        `trench: ${shown(length)} × ${shown(wide)}/12 × ${shown(deep)}/12 ÷ 27 = ${shown(trench)} cu yd`,
        `${shown(scrape)} + ${shown(trench)} = ${shown(scrape + trench)} cu yd in the ground`,
      );
    }
    return { lines, answer: scrape + trench };
  },

  SPOIL_YARDS(figures) {
    const [bank, swell] = [figures.number("bank_yards"), figures.number("soil")];
    const answer = bank * (1 + swell);
    return { lines: [`${shown(bank)} × (1 + ${shown(swell)}) = ${shown(answer)} cu yd loose`], answer };
  },

  LOADS(figures) {
    const [yards, truck] = [figures.number("yards"), figures.number("truck_yards")];
    const [weight, payload] = [figures.number("tons_per_yard"), figures.number("payload_tons")];
    const volume = roundedUp(`by volume: ${shown(yards)} ÷ ${shown(truck)}`, yards / truck);
    if (weight === 0 || payload === 0)
      return { lines: [volume.line, "by weight: not looked at"], answer: volume.whole };
    const tons = yards * weight;
    const heavy = roundedUp(`by weight: ${shown(yards)} × ${shown(weight)} ÷ ${shown(payload)}`, tons / payload);
    const answer = Math.max(volume.whole, heavy.whole);
    return { lines: [volume.line, heavy.line, `the larger: ${shown(answer)} loads`], answer };
  },

  BARROW_TRIPS(figures) {
    const [yards, weight] = [figures.number("yards"), figures.number("stone")];
    const [tray, limit] = [figures.number("barrow_cubic_ft"), figures.number("barrow_lb")];
    const byTray = (yards * CUBIC_FEET_PER_YARD) / tray;
    const byWeight = (yards * weight * POUNDS_PER_TON) / limit;
    const answer = upTo(Math.max(byTray, byWeight));
    return {
      lines: [
        `by the tray: ${shown(yards)} × 27 ÷ ${shown(tray)} = ${shown(byTray)}`,
        `by weight: ${shown(yards)} × ${shown(weight)} × 2,000 ÷ ${shown(limit)} = ${shown(byWeight)}`,
        `the larger, whole: ${shown(answer)} trips`,
      ],
      answer,
    };
  },

  HAUL_HOURS(figures) {
    const [trips, distance, walk] = [
      figures.number("trips"),
      figures.number("distance_ft"),
      figures.number("walk_ft_min"),
    ];
    const [load, dump] = [figures.number("load_min"), figures.number("dump_min")];
    const minutes = load + dump + (2 * distance) / walk;
    const answer = (trips * minutes) / MINUTES_PER_HOUR;
    return {
      lines: [
        `a trip: ${shown(load)} + ${shown(dump)} + 2 × ${shown(distance)} ÷ ${shown(walk)} = ${shown(minutes)} min`,
        `${shown(trips)} × ${shown(minutes)} ÷ 60 = ${shown(answer)} person-h`,
      ],
      answer,
    };
  },
};
