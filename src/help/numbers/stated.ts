import type { HowSure } from "../../quantities/tables";
import { escaped, table } from "../html";

/** How sure a value is, in words for the reader. */
export const HOW_SURE: Readonly<Record<HowSure, string>> = {
  seen: "read in the source",
  memory: "from memory",
  practice: "common practice",
};

/** What no one else is behind. */
export const OUR_CHOICE = "our own choice";

/** A number that is built in: what it is for, and what it rests on. */
export interface Stated {
  readonly what: string;
  readonly value: string;
  /** How sure it is: a word of `HOW_SURE`, or `OUR_CHOICE`. */
  readonly rests: string;
  /** The publication or the working behind it, where there is one. */
  readonly source?: string;
  /** The constants that hold it, by their names: a test finds those that are in no table. */
  readonly constants: readonly string[];
}

export function statedTable(rows: readonly Stated[]): string {
  return table(
    ["What", "Value", "Based on"],
    rows.map(({ what, value, rests, source }) => [
      escaped(what),
      escaped(value),
      escaped(source ? `${rests}: ${source}` : rests),
    ]),
  );
}

export const percents = (share: number) => `${Number((share * 100).toPrecision(6))}%`;

/** Numbers above a thousand are read in groups. */
export const many = (count: number) => count.toLocaleString("en-US");
