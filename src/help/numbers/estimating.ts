import { DEPTH_LIMITS } from "../../quantities/bed/depthVerdict";
import { MOST_SHARE } from "../../quantities/bed/fields";
import { FIRST_YEAR } from "../../quantities/calendar/federalHolidays";
import { MOST_WORKING_DAYS } from "../../quantities/digDate";
import { HAUL } from "../../quantities/hauling";
import { FEWEST_JOBS } from "../../quantities/history/learn";
import { FEWEST_FOR_USUAL_COVERAGE, USUAL_COVERAGE } from "../../quantities/history/medianInterval";
import { COARSEST_STEP } from "../../quantities/history/sensible";
import { LARGE_FLOOR_SQ_FT, MUCH_SOD_SQ_FT, PEOPLE_PER_BARROW } from "../../quantities/job/crewTools";
import { USUAL_CUT_LOSS_IN } from "../../quantities/job/together";
import { MOST_TONS_PER_YARD } from "../../quantities/stone";
import { HOW_SURE, OUR_CHOICE, percents, type Stated } from "./stated";

const PRACTICE = HOW_SURE.practice;

/** Where estimates, papers and past jobs draw a line. */
export const estimatingNumbers: readonly Stated[] = [
  {
    what: "Stone less deep lets fabric show; deeper, tons lie where nobody sees them",
    value: `${DEPTH_LIMITS.leastIn} in; ${DEPTH_LIMITS.mostIn} in`,
    rests: PRACTICE,
    constants: ["DEPTH_LIMITS"],
  },
  {
    what: "The largest stone that suits a depth",
    value: "two thirds of it",
    rests: PRACTICE,
    constants: ["DEPTH_LIMITS"],
  },
  {
    what: "A heavier cubic yard is refused: pounds were typed for tons",
    value: `${MOST_TONS_PER_YARD} tons`,
    rests: OUR_CHOICE,
    source: "several times what any loose stone of the table weighs",
    constants: ["MOST_TONS_PER_YARD"],
  },
  {
    what: "A higher markup is refused: 20 was typed for 20 %",
    value: percents(MOST_SHARE),
    rests: OUR_CHOICE,
    constants: ["MOST_SHARE"],
  },
  {
    what: "A barrow in an estimate: loading, dumping, pace",
    value: `${HAUL.loadMinutes} min, ${HAUL.dumpMinutes} min, ${HAUL.walkFtPerMinute} ft a minute`,
    rests: PRACTICE,
    source: "time your own crew",
    constants: ["HAUL"],
  },
  {
    what: "What each cut of a border piece takes, on an order",
    value: `${USUAL_CUT_LOSS_IN} in`,
    rests: PRACTICE,
    constants: ["USUAL_CUT_LOSS_IN"],
  },
  {
    what: "A floor larger than this is tamped with a plate compactor, on the crew sheet",
    value: `${LARGE_FLOOR_SQ_FT} sq ft`,
    rests: PRACTICE,
    constants: ["LARGE_FLOOR_SQ_FT"],
  },
  {
    what: "More sod than this is cut with a machine, on the crew sheet",
    value: `${MUCH_SOD_SQ_FT} sq ft`,
    rests: PRACTICE,
    constants: ["MUCH_SOD_SQ_FT"],
  },
  {
    what: "People for a barrow, a rake, a hammer or a knife, on the crew sheet",
    value: String(PEOPLE_PER_BARROW),
    rests: PRACTICE,
    constants: ["PEOPLE_PER_BARROW"],
  },
  {
    what: "Past jobs before anything is proposed",
    value: String(FEWEST_JOBS),
    rests: OUR_CHOICE,
    source: "of four, the bounds would miss the true middle one time in eight",
    constants: ["FEWEST_JOBS"],
  },
  {
    what: "How often bounds made like ours hold the true middle, and jobs that it takes to say so",
    value: `${percents(USUAL_COVERAGE)}; ${FEWEST_FOR_USUAL_COVERAGE} jobs`,
    rests: HOW_SURE.memory,
    source: "Conover, Practical Nonparametric Statistics: bounds of a median by order alone",
    constants: ["USUAL_COVERAGE", "FEWEST_FOR_USUAL_COVERAGE"],
  },
  {
    what: "A proposed rate is rounded by no more than this share of it",
    value: percents(COARSEST_STEP),
    rests: OUR_CHOICE,
    constants: ["COARSEST_STEP"],
  },
  {
    what: "An exact fit is not rounded up for a difference smaller than this share",
    value: "one part in a billion",
    rests: OUR_CHOICE,
    source: "numbers are kept in binary, where a tenth is not exact",
    constants: ["WHOLE_TOLERANCE"],
  },
  {
    what: "Most days of notice that are counted",
    value: String(MOST_WORKING_DAYS),
    rests: OUR_CHOICE,
    constants: ["MOST_WORKING_DAYS"],
  },
  {
    what: "Federal holidays are known from this year on",
    value: String(FIRST_YEAR),
    rests: HOW_SURE.memory,
    source: "from then on Veterans Day is on November 11 again",
    constants: ["FIRST_YEAR"],
  },
];
