import { addedUp } from "../../quantities/job/addedUp";
import { piecesTogether, USUAL_CUT_LOSS_IN } from "../../quantities/job/together";
import { may, needs } from "../argument";
import { lapIn, pieceLength } from "../arguments";
import { declare } from "../declare";
import { inchesOrZero } from "../read";
import { runs } from "../readRanges";
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
  needs("runs", runs),
  pieceLength,
  lapIn,
  may("closed_runs", runs, []),
  may("loss_in", inchesOrZero, USUAL_CUT_LOSS_IN),
);

export const jobPiecesDeclared = /* @__PURE__ */ declare(JOB_PIECES, {
  name: "JOB_PIECES",
  purpose: "Set the border",
  about: "Pieces of edging for all the runs of a job, where what one run leaves of a piece is used in another.",
  gives: "pieces of edging for a job",
  returns: "Whole pieces.",
  kind: "count",
  whole: true,
  rule: "Each run has its whole pieces; the last pieces of all runs are cut from as few pieces as they fit in, each cut taking its loss.",
  example: "=BED.JOB_PIECES(A1:A2, 8) gives 4 for 20, 11",
  source:
    "Plain arithmetic over pieces and laps; one-dimensional cutting stock (Gilmore and Gomory 1961) for the last pieces.",
  related: ["EDGING_PIECES", "CUT_COUNT", "JOB_ROLLS"],
  arguments: {
    runs: { about: "Lengths of runs that have two ends: feet or text. 0 and blanks are skipped." },
    closed_runs: { about: "Lengths of runs that come back to where they began: feet or text. Left out: none." },
    loss_in: { about: "What each cut takes of a piece: inches, or text. Left out: 1/8 in." },
  },
  native: { none: "the best way to cut is searched for, which no arithmetic does" },
  working: (answer, open, _piece, _lap, closed) => [
    ...sumLines("runs together", [...open, ...closed], addedUp([...open, ...closed])),
    `searched: ${shown(answer)} pieces`,
  ],
});
