import { toCol } from "@borgar/fx";
import type { Cell, Target } from "../src/review/book";
import type { CellValue } from "../src/review/facts";
import type { Level } from "../src/review/finding";
import type { Rule } from "../src/review/rules/rule";
import { Study } from "../src/review/study";
import { localAddress } from "../src/review/words";
import { callFunction } from "./callFunction";
import { factsOf, knowledge, type SheetInput, type WorkbookInput } from "./reviewWorkbook";

/** What a rule saw, with addresses in place of row and column numbers. The first sheet's name is left out of them. */
export interface Sighting {
  readonly at: string;
  readonly level: Level;
  readonly rank: number;
  readonly seen: string;
  readonly todo: string;
  readonly matters: string;
  readonly group: string;
  readonly about: string;
  readonly more: readonly string[];
  /** What each cell would hold after the fix; undefined where there is none. */
  readonly fix: Readonly<Record<string, CellValue>> | undefined;
}

/** A workbook with one sheet, or several. */
export type Input = SheetInput["rows"] | Omit<SheetInput, "name"> | WorkbookInput;

const workbookOf = (input: Input): WorkbookInput =>
  "sheets" in input
    ? input
    : { sheets: [{ name: "Jobs", ...("rows" in input ? input : { rows: input as SheetInput["rows"] }) }] };

/** Everything a rule needs to know about a workbook. */
export function studyOf(input: Input): Study {
  const steps = Study.of(factsOf(workbookOf(input)), knowledge, callFunction);
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

/**
 * What one rule sees in a workbook, before sightings of the same mistake are grouped into findings.
 *
 * @param input rows of the sheet Jobs, one sheet, or a whole workbook.
 * @example seenBy(payload, [["Stone (tons)", "Loads"], [9, 2]])
 */
export function seenBy(rule: Rule, input: Input): Sighting[] {
  const study = studyOf(input);
  const local = (place: Cell | Target) => localAddress({ rows: 1, columns: 1, ...place });
  const at = (place: Cell | Target) =>
    place.sheet === 0 ? local(place) : `${study.book.grids[place.sheet]!.name}!${local(place)}`;
  return [...rule.look(study)].flatMap((one) => {
    if (one === undefined) return [];
    const { cell, level = rule.level, rank = rule.rank, matters = rule.matters, more = [], fix } = one;
    const fixed = fix?.map(({ sheet, row, column, after }) => [
      `${sheet === study.book.grids[0]!.name ? "" : `${sheet}!`}${toCol(column)}${row + 1}`,
      after,
    ]);
    return {
      at: at(cell),
      level,
      rank,
      seen: one.seen,
      todo: one.todo,
      matters,
      group: one.group,
      about: one.about,
      more: more.map(at),
      fix: fixed && Object.fromEntries(fixed),
    };
  });
}

/** The cells in which a rule sees something, in its order. */
export const cellsSeenBy = (rule: Rule, input: Input): string[] => seenBy(rule, input).map(({ at }) => at);
