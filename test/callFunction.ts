import * as functions from "../src/functions/index";
import type { CallFunction } from "../src/review/book";
import { isFailure, isRange, type Value } from "../src/review/formula/values";
import { FakeCellError, standInForCustomFunctions } from "./fakeCustomFunctions";

const calls = functions as unknown as Readonly<Record<string, (...given: unknown[]) => unknown>>;

/**
 * Works out a worksheet function as the host would, for a check or an explanation: an error among the given
 * values is the answer, blanks arrive as null, and what the function throws comes with its message.
 */
export const callFunction: CallFunction = (name, given) => {
  const called = name.startsWith("BED.") ? calls[name.slice("BED.".length)] : undefined;
  if (!called) return undefined;
  for (const value of given.flatMap((one) => (isRange(one) ? one.flat() : [one]))) if (isFailure(value)) return value;
  standInForCustomFunctions();
  try {
    return called(...given) as Value;
  } catch (reason) {
    if (reason instanceof FakeCellError) return { error: reason.code, message: reason.message };
    throw reason;
  }
};
