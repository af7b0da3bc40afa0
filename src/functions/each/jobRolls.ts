import { addedUp } from "../../quantities/job/addedUp";
import { rollsTogether } from "../../quantities/job/together";
import { needs } from "../argument";
import { endLapIn, rollLength } from "../arguments";
import { declare } from "../declare";
import { listed } from "../readRanges";
import { shown, sumLines } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const JOB_ROLLS = worksheetFunction(rollsTogether, needs("strips", listed), rollLength, endLapIn);

export const jobRollsDeclared = /* @__PURE__ */ declare(JOB_ROLLS, {
  name: "JOB_ROLLS",
  purpose: "Lay and pin fabric",
  about: "Fabric rolls for a whole job, using what's left from one bed in another.",
  gives: "rolls for a job",
  returns: "Whole rolls.",
  kind: "count",
  whole: true,
  rule: "The fewer of two ways: strips without joints from as few rolls as possible, or rolls used up one after another with an end lap where one runs out.",
  example: "=BED.JOB_ROLLS(A1:A4, 50) gives 2 for 30, 30, 20, 18",
  source:
    "Common practice for laps; one-dimensional cutting stock (Gilmore and Gomory 1961) for strips without a joint.",
  related: ["FABRIC_ROLLS", "CUT_COUNT", "JOB_PIECES"],
  arguments: {
    strips: {
      about: 'Lengths to cut, full roll width: feet, text, or a list like "2 x 30; 18.5". Blanks are skipped.',
    },
  },
  native: { none: "it searches for the best cut plan, which an ordinary formula can't do" },
  working: (answer, lengths) => [
    ...sumLines("strips together", lengths, addedUp(lengths)),
    `searched: ${shown(answer)} rolls`,
  ],
});
