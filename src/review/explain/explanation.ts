import { must } from "../../quantities/must";
import type { Failure, Value } from "../formula/values";

/** Works out a part of a formula where it stands: `B5*12` or `BED.FEET(B5)`; undefined where that is not known. */
export type Evaluate = (text: string) => Value | undefined;

/** One argument of a function as it is explained. */
export interface ExplainedArgument {
  /** As the function calls it: `depth_in`. */
  readonly name: string;
  /** As it is written in the formula; "" where it is left out. */
  readonly text: string;
  /** What the cell that it reads is called on the sheet. */
  readonly reads?: string;
  /** What arrived, with its unit: `2.5 in`, `18' 6", which is 18.5 ft`, `left out: 12 in`. */
  readonly value: string;
  /** Where the figure of a name comes from. */
  readonly source?: string;
  /** What is wrong with it, where anything is. */
  readonly problem?: string;
}

export interface Explanation {
  /** The part of the formula that is explained, as it is written. */
  readonly text: string;
  /** `BED.STONE_TONS: stone by weight`. */
  readonly title: string;
  /** The rule in words; "" for a plain formula. */
  readonly rule: string;
  readonly arguments: readonly ExplainedArgument[];
  /** Line by line with the numbers in it. */
  readonly working: readonly string[];
  /** With its unit, or the error. */
  readonly result: string;
  /** Why it is an error, and what to do; hosts do not always show it. */
  readonly error?: { readonly reason: string; readonly fix: string };
  /** Functions inside it, to step into, as they are written from left to right. */
  readonly inside: readonly Explanation[];
}

/** Where the fix begins in a message of our functions: they say first what is wrong, then what to type. */
const FIX = /(?<=:)\s(?=type\b)|\s(?=(?:Type|Try|Give|Put|Carry|Check|Tape|Did you mean|Or type)\b)/;

const COMES_FROM = "The error comes from";

/**
 * Why a call gives an error, and what to do: in the function's own words where they are known, else from what its
 * arguments are.
 */
export function errorOf(
  failure: Failure,
  given: readonly ExplainedArgument[],
  inside: readonly Explanation[],
): NonNullable<Explanation["error"]> {
  const inner = inside.find(({ error }) => error !== undefined);
  if (inner) {
    const { reason, fix } = must(inner.error);
    // Of several inside one another the innermost is told.
    return { reason: reason.startsWith(COMES_FROM) ? reason : `${COMES_FROM} ${inner.text}: ${reason}`, fix };
  }
  if (failure.message) {
    const [reason = failure.message, ...fix] = failure.message.split(FIX);
    return { reason: reason.replace(/:$/, "."), fix: capital(fix.join(" ")) || "Check each value and its unit." };
  }
  const wrong = given.find(({ problem }) => problem !== undefined);
  if (wrong)
    return { reason: must(wrong.problem), fix: `Fix ${wrong.name}${wrong.text ? `, which is ${wrong.text}` : ""}.` };
  if (failure.error === "#NAME?") {
    return {
      reason: "Your spreadsheet program doesn't know this function.",
      fix: "Load the add-in, then recalculate.",
    };
  }
  if (failure.error === "#N/A") return { reason: "A name isn't in the list.", fix: "Check the spelling." };
  if (failure.error === "#DIV/0!")
    return { reason: "It divides by 0 or a blank.", fix: "Type a value in the cell it divides by." };
  return { reason: `It gives ${failure.error}.`, fix: "Check each value and its unit." };
}

const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);
