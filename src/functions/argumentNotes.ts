import type { Argument } from "./argument";
import * as shared from "./arguments";
import * as cutting from "./cutLists";
import type { ArgumentNote } from "./declare";
import * as laying from "./laying";

/** What is said of the arguments that several functions share. */
export const argumentNotes: ReadonlyMap<Argument, ArgumentNote> = /* @__PURE__ */ new Map<Argument, ArgumentNote>([
  [shared.bedLength, { about: `Bed length: feet, or text like 18' 6".`, role: "length" }],
  [shared.bedWidth, { about: "Bed width: feet, or text like 5'.", role: "width" }],
  [shared.cornerRadius, { about: 'Radius of rounded corners: feet, or text like 24". Default: 0.' }],
  [shared.spacing, { about: "Distance along the base line between widths: feet, or text like 3'." }],
  [shared.widths, { about: "Widths in order, in one row or column: feet or text. 0 where the bed comes to a point." }],
  [
    shared.points,
    { about: "Two columns, x and y, in feet or text, one corner per row. Blank rows at the end are skipped." },
  ],
  [shared.area, { about: "Bed area, sq ft.", kind: "sq ft", role: "area" }],
  [shared.pieceLength, { about: "Length of one piece: feet, or text like 8'." }],
  [
    shared.lapOrJointIn,
    { about: "Lap of one piece over the next, or under 0 a joint between: inches or text. Default: 0." },
  ],
  [shared.lapIn, { about: "Lap of one piece over the next: inches or text. Default: 0." }],
  [shared.closedRun, { about: "TRUE if the run ends where it starts. Default: FALSE." }],
  [shared.rollWidth, { about: 'Roll width: feet, or text like 72".', usual: [2, 15], role: "roll width" }],
  [
    shared.overlapIn,
    {
      about: "Overlap between strips: inches or text. Less than the roll width.",
      usual: [3, 24],
      role: "overlap",
    },
  ],
  [shared.lengthAlong, { about: `Bed length, along the strips: feet, or text like 18' 6".`, role: "length" }],
  [shared.widthAcross, { about: "Bed width, across the strips: feet, or text like 5'.", role: "width" }],
  [shared.endLapIn, { about: "Lap where pieces meet end to end in a strip: inches or text. Default: 12." }],
  [shared.rollLength, { about: "Roll length: feet, or text like 50'.", role: "roll length" }],
  [
    shared.rowSpacingIn,
    {
      about: "Maximum spacing between rows of pins: inches or text. Default: 12.",
      usual: [6, 36],
      role: "spacing",
    },
  ],
  [shared.bayFt, { about: "Maximum width of a bay between pairs of pins: feet or text. Default: 4." }],
  [shared.stoneDepthIn, { about: 'Stone depth: inches, or text like 2 1/2".', usual: [1.5, 6], role: "depth" }],
  [shared.waste, { about: "Extra for waste and low spots, like 8%. Default: 0.", role: "waste" }],
  [
    shared.stone,
    {
      about: 'Tons per loose cubic yard, like 1.35, or a kind of stone, like "river rock".',
      role: "density",
    },
  ],
  [shared.cost, { about: "Cost, in dollars (or your sheet's currency).", kind: "money", role: "cost" }],
  [shared.margin, { about: "Margin on the price, like 20%. Under 100%.", role: "margin" }],
  [laying.bedCorners, { about: "Corners in order around the bed: a range of x and y in feet, one corner per row." }],
  [
    laying.pinSpacingIn,
    { about: "Maximum pin spacing: inches or text. Default: 12.", usual: [6, 36], role: "spacing" },
  ],
  [
    laying.bedCutOuts,
    { about: "Cut-outs, one per row, in feet: x, y, width, and depth (no depth for a circle). Default: none." },
  ],
  [
    laying.stripDirection,
    { about: "Angle of the strips from the base line, in degrees. Default: whatever takes the least fabric." },
  ],
  [laying.edgingPieceLength, { about: "Length of one edging piece: feet or text. Default: no edging counted." }],
  [
    laying.edgingStakeSpacing,
    { about: "Maximum stake spacing: inches or text; a piece length needs it. Default: no edging counted." },
  ],
  [cutting.stockLength, { about: "Length of one stock piece: feet, or text like 16'." }],
  [
    cutting.cutLengths,
    {
      about: "Lengths to cut: a cell, row, or column of feet or text. Blanks without a count are skipped.",
      kind: "ft",
    },
  ],
  [cutting.cutCounts, { about: "How many of each length, next to it. Default: 1 of each.", kind: "count" }],
  [cutting.lossIn, { about: 'Loss per cut: inches, or text like 1/8". Default: 0.' }],
]);
