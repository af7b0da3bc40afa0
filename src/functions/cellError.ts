import { messages } from "../quantities/messages";
import { Problem } from "../quantities/problem";

/**
 * What a cell shows for a reason that was thrown: `#N/A` for a name that is in no table, `#VALUE!` for
 * everything else, each with its message. Called only where something went wrong, so that the host's global is
 * not touched before.
 */
export function cellError(reason: unknown): CustomFunctions.Error {
  const { invalidValue, notAvailable } = CustomFunctions.ErrorCode;
  if (!(reason instanceof Problem)) return new CustomFunctions.Error(invalidValue, messages.unforeseen());
  return new CustomFunctions.Error(reason.kind === "name" ? notAvailable : invalidValue, reason.message);
}

/**
 * Lets an answer through to the cell if it is a quantity: neither negative nor beyond all numbers.
 *
 * @throws Problem where the arithmetic overflowed.
 */
export function sound(answer: number): number {
  // + 0 makes a plain 0 of a -0 that someone typed.
  if (answer >= 0 && answer <= Number.MAX_VALUE) return answer + 0;
  throw new Problem("value", messages.overflow());
}
