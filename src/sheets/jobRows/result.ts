import type { RateKey } from "../../quantities/bed/rates";
import type { FormatName } from "../plan";
import type { ResultRole } from "./roles";
import type { ListSetting } from "./setting";

/** How one result of a bed is worked out from its row. */
export interface Result {
  /** The heading of a new column; it reads back as this result. */
  readonly heading: string;
  readonly format: FormatName;
  /** What a bed's row must tell; area and border may stand in a column of their own instead. */
  readonly needs: "area" | "border" | "sides" | "stone" | "nothing";
  /** Results that have to stand in columns of their own, so that the formula can be read. */
  readonly columns: readonly ResultRole[];
  /** Rates without which it would rest on invented prices or paces. */
  readonly rates: readonly RateKey[];
  readonly formula: (row: Row) => string;
  /** What it is, and what is taken for granted, for the person. */
  readonly note: string;
}

/** A row for which formulas are made. */
export interface Row {
  readonly setting: ListSetting;
  readonly row: number;
  /** Another result of the same row: its cell, or how it is worked out. */
  readonly of: (role: ResultRole) => string;
}

export const result = (
  heading: string,
  format: FormatName,
  needs: Result["needs"],
  note: string,
  formula: Result["formula"],
  more: Partial<Pick<Result, "columns" | "rates">> = {},
): Result => ({ heading, format, needs, note, formula, columns: [], rates: [], ...more });

/** A formula of a cell in which `{stone}` is what the row's stone is called. */
export function withStone(formula: string, name: string): string {
  return formula.slice(1).replaceAll("{stone}", () => name);
}
