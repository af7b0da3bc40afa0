import { must } from "../quantities/must";
import type { CellContent } from "../sheets/plain/region";

/**
 * A worked example of a declaration: `=BED.NAME(arguments) gives answer`, and for a range `for 1, 2; 3, 4` with a row
 * up to each semicolon. A list shows one of its cells: `=INDEX(BED.NAME(arguments), row, column) gives answer`.
 */
export interface Example {
  /** The call with its "="; of a list the call itself, without INDEX. */
  readonly formula: string;
  /** What is in the cells that it refers to, and where their first one is. */
  readonly cells: readonly (readonly CellContent[])[];
  readonly firstCell: string | undefined;
  /** The arguments as the host sends them. */
  readonly given: readonly unknown[];
}

const FORM = /^=(?:INDEX\()?(BED\.\w+\((.*?)\))(?:, \d+, \d+\))? gives [\d.-]+(?: for (?:widths |sides )?(.*))?$/;

/**
 * Reads an example.
 *
 * @throws Error for one that is not written as above.
 */
export function readExample(text: string): Example {
  const [, call, given, cellText] = FORM.exec(text) ?? [];
  if (call === undefined || given === undefined)
    throw new Error(`The example “${text}” isn't in a form this page can read.`);
  const cells = cellText === undefined ? [] : rowsOf(cellText);
  const parts = given.match(/"(?:[^"]|"")*"|[^,\s]+/g) ?? [];
  const range = parts.find((part) => RANGE.test(part));
  return {
    formula: `=${call}`,
    cells,
    firstCell: range?.split(":")[0],
    given: parts.map((part) => (RANGE.test(part) ? cells : valueIn(part))),
  };
}

const RANGE = /^[A-Z]+\d+:[A-Z]+\d+$/;

/** Rows of cells; a single row of numbers stands for a column of them. */
function rowsOf(text: string): number[][] {
  const rows = text.split("; ").map((row) => row.split(", ").map(Number));
  return rows.length > 1 ? rows : must(rows[0]).map((value) => [value]);
}

function valueIn(part: string): CellContent {
  if (part.startsWith('"')) return part.slice(1, -1).replaceAll('""', '"');
  if (part === "TRUE" || part === "FALSE") return part === "TRUE";
  return part.endsWith("%") ? Number(part.slice(0, -1)) / 100 : Number(part);
}
