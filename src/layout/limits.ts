import { messages as allMessages } from "../quantities/messages";
import { Problem } from "../quantities/problem";
import type { Bed } from "./bed";
import { layoutMessages as messages } from "./messages";

/*
 * How much of a bed is laid out at most. A sheet waits for its functions, so what can only be a mistake of units is refused
 * before the work is done. The limits count work, not time: the same sheet gives the same answer on every machine.
 */

/** Any measure of a bed, in feet: 190 miles. */
export const MOST_FT = 1_000_000;
/** Corners of an outline, or widths from a base line. A crew tapes a few dozen. */
export const MOST_CORNERS = 2000;
/** Things that are in a bed and are placed in plan. */
export const MOST_CUT_OUTS = 100;
export const MOST_PINS = 100_000;
/** Pins times the straight pieces of the edge: each pin is looked for on each piece. */
const MOST_PINS_BY_EDGE = 1e8;
/** Places between the edges that are looked at for a pin; few of them may lie in a thin bed. */
const MOST_PLACES = 1_000_000;

/**
 * Refuses a bed that is given with more corners or cut-outs than anyone tapes, or with a measure beyond all beds.
 *
 * @throws Problem that says how many, and how many there may be.
 */
export function refuseEndless(bed: Bed): void {
  if (bed.kind === "points") refuseOver(MOST_CORNERS, "corners", bed.points.length, "points");
  if (bed.kind === "widths") refuseOver(MOST_CORNERS, "widths", bed.widthsFt.length, "widths");
  for (const cutOut of bed.cutOuts ?? [])
    if (cutOut.kind === "outline") refuseOver(MOST_CORNERS, "corners", cutOut.points.length, "cut_outs");
  refuseOver(MOST_CUT_OUTS, "cut-outs", bed.cutOuts?.length ?? 0, "cut_outs");
  refuseFar(bed);
}

/** Looks at every number of a bed, however deep it stands. */
function refuseFar(part: unknown): void {
  if (typeof part === "number" && Math.abs(part) > MOST_FT)
    throw new Problem("value", allMessages.tooLarge("A bed measurement", part, "1,000,000 ft"));
  if (typeof part === "object" && part !== null) Object.values(part).forEach(refuseFar);
}

/**
 * Refuses more pins than any bed takes.
 *
 * @param edgePieces straight pieces of the bed's edge that the pins are looked for on; 1 where they are not.
 */
export function refusePins(count: number, edgePieces = 1): void {
  refuseOver(Math.floor(Math.min(MOST_PINS, MOST_PINS_BY_EDGE / edgePieces)), "pins", count, "spacing_in");
}

/** Refuses more places for pins than there is time to look at. */
export const refusePlaces = (count: number): void => refuseOver(MOST_PLACES, "places for pins", count, "spacing_in");

function refuseOver(most: number, what: string, count: number, argument: string): void {
  if (count <= most) return;
  throw new Problem("value", messages.tooMuch(what, Math.ceil(count), most), argument);
}
