import type { Failure } from "../formula/values";
import type { ExplainedArgument, Explanation } from "./explanation";

/** Where the mend begins in a message of our functions: they say first what is wrong, then what to type. */
const MEND = /(?<=:)\s(?=type\b)|\s(?=(?:Type|Give|Put|Carry|Check|Tape|Did you mean|A number is)\b)/;

const COMES_FROM = "The error comes from";

/**
 * Why a call gives an error, and what to do: in the function's own words where they are known, else from what its
 * arguments are.
 */
export function troubleOf(
  failure: Failure,
  given: readonly ExplainedArgument[],
  inside: readonly Explanation[],
): NonNullable<Explanation["error"]> {
  const inner = inside.find(({ error }) => error !== undefined);
  if (inner) {
    const { reason, mend } = inner.error!;
    // Of several inside one another the innermost is told.
    return { reason: reason.startsWith(COMES_FROM) ? reason : `${COMES_FROM} ${inner.text}: ${reason}`, mend };
  }
  if (failure.message) {
    const [reason = failure.message, ...mend] = failure.message.split(MEND);
    return { reason: reason.replace(/:$/, "."), mend: capital(mend.join(" ")) || "Check each value and its unit." };
  }
  const wrong = given.find(({ trouble }) => trouble !== undefined);
  if (wrong)
    return { reason: wrong.trouble!, mend: `Mend ${wrong.name}${wrong.text ? `, which is ${wrong.text}` : ""}.` };
  if (failure.error === "#NAME?") {
    return { reason: "The host does not know this function.", mend: "Load the add-in, then work the sheet out again." };
  }
  if (failure.error === "#N/A") return { reason: "A name stands in no table.", mend: "Check how the name is spelled." };
  if (failure.error === "#DIV/0!")
    return { reason: "It divides by 0 or by a blank.", mend: "Fill in what it divides by." };
  return { reason: `It gives ${failure.error}.`, mend: "Check each value and its unit." };
}

const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);
