import { wholeUpOf } from "./arithmetic";
import { form } from "./form";
import { stone } from "./named";
import { length, positive, positiveOrZero } from "./numbers";

const USUAL_BARROW_CUBIC_FT = 6;
const USUAL_BARROW_POUNDS = 300;
const USUAL_LOAD_MINUTES = 2;
const USUAL_DUMP_MINUTES = 0.5;
const USUAL_WALK_FT_PER_MINUTE = 200;

export const BARROW_TRIPS = form(
  [positiveOrZero(), stone, positive(USUAL_BARROW_CUBIC_FT), positive(USUAL_BARROW_POUNDS)],
  (yards, weight, tray, pounds) => ({
    text: wholeUpOf(`${yards.text}*MAX(27/${tray.text},${weight.text}*2000/${pounds.text})`),
    least: "0 or more",
  }),
);

export const HAUL_HOURS = form(
  [
    positiveOrZero(),
    length("ft"),
    positiveOrZero(USUAL_LOAD_MINUTES),
    positiveOrZero(USUAL_DUMP_MINUTES),
    positive(USUAL_WALK_FT_PER_MINUTE),
  ],
  (trips, distance, load, dump, walk) => ({
    text: `${trips.text}*(${load.text}+${dump.text}+2*${distance.text}/${walk.text})/60`,
    least: "0 or more",
  }),
);
