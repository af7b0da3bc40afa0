import { addedUp } from "../../quantities/job/addedUp";
import { piecesTogether, USUAL_CUT_LOSS_IN } from "../../quantities/job/together";
import { may, needs } from "../argument";
import { lapOrJointIn, pieceLength } from "../arguments";
import { declare } from "../declare";
import { inchesOrZero } from "../read";
import { listed } from "../readRanges";
import { shown, sumLines } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const JOB_PIECES = worksheetFunction(
  (open, pieceFt, lap, closed, lossIn) =>
    piecesTogether(
      [...open.map((feet) => ({ feet, closed: false })), ...closed.map((feet) => ({ feet, closed: true }))],
      pieceFt,
      lap,
      lossIn,
    ),
  needs("runs", listed),
  pieceLength,
  lapOrJointIn,
  may("closed_runs", listed, []),
  may("loss_in", inchesOrZero, USUAL_CUT_LOSS_IN),
);

export const jobPiecesDeclared = /* @__PURE__ */ declare(JOB_PIECES, {
  name: "JOB_PIECES",
  purpose: "Set the edging",
  about: "Edging pieces for a whole job, using offcuts from one run in another.",
  gives: "edging pieces for a job",
  returns: "Whole pieces.",
  kind: "count",
  whole: true,
  rule: "Each run gets its whole pieces; the last pieces of all runs are cut from as few as possible, allowing for the loss at each cut.",
  example: "=BED.JOB_PIECES(A1:A2, 8) gives 4 for 20, 11",
  source:
    "Plain arithmetic over pieces and laps; one-dimensional cutting stock (Gilmore and Gomory 1961) for the last pieces.",
  related: ["EDGING_PIECES", "CUT_COUNT", "JOB_ROLLS"],
  arguments: {
    runs: { about: "Runs with two ends: feet, text, or lists like 2 x 18.5. 0 and blanks are skipped." },
    closed_runs: { about: "Runs that end where they start, the same way. Default: none." },
    loss_in: { about: "Loss per cut: inches or text. Default: 1/8 in." },
  },
  native: { none: "it searches for the best cut plan, which an ordinary formula can't do" },
  working: (answer, open, _piece, _lap, closed) => [
    ...sumLines("runs together", [...open, ...closed], addedUp([...open, ...closed])),
    `searched: ${shown(answer)} pieces`,
  ],
});
