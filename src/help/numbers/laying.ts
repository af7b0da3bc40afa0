import { HOLDS_CORNER_FT } from "../../layout/border";
import { MOST_SIDES } from "../../layout/directions";
import { NOTEWORTHY_SHARE } from "../../layout/layOutBed";
import { MOST_CORNERS, MOST_CUT_OUTS, MOST_FT, MOST_PINS } from "../../layout/limits";
import { LARGEST_INCHES } from "../../layout/options";
import { CORNER_DEGREES } from "../../layout/outline";
import { CHORD_RADIANS } from "../../layout/runs";
import { MOST_STRIPS } from "../../layout/strips";
import { INCHES_PER_FOOT } from "../../quantities/units";
import { HOW_SURE, many, OUR_CHOICE, percents, type Stated } from "./stated";

const DEGREES_PER_RADIAN = 180 / Math.PI;

/** How a bed is laid out in plan, and how much of it is laid out at most. */
export const layingNumbers: readonly Stated[] = [
  {
    what: "A sharper turn is a corner, with a pin and a stake of its own; a softer one is a bend",
    value: `${CORNER_DEGREES}°`,
    rests: HOW_SURE.practice,
    source: "edging is bent by hand up to about this much",
    constants: ["CORNER_DEGREES"],
  },
  {
    what: "A stake this near a corner holds the corner, too",
    value: `${HOLDS_CORNER_FT * INCHES_PER_FOOT} in`,
    rests: HOW_SURE.practice,
    source: "a hand’s breadth",
    constants: ["HOLDS_CORNER_FT"],
  },
  {
    what: "Pins of the pattern keep this far from others",
    value: "a third of their spacing",
    rests: OUR_CHOICE,
    constants: ["CLEAR_SHARE"],
  },
  {
    what: "Directions of strips that are tried: along each side, and of more sides than this so many evenly round",
    value: String(MOST_SIDES),
    rests: HOW_SURE.practice,
    constants: ["MOST_SIDES"],
  },
  {
    what: "A drawing says where drawn and reckoned areas differ by more",
    value: percents(NOTEWORTHY_SHARE),
    rests: OUR_CHOICE,
    constants: ["NOTEWORTHY_SHARE"],
  },
  {
    what: "Arcs are drawn in straight pieces of this much",
    value: `${Math.round(CHORD_RADIANS * DEGREES_PER_RADIAN)}°`,
    rests: OUR_CHOICE,
    source: "a circle so drawn encloses 0.02 % too little; its area is reckoned as a circle’s",
    constants: ["CHORD_RADIANS"],
  },
  {
    what: "Most that is laid out: corners or widths, cut-outs, pins, strips",
    value: [MOST_CORNERS, MOST_CUT_OUTS, MOST_PINS, MOST_STRIPS].map(many).join(", "),
    rests: OUR_CHOICE,
    source: "beyond it some unit is wrong, and the sheet would wait",
    constants: ["MOST_CORNERS", "MOST_CUT_OUTS", "MOST_PINS", "MOST_STRIPS", "MOST_PIECES"],
  },
  {
    what: "Longest measure of a bed; largest lap",
    value: `${many(MOST_FT)} ft; ${many(LARGEST_INCHES)} in`,
    rests: OUR_CHOICE,
    source: "beyond it some unit is wrong",
    constants: ["MOST_FT", "LARGEST_INCHES"],
  },
];
