import { quoted } from "../../quantities/bed/evaluate";
import { must } from "../../quantities/must";
import { Problem } from "../../quantities/problem";
import { cellAddress } from "../../spreadsheet/areas";
import { isAnyOf } from "../estimate/rateFormulas";
import type { InputRole } from "./roles";
import type { ListSetting } from "./setting";

/** A table of names that a column of a list is held to. */
export interface NameTable<Named extends { readonly name: string }> {
  readonly role: InputRole;
  readonly rows: readonly Named[];
  /** What a blank cell is, and every bed of a list without the column. */
  readonly usual: Named;
  /** What a formula gives for any other name: words, with which no arithmetic works. */
  readonly unknown: string;
}

/**
 * A part of a formula that differs by the name in a row's cell: that of the usual one where no column holds names, or
 * where it's the same for all. Capitals, hyphens, and spaces around a name don't matter.
 *
 * @example byName(setting, edgingTable, 1, ({ drawn }) => (drawn === "none" ? "0" : "A2")) // IF(OR(TRIM(K2)="",…),A2,…)
 */
export function byName<Named extends { readonly name: string }>(
  { columns }: ListSetting,
  { role, rows, usual, unknown }: NameTable<Named>,
  row: number,
  of: (named: Named) => string,
): string {
  const column = columns.get(role);
  if (!column) return of(usual);
  const cell = cellAddress({ row, column: column.column });
  const names = new Map<string, string[]>();
  for (const named of rows) {
    const part = of(named);
    const some = [...(named === usual ? [""] : []), named.name];
    names.set(part, [...(names.get(part) ?? []), ...some]);
  }
  if (names.size === 1) return must([...names.keys()][0]);
  return [...names].reduceRight(
    (otherwise, [part, some]) => `IF(${isAnyOf(cell, some)},${part},${otherwise})`,
    quoted(unknown),
  );
}

/**
 * What is wrong with a name, in one line; undefined for a blank and where its table has it.
 *
 * @param find refuses a name that its table doesn't have.
 */
export function troubleOf(name: string, find: () => unknown): string | undefined {
  try {
    if (name.trim() !== "") find();
    return undefined;
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    return problem.message;
  }
}
