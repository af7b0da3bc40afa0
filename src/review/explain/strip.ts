import { shareShown, shown } from "../../functions/working";
import type { Role } from "../../headings/roles";
import { must } from "../../quantities/must";
import { Book, type Cell, type Target } from "../book";
import type { WorkbookFacts } from "../facts";
import { PatternReader } from "../formula/pattern";
import type { SheetGrid } from "../sheet/grid";
import type { SheetPlaces } from "../sheet/places";
import { moneyShown } from "./plain";

/** One step from a quantity to a price. */
export interface StripStep {
  /** What it is: the label of the line, or "Overhead". */
  readonly what: string;
  /** `4.5 tons × 62.00 = 279.00; + 20 % = 334.80`. */
  readonly how: string;
  readonly amount: number;
  /** A line of an estimate, and not a share or a sum beside the lines. */
  readonly isLine: boolean;
  readonly place: { readonly sheet: string; readonly row: number; readonly column: number };
}

/** From quantities to a price, in the order of the sheet. */
export interface PriceStrip {
  readonly steps: readonly StripStep[];
  readonly price: number;
}

/** A sum of more lines than this is not told line by line. */
const MOST_LINES = 60;
/** A price may be handed on from cell to cell, as the one in a block's head is. */
const MOST_STEPS = 6;

/**
 * How a price comes about, from quantity to price: of a line of an estimate, or of the whole of it.
 *
 * @param facts what was read of the workbook.
 * @param place the cell with the price.
 * @returns undefined where the cell holds no price that follows from lines.
 */
export function priceStrip(
  facts: WorkbookFacts,
  place: { readonly sheet: string; readonly row: number; readonly column: number },
): PriceStrip | undefined {
  const book = Book.unread(facts);
  const sheet = book.sheetNamed(place.sheet);
  const price = sheet === undefined ? undefined : must(book.grids[sheet]).number(place.row, place.column);
  if (sheet === undefined || price === undefined) return undefined;
  const cell = originOf(book, { sheet, row: place.row, column: place.column });
  const line = lineStep(book, cell);
  const steps = line ? [line] : stepsOf(book, cell, MOST_STEPS);
  return steps.some(({ isLine }) => isLine) ? { steps, price } : undefined;
}

/** The steps behind a cell that is no line itself: the lines of the sums that it reads, and what is added to them. */
function stepsOf(book: Book, cell: Cell, left: number): StripStep[] {
  const read = readBy(book, cell);
  if (read.length === 0 || left === 0) return [];
  return read.flatMap((target) => {
    const isOne = target.rows * target.columns === 1;
    if (!isOne) return linesOf(book, target);
    const inner = isSumOrCopy(book, target) ? stepsOf(book, target, left - 1) : [];
    return inner.length > 0 ? inner : singleStep(book, target);
  });
}

function linesOf(book: Book, { sheet, row, column, rows, columns }: Target): StripStep[] {
  if (columns > 1 || rows > MOST_LINES) return [];
  return Array.from({ length: rows }, (_, place) => ({ sheet, row: row + place, column })).flatMap((cell) => {
    if (!must(book.grids[sheet]).number(cell.row, cell.column)) return [];
    return lineStep(book, cell) ?? singleStep(book, cell);
  });
}

/** A line has its quantity, unit cost, cost and markup in the same row, under headings that say so. */
function lineStep(book: Book, cell: Cell): StripStep | undefined {
  const [grid, places] = [must(book.grids[cell.sheet]), must(book.places[cell.sheet])];
  const amount = grid.number(cell.row, cell.column);
  const own = places.roleAt(cell.row, cell.column);
  if (amount === undefined || own.roleFrom !== "heading" || (own.role !== "price" && own.role !== "cost"))
    return undefined;
  const find = (role: Role) => columnOf(places, grid, cell, role);
  const [quantity, each, cost] = [find("quantity"), find("unit cost"), find("cost")].map((column) =>
    column === undefined ? undefined : grid.number(cell.row, column),
  );
  if (cost === undefined || (quantity === undefined && each === undefined)) return undefined;
  const markup = find("markup") ?? find("margin");
  const share = markup === undefined ? undefined : grid.number(cell.row, markup);
  const unit = unitBeside(grid, cell.row, find("quantity"));
  const first =
    quantity === undefined || each === undefined
      ? `cost ${moneyShown(cost)}`
      : `${shown(quantity)}${quantity === 1 ? unit.replace(/(?<=box)es$|s$/, "") : unit} × ${moneyShown(each)} = ${moneyShown(cost)}`;
  const second =
    own.role === "price" && share !== undefined
      ? `; ${markup === find("markup") ? "+" : "margin"} ${shareShown(share)} = ${moneyShown(amount)}`
      : "";
  return { ...step(book, cell, places.labelOf(cell.row, cell.column), first + second, amount), isLine: true };
}

/** The column of the same row whose heading says that it holds something. */
function columnOf(places: SheetPlaces, grid: SheetGrid, { row, column }: Cell, role: Role): number | undefined {
  const heading = places.headingRowOf(row, column);
  if (!heading) return undefined;
  for (let at = heading.first; at <= heading.last; at++) {
    const told = places.roleAt(row, at);
    if (told.role === role && told.roleFrom === "heading" && grid.number(row, at) !== undefined) return at;
  }
  return undefined;
}

function unitBeside(grid: SheetGrid, row: number, column: number | undefined): string {
  return column !== undefined && grid.isTypedText(row, column + 1) ? ` ${grid.value(row, column + 1)}` : "";
}

function singleStep(book: Book, cell: Cell): StripStep[] {
  const grid = must(book.grids[cell.sheet]);
  const amount = grid.number(cell.row, cell.column);
  if (amount === undefined) return [];
  const label = must(book.places[cell.sheet]).labelOf(cell.row, cell.column);
  const isShare = grid.format(cell.row, cell.column).includes("%");
  return [step(book, cell, label, isShare ? shareShown(amount) : moneyShown(amount), amount)];
}

const step = (book: Book, { sheet, row, column }: Cell, what: string, how: string, amount: number): StripStep => ({
  what,
  how,
  amount,
  isLine: false,
  place: { sheet: must(book.grids[sheet]).name, row, column },
});

const REFERENCE = String.raw`(?:(?:'[^']+'|\w+)!)?\$?[A-Z]{1,3}\$?\d+`;
const PART = String.raw`(?:SUM\([^()]*\)|${REFERENCE})`;
const COPY = new RegExp(`^=${REFERENCE}$`, "i");
const SUM = new RegExp(`^=${PART}(?:\\+${PART})*$`, "i");

/** A cell that only adds up or hands on: what is behind it says more than it does. */
function isSumOrCopy(book: Book, { sheet, row, column }: Cell): boolean {
  return SUM.test((must(book.grids[sheet]).formula(row, column) ?? "").replaceAll(/\s/g, ""));
}

/** The cell that a price is handed on from, as the one in the head of a block is. */
function originOf(book: Book, cell: Cell): Cell {
  let origin = cell;
  for (let step = 0; step < MOST_STEPS; step++) {
    const formula = must(book.grids[origin.sheet]).formula(origin.row, origin.column) ?? "";
    const [target] = COPY.test(formula) ? readBy(book, origin) : [];
    if (!target) break;
    origin = { sheet: target.sheet, row: target.row, column: target.column };
  }
  return origin;
}

function readBy(book: Book, cell: Cell): Target[] {
  const formula = must(book.grids[cell.sheet]).formula(cell.row, cell.column);
  if (formula === undefined) return [];
  const { references } = new PatternReader().read(formula, cell.row, cell.column);
  return references.flatMap((reference) => book.targetOf(reference, cell) ?? []);
}
