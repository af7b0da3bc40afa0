import { fromCol, parseA1Ref } from "@borgar/fx";
import { SOURCED_SOILS, SOURCED_STONES } from "../src/quantities/tableSources";
import { Book, type Cell, cellKey, type Target } from "../src/review/book";
import type { CellValue, SheetFacts, TableFacts, WorkbookFacts } from "../src/review/facts";
import { evaluate } from "../src/review/formula/evaluate";
import { isFailure, type Single, type Value } from "../src/review/formula/values";
import { knowledgeOf } from "../src/review/knowledge";
import type { Area } from "../src/spreadsheet/areas";
import { callFunction } from "./callFunction";

/** What a check is told of the functions and tables, as the pane hands it over. */
export const knowledge = knowledgeOf(SOURCED_STONES, SOURCED_SOILS);

/** A cell as test files write it down; with `v`, a formula that shows a value which cannot be worked out here. */
export type CellText = CellValue | null | { readonly f: string; readonly v: CellValue };

/** A sheet as test files write it down: rows of constants and formulas from A1 on, "" or null where blank. */
export interface SheetInput {
  readonly name: string;
  readonly rows: readonly (readonly CellText[])[];
  /** Number formats by range: `"F2:F9": "0%"`. */
  readonly formats?: Readonly<Record<string, string>>;
  /** As the host numbers them, from 1. */
  readonly hiddenRows?: readonly number[];
  /** By letter. */
  readonly hiddenColumns?: readonly string[];
  readonly merged?: readonly string[];
  readonly visibility?: SheetFacts["visibility"];
  readonly protected?: boolean;
}

export interface WorkbookInput {
  readonly sheets: readonly SheetInput[];
  /** What names stand for: `"CrewRate": "=Rates!$B$2"`. */
  readonly names?: Readonly<Record<string, string>>;
  readonly tables?: readonly (Omit<TableFacts, "area"> & { readonly range: string })[];
}

/** The rectangle of an address such as `A1:H1`. */
export function areaOf(address: string): Area {
  const read = parseA1Ref(address);
  if (!read || !("range" in read)) throw new RangeError(`${address} is no address.`);
  const { top, left, bottom, right } = read.range;
  return { row: top!, column: left!, rows: (bottom ?? top!) - top! + 1, columns: (right ?? left!) - left! + 1 };
}

/** The facts of a workbook that was written down, with every formula worked out. */
export function factsOf(input: WorkbookInput): WorkbookFacts {
  const facts: WorkbookFacts = {
    sheets: input.sheets.map(sheetFacts),
    names: Object.entries(input.names ?? {}).map(([name, formula]) => ({ name, formula })),
    tables: (input.tables ?? []).map(({ range, ...table }) => ({ ...table, area: areaOf(range) })),
  };
  return recalculated(facts, shownValues(input));
}

/** What a cell holds: a constant, or a formula with its "=". */
export const contentOf = (cell: CellText | undefined): CellValue =>
  typeof cell === "object" && cell !== null ? cell.f : (cell ?? "");

function shownValues({ sheets }: WorkbookInput): Map<string, CellValue> {
  const shown = new Map<string, CellValue>();
  for (const [sheet, { rows }] of sheets.entries()) {
    for (const [row, cells] of rows.entries()) {
      for (const [column, cell] of cells.entries()) {
        if (typeof cell === "object" && cell !== null) shown.set(cellKey({ sheet, row, column }), cell.v);
      }
    }
  }
  return shown;
}

function sheetFacts(sheet: SheetInput): SheetFacts {
  const columns = Math.max(0, ...sheet.rows.map((row) => row.length));
  const formulas = sheet.rows.map((row) => Array.from({ length: columns }, (_, place) => contentOf(row[place])));
  const numberFormat = formulas.map((row) => row.map(() => "General"));
  for (const [address, format] of Object.entries(sheet.formats ?? {})) {
    const area = areaOf(address);
    for (let row = area.row; row < area.row + area.rows; row++) {
      for (let column = area.column; column < area.column + area.columns; column++) {
        const cells = numberFormat[row];
        if (cells && column < cells.length) cells[column] = format;
      }
    }
  }
  return {
    name: sheet.name,
    visibility: sheet.visibility ?? "Visible",
    protected: sheet.protected ?? false,
    hiddenRows: (sheet.hiddenRows ?? []).map((row) => row - 1),
    hiddenColumns: (sheet.hiddenColumns ?? []).map(fromCol),
    merged: (sheet.merged ?? []).map(areaOf),
    ...(columns > 0 && {
      used: withValues(0, 0, formulas, numberFormat, (row, column) => notYet(formulas[row]![column]!)),
    }),
  };
}

/** A formula that no one has worked out shows nothing. */
const notYet = (content: CellValue): CellValue =>
  typeof content === "string" && content.startsWith("=") ? "" : content;

function withValues(
  row: number,
  column: number,
  formulas: readonly (readonly CellValue[])[],
  numberFormat: readonly (readonly string[])[],
  valueAt: (row: number, column: number) => CellValue,
): NonNullable<SheetFacts["used"]> {
  const values = formulas.map((cells, r) => cells.map((_, c) => plain(valueAt(r, c))));
  const isFormula = (content: CellValue | undefined) => typeof content === "string" && content.startsWith("=");
  return {
    row,
    column,
    values,
    formulas: formulas.map((cells) => cells.map(plain)),
    text: values.map((cells) => cells.map(String)),
    numberFormat,
    valueTypes: values.map((cells, r) =>
      cells.map((value, c) =>
        typeof value === "number"
          ? "Double"
          : typeof value === "boolean"
            ? "Boolean"
            : value === "" && !isFormula(formulas[r]?.[c])
              ? "Empty"
              : isError(value)
                ? "Error"
                : "String",
      ),
    ),
  };
}

/** Also where someone typed it: the host takes `#N/A` for an error. */
const isError = (value: CellValue) => typeof value === "string" && /^#[A-Z]+[/A-Z_\d]*[!?]?$/.test(value);

/** The host takes the text mark off what was typed as text. */
const plain = (value: CellValue): CellValue =>
  typeof value === "string" && value.startsWith("'") ? value.slice(1) : value;

/**
 * The same facts with every formula worked out again, by the small evaluator of the check and the functions
 * themselves; a test holds it against the grid's engine.
 *
 * @throws {Error} for a formula that the evaluator does not know.
 */
export function recalculated(facts: WorkbookFacts, shown: ReadonlyMap<string, CellValue> = new Map()): WorkbookFacts {
  const reading = Book.read(facts);
  let step = reading.next();
  while (!step.done) step = reading.next();
  const book = step.value;
  const known = new Map<string, Single>();
  const open = new Set<string>();

  const valueAt = (cell: Cell): Single => {
    const grid = book.grids[cell.sheet]!;
    const pattern = book.patternAt(cell.sheet, cell.row, cell.column);
    if (!pattern) {
      const value = grid.value(cell.row, cell.column);
      return value === "" ? null : value;
    }
    const key = cellKey(cell);
    const given = shown.get(key);
    if (given !== undefined) return given;
    if (known.has(key)) return known.get(key)!;
    if (open.has(key)) return 0;
    open.add(key);
    const value = pattern.tree === undefined ? { error: "#NAME?" } : workOut(cell, pattern);
    open.delete(key);
    known.set(key, value);
    return value;
  };
  const valuesAt = (target: Target): Value => {
    const rows = Array.from({ length: target.rows }, (_, r) =>
      Array.from({ length: target.columns }, (_, c) =>
        valueAt({ sheet: target.sheet, row: target.row + r, column: target.column + c }),
      ),
    );
    return target.rows === 1 && target.columns === 1 ? rows[0]![0]! : rows;
  };
  const workOut = (cell: Cell, pattern: NonNullable<ReturnType<Book["patternAt"]>>): Single => {
    const targetAt = (start: number) => {
      const reference = pattern.references.find((one) => one.start === start);
      return reference && book.targetOf(reference, cell);
    };
    const value = evaluate(pattern.tree ?? null, {
      reach: (_, start) => {
        const target = targetAt(start);
        return target ? valuesAt(target) : { error: "#REF!" };
      },
      isFormula: (_, start) => {
        const target = targetAt(start);
        return target !== undefined && book.patternAt(target.sheet, target.row, target.column) !== undefined;
      },
      call: callFunction,
    });
    if (value === undefined || Array.isArray(value)) return { error: "#NAME?" };
    return (value as Single) ?? 0;
  };

  const sheets = facts.sheets.map((sheet, index): SheetFacts => {
    const { used } = sheet;
    if (!used) return sheet;
    const worked = (row: number, column: number): CellValue => {
      const cell = { sheet: index, row: used.row + row, column: used.column + column };
      if (!book.patternAt(cell.sheet, cell.row, cell.column)) return used.formulas[row]![column]!;
      const value = valueAt(cell);
      return isFailure(value) ? value.error : (value ?? 0);
    };
    return { ...sheet, used: withValues(used.row, used.column, used.formulas, used.numberFormat, worked) };
  });
  return { ...facts, sheets };
}
