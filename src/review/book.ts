import { must } from "../quantities/must";
import { type Area, areaAddress } from "../spreadsheet/areas";
import type { NameFacts, TableFacts, WorkbookFacts } from "./facts";
import { evaluate } from "./formula/evaluate";
import { type Pattern, PatternReader } from "./formula/pattern";
import { type Edge, type Reference, readReference } from "./formula/reference";
import { takenParts } from "./formula/taken";
import { isCall, isReference, type Tree } from "./formula/tree";
import type { Single, Value } from "./formula/values";
import { SheetGrid } from "./sheet/grid";
import { SheetPlaces } from "./sheet/places";

/** A cell of the workbook, the sheet by its place in the facts. */
export interface Cell {
  readonly sheet: number;
  readonly row: number;
  readonly column: number;
}

/** A cell as a string, to keep it in a set. */
export const cellKey = ({ sheet, row, column }: Cell): string => `${sheet}:${row}:${column}`;

/** Cells that a reference reaches. */
export interface Target extends Area {
  readonly sheet: number;
}

/** Works out a worksheet function of ours; undefined for one it does not know. */
export type CallFunction = (name: string, given: readonly Value[]) => Value | undefined;

/** More cells than this are not handed to a formula that is worked out only to say what it would give. */
export const MOST_CELLS = 20_000;
const NO_PATTERN = -1;
/** How many cells are read between two pauses. */
const CELLS_A_SLICE = 2000;
/** Far more than the formulas of a bed rest on. */
const MOST_SOURCES = 500;
/** A number is passed on by fewer cells than this; formulas in a circle pass it on without end. */
const MOST_PASSED = 10;

/** A workbook as the rules see it: cells, formulas by their patterns, headings, and what reaches where. */
export class Book {
  readonly grids: readonly SheetGrid[];
  readonly places: readonly SheetPlaces[];
  readonly #reader = new PatternReader();
  readonly #patternIds: Int32Array[] = [];
  readonly #sheetByName: ReadonlyMap<string, number>;
  readonly #names = new Map<string, Reference>();
  readonly #tables: ReadonlyMap<string, TableFacts>;

  private constructor(readonly facts: WorkbookFacts) {
    this.grids = facts.sheets.map((sheet, index) => new SheetGrid(sheet, index));
    this.places = this.grids.map((grid) => new SheetPlaces(grid));
    this.#sheetByName = new Map(facts.sheets.map(({ name }, index) => [name.toLowerCase(), index]));
    this.#tables = new Map(facts.tables.map((table) => [table.name.toLowerCase(), table]));
    for (const name of facts.names) this.#readName(name);
  }

  /** The facts without their formulas read: enough to find cells and what they hold. */
  static unread(facts: WorkbookFacts): Book {
    return new Book(facts);
  }

  /** Reads the facts in slices; each step says how much of the way is done, 0 to 1. */
  static *read(facts: WorkbookFacts): Generator<number, Book> {
    const book = new Book(facts);
    const total = book.grids.reduce((sum, grid) => sum + cellCount(grid), 0);
    let done = 0;
    for (const grid of book.grids) {
      const ids = new Int32Array(cellCount(grid)).fill(NO_PATTERN);
      book.#patternIds.push(ids);
      for (let place = 0; place < ids.length; place++, done++) {
        const row = grid.top + Math.floor(place / widthOf(grid));
        const column = grid.left + (place % widthOf(grid));
        const formula = grid.formula(row, column);
        if (formula !== undefined) ids[place] = book.#reader.read(formula, row, column).id;
        if (done % CELLS_A_SLICE === 0) yield done / total;
      }
    }
    return book;
  }

  get patterns(): readonly Pattern[] {
    return this.#reader.patterns;
  }

  patternAt(sheet: number, row: number, column: number): Pattern | undefined {
    const grid = this.grids[sheet];
    if (!grid || row < grid.top || row > grid.bottom || column < grid.left || column > grid.right) return undefined;
    const id = must(must(this.#patternIds[sheet])[(row - grid.top) * widthOf(grid) + column - grid.left]);
    return id === NO_PATTERN ? undefined : this.patterns[id];
  }

  /** Every formula cell of a sheet, row by row. */
  *formulaCells(sheet: number): Generator<Cell & { readonly pattern: Pattern }> {
    const grid = must(this.grids[sheet]);
    for (let row = grid.top; row <= grid.bottom; row++) {
      for (let column = grid.left; column <= grid.right; column++) {
        const pattern = this.patternAt(sheet, row, column);
        if (pattern) yield { sheet, row, column, pattern };
      }
    }
  }

  sheetNamed(name: string): number | undefined {
    return this.#sheetByName.get(name.toLowerCase());
  }

  /** The cell or cells that a name stands for. */
  namedTarget(name: string, sheet: number): Target | undefined {
    const reference = this.#names.get(nameKey(name, this.grids[sheet]?.name)) ?? this.#names.get(nameKey(name));
    return reference && !reference.name ? this.targetOf(reference, { sheet, row: 0, column: 0 }) : undefined;
  }

  /** What a reference of a formula reaches from the cell that the formula is in; undefined where unknown. */
  targetOf(reference: Reference, from: Cell): Target | undefined {
    if (reference.workbook !== undefined) return undefined;
    if (reference.table) return this.#tableTarget(reference.table, from);
    const sheet = reference.sheet === undefined ? from.sheet : this.sheetNamed(reference.sheet);
    if (sheet === undefined) return undefined;
    if (reference.name !== undefined) return this.namedTarget(reference.name, sheet);
    const grid = must(this.grids[sheet]);
    const { top, bottom, left, right } = reference.edges ?? {};
    const rowA = placed(top, from.row, grid.top);
    const rowB = placed(bottom, from.row, grid.bottom);
    const columnA = placed(left, from.column, grid.left);
    const columnB = placed(right, from.column, grid.right);
    // A reference may be written from its far corner.
    const row = Math.min(rowA, rowB);
    const column = Math.min(columnA, columnB);
    return { sheet, row, column, rows: Math.abs(rowB - rowA) + 1, columns: Math.abs(columnB - columnA) + 1 };
  }

  /** What all references of a cell's formula reach. */
  targetsOf(cell: Cell): Target[] {
    const pattern = this.patternAt(cell.sheet, cell.row, cell.column);
    return (pattern?.references ?? []).flatMap((reference) => this.targetOf(reference, cell) ?? []);
  }

  /** The single cells that a formula rests on, through others as well, nearest first. */
  restsOn(cell: Cell): Target[] {
    const found = new Map<string, Target>();
    const open: Cell[] = [cell];
    for (let next = open.pop(); next && found.size < MOST_SOURCES; next = open.pop()) {
      for (const target of this.targetsOf(next)) {
        const key = cellKey(target);
        if (target.rows * target.columns > 1 || found.has(key)) continue;
        found.set(key, target);
        open.unshift(target);
      }
    }
    return [...found.values()];
  }

  /**
   * The cell that a cell only shows, through others as well: the one cell that its formula reads or takes its value
   * from, where both hold the same number or one of them a text, or the only one with the same text. The cell itself
   * where there's none.
   */
  shownBy(cell: Cell): Cell {
    let at = cell;
    for (let step = 0; step < MOST_PASSED; step++) {
      const is = this.#valueAt(at);
      const targets = [
        ...new Map(this.targetsOf(at).map((one) => [`${cellKey(one)}:${areaAddress(one)}`, one])).values(),
      ];
      const same = targets.filter((one) => typeof is === "string" && is !== "" && this.#valueAt(one) === is);
      const found = same.length > 0 ? same : targets;
      const [only, ...others] = found.length > 1 ? this.#takenBy(at) : found;
      if (!only || others.length > 0 || only.rows * only.columns > 1) return at;
      const was = this.#valueAt(only);
      if (typeof is === "number" && is !== was && typeof was !== "string") return at;
      at = { sheet: only.sheet, row: only.row, column: only.column };
    }
    return at;
  }

  /** The cells that decide what a formula shows as things are. */
  #takenBy(cell: Cell): Target[] {
    const pattern = this.patternAt(cell.sheet, cell.row, cell.column);
    if (!pattern) return [];
    const evaluate = (part: Tree) => this.valueOf(cell, pattern, part);
    const targets = takenParts(pattern.tree ?? null, evaluate).flatMap((part) => {
      const [range = null, row = null, column = null] = isCall(part) ? (part.arguments as Tree[]) : [part];
      const target = isReference(range) ? this.#targetAt(cell, pattern, range.loc?.[0] ?? 0) : undefined;
      if (!target || !isCall(part)) return target ?? [];
      const [down, across] = [row, column].map((one) => (one ? evaluate(one) : 1));
      if (typeof down !== "number" || typeof across !== "number") return target;
      return { ...target, row: target.row + down - 1, column: target.column + across - 1, rows: 1, columns: 1 };
    });
    return [...new Map(targets.map((one) => [`${cellKey(one)}:${areaAddress(one)}`, one])).values()];
  }

  /** The value of a part of a cell's formula; functions that aren't plain ones only by `call`. */
  valueOf(cell: Cell, pattern: Pattern, tree: Tree, call: CallFunction = () => undefined): Value | undefined {
    return evaluate(tree, {
      reach: (_, start) => {
        const target = this.#targetAt(cell, pattern, start);
        return target && this.valuesAt(target);
      },
      isFormula: (_, start) => {
        const target = this.#targetAt(cell, pattern, start);
        return target !== undefined && this.patternAt(target.sheet, target.row, target.column) !== undefined;
      },
      call,
    });
  }

  /** What is in cells: one value, or rows of them. */
  valuesAt(target: Target): Value | undefined {
    if (target.rows * target.columns > MOST_CELLS) return undefined;
    const rows = Array.from({ length: target.rows }, (_, row) =>
      Array.from({ length: target.columns }, (_, column) =>
        this.valueAt({ sheet: target.sheet, row: target.row + row, column: target.column + column }),
      ),
    );
    return target.rows === 1 && target.columns === 1 ? must(must(rows[0])[0]) : rows;
  }

  valueAt({ sheet, row, column }: Cell): Single {
    const grid = must(this.grids[sheet]);
    const kind = grid.kind(row, column);
    if (kind === "blank") return null;
    const value = grid.value(row, column);
    return kind === "error" || kind === "unknown" ? { error: String(value) } : value;
  }

  #targetAt(cell: Cell, pattern: Pattern, start: number): Target | undefined {
    const reference = pattern.references.find((one) => one.start === start);
    return reference && this.targetOf(reference, cell);
  }

  #valueAt({ sheet, row, column }: Cell) {
    return must(this.grids[sheet]).value(row, column);
  }

  #readName({ name, sheet, formula }: NameFacts): void {
    const text = formula.replace(/^=/, "");
    const reference = readReference(text, "range", 0, 0, 0);
    this.#names.set(nameKey(name, sheet), reference);
  }

  #tableTarget(read: NonNullable<Reference["table"]>, from: Cell): Target | undefined {
    const table = this.#tables.get(read.name.toLowerCase()) ?? (read.name === "" ? this.#tableRound(from) : undefined);
    const sheet = table && this.sheetNamed(table.sheet);
    if (!table || sheet === undefined) return undefined;
    const columns = read.columns.map((name) =>
      table.columnNames.findIndex((other) => other.toLowerCase() === name.toLowerCase()),
    );
    if (columns.includes(-1)) return undefined;
    const [first, last] = columns.length > 0 ? [must(columns[0]), must(columns.at(-1))] : [0, table.area.columns - 1];
    const [head, foot] = [table.headingRow ? 1 : 0, table.totalsRow ? 1 : 0];
    const has = (section: string) => read.sections.some((other) => other.toLowerCase() === section);
    const across = { sheet, column: table.area.column + first, columns: last - first + 1 };
    if (has("this row")) return { ...across, row: from.row, rows: 1 };
    if (has("all")) return { ...across, row: table.area.row, rows: table.area.rows };
    if (has("totals") && !has("data")) return { ...across, row: table.area.row + table.area.rows - 1, rows: 1 };
    if (has("headers") && !has("data")) return { ...across, row: table.area.row, rows: 1 };
    return { ...across, row: table.area.row + head, rows: table.area.rows - head - foot };
  }

  #tableRound(cell: Cell): TableFacts | undefined {
    return this.facts.tables.find((table) => this.sheetNamed(table.sheet) === cell.sheet && contains(table.area, cell));
  }
}

/** Whether a cell lies in an area of its sheet. */
export function contains(area: Area, { row, column }: { readonly row: number; readonly column: number }): boolean {
  return row >= area.row && row < area.row + area.rows && column >= area.column && column < area.column + area.columns;
}

/** Where an edge lies for a formula in a row or column; an open edge lies at the end of the sheet. */
function placed(edge: Edge | undefined, own: number, open: number): number {
  if (edge === undefined) return open;
  return edge.fixed ? edge.at : edge.at + own;
}

const widthOf = (grid: SheetGrid) => grid.right - grid.left + 1;
const cellCount = (grid: SheetGrid) => Math.max(0, grid.bottom - grid.top + 1) * Math.max(0, widthOf(grid));
const nameKey = (name: string, sheet = "") => `${sheet.toLowerCase()}!${name.toLowerCase()}`;
