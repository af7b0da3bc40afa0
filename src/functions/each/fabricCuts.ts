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
  purpose: "Lay and pin fabric",
  about: "Fabric cut list for a rectangular bed: each length and the roll it comes off.",
  gives: "fabric cut list",
  returns: "A heading row, then one row per piece: strip, piece, roll, where it starts, and its length.",
  kind: "list",
  rule: "Strips are cut full width, roll after roll. Where a roll runs out mid-strip, the next piece laps it by the end lap.",
  example: "=INDEX(BED.FABRIC_CUTS(30, 11, 6, 50, 12), 4, 5) gives 11",
  source: "Plain arithmetic, roll after roll. A 12 in end lap is common practice.",
  related: ["FABRIC_ROLLS", "LAYOUT_CUTS"],
  native: { none: "it returns a list, with as many rows as the bed needs" },
});
