import { MOST_SIDES } from "../../layout/directions";
import { NOTEWORTHY_SHARE } from "../../layout/layOutBed";
import { MOST_CORNERS, MOST_CUT_OUTS, MOST_FT, MOST_PINS } from "../../layout/limits";
import { LARGEST_INCHES } from "../../layout/options";
import { CORNER_DEGREES } from "../../layout/outline";
import { CHORD_RADIANS } from "../../layout/runs";
import { SPIKE_FROM_END_FT } from "../../layout/setOut";
import { MOST_STRIPS } from "../../layout/strips";
import { EDGING_STEP_IN, FABRIC_STEP_IN } from "../../quantities/cutTape";
import { HOLDS_CORNER_FT, SHORTEST_PIECE_FT } from "../../quantities/edging";
import { MOST_JOINT_IN } from "../../quantities/pavers";
import { INCHES_PER_FOOT } from "../../quantities/units";
import { HOW_SURE, many, OUR_CHOICE, percents, type Stated } from "./stated";

const DEGREES_PER_RADIAN = 180 / Math.PI;

/** How a bed is laid out in plan, and how much of it is laid out at most. */
export const layingNumbers: readonly Stated[] = [
  {
    what: "A sharper turn is a corner with its own pin and stake; a gentler one is a bend",
    value: `${CORNER_DEGREES}°`,
    rests: HOW_SURE.practice,
    source: "about as much as you can bend edging by hand",
    constants: ["CORNER_DEGREES"],
  },
  {
    what: "How far from its ends a timber is spiked",
    value: `${SPIKE_FROM_END_FT * INCHES_PER_FOOT} in`,
    rests: HOW_SURE.practice,
    source: "nearer, the end splits",
    constants: ["SPIKE_FROM_END_FT"],
  },
  {
    what: "Widest joint between pavers",
    value: `${MOST_JOINT_IN} in`,
    rests: OUR_CHOICE,
    source: "over twice the 3/16 in of the Brick Industry Association, Technical Note 14A",
    constants: ["MOST_JOINT_IN"],
  },
  {
    what: "A stake this close to a corner holds the corner too",
    value: `${HOLDS_CORNER_FT * INCHES_PER_FOOT} in`,
    rests: HOW_SURE.practice,
    source: "a hand’s breadth",
    constants: ["HOLDS_CORNER_FT"],
  },
  {
    what: "Lengths to cut are rounded up: fabric; edging",
    value: `${FABRIC_STEP_IN} in; ${EDGING_STEP_IN} in`,
    rests: HOW_SURE.practice,
    source: "what scissors and a saw are held to; nothing comes out short",
    constants: ["FABRIC_STEP_IN", "EDGING_STEP_IN"],
  },
  {
    what: "A piece of edging shorter than this is warned about, in the drawing and the order",
    value: `${SHORTEST_PIECE_FT * INCHES_PER_FOOT} in`,
    rests: OUR_CHOICE,
    constants: ["SHORTEST_PIECE_FT"],
  },
  {
    what: "Pattern pins stay this far from others",
    value: "a third of their spacing",
    rests: OUR_CHOICE,
    constants: ["CLEAR_SHARE"],
  },
  {
    what: "Strip directions tried: along each side, or this many evenly spaced if there are more sides",
    value: String(MOST_SIDES),
    rests: HOW_SURE.practice,
    constants: ["MOST_SIDES"],
  },
  {
    what: "A drawing says so when drawn and calculated areas differ by more",
    value: percents(NOTEWORTHY_SHARE),
    rests: OUR_CHOICE,
    constants: ["NOTEWORTHY_SHARE"],
  },
  {
    what: "Arcs are drawn in straight pieces of this angle",
    value: `${Math.round(CHORD_RADIANS * DEGREES_PER_RADIAN)}°`,
    rests: OUR_CHOICE,
    source: "a circle drawn this way is 0.02% too small; its area is calculated as a true circle",
    constants: ["CHORD_RADIANS"],
  },
  {
    what: "Most we lay out: corners or widths, cut-outs, pins, strips",
    value: [MOST_CORNERS, MOST_CUT_OUTS, MOST_PINS, MOST_STRIPS].map(many).join(", "),
    rests: OUR_CHOICE,
    source: "beyond this a unit is wrong, and the sheet would stall",
    constants: ["MOST_CORNERS", "MOST_CUT_OUTS", "MOST_PINS", "MOST_STRIPS", "MOST_PIECES"],
  },
  {
    what: "Longest bed measurement; largest lap",
    value: `${many(MOST_FT)} ft; ${many(LARGEST_INCHES)} in`,
    rests: OUR_CHOICE,
    source: "beyond this a unit is wrong",
    constants: ["MOST_FT", "LARGEST_INCHES"],
  },
];
