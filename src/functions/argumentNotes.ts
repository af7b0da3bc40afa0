import type { Argument } from "./argument";
import * as shared from "./arguments";
import * as cutting from "./cutLists";
import type { ArgumentNote } from "./declare";
import * as laying from "./laying";

/** What is said of the arguments that several functions share. */
export const argumentNotes: ReadonlyMap<Argument, ArgumentNote> = /* @__PURE__ */ new Map<Argument, ArgumentNote>([
  [shared.bedLength, { about: `Length of the bed: feet, or text such as 18' 6".`, role: "length" }],
  [shared.bedWidth, { about: "Width of the bed: feet, or text such as 5'.", role: "width" }],
  [shared.cornerRadius, { about: 'Radius of the rounded corners: feet, or text such as 24". Left out: 0.' }],
  [shared.spacing, { about: "Distance along the base line from one width to the next: feet, or text such as 3'." }],
  [
    shared.widths,
    { about: "The widths in order, one row or column: feet or tape text. 0 where the bed runs to a point." },
  ],
  [
    shared.points,
    { about: "Two columns, x and y, in feet or tape text, one corner a row. Blank rows at the end are skipped." },
  ],
  [shared.area, { about: "Area of the bed in square feet.", kind: "sq ft", role: "area" }],
  [shared.pieceLength, { about: "Length of one piece: feet, or text such as 8'." }],
  [shared.lapIn, { about: "Lap of one piece over the next: inches, or text. Left out: 0." }],
  [shared.closedRun, { about: "TRUE if the run comes back to where it began, else FALSE. Left out: FALSE." }],
  [shared.rollWidth, { about: 'Width of the roll: feet, or text such as 72".', usual: [2, 15], role: "roll width" }],
  [
    shared.overlapIn,
    {
      about: "Lap of strips side by side: inches, or text. Less than the roll is wide.",
      usual: [3, 24],
      role: "overlap",
    },
  ],
  [shared.lengthAlong, { about: `Length of the bed, along the strips: feet, or text such as 18' 6".`, role: "length" }],
  [shared.widthAcross, { about: "Width of the bed, across the strips: feet, or text such as 5'.", role: "width" }],
  [shared.endLapIn, { about: "Lap of pieces end to end within a strip: inches, or text. Left out: 12." }],
  [shared.rollLength, { about: "Length of the roll: feet, or text such as 50'.", role: "roll length" }],
  [
    shared.rowSpacingIn,
    {
      about: "From one row of pins to the next, at most: inches, or text. Left out: 12.",
      usual: [6, 36],
      role: "spacing",
    },
  ],
  [shared.bayFt, { about: "Widest bay across a strip between pairs of pins: feet, or text. Left out: 4." }],
  [
    shared.stoneDepthIn,
    { about: 'Depth of the stone: inches, or text such as 2 1/2".', usual: [1.5, 6], role: "depth" },
  ],
  [shared.waste, { about: "Share more for low spots and what stays behind, such as 8%. Left out: 0.", role: "waste" }],
  [
    shared.stone,
    {
      about: 'Short tons a loose cubic yard, such as 1.35, or a kind of stone, such as "river rock".',
      role: "density",
    },
  ],
  [shared.cost, { about: "Cost, in the sheet's own currency.", kind: "money", role: "cost" }],
  [shared.margin, { about: "Margin on the price, such as 20%. Under 100%.", role: "margin" }],
  [laying.bedCorners, { about: "Corners in order round the bed: a range of x and y in feet, a corner a row." }],
  [
    laying.pinSpacingIn,
    { about: "Pins at most this far apart: inches, or text. Left out: 12.", usual: [6, 36], role: "spacing" },
  ],
  [
    laying.bedCutOuts,
    { about: "What stands in the bed, one a row: x, y, width, and depth if it is no circle; feet. Left out: nothing." },
  ],
  [
    laying.stripDirection,
    { about: "Degrees of the strips from the base line. Left out: the way that takes the least fabric." },
  ],
  [cutting.stockLength, { about: "Length of one stock piece: feet, or text such as 16'." }],
  [
    cutting.cutLengths,
    {
      about: "Lengths to cut: a cell, row or column of feet or text. Blank ones without a count are skipped.",
      kind: "ft",
    },
  ],
  [cutting.cutCounts, { about: "How many of each length, beside it. Left out: 1 of each.", kind: "count" }],
  [cutting.lossIn, { about: 'What each cut takes: inches, or text such as 1/8". Left out: 0.' }],
]);
