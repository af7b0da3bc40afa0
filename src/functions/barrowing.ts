import { barrowTrips, haulHours } from "../quantities/hauling";
import { cellError, sound } from "./cellError";
import { feet, positive, positiveOrZero } from "./read";
import { stoneWeight } from "./readNamed";

const USUAL_BARROW_CUBIC_FT = 6;
const USUAL_BARROW_POUNDS = 300;
const USUAL_LOAD_MINUTES = 2;
const USUAL_DUMP_MINUTES = 0.5;
const USUAL_WALK_FT_PER_MINUTE = 200;

/**
 * Wheelbarrow trips: what the tray holds or what a person can push, whichever is less.
 * @customfunction BARROW_TRIPS
 * @param yards Loose cubic yards to carry. 0 yards is 0 trips.
 * @param stone Short tons a loose cubic yard, such as 1.35, or a kind of stone, such as "river rock".
 * @param barrow_cubic_ft Cubic feet that the tray holds. Left out: 6.
 * @param barrow_lb Pounds loaded at most. Left out: 300.
 * @returns Whole trips.
 * @example =BED.BARROW_TRIPS(1, 1.35) gives 9
 * @source Plain arithmetic; a barrow of 6 cubic feet loaded with 300 lb at most: common practice.
 * @see BED.HAUL_HOURS, BED.STONE_YARDS, BED.SPOIL_YARDS
 */
export function BARROW_TRIPS(yards: unknown, stone: unknown, barrow_cubic_ft?: unknown, barrow_lb?: unknown): number {
  try {
    return sound(
      barrowTrips(
        positiveOrZero(yards, "yards"),
        stoneWeight(stone, "stone"),
        positive(barrow_cubic_ft, "barrow_cubic_ft", USUAL_BARROW_CUBIC_FT),
        positive(barrow_lb, "barrow_lb", USUAL_BARROW_POUNDS),
      ),
    );
  } catch (reason) {
    throw cellError(reason);
  }
}

/**
 * Person-hours to barrow: loading, the way there and back, and dumping.
 * @customfunction HAUL_HOURS
 * @param trips Trips, as from BED.BARROW_TRIPS.
 * @param distance_ft Distance one way: feet, or text such as 50 yd.
 * @param load_min Minutes to load one barrow. Left out: 2.
 * @param dump_min Minutes to dump one barrow. Left out: 0.5.
 * @param walk_ft_min Walking pace, feet a minute. Left out: 200.
 * @returns Person-hours.
 * @example =BED.HAUL_HOURS(61, 150) gives 4.0667
 * @source Plain arithmetic; 2 and 0.5 minutes and 200 feet a minute: common practice. Time your own crew.
 * @see BED.BARROW_TRIPS
 */
export function HAUL_HOURS(
  trips: unknown,
  distance_ft: unknown,
  load_min?: unknown,
  dump_min?: unknown,
  walk_ft_min?: unknown,
): number {
  try {
    return sound(
      haulHours(
        positiveOrZero(trips, "trips"),
        feet(distance_ft, "distance_ft"),
        positiveOrZero(load_min, "load_min", USUAL_LOAD_MINUTES),
        positiveOrZero(dump_min, "dump_min", USUAL_DUMP_MINUTES),
        positive(walk_ft_min, "walk_ft_min", USUAL_WALK_FT_PER_MINUTE),
      ),
    );
  } catch (reason) {
    throw cellError(reason);
  }
}
