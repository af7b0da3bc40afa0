import { USUALLY } from "../../review/rules/blanks";
import * as depth from "../../review/rules/depth";
import { LIKELY_RATIO, MOST_OTHERS } from "../../review/rules/neighbors";
import * as overlap from "../../review/rules/ratios";
import { PROPORTIONS } from "../../review/rules/ratios";
import { FEWEST_NUMBERS } from "../../review/rules/sameBed";
import { MOST_OTHERWISE } from "../../review/rules/wholePercent";
import { FEWEST_MEMBERS } from "../../review/sheet/family";
import { DEEPEST_IN, LONGEST_FT } from "../../sheets/jobRows/fit";
import { HOW_SURE, OUR_CHOICE, percents, type Stated } from "./stated";

/** What the check points out, and what is asked about in a list of beds. */
export const checkingNumbers: readonly Stated[] = [
  ...PROPORTIONS.map(({ counted, over, unit, usual: [low, high] }) => ({
    what: `Usual ${counted} for the ${over}`,
    value: `${low} to ${high} a ${unit}`,
    rests: HOW_SURE.practice,
    source: "with room either way",
    constants: ["PROPORTIONS"],
  })),
  {
    what: "An overlap under this looks like feet; one over this part of the roll throws fabric away",
    value: `${overlap.LEAST_IN} in; a third`,
    rests: HOW_SURE.practice,
    constants: ["LEAST_IN", "MOST_OF_ROLL"],
  },
  {
    what: "Depths that are dug and filled",
    value: `${depth.SHALLOWEST_IN} to ${depth.DEEPEST_IN} in`,
    rests: HOW_SURE.practice,
    constants: ["SHALLOWEST_IN", "DEEPEST_IN"],
  },
  {
    what: "A depth in inches under this looks like feet; one in feet from this on looks like inches",
    value: `${depth.LEAST_IN} in; ${depth.MOST_FT} ft`,
    rests: OUR_CHOICE,
    constants: ["LEAST_IN", "MOST_FT"],
  },
  {
    what: "A markup typed as more than this is taken for percents without their sign; of waste and margin, the whole",
    value: percents(MOST_OTHERWISE),
    rests: OUR_CHOICE,
    constants: ["MOST_OTHERWISE"],
  },
  {
    what: "Cells alike before one among them can be odd",
    value: String(FEWEST_MEMBERS),
    rests: OUR_CHOICE,
    constants: ["FEWEST_MEMBERS"],
  },
  {
    what: "A blank is a gap where so many of the formulas beside it find something there",
    value: percents(USUALLY),
    rests: OUR_CHOICE,
    constants: ["USUALLY"],
  },
  {
    what: "Formulas of another kind are a choice and no slip where they are more than this part",
    value: percents(MOST_OTHERS),
    rests: OUR_CHOICE,
    constants: ["MOST_OTHERS"],
  },
  {
    what: "In a row of unlike sums, a number this many times off is no sum typed over",
    value: String(LIKELY_RATIO),
    rests: OUR_CHOICE,
    constants: ["LIKELY_RATIO"],
  },
  {
    what: "Two beds of one name with so many numbers alike may be one",
    value: String(FEWEST_NUMBERS),
    rests: OUR_CHOICE,
    constants: ["FEWEST_NUMBERS"],
  },
  {
    what: "In a list, a deeper depth or a longer length without a unit is asked about",
    value: `${DEEPEST_IN} in; ${LONGEST_FT} ft`,
    rests: OUR_CHOICE,
    constants: ["DEEPEST_IN", "LONGEST_FT"],
  },
];
