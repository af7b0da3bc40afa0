import { SHORT_PIECE_WORDS } from "../quantities/edging";
import { quoted } from "../quantities/messages";
import { printTape } from "../quantities/tape";
import type { Point } from "./plane";

/** A place in plan as the notes give it: x and y in feet from the bed's own zero point, to the hundredth. */
export function place(point: Point): string {
  return `x ${feet(point.x)}, y ${feet(point.y)}`;
}

function feet(value: number): string {
  // + 0 turns a rounded -0 into 0.
  return String(Math.round(value * 100) / 100 + 0);
}

/** Digits of a larger count would say nothing. */
const BEYOND_COUNTING = 1e15;

/**
 * What the layout says about a bed it cannot lay out. Part of the one catalogue: each message names the value
 * or the place, says what's wrong, and what to type.
 */
export const layoutMessages = {
  notPositive: (what: string, arrived: number) =>
    `${what} is ${arrived}. Type a length over 0, in the same unit as the other lengths.`,
  negative: (what: string, arrived: number) => `${what} is ${arrived}, less than 0. Type 0 or more.`,
  notBetween: (what: string, arrived: number, least: number, most: number, hint: string) =>
    `${what} is ${arrived}. Type ${least} to ${most}.${hint}`,
  notFinite: (what: string, arrived: unknown) => `${what}: can't use ${quoted(arrived)}. Type feet, like 12.5.`,
  radiusTooLarge: (radius: number, largest: number) =>
    `The ${radius} ft corner radius doesn't fit this bed. Type ${largest} ft or less.`,
  innerTooLarge: (inner: number, outer: number) =>
    `The inner diameter, ${inner} ft, isn't smaller than the diameter, ${outer} ft. Check which is which.`,
  tooFewWidths: (arrived: number) =>
    `${arrived === 1 ? "There is 1 width" : `There are ${arrived} widths`}. Tape at least 2, evenly spaced along the base line.`,
  widthNegative: (which: number, arrived: number) =>
    `Width ${which} is ${arrived}. Type the width there, or 0 where the bed comes to a point.`,
  widthZeroInside: (which: number, at: number) =>
    `Width ${which} (at ${feet(at)} ft along the base line) is 0 between wider spots. Measure each side as its own bed.`,
  allWidthsZero: () => "All the widths are 0. Type the widths you taped.",
  tooFewPoints: (what: string, arrived: number) =>
    `${what} has ${arrived} different ${arrived === 1 ? "point" : "points"}. Give at least 3, in order around it.`,
  noArea: (what: string) => `The points of ${what} are all on one line. Check the list of points.`,
  sidesCross: (what: string, first: number, second: number, at: Point) =>
    `Side ${first} of ${what} crosses side ${second} at ${place(at)}. Put the points in order around it.`,
  sidesTouch: (what: string, first: number, second: number, at: Point) =>
    `Side ${first} of ${what} touches side ${second} at ${place(at)}. Move one of them, or measure it as two beds.`,
  foldsBack: (what: string, first: number, second: number, at: Point) =>
    `Sides ${first} and ${second} of ${what} overlap from ${place(at)}. Remove the point that doubles back.`,
  cutOutLeavesBed: (which: string, at: Point) =>
    `${quoted(which)} reaches outside the bed at ${place(at)}. Move it or make it smaller.`,
  cutOutsOverlap: (first: string, second: string, at: Point) =>
    `${quoted(first)} and ${quoted(second)} overlap at ${place(at)}. Make them one cut-out, or check where they are.`,
  nothingLeft: () => "The cut-outs take up the whole bed. Check their sizes.",
  noSuchSide: (side: number, count: number) => `There is no side ${side}, only 1 to ${count}.`,
  tooMuch: (what: string, count: number, limit: number) =>
    `This would take ${count < BEYOND_COUNTING ? `${count} ${what}, more` : `more ${what}`} than the ${limit} that can be ` +
    "laid out. Check your units.",
} as const;

/** What the layout tells beside its counts. */
export const layoutNotes = {
  straightBetweenWidths: (calculated: number, drawn: number) =>
    `The area (${square(calculated)} sq ft) is by Simpson's rule, for a curved edge; the drawing runs straight ` +
    `from width to width, which is ${square(drawn)} sq ft.`,
  /** @param lapIn as it is; where it is as long as rows are apart, the bed is too narrow there for a pin of any row. */
  looseEndLap: (cut: number, spacingIn: number, lapIn: number) =>
    `No pin row crosses the end lap of cut ${cut}. ` +
    (lapIn < spacingIn ? `Lap the pieces ${feet(spacingIn)} in, or pin the lap across.` : "Pin the lap across."),
  shortPiece: (number: number) => `P${number} ${SHORT_PIECE_WORDS}`,
  secondNotDrawn: (kind: string, lengthFt: number) =>
    `The second edging, ${printTape(lengthFt)} of ${kind}, isn't drawn. Mark where it goes.`,
} as const;

const square = (value: number): string => value.toFixed(1);
