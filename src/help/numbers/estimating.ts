import { MOST_TO_LIFT_LB } from "../../quantities/bed/amountNotes";
import { HARDLY_USED, LEAST_SAVING } from "../../quantities/bed/closeCalls";
import { DEPTH_LIMITS } from "../../quantities/bed/depthVerdict";
import { MOST_SHARE } from "../../quantities/bed/fields";
import { FIRST_YEAR } from "../../quantities/calendar/federalHolidays";
import { MOST_WORKING_DAYS } from "../../quantities/digDate";
import { HAUL } from "../../quantities/hauling";
import { FEWEST_JOBS } from "../../quantities/history/learn";
import { FEWEST_FOR_USUAL_COVERAGE, USUAL_COVERAGE } from "../../quantities/history/medianInterval";
import { COARSEST_STEP } from "../../quantities/history/sensible";
import { MOST_BEDS_SHARED_OUT } from "../../quantities/job/cheapestFabric";
import { LARGE_FLOOR_SQ_FT, MUCH_SOD_SQ_FT, PEOPLE_PER_BARROW } from "../../quantities/job/crewTools";
import { USUAL_CUT_LOSS_IN } from "../../quantities/job/together";
import { MOST_TONS_PER_YARD } from "../../quantities/stone";
import { HOW_SURE, OUR_CHOICE, percents, type Stated } from "./stated";

const PRACTICE = HOW_SURE.practice;

/** Where estimates, papers and past jobs draw a line. */
export const estimatingNumbers: readonly Stated[] = [
  {
    what: "A last piece, roll, box, or load used by less than this is worth a look, if doing without saves enough",
    value: `${percents(HARDLY_USED)}; $${LEAST_SAVING}`,
    rests: OUR_CHOICE,
    source: "less isn't worth your time",
    constants: ["HARDLY_USED", "LEAST_SAVING"],
  },
  {
    what: "Most beds of a job for which every way to share out the fabric rolls is tried",
    value: `${MOST_BEDS_SHARED_OUT}`,
    rests: OUR_CHOICE,
    source: "each more doubles the ways",
    constants: ["MOST_BEDS_SHARED_OUT"],
  },
  {
    what: "Shallower, fabric shows; deeper, you pay for stone no one sees",
    value: `${DEPTH_LIMITS.leastIn} in; ${DEPTH_LIMITS.mostIn} in`,
    rests: PRACTICE,
    constants: ["DEPTH_LIMITS"],
  },
  {
    what: "Largest stone for a depth",
    value: "two-thirds of it",
    rests: PRACTICE,
    constants: ["DEPTH_LIMITS"],
  },
  {
    what: "A heavier cubic yard is refused: someone typed pounds for tons",
    value: `${MOST_TONS_PER_YARD} tons`,
    rests: OUR_CHOICE,
    source: "several times any loose stone in the list",
    constants: ["MOST_TONS_PER_YARD"],
  },
  {
    what: "A heavier bag is lifted by two",
    value: `${MOST_TO_LIFT_LB} lb`,
    rests: HOW_SURE.seen,
    source: "the load constant of the NIOSH lifting equation",
    constants: ["MOST_TO_LIFT_LB"],
  },
  {
    what: "A higher markup is refused: someone typed 20 for 20%",
    value: percents(MOST_SHARE),
    rests: OUR_CHOICE,
    constants: ["MOST_SHARE"],
  },
  {
    what: "A wheelbarrow trip in an estimate: loading, dumping, pace",
    value: `${HAUL.loadMinutes} min, ${HAUL.dumpMinutes} min, ${HAUL.walkFtPerMinute} ft/min`,
    rests: PRACTICE,
    source: "time your own crew",
    constants: ["HAUL"],
  },
  {
    what: "Loss at each edging cut, on an order",
    value: `${USUAL_CUT_LOSS_IN} in`,
    rests: PRACTICE,
    constants: ["USUAL_CUT_LOSS_IN"],
  },
  {
    what: "A larger floor gets a plate compactor, on the crew sheet",
    value: `${LARGE_FLOOR_SQ_FT} sq ft`,
    rests: PRACTICE,
    constants: ["LARGE_FLOOR_SQ_FT"],
  },
  {
    what: "More sod gets a sod cutter, on the crew sheet",
    value: `${MUCH_SOD_SQ_FT} sq ft`,
    rests: PRACTICE,
    constants: ["MUCH_SOD_SQ_FT"],
  },
  {
    what: "People per wheelbarrow, rake, hammer, or knife, on the crew sheet",
    value: String(PEOPLE_PER_BARROW),
    rests: PRACTICE,
    constants: ["PEOPLE_PER_BARROW"],
  },
  {
    what: "Past jobs it takes to suggest a rate",
    value: String(FEWEST_JOBS),
    rests: OUR_CHOICE,
    source: "with four, the range misses the true median one time in eight",
    constants: ["FEWEST_JOBS"],
  },
  {
    what: "How often a range like ours holds the true median, and the jobs that takes",
    value: `${percents(USUAL_COVERAGE)}; ${FEWEST_FOR_USUAL_COVERAGE} jobs`,
    rests: HOW_SURE.memory,
    source: "Conover, Practical Nonparametric Statistics: a median's range from ordered values",
    constants: ["USUAL_COVERAGE", "FEWEST_FOR_USUAL_COVERAGE"],
  },
  {
    what: "A suggested rate is rounded by no more than this",
    value: percents(COARSEST_STEP),
    rests: OUR_CHOICE,
    constants: ["COARSEST_STEP"],
  },
  {
    what: "An exact fit isn't rounded up for a difference smaller than this",
    value: "one part in a billion",
    rests: OUR_CHOICE,
    source: "computers store numbers in binary, where a tenth isn't exact",
    constants: ["WHOLE_TOLERANCE"],
  },
  {
    what: "Most days of notice we count",
    value: String(MOST_WORKING_DAYS),
    rests: OUR_CHOICE,
    constants: ["MOST_WORKING_DAYS"],
  },
  {
    what: "First year we know federal holidays for",
    value: String(FIRST_YEAR),
    rests: HOW_SURE.memory,
    source: "Veterans Day is back on November 11 from then on",
    constants: ["FIRST_YEAR"],
  },
];
