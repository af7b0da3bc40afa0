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
    what: `Typical ${counted} for the ${over}`,
    value: `${low} to ${high} per ${unit}`,
    rests: HOW_SURE.practice,
    source: "with room on both sides",
    constants: ["PROPORTIONS"],
  })),
  {
    what: "An overlap under this looks like feet; over this much of the roll wastes fabric",
    value: `${overlap.LEAST_IN} in; a third`,
    rests: HOW_SURE.practice,
    constants: ["LEAST_IN", "MOST_OF_ROLL"],
  },
  {
    what: "Depths people dig and fill",
    value: `${depth.SHALLOWEST_IN} to ${depth.DEEPEST_IN} in`,
    rests: HOW_SURE.practice,
    constants: ["SHALLOWEST_IN", "DEEPEST_IN"],
  },
  {
    what: "A depth in inches under this looks like feet; in feet, over this looks like inches",
    value: `${depth.LEAST_IN} in; ${depth.MOST_FT} ft`,
    rests: OUR_CHOICE,
    constants: ["LEAST_IN", "MOST_FT"],
  },
  {
    what: "A markup over this is read as a percent without its sign; so is waste or margin over the whole",
    value: percents(MOST_OTHERWISE),
    rests: OUR_CHOICE,
    constants: ["MOST_OTHERWISE"],
  },
  {
    what: "Matching cells it takes before one can look odd",
    value: String(FEWEST_MEMBERS),
    rests: OUR_CHOICE,
    constants: ["FEWEST_MEMBERS"],
  },
  {
    what: "A blank is a gap if this many of the formulas next to it find a value",
    value: percents(USUALLY),
    rests: OUR_CHOICE,
    constants: ["USUALLY"],
  },
  {
    what: "Different formulas are a choice, not an error, if more than this part differ",
    value: percents(MOST_OTHERS),
    rests: OUR_CHOICE,
    constants: ["MOST_OTHERS"],
  },
  {
    what: "In a row of unlike totals, a number this far off isn't a total typed over",
    value: String(LIKELY_RATIO),
    rests: OUR_CHOICE,
    constants: ["LIKELY_RATIO"],
  },
  {
    what: "Two beds with one name and this many matching numbers may be the same bed",
    value: String(FEWEST_NUMBERS),
    rests: OUR_CHOICE,
    constants: ["FEWEST_NUMBERS"],
  },
  {
    what: "In a list, we ask about a deeper depth or longer length without a unit",
    value: `${DEEPEST_IN} in; ${LONGEST_FT} ft`,
    rests: OUR_CHOICE,
    constants: ["DEEPEST_IN", "LONGEST_FT"],
  },
];
