import { toCol } from "@borgar/fx";
import type { CellValue } from "../src/review/facts";
import type { Finding, Place } from "../src/review/finding";
import { reviewAtOnce } from "../src/review/review";
import type { Rule } from "../src/review/rules/rule";
import { callFunction } from "./callFunction";
import { factsOf, knowledge, type SheetInput, type WorkbookInput } from "./reviewWorkbook";

/** Rows of the sheet Jobs, or one sheet, or a whole workbook. */
export type Input = SheetInput["rows"] | Omit<SheetInput, "name"> | WorkbookInput;

/** A finding with addresses in place of row and column numbers; the sheet Jobs is left out of them. */
export interface Found extends Pick<Finding, "level" | "rank" | "seen" | "matters" | "todo" | "key"> {
  readonly cells: readonly string[];
  readonly related: readonly string[];
  /** What each cell would hold after the fix; undefined where there is none. */
  readonly fix: Readonly<Record<string, CellValue>> | undefined;
  /** Number formats that go with the fix. */
  readonly formats: Readonly<Record<string, string>>;
}

function workbookOf(input: Input): WorkbookInput {
  if ("sheets" in input) return input;
  const sheet = "rows" in input ? (input as Omit<SheetInput, "name">) : { rows: input as SheetInput["rows"] };
  return { sheets: [{ name: "Jobs", ...sheet }] };
}

/**
 * What one rule, or a few, find in a workbook when no other rule is asked.
 *
 * @example findWith(payload, [["Stone (tons)", "Loads"], [9, 2], ["Truck payload", 2.6]])
 */
export function findWith(rule: Rule | readonly Rule[], input: Input): Found[] {
  const rules = [rule].flat();
  const { findings } = reviewAtOnce(factsOf(workbookOf(input)), knowledge, { call: callFunction, rules });
  return findings.map(({ level, rank, seen, matters, todo, key, places, related, fix }) => ({
    level,
    rank,
    seen,
    matters,
    todo,
    key,
    cells: places.flatMap(addressesOf),
    related: related.flatMap(addressesOf),
    fix: fix && Object.fromEntries(fix.map((one) => [addressOf(one), one.after])),
    formats: Object.fromEntries(
      (fix ?? []).flatMap((one) => (one.numberFormat ? [[addressOf(one), one.numberFormat]] : [])),
    ),
  }));
}

/** Only the cells that a rule finds something in. */
export const cellsFound = (rule: Rule | readonly Rule[], input: Input): string[] =>
  findWith(rule, input).flatMap(({ cells }) => cells);

const addressOf = ({ sheet, row, column }: Pick<Place, "sheet" | "row" | "column">) =>
  `${sheet === "Jobs" ? "" : `${sheet}!`}${toCol(column)}${row + 1}`;

function addressesOf({ sheet, row, column, rows, columns }: Place): string[] {
  return Array.from({ length: rows * columns }, (_, place) =>
    addressOf({ sheet, row: row + Math.floor(place / columns), column: column + (place % columns) }),
  );
}
