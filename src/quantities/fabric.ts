import { messages } from "./messages";
import { Problem } from "./problem";
import { INCHES_PER_FOOT } from "./units";
import { WHOLE_TOLERANCE, wholeUp } from "./whole";

/**
 * Strips of fabric side by side, each lapping the one beside it.
 *
 * @param bedWidthFt more than 0.
 * @param rollWidthFt more than 0.
 * @param overlapIn 0 or more, less than the roll is wide.
 * @returns whole strips: 1 where the roll is as wide as the bed, else ⌈(W − o)/(R − o)⌉.
 * @throws Problem where the overlap is no narrower than the roll.
 * @example fabricStrips(11, 6, 12) // 2
 */
export function fabricStrips(bedWidthFt: number, rollWidthFt: number, overlapIn: number): number {
  const overlapFt = overlapIn / INCHES_PER_FOOT;
  if (overlapFt >= rollWidthFt) {
    const mostIn = rollWidthFt * INCHES_PER_FOOT;
    throw new Problem("value", messages.lapTooLong("overlap_in", overlapIn, mostIn, "roll_width is"), "overlap_in");
  }
  if (bedWidthFt <= rollWidthFt) return 1;
  return wholeUp((bedWidthFt - overlapFt) / (rollWidthFt - overlapFt));
}

/**
 * Fabric that lies in the bed, laps counted twice.
 *
 * @param lengthFt length of the bed along the strips, more than 0.
 * @param widthFt width of the bed, more than 0.
 * @param rollWidthFt more than 0.
 * @param overlapIn lap of strips side by side, 0 or more, less than the roll is wide.
 * @param rollLengthFt infinity where strips are laid without a joint; else more than the end lap.
 * @param endLapIn lap of pieces end to end, 0 or more.
 * @returns square feet: (W + (strips − 1)·o) × (L + (k − 1)·e) with k pieces a strip.
 * @throws Problem where a lap is too long.
 * @example fabricArea(30, 11, 6, 12) // 360
 */
export function fabricArea(
  lengthFt: number,
  widthFt: number,
  rollWidthFt: number,
  overlapIn: number,
  rollLengthFt = Number.POSITIVE_INFINITY,
  endLapIn = 12,
): number {
  const strips = fabricStrips(widthFt, rollWidthFt, overlapIn);
  const lapFt = endLapOf(rollLengthFt, endLapIn);
  const pieces = lengthFt <= rollLengthFt ? 1 : wholeUp((lengthFt - lapFt) / (rollLengthFt - lapFt));
  return (widthFt + (strips - 1) * (overlapIn / INCHES_PER_FOOT)) * (lengthFt + (pieces - 1) * lapFt);
}

/** The end lap in feet; refused where a whole roll would be used up by it. */
export function endLapOf(rollLengthFt: number, endLapIn: number): number {
  const lapFt = endLapIn / INCHES_PER_FOOT;
  if (lapFt >= rollLengthFt * (1 - WHOLE_TOLERANCE)) {
    const mostIn = rollLengthFt * INCHES_PER_FOOT;
    throw new Problem("value", messages.lapTooLong("end_lap_in", endLapIn, mostIn, "roll_length is"), "end_lap_in");
  }
  return lapFt;
}

/** Digits of a length in a list of strips: an exact fit still is one at the tolerance of all counts. */
const STRIP_DIGITS = 10;

/**
 * Strips as one cell lists them, which BED.JOB_ROLLS reads: a length each, apart by ";".
 *
 * @param lengthsFt lengths to cut, in feet.
 * @example stripList([18.5, 18.5, 8 / 3]) // "18.5; 18.5; 2.666666667"
 */
export function stripList(lengthsFt: readonly number[]): string {
  return lengthsFt.map((lengthFt) => Number(lengthFt.toPrecision(STRIP_DIGITS))).join("; ");
}

/** A list has its lengths apart by ";", each with how many there are of it before it. */
const COUNTED = /^(\d{1,4})\s*[x×]\s*(.+)$/i;

/**
 * The lengths of strips that one cell lists.
 *
 * @param text such as "2 x 30; 18' 6\""; blank or "0" for none.
 * @param read how a length is read; as decimal feet where left out.
 * @example listedStrips("2 x 30; 18.5") // [30, 30, 18.5]
 */
export function listedStrips(text: string, read: (length: string) => number = Number): number[] {
  if (text.trim() === "" || text === "0") return [];
  return text.split(";").flatMap((part) => {
    const [, count = "1", length = part] = COUNTED.exec(part.trim()) ?? [];
    return Array<number>(Number(count)).fill(read(length.trim()));
  });
}
