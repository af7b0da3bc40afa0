import { CUBIC_FEET_PER_CUBIC_YARD, POUNDS_PER_SHORT_TON } from "./units";
import { wholeUp } from "./whole";

const MINUTES_PER_HOUR = 60;

/**
 * Truck or trailer loads: the larger of the count by volume and, where both weights are given, by weight.
 *
 * @param yards loose cubic yards to carry, 0 or more.
 * @param truckYards what the box holds, in cubic yards, more than 0.
 * @param tonsPerYard weight of the load, 0 where it is not known.
 * @param payloadTons what may be loaded, in short tons, 0 where it is not known.
 * @returns whole loads, 0 or more.
 * @example loads(4.63, 3) // 2
 * @example loads(4.63, 5, 1.3, 2.55) // 3
 */
export function loads(yards: number, truckYards: number, tonsPerYard = 0, payloadTons = 0): number {
  const byVolume = wholeUp(yards / truckYards);
  if (payloadTons === 0) return byVolume;
  return Math.max(byVolume, wholeUp((yards * tonsPerYard) / payloadTons));
}

/**
 * Trips with a wheelbarrow, each with what the tray holds or what a person can push, whichever is less.
 *
 * @param yards loose cubic yards to carry, 0 or more.
 * @param tonsPerYard weight of the stone in short tons a loose cubic yard, more than 0.
 * @param barrowCubicFt what the tray holds, more than 0.
 * @param barrowPounds what is loaded at most, more than 0.
 * @returns whole trips, 0 or more.
 * @example barrowTrips(1, 1.35, 6, 300) // 9
 */
export function barrowTrips(yards: number, tonsPerYard: number, barrowCubicFt: number, barrowPounds: number): number {
  const byTray = (yards * CUBIC_FEET_PER_CUBIC_YARD) / barrowCubicFt;
  const byWeight = (yards * tonsPerYard * POUNDS_PER_SHORT_TON) / barrowPounds;
  return wholeUp(Math.max(byTray, byWeight));
}

/** What `BED.HAUL_HOURS` takes for a load, a dump, and a walk where nothing is said. */
export const HAUL = { loadMinutes: 2, dumpMinutes: 0.5, walkFtPerMinute: 200 };

/**
 * Time to barrow: loading, the way there and back, and dumping.
 *
 * @param trips 0 or more.
 * @param distanceFt one way, more than 0.
 * @param loadMinutes for one load, 0 or more; `dumpMinutes` likewise. Left out: as in {@link HAUL}.
 * @param walkFtPerMinute pace, more than 0. Left out: as in {@link HAUL}.
 * @returns person-hours, 0 or more: trips × (load + dump + 2·distance/walk)/60.
 * @example haulHours(61, 150, 2, 0.5, 200) // 4.0667
 */
export function haulHours(
  trips: number,
  distanceFt: number,
  loadMinutes = HAUL.loadMinutes,
  dumpMinutes = HAUL.dumpMinutes,
  walkFtPerMinute = HAUL.walkFtPerMinute,
): number {
  return (trips * (loadMinutes + dumpMinutes + (2 * distanceFt) / walkFtPerMinute)) / MINUTES_PER_HOUR;
}
