import { NoNative } from "../../functions/native/given";

/** What every spreadsheet program since 2007 takes. */
const MOST_CHARACTERS = 8192;
const MOST_LEVELS = 64;

/**
 * @param formula with its "=".
 * @throws NoNative for a formula that is longer or deeper than spreadsheet programs take.
 */
export function refuseTooLong(formula: string): void {
  if (formula.length > MOST_CHARACTERS)
    throw new NoNative(`as an ordinary formula it has ${formula.length} characters; the limit is ${MOST_CHARACTERS}`);
  const levels = levelsOf(formula);
  if (levels > MOST_LEVELS)
    throw new NoNative(`as an ordinary formula it nests ${levels} levels deep; the limit is ${MOST_LEVELS}`);
}

/** How deep parentheses are in one another, outside of text. */
export function levelsOf(formula: string): number {
  let [level, deepest] = [0, 0];
  for (const mark of formula.replace(/"(?:[^"]|"")*"|'(?:[^']|'')*'/g, "")) {
    if (mark === "(") deepest = Math.max(deepest, ++level);
    else if (mark === ")") level--;
  }
  return deepest;
}
