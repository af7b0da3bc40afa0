import type { CutOut } from "../layout/bed";
import { cutOutAt } from "../layout/cutOutAt";
import { messages } from "../quantities/messages";
import { Problem } from "../quantities/problem";
import { isBlank, rowsOf } from "./cell";
import { coordinate, feet } from "./read";

/**
 * Cut-outs of a range, one a row: x and y of the middle, how far across, and how deep for a rectangle; without a
 * depth it is round. Blank rows are skipped.
 */
export function cutOuts(range: unknown, argument: string): CutOut[] {
  if (range === undefined || range === null) return [];
  return rowsOf(range).flatMap((row, place) => {
    if (row.every(isBlank)) return [];
    if (row.length < 3 || row.length > 4) {
      throw new Problem("value", messages.notCutOuts(argument, row.length), argument);
    }
    const named = (what: string) => `${argument} (row ${place + 1}, ${what})`;
    const [x, y] = [coordinate(row[0], named("x")), coordinate(row[1], named("y"))];
    const across = feet(row[2], named("across"));
    return [cutOutAt(x, y, across, isBlank(row[3]) || row[3] === 0 ? undefined : feet(row[3], named("deep")))];
  });
}
