import { type Book, type Cell, contains, type Target } from "../book";
import type { Study } from "../study";
import type { Pattern } from "./pattern";
import type { Reference } from "./reference";
import { calledName, isBinary, isCall, isReference, type Tree, walk } from "./tree";

/** Formula cells below one another that share their pattern. */
export interface Run {
  readonly sheet: number;
  readonly column: number;
  readonly from: number;
  readonly to: number;
  readonly pattern: Pattern;
}

/** A formula that reads a cell, and by which of its references. */
export interface Reader extends Cell {
  readonly pattern: Pattern;
  readonly reference: Reference;
  readonly target: Target;
}

interface Reach {
  readonly run: Run;
  readonly reference: Reference;
  /** Everything that the reference reaches from any cell of the run. */
  readonly hull: Target;
}

/** Ranges over more columns than this are kept in one list for the whole sheet. */
const WIDE = 60;
/** Columns are looked up in parts of so many rows, and ranges over more parts than this in one list for the column. */
const PART = 256;
const TALL = 64;

/** Which formulas read a cell, for a whole workbook. */
export class Readers {
  readonly runs: readonly Run[];
  readonly #byColumn = new Map<string, Reach[]>();
  readonly #wide = new Map<number, Reach[]>();

  private constructor(
    readonly book: Book,
    runs: readonly Run[],
  ) {
    this.runs = runs;
    for (const run of runs) for (const reference of run.pattern.references) this.#keep(run, reference);
  }

  static *read(book: Book): Generator<undefined, Readers> {
    const runs: Run[] = [];
    for (const grid of book.grids) {
      for (let column = grid.left; column <= grid.right; column++) {
        yield undefined;
        let open: { from: number; pattern: Pattern } | undefined;
        for (let row = grid.top; row <= grid.bottom + 1; row++) {
          const pattern = book.patternAt(grid.index, row, column);
          if (open && pattern === open.pattern) continue;
          if (open) runs.push({ sheet: grid.index, column, from: open.from, to: row - 1, pattern: open.pattern });
          open = pattern && { from: row, pattern };
        }
      }
    }
    return new Readers(book, runs);
  }

  /** The formulas that read a cell; of those filled down over a fixed reference, the first only. */
  of(cell: Cell): Reader[] {
    return [...this.#near(cell), ...(this.#wide.get(cell.sheet) ?? [])].flatMap(({ run, reference, hull }) =>
      contains(hull, cell) ? this.#inRun(run, reference, cell) : [],
    );
  }

  /** Whether a formula may read the cell by a reference that passes a test; less work than asking which do. */
  mayBeReadBy(cell: Cell, isOne: (pattern: Pattern, reference: Reference) => boolean): boolean {
    return this.#near(cell).some(({ run, reference, hull }) => contains(hull, cell) && isOne(run.pattern, reference));
  }

  #near({ sheet, row, column }: Cell): readonly Reach[] {
    const key = columnKey(sheet, column);
    const [tall, near] = [this.#byColumn.get(key), this.#byColumn.get(partKey(key, Math.floor(row / PART)))];
    return tall && near ? [...tall, ...near] : (near ?? tall ?? []);
  }

  #inRun(run: Run, reference: Reference, cell: Cell): Reader[] {
    const { top, bottom } = reference.edges ?? {};
    // A reference that goes along reaches a row from few cells of the run; any other from all or from half of them.
    const moves = top && bottom && !top.fixed && !bottom.fixed;
    const first = moves ? Math.max(run.from, cell.row - Math.max(top.at, bottom.at)) : run.from;
    const last = moves ? Math.min(run.to, cell.row - Math.min(top.at, bottom.at)) : run.to;
    const found: Reader[] = [];
    for (let row = first; row <= last; row++) {
      const at = { sheet: run.sheet, row, column: run.column };
      const target = this.book.targetOf(reference, at);
      if (!target || target.sheet !== cell.sheet || !contains(target, cell)) continue;
      found.push({ ...at, pattern: run.pattern, reference, target });
      if (!moves) break;
    }
    return found;
  }

  #keep(run: Run, reference: Reference): void {
    const ends = [run.from, run.to].map((row) => this.book.targetOf(reference, { ...run, row }));
    const [first, last] = ends;
    if (!first || !last) return;
    const row = Math.min(first.row, last.row);
    const end = Math.max(first.row + first.rows, last.row + last.rows);
    const hull = { ...first, row, rows: end - row };
    const reach = { run, reference, hull };
    if (hull.columns > WIDE) keepIn(this.#wide, hull.sheet, reach);
    else {
      for (let column = hull.column; column < hull.column + hull.columns; column++) {
        const key = columnKey(hull.sheet, column);
        const [from, to] = [Math.floor(row / PART), Math.floor((end - 1) / PART)];
        if (to - from > TALL) keepIn(this.#byColumn, key, reach);
        else for (let part = from; part <= to; part++) keepIn(this.#byColumn, partKey(key, part), reach);
      }
    }
  }
}

const partKey = (column: string, part: number) => `${column}:${part}`;
const columnKey = (sheet: number, column: number) => `${sheet}:${column}`;

function keepIn<Key, Item>(lists: Map<Key, Item[]>, key: Key, item: Item): void {
  const list = lists.get(key);
  if (list) list.push(item);
  else lists.set(key, [item]);
}

/** One reference in a formula, and the parts of the formula around it. */
export interface Use {
  readonly reference: Reference;
  readonly tree: Tree;
  /** From the whole formula to the part right around the reference. */
  readonly around: readonly Tree[];
}

const known = new WeakMap<Pattern, readonly Use[]>();

/** All references of a formula with what stands around them. */
export function usesOf(pattern: Pattern): readonly Use[] {
  const before = known.get(pattern);
  if (before) return before;
  const uses: Use[] = [];
  for (const { part, around } of walk(pattern.tree ?? null)) {
    if (!isReference(part)) continue;
    const start = part.loc?.[0];
    const reference = pattern.references.find((one) => one.start === start);
    if (reference) uses.push({ reference, tree: part, around });
  }
  known.set(pattern, uses);
  return uses;
}

/** A use of a cell in the formula of another, which may have had it handed on. */
export interface CellUse extends Use {
  readonly reader: Cell;
  readonly pattern: Pattern;
  /** It was read as part of a range. */
  readonly inRange: boolean;
}

/** As many formulas are followed for one cell; what the first ones do with it, the others do, too. */
const MOST_USES = 24;
const MOST_STEPS = 3;

/** How a cell is used, also through formulas that only hand it on, as `=B4` and `IF(H5="labor",B4,B5)` do. */
export function usesThrough(study: Study, cell: Cell, steps = MOST_STEPS): CellUse[] {
  const found: CellUse[] = [];
  for (const { pattern, reference, target, ...reader } of study.readers.of(cell).slice(0, MOST_USES)) {
    const use = usesOf(pattern).find((one) => one.reference === reference);
    if (!use) continue;
    found.push({ ...use, reader, pattern, inRange: target.rows * target.columns > 1 });
    if (steps > 1 && target.rows * target.columns === 1 && isHandedOn(use))
      found.push(...usesThrough(study, reader, steps - 1));
  }
  return found;
}

/** Whether a formula gives what it reads as it is. */
export function isHandedOn({ tree, around }: Use): boolean {
  let inner: Tree = tree;
  return around.toReversed().every((part) => {
    const place = isCall(part) && calledName(part) === "IF" ? part.arguments.indexOf(inner as never) : -1;
    inner = part;
    return place > 0;
  });
}

/** The call right around a use: its name, and which argument the use is in; undefined outside all calls. */
export function callAround({ tree, around }: Use): { readonly name: string; readonly argument: number } | undefined {
  let inner: Tree = tree;
  for (const part of around.toReversed()) {
    if (isCall(part)) return { name: calledName(part), argument: part.arguments.indexOf(inner as never) };
    inner = part;
  }
  return undefined;
}

/** Whether a formula looks first if a cell is blank, with `B4=""` or ISBLANK: then a blank is an answer. */
export function asksFirst(pattern: Pattern, text: string | undefined): boolean {
  return usesOf(pattern).some(({ reference, around }) => {
    const parent = around.at(-1) ?? null;
    if (reference.text !== text) return false;
    if (isCall(parent)) return calledName(parent) === "ISBLANK";
    const isCompared = isBinary(parent) && /^(=|<>)$/.test(parent.operator);
    return isCompared && parent.arguments.some((one) => one?.type === "Literal" && one.value === "");
  });
}
