/**
 * The one catalogue of what the project says about a value it cannot use. A message names the value, quotes
 * what arrived, and says what to give instead. Every entry is a function from the particulars to one or two
 * plain sentences; `argument` is always the name the user sees.
 */
export const messages = {
  missing: (argument: string, example: string) => `${argument} is blank. Type a value, such as ${example}.`,
  zero: (argument: string, example: string) => `${argument} is blank or 0. Type more than 0, such as ${example}.`,
  negative: (argument: string, arrived: unknown, zeroIsBlank = false) =>
    `${argument} arrived as ${quoted(arrived)}, which is less than 0. Type ${zeroIsBlank ? "more than 0" : "0 or more"}.`,
  notANumber: (argument: string, arrived: unknown, example: string) =>
    `${argument} arrived as ${quoted(arrived)}, which is no number. Type a number, such as ${example}.`,
  notALength: (argument: string, arrived: unknown) =>
    `${argument} arrived as ${quoted(arrived)}, which cannot be read as a length. ` +
    `Type a number, or a length such as 18' 6", 32' 6 1/2", 75 mm or 9.8 m.`,
  ambiguousComma: (argument: string, arrived: unknown) =>
    `${argument} arrived as ${quoted(arrived)}, where the comma can be read two ways. ` +
    `Type the number without a thousands comma, and with a point for the decimals.`,
  smallerUnitTooLarge: (argument: string, arrived: unknown, unit: string, limit: number) =>
    `${argument} arrived as ${quoted(arrived)}: ${unit} after a larger unit must be under ${limit}. ` +
    `Carry the rest over, such as 6' 2" for 5' 14".`,
  tooLarge: (argument: string, arrived: unknown, limit: string) =>
    `${argument} arrived as ${quoted(arrived)}, which is too large. Type ${limit} or less.`,
  unknownName: (argument: string, arrived: unknown, nearest: string, instead: string) =>
    `${argument} arrived as ${quoted(arrived)}, which stands in no table. Did you mean “${nearest}”? ` +
    `A number is read as ${instead}.`,
  oneCell: (argument: string) => `${argument} arrived as a range of cells. Give one cell.`,
  notWhole: (argument: string, arrived: unknown, most: number) =>
    `${argument} arrived as ${quoted(arrived)}. Type a whole number` +
    (Number.isFinite(most) ? `, ${most} or less.` : "."),
  notYesOrNo: (argument: string, arrived: unknown) => `${argument} arrived as ${quoted(arrived)}. Type TRUE or FALSE.`,
  shareTooLarge: (argument: string, arrived: unknown, under: number) =>
    `${argument} arrived as ${quoted(arrived)}. A share must be ${under === 1 ? "under 1" : `${under} or less`}: ` +
    `type 10% (or 0.10) rather than 10.`,
  tooHeavy: (argument: string, arrived: unknown, most: number) =>
    `${argument} arrived as ${quoted(arrived)}, but a cubic yard weighs ${most} tons at most. ` +
    `Type short tons, such as 1.35 for 2,700 lb.`,
  notARule: (argument: string, arrived: unknown) =>
    `${argument} arrived as ${quoted(arrived)}. Type "simpson" or "trapezoid".`,
  notADate: (argument: string, arrived: unknown) =>
    `${argument} arrived as ${quoted(arrived)}, which cannot be read as a date. Type a date such as 2026-03-02.`,
  ambiguousDate: (argument: string, arrived: unknown) =>
    `${argument} arrived as ${quoted(arrived)}, where day and month can be read two ways. ` +
    `Type the year first, such as 2026-03-02.`,
  afterLastDate: () => "notice_date lies so late that the calendar ends first. Type the day of notice.",
  oneRowOrColumn: (argument: string) =>
    `${argument} arrived as a block of cells. Give one row or one column, so that their order is plain.`,
  notPairs: (argument: string, columns: number) =>
    `${argument} arrived with ${columns} ${columns === 1 ? "column" : "columns"}. Give two: x and y, in feet.`,
  countsBesideLengths: (counts: number, lengths: number) =>
    `counts arrived with ${counts} cells and lengths with ${lengths}. Give one count beside each length.`,
  notCutOuts: (argument: string, columns: number) =>
    `${argument} arrived with ${columns} ${columns === 1 ? "column" : "columns"}. Give three or four: x and y of the ` +
    "middle, how far across, and how deep for a rectangle, in feet.",

  radiusTooLarge: (radiusFt: number, mostFt: number) =>
    `corner_radius is ${short(radiusFt)} ft, more than the sides have room for. Type ${short(mostFt)} ft or less.`,
  nothingLeft: () => "cut_outs take up the whole bed. Type cut-outs that are smaller than the bed.",
  cutOutsTooLarge: (bedSqFt: number, cutOutsSqFt: number) =>
    `cut_outs come to ${short(cutOutsSqFt)} sq ft, and the bed has ${short(bedSqFt)}: nothing is left. ` +
    `Type cut-outs that are smaller than the bed.`,
  noTriangle: (a: number, b: number, c: number) =>
    `side_a, side_b and side_c are ${short(a)}, ${short(b)} and ${short(c)} ft, which enclose nothing: ` +
    `the longest must be shorter than the other two together. Tape the sides again.`,
  innerNotSmaller: (innerFt: number, outerFt: number) =>
    `inner_diameter is ${short(innerFt)} ft, which leaves no ring. Type less than the diameter, ${short(outerFt)} ft.`,
  tooFewWidths: (count: number) => `widths has ${count}. Give at least 2, one at each end of the base line.`,
  moreWidths: (fewest: number) => `A bed by widths needs at least ${fewest} of them, one at each end of the base line.`,
  morePoints: (fewest: number) => `An outline needs at least ${fewest} points, each with x and y.`,
  widthsAllZero: () => "widths are all 0. Type the widths from the base line, such as 4' 6\".",
  tooFewPoints: (count: number, fewest: number) =>
    `points has ${count} different ${count === 1 ? "point" : "points"}. Give at least ${fewest}, each with x and y.`,
  outlineCrosses: (from: number, to: number, otherFrom: number, otherTo: number) =>
    `points make an outline that crosses or touches itself: the side from point ${from} to ${to} meets the side ` +
    `from point ${otherFrom} to ${otherTo}. Put the points in order around the bed.`,
  enclosesNothing: () => "points lie on one line and enclose nothing. Give the corners in order around the bed.",
  lapTooLong: (argument: string, lapIn: number, mostIn: number, what: string) =>
    `${argument} is ${short(lapIn)} in, but ${what} ${short(mostIn)} in. Type less than that.`,
  tooManyPieces: () => "length comes to more than 100,000 pieces of fabric. Check the units of what was typed.",
  noDepth: (heightIn: number, takenIn: number) =>
    `border_height_in is ${short(heightIn)} in, and trench_depth_in and top_gap_in take ${short(takenIn)} in of it: ` +
    `no depth is left for stone. Type a higher border or a shallower trench.`,
  unforeseen: () => "This could not be worked out with what was typed. Check each value and its unit.",
  overflow: () => "The answer is too large to be a quantity. Check the units of what was typed.",
} as const;

/** A number as a message shows it: six digits at most, and never "Infinity". */
const short = (value: number) => String(Number(Math.min(value, Number.MAX_VALUE).toPrecision(6)));

/** What arrived, as a message shows it: text between typographic quotes, so that inch marks stay readable. */
export function quoted(arrived: unknown): string {
  switch (typeof arrived) {
    case "string":
      // Cut, but not through the middle of a sign that takes two units.
      return `“${arrived.length > 40 ? arrived.slice(0, 39).replace(/[\ud800-\udbff]$/, "") + "…" : arrived}”`;
    case "boolean":
      return arrived ? "TRUE" : "FALSE";
    case "number":
    case "bigint":
      return String(arrived);
    case "undefined":
      return "a blank";
    default:
      return arrived === null ? "a blank" : Array.isArray(arrived) ? "a range of cells" : "no plain value";
  }
}
