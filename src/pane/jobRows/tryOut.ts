import type { CallFunction } from "../../review/book";
import { evaluate } from "../../review/formula/evaluate";
import { PatternReader } from "../../review/formula/pattern";
import { readReference } from "../../review/formula/reference";
import { type Failure, isFailure, type Single, type Value } from "../../review/formula/values";
import type { Filling } from "../../sheets/jobRows/fill";
import type { ListFit } from "../../sheets/jobRows/fit";
import type { NamedRates } from "../../sheets/office/officeRates";

/** What the formulas that would be written give in one row. */
export interface TriedRow {
  readonly row: number;
  /** By column; undefined where it isn't known before the sheet works it out. */
  readonly results: readonly {
    readonly column: number;
    readonly heading: string;
    readonly value: Single | undefined;
  }[];
  /** Why a result is missing, in the words of the function that refused; absent where all are there. */
  readonly problem?: string;
}

/** More rows than this are tried only as they are written. */
const MOST_ROWS = 400;

/**
 * Works out the formulas that would be written into a list, before they are: from the cells of the list as they were
 * read, the office's rates, and the worksheet functions themselves.
 *
 * @param named the cells of the office's rates, by name in lowercase; empty where the workbook has none.
 * @param call calls a worksheet function.
 * @returns the beds in their order, at most 400.
 */
export function tryOut(fit: ListFit, filling: Filling, named: NamedRates, call: CallFunction): TriedRow[] {
  const written = new Map(filling.changes.map(({ row, column, after }) => [`${row},${column}`, after]));
  const known = new Map<string, Value | undefined>();

  const valueAt = (row: number, column: number): Value | undefined => {
    const key = `${row},${column}`;
    if (known.has(key)) return known.get(key);
    // A cell that reads itself has no value while it is worked out.
    known.set(key, undefined);
    const content = written.get(key);
    const value =
      typeof content === "string" && content.startsWith("=") ? resultOf(content, row, column) : shown(row, column);
    known.set(key, value);
    return value;
  };
  const shown = (row: number, column: number): Single => {
    const value = fit.cells.value(row, column);
    if (value === "") return null;
    return typeof value === "string" && /^#[A-Z/0]+[!?]?$/.test(value) ? { error: value } : value;
  };
  const reach = (text: string, start: number): Value | undefined => {
    const { name, edges, sheet, table, workbook } = readReference(text, "range", start, 0, 0);
    if (name !== undefined) {
      const values = named.get(name.toLowerCase())?.values;
      if (!values) return undefined;
      const rows = values.map((cells) => cells.map((cell) => (cell === "" ? null : (cell as Single))));
      return rows.length === 1 && rows[0]?.length === 1 ? rows[0][0] : rows;
    }
    if (sheet !== undefined || table || workbook !== undefined || !edges?.top || !edges.left) return undefined;
    const [top, left] = [edges.top.at, edges.left.at];
    const [bottom, right] = [edges.bottom?.at ?? top, edges.right?.at ?? left];
    if (top === bottom && left === right) return valueAt(top, left);
    const rows = Array.from({ length: bottom - top + 1 }, (_, row) =>
      Array.from({ length: right - left + 1 }, (_, column) => valueAt(top + row, left + column)),
    );
    return rows.flat().includes(undefined) ? undefined : (rows as Value);
  };
  // As in a sheet, an error among the arguments is the answer.
  const callUnlessFailed: CallFunction = (name, given) => given.find(isFailure) ?? call(name, given);
  const resultOf = (formula: string, row: number, column: number): Value | undefined => {
    const { tree } = new PatternReader().read(formula, row, column);
    return tree && evaluate(tree, { reach, call: callUnlessFailed });
  };

  return filling.beds.slice(0, MOST_ROWS).map(({ row }) => {
    const results = filling.columns.map(({ column, heading }) => {
      const value = valueAt(row, column);
      return { column, heading, value: Array.isArray(value) ? undefined : (value as Single | undefined) };
    });
    const failed = results.map(({ value }) => value).filter((value): value is Failure => isFailure(value));
    const told = failed.find(({ message }) => message) ?? failed[0];
    const words = results.map(({ value }) => value).find((value) => typeof value === "string");
    const problem = told ? (told.message ?? told.error) : words;
    return { row, results, ...(problem !== undefined && { problem: String(problem) }) };
  });
}

/** A result as the preview shows it. */
export function resultShown(value: Single | undefined): string {
  if (value === undefined) return "?";
  if (value === null) return "";
  if (isFailure(value)) return value.error;
  if (typeof value !== "number") return String(value);
  return value.toLocaleString("en-US", { maximumFractionDigits: 2 });
}
