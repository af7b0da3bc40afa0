import type { CellContent } from "./region";

const UNMARKED = /^\p{L}[^\d]*$/u;
const TRUTH = /^(?:true|false)$/i;
const ERROR = /^#(?:N\/A|VALUE!|REF!|DIV\/0!|NUM!|NAME\?|NULL!|SPILL!|CALC!|BUSY!)$/;

/**
 * What to write into a cell so that it holds this value and nothing else: text that a spreadsheet program could read
 * as a number, a date or a formula gets the host's text mark.
 *
 * @example written("6-8") // '6-8
 */
export function written(value: CellContent): string | number {
  if (typeof value === "number") return value;
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (value === "" || ERROR.test(value)) return value;
  return UNMARKED.test(value) && !TRUTH.test(value) ? value : `'${value}`;
}
