/**
 * The one catalogue of what the project says about a value it can't use. Each message is one line: where, what's wrong,
 * and what to type. Every entry is a function from the particulars; `argument` is always the name the user sees.
 */
export const messages = {
  missing: (argument: string, example: string) => `${argument} is blank. Type a value, such as ${example}.`,
  zero: (argument: string, example: string) => `${argument} is blank or 0. Type more than 0, such as ${example}.`,
  negative: (argument: string, given: unknown, zeroIsBlank = false) =>
    `${argument}: ${quoted(given)} is less than 0. Type ${zeroIsBlank ? "more than 0" : "0 or more"}.`,
  notANumber: (argument: string, given: unknown, example: string) =>
    `${argument}: can't read ${quoted(given)} as a number. Try ${example}.`,
  notALength: (argument: string, given: unknown) =>
    `${argument}: can't read ${quoted(given)} as a length. Try 7, 7', or 6' 6".`,
  twoReadings: (argument: string, given: unknown, one: string, other: string) =>
    `${argument}: ${quoted(given)} could be ${one} or ${other}. Type the one you mean.`,
  smallerUnitTooLarge: (argument: string, given: unknown, unit: string, limit: number) =>
    `${argument}: ${quoted(given)} has ${limit} ${unit} or more. Carry the rest over: 6' 2" for 5' 14".`,
  tooLarge: (argument: string, given: unknown, limit: string) =>
    `${argument}: ${quoted(given)} is too large. Type ${limit} or less.`,
  unknownName: (argument: string, given: unknown, nearest: string, instead: string | undefined) =>
    `${argument}: ${quoted(given)} isn't in the list. Did you mean “${nearest}”?${instead ? ` Or type ${instead}.` : ""}`,
  bothEdgings: (side: string) => `${side}: this side has the first edging, too. Take one of them off it.`,
  noSecondSide: () => "Second edging: pick the sides that it goes along.",
  tooLong: (argument: string, given: unknown, most: string) =>
    `${argument}: can't use ${quoted(given)}. Type ${most} or less.`,
  oneCell: (argument: string) => `${argument} is a range of cells. Give one cell.`,
  notWhole: (argument: string, given: unknown, most: number) =>
    `${argument}: can't use ${quoted(given)}. Type a whole number${Number.isFinite(most) ? `, ${most} or less.` : "."}`,
  notYesOrNo: (argument: string, given: unknown) => `${argument}: can't use ${quoted(given)}. Type TRUE or FALSE.`,
  shareTooLarge: (argument: string, given: unknown, under: number) =>
    `${argument}: ${quoted(given)} must be ${under === 1 ? "under 1" : `${under} or less`}. ` +
    `Type 10% or 0.10, not 10.`,
  tooHeavy: (argument: string, given: unknown, most: number) =>
    `${argument}: ${quoted(given)} is too heavy: a cubic yard weighs no more than ${most} tons. ` +
    `Type short tons, such as 1.35 for 2,700 lb.`,
  notARule: (argument: string, given: unknown) =>
    `${argument}: can't use ${quoted(given)}. Type "simpson" or "trapezoid".`,
  notADate: (argument: string, given: unknown) => `${argument}: can't read ${quoted(given)} as a date. Try 2026-12-07.`,
  afterLastDate: () => "notice_date is too far in the future. Type the day of notice.",
  oneRowOrColumn: (argument: string) =>
    `${argument} is a block of cells. Give one row or one column, so the order is clear.`,
  notPairs: (argument: string, columns: number) =>
    `${argument} has ${columns} ${columns === 1 ? "column" : "columns"}. Give two: x and y, in feet.`,
  countsBesideLengths: (counts: number, lengths: number) =>
    `counts has ${counts} cells and lengths has ${lengths}. Give one count for each length.`,
  notCutOuts: (argument: string, columns: number) =>
    `${argument} has ${columns} ${columns === 1 ? "column" : "columns"}. ` +
    "Give x, y, width, and depth (none for a circle), in feet.",

  radiusTooLarge: (radiusFt: number, mostFt: number) =>
    `corner_radius is ${short(radiusFt)} ft, too large for these sides. Type ${short(mostFt)} ft or less.`,
  nothingLeft: () => "cut_outs take up the whole bed. Type smaller cut-outs.",
  cutOutsTooLarge: (bedSqFt: number, cutOutsSqFt: number) =>
    `cut_outs come to ${short(cutOutsSqFt)} sq ft, and the bed has ${short(bedSqFt)}: nothing is left. ` +
    `Type smaller cut-outs.`,
  noTriangle: (a: number, b: number, c: number) =>
    `side_a, side_b and side_c are ${short(a)}, ${short(b)} and ${short(c)} ft, which can't make a triangle: ` +
    `the longest must be shorter than the other two combined. Tape them again.`,
  innerNotSmaller: (innerFt: number, outerFt: number) =>
    `inner_diameter is ${short(innerFt)} ft, leaving no ring. Type less than the diameter, ${short(outerFt)} ft.`,
  tooFewWidths: (count: number) => `widths has ${count}. Give at least 2, one at each end of the base line.`,
  moreWidths: (fewest: number) => `A bed by widths needs at least ${fewest} of them, one at each end of the base line.`,
  tiesApart: (label: string, first: string, second: string) =>
    `${label}: ${first} and ${second} don't meet. Tape both distances again, and the one between the fixed points.`,
  morePoints: (fewest: number) => `An outline needs at least ${fewest} points, each with x and y.`,
  widthsAllZero: () => "widths are all 0. Type the widths from the base line, such as 4' 6\".",
  tooFewPoints: (count: number, fewest: number) =>
    `points has ${count} different ${count === 1 ? "point" : "points"}. Give at least ${fewest}, each with x and y.`,
  outlineCrosses: (from: number, to: number, otherFrom: number, otherTo: number) =>
    `points: side ${from} to ${to} meets side ${otherFrom} to ${otherTo}. Put the points in order around the bed.`,
  enclosesNothing: () => "points are all on one line. Give the corners in order around the bed.",
  lapTooLong: (argument: string, lapIn: number, mostIn: number, what: string) =>
    `${argument} is ${short(lapIn)} in, but ${what} ${short(mostIn)} in. Type less than that.`,
  tooManyPieces: () => "length comes to more than 100,000 pieces of fabric. Check your units.",
  noDepth: (heightIn: number, takenIn: number) =>
    `border_height_in is ${short(heightIn)} in, and trench_depth_in and top_gap_in take ${short(takenIn)} in of it, ` +
    `leaving no depth for stone. Type taller edging or a shallower trench.`,
  unforeseen: () => "Can't work this out. Check each value and its unit.",
  overflow: () => "The answer is too large. Check your units.",
} as const;

/** A number as a message shows it: six digits at most, and never "Infinity". */
const short = (value: number) => String(Number(Math.min(value, Number.MAX_VALUE).toPrecision(6)));

/** What was given, as a message shows it: text between typographic quotes, so that inch marks stay readable. */
export function quoted(given: unknown): string {
  switch (typeof given) {
    case "string":
      // Cut, but not through the middle of a sign that takes two units.
      return `“${given.length > 40 ? given.slice(0, 39).replace(/[\ud800-\udbff]$/, "") + "…" : given}”`;
    case "boolean":
      return given ? "TRUE" : "FALSE";
    case "number":
    case "bigint":
      return String(given);
    case "undefined":
      return "a blank";
    default:
      return given === null ? "a blank" : Array.isArray(given) ? "a range of cells" : "a value of another kind";
  }
}
