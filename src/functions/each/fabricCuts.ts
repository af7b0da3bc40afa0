import { fabricCuts } from "../../quantities/fabricRolls";
import { endLapIn, lengthAlong, overlapIn, rollLength, rollWidth, widthAcross } from "../arguments";
import { declare } from "../declare";
import { worksheetList } from "../worksheetFunction";

export const FABRIC_CUTS = worksheetList(
  (...bed) => [
    ["Strip", "Piece", "Roll", "Starts at, ft", "Length, ft"],
    ...fabricCuts(...bed).map(({ strip, piece, roll, startsAtFt, lengthFt }) => [
      strip,
      piece,
      roll,
      startsAtFt,
      lengthFt,
    ]),
  ],
  lengthAlong,
  widthAcross,
  rollWidth,
  rollLength,
  overlapIn,
  endLapIn,
);

export const fabricCutsDeclared = /* @__PURE__ */ declare(FABRIC_CUTS, {
  name: "FABRIC_CUTS",
  purpose: "Lay fabric and pins",
  about: "The lengths of fabric to cut for a rectangular bed, and off which roll each comes.",
  gives: "lengths of fabric to cut",
  returns: "A heading row, then strip, piece, roll, where it starts along the strip and its length, a piece a row.",
  kind: "list",
  rule: "Strips are cut full width, roll after roll; where a roll runs out inside a strip, the next piece laps it by the end lap.",
  example: "=INDEX(BED.FABRIC_CUTS(30, 11, 6, 50, 12), 4, 5) gives 11",
  source: "Plain arithmetic, roll after roll. An end lap of 12 in: common practice.",
  related: ["FABRIC_ROLLS", "LAYOUT_CUTS"],
  native: { none: "it gives a list of rows, as many as the bed asks for" },
});
