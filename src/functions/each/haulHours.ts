import { HAUL, haulHours } from "../../quantities/hauling";
import { may, needs } from "../argument";
import { declare } from "../declare";
import { feet, positive, positiveOrZero } from "../read";
import { shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const HAUL_HOURS = worksheetFunction(
  haulHours,
  needs("trips", positiveOrZero),
  needs("distance_ft", feet),
  may("load_min", positiveOrZero, HAUL.loadMinutes),
  may("dump_min", positiveOrZero, HAUL.dumpMinutes),
  may("walk_ft_min", positive, HAUL.walkFtPerMinute),
);

export const haulHoursDeclared = /* @__PURE__ */ declare(HAUL_HOURS, {
  name: "HAUL_HOURS",
  purpose: "Move it by wheelbarrow",
  about: "Labor hours to wheelbarrow: load, walk there and back, and dump.",
  gives: "wheelbarrow time",
  returns: "Labor hours.",
  kind: "person-h",
  rule: "Each trip is loading, walking there and back, and dumping.",
  example: "=BED.HAUL_HOURS(61, 150) gives 4.0667",
  source: "Plain arithmetic; 2 min, 0.5 min, and 200 ft/min are common practice. Time your own crew.",
  related: ["BARROW_TRIPS"],
  arguments: {
    trips: { about: "Trips, from BED.BARROW_TRIPS.", kind: "count" },
    distance_ft: { about: "Distance one way: feet, or text like 50 yd." },
    load_min: { about: "Minutes to load one wheelbarrow. Default: 2.", kind: "min" },
    dump_min: { about: "Minutes to dump one wheelbarrow. Default: 0.5.", kind: "min" },
    walk_ft_min: { about: "Walking pace, ft/min. Default: 200.", kind: "ft/min" },
  },
  native: (trips, distance, load, dump, walk) => ({
    text: `${trips.text}*(${load.text}+${dump.text}+2*${distance.text}/${walk.text})/60`,
    least: "0 or more",
  }),
  working: (answer, trips, distance, load, dump, walk) => {
    const minutes = load + dump + (2 * distance) / walk;
    return [
      `a trip: ${shown(load)} + ${shown(dump)} + 2 × ${shown(distance)} ÷ ${shown(walk)} = ${shown(minutes)} min`,
      `${shown(trips)} × ${shown(minutes)} ÷ 60 = ${shown(answer)} labor hours`,
    ];
  },
});
