import { messages } from "../messages";
import { Problem } from "../problem";

/**
 * Refuses what is no count of days.
 *
 * @param argument the name to use in the message.
 * @param days what was given.
 * @param most the longest stretch that is still a number of days and no mistake.
 * @throws Problem "value" for days that are not whole, under 1, or more than the most.
 * @example checkDays("working_days", -2, 366) // refused: less than 0
 */
export function checkDays(argument: string, days: number, most: number): void {
  if (Number.isInteger(days) && days >= 1 && days <= most) return;
  throw new Problem("value", wordsFor(argument, days, most), argument);
}

function wordsFor(argument: string, days: number, most: number): string {
  if (days === 0) return messages.zero(argument, "2");
  return days < 0 ? messages.negative(argument, days, true) : messages.notWhole(argument, days, most);
}
