import { barrowTrips } from "../../quantities/hauling";
import { CUBIC_FEET_PER_CUBIC_YARD, POUNDS_PER_SHORT_TON } from "../../quantities/units";
import { may, needs } from "../argument";
import { stone } from "../arguments";
import { declare } from "../declare";
import { wholeUpOf } from "../native/arithmetic";
import { positive, positiveOrZero } from "../read";
import { shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const BARROW_TRIPS = worksheetFunction(
  barrowTrips,
  needs("yards", positiveOrZero),
  stone,
  may("barrow_cubic_ft", positive, 6),
  may("barrow_lb", positive, 300),
);

export const barrowTripsDeclared = /* @__PURE__ */ declare(BARROW_TRIPS, {
  name: "BARROW_TRIPS",
  purpose: "Move it by wheelbarrow",
  about: "Wheelbarrow trips, limited by tray size or by load weight.",
  gives: "wheelbarrow trips",
  returns: "Whole trips.",
  kind: "count",
  whole: true,
  rule: "Whole trips, each with a full tray or a full load by weight, whichever is less.",
  example: "=BED.BARROW_TRIPS(1, 1.35) gives 9",
  source: "Plain arithmetic; a 6 cubic foot tray and a 300 lb load are common practice.",
  related: ["HAUL_HOURS", "STONE_YARDS", "SPOIL_YARDS"],
  arguments: {
    yards: { about: "Loose cubic yards to move. 0 yards is 0 trips.", kind: "cu yd" },
    barrow_cubic_ft: { about: "Tray size, cubic feet. Default: 6.", kind: "cu ft" },
    barrow_lb: { about: "Maximum pounds per load. Default: 300.", kind: "lb" },
  },
  native: (yards, weight, tray, pounds) => ({
    text: wholeUpOf(`${yards.text}*MAX(27/${tray.text},${weight.text}*2000/${pounds.text})`),
    least: "0 or more",
  }),
  working: (answer, yards, weight, tray, limit) => {
    const byTray = (yards * CUBIC_FEET_PER_CUBIC_YARD) / tray;
    const byWeight = (yards * weight * POUNDS_PER_SHORT_TON) / limit;
    return [
      `by the tray: ${shown(yards)} × 27 ÷ ${shown(tray)} = ${shown(byTray)}`,
      `by weight: ${shown(yards)} × ${shown(weight)} × 2,000 ÷ ${shown(limit)} = ${shown(byWeight)}`,
      `the larger, rounded up: ${shown(answer)} trips`,
    ];
  },
});
