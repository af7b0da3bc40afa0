import type { Cell, Target } from "../book";
import type { Change, Level } from "../finding";
import type { Study } from "../study";

/** One thing that a rule saw, in one cell. */
export interface Observation {
  readonly cell: Cell;
  /** Other cells that it is about, beside the first. */
  readonly more?: readonly (Cell | Target)[];
  /** Observations of a rule with the same group are one mistake in many cells. */
  readonly group: string;
  /** What makes it this observation and no other; a dismissal holds while it stays the same. */
  readonly about: string;
  /** Cells that it may come from: where another rule found something in one of them, this is no more than its echo. */
  readonly echoOf?: readonly Target[];
  readonly seen: string;
  readonly todo: string;
  /** Where they differ from the rule's own. */
  readonly matters?: string;
  readonly level?: Level;
  readonly rank?: number;
  readonly fix?: readonly Change[];
}

/** Something that is looked for. Rules are pure: a study in, observations out. */
export interface Rule {
  readonly id: string;
  readonly title: string;
  readonly level: Level;
  /** About how many percent of a quantity or price such a thing usually costs, 0 to 100. */
  readonly rank: number;
  readonly matters: string;
  /** Rules that say less about the same cell: what they saw there is left out. */
  readonly covers?: readonly string[];
  /** Looks through a study; an undefined in between is a place to pause. */
  readonly look: (study: Study) => Generator<Observation | undefined>;
}

/** How far one number is off another, in percent of what it should be, at most 100. */
export function offBy(is: number | undefined, shouldBe: number | undefined, otherwise: number): number {
  if (is === undefined || shouldBe === undefined) return otherwise;
  if (shouldBe === 0) return is === 0 ? 0 : 100;
  return Math.min(100, Math.round((Math.abs(is - shouldBe) / Math.abs(shouldBe)) * 100));
}

/** A change of one cell, from what stands there now. */
export function change(
  study: Study,
  { sheet, row, column }: Cell,
  after: string | number,
  numberFormat?: string,
): Change {
  const grid = study.book.grids[sheet]!;
  const before = grid.formula(row, column) ?? grid.value(row, column);
  return { sheet: grid.name, row, column, before, after, ...(numberFormat && { numberFormat }) };
}
