import { toCol } from "@borgar/fx";
import { must } from "../../quantities/must";
import { quotedSheet } from "../../spreadsheet/areas";
import type { Cell, Target } from "../book";
import { type Pattern, PatternReader } from "../formula/pattern";
import { calledName, isCall, isNumber, type Tree, walk } from "../formula/tree";
import type { Study } from "../study";
import { addressFrom, nameOf, percent, short } from "../words";
import { change, eachCell, eachFormula, type Observation, type Rule } from "./rule";

/** A rate marked so is not the office's own; “worked example of row 3” is about something else. */
const EXAMPLE = /^\W*(example|sample)s?\b|\b(example|sample) (price|rate|cost|figure|value)s?\b/i;
const LONGEST = 60;

export const exampleRate: Rule = {
  id: "example-rate",
  title: "A sample price is still in use",
  level: "question",
  rank: 40,
  matters: "Sample prices are made up; no one sells at them.",
  look: (study) =>
    eachCell(study, (cell, grid) => {
      const text = String(grid.value(cell.row, cell.column));
      return text.length <= LONGEST && EXAMPLE.test(text) ? observeExampleRate(study, cell, text) : undefined;
    }),
};

/**
 * The number in the row of the mark that is in use. Where the mark is a formula, as in blocks and on the sheet of rates,
 * only a constant counts: what follows a rate is told of where the rate stands.
 */
function observeExampleRate(study: Study, mark: Cell, text: string): Observation | undefined {
  const grid = must(study.book.grids[mark.sheet]);
  const isWorkedOut = grid.formula(mark.row, mark.column) !== undefined;
  // A mark is behind its rate; in front of numbers it's the name of the row.
  for (let column = grid.left; column < mark.column; column++) {
    const cell = { ...mark, column };
    if (grid.number(mark.row, column) === undefined) continue;
    const isFormula = grid.formula(mark.row, column) !== undefined;
    if (isFormula ? isWorkedOut : !isUsed(study, cell)) continue;
    return {
      cell,
      more: [mark],
      group: isWorkedOut ? `${mark.sheet}` : `${mark.sheet}:${text}`,
      about: text,
      seen: `is marked “${text}” and is in use.`,
      todo: isWorkedOut ? "Type your own price; the mark goes away." : "Type your own price and remove the mark.",
    };
  }
  return undefined;
}

/** Whether a number goes into another; a cell beside it that only tells whose it is makes no use of it. */
function isUsed(study: Study, cell: Cell): boolean {
  return study.readers.of(cell).some((reader) => {
    const isBeside = reader.sheet === cell.sheet && reader.row === cell.row;
    return !isBeside || must(study.book.grids[reader.sheet]).number(reader.row, reader.column) !== undefined;
  });
}

/** Numbers that belong to the arithmetic of beds and to units, and mean nothing when they equal a rate. */
const ORDINARY = new Set([
  0, 0.5, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 24, 27, 36, 60, 100, 144, 200, 324, 1000, 2000, 43560,
]);
/** Arguments of these are digits, columns or codes, and no amounts. */
const TECHNICAL =
  /^(ROUND(UP|DOWN)?|TRUNC|VLOOKUP|HLOOKUP|INDEX|MATCH|CHOOSE|SUBTOTAL|AGGREGATE|TEXT|LEFT|RIGHT|MID|MROUND|CEILING|FLOOR)$/;
/** Sheets on which rates are kept. */
const RATE_SHEET = /\b(rates?|prices?|costs?|assumptions?|inputs?|settings|markups?)\b/i;

export const buriedRate: Rule = {
  id: "buried-rate",
  title: "A rate is typed into a formula and also has its own cell",
  level: "warning",
  rank: 20,
  matters: "When the rate changes, this formula keeps the old one.",
  covers: ["unlike-neighbors"],
  *look(study) {
    const rates = ratesOf(study);
    if (rates.size === 0) return;
    yield* eachFormula(study, (cell, pattern) =>
      amountsIn(pattern).flatMap(({ value, tree }) => {
        const rate = rates.get(value);
        return rate && !reads(study, cell, rate) ? [observeBuriedRate(study, cell, pattern, rate, tree)] : [];
      }),
    );
  },
};

interface Rate {
  readonly target: Target;
  readonly value: number;
  /** The name that stands for it, where it has one. */
  readonly name?: string;
}

/** Typed numbers that a name stands for, that formulas read by a fixed "$" reference, or that are on a sheet of rates. */
function ratesOf({ book, readers }: Study): Map<number, Rate> {
  const found: Rate[] = [];
  for (const { name } of book.facts.names) {
    const target = book.namedTarget(name, 0);
    if (!target || target.rows * target.columns !== 1) continue;
    const grid = must(book.grids[target.sheet]);
    if (grid.isTypedNumber(target.row, target.column))
      found.push({ target, name, value: must(grid.number(target.row, target.column)) });
  }
  for (const run of readers.runs) {
    for (const reference of run.pattern.references) {
      const { top, left } = reference.edges ?? {};
      const target = top?.fixed && left?.fixed ? book.targetOf(reference, { ...run, row: run.from }) : undefined;
      if (!target || target.rows * target.columns !== 1) continue;
      const grid = must(book.grids[target.sheet]);
      if (grid.isTypedNumber(target.row, target.column))
        found.push({ target, value: must(grid.number(target.row, target.column)) });
    }
  }
  for (const grid of book.grids) {
    if (!RATE_SHEET.test(grid.name)) continue;
    for (let row = grid.top; row <= grid.bottom; row++) {
      for (let column = grid.left; column <= grid.right; column++) {
        if (!grid.isTypedNumber(row, column) || must(book.places[grid.index]).labelOf(row, column) === "") continue;
        found.push({
          target: { sheet: grid.index, row, column, rows: 1, columns: 1 },
          value: must(grid.number(row, column)),
        });
      }
    }
  }
  const rates = new Map<number, Rate>();
  const twice = new Set<number>();
  for (const rate of found) {
    const known = rates.get(rate.value);
    if (known && !isSame(known.target, rate.target)) twice.add(rate.value);
    if (!known && !ORDINARY.has(rate.value)) rates.set(rate.value, rate);
  }
  // A number that two rates have could be either of them.
  for (const value of twice) rates.delete(value);
  return rates;
}

const isSame = (one: Target, other: Target) =>
  one.sheet === other.sheet && one.row === other.row && one.column === other.column;

function reads(study: Study, cell: Cell, { target }: Rate): boolean {
  return study.book.targetsOf(cell).some((one) => isSame(one, target));
}

interface Amount {
  readonly value: number;
  readonly tree: Tree;
}

const known = new WeakMap<Pattern, readonly Amount[]>();

/** The amounts that are typed into a formula; `8%` counts as 0.08. */
function amountsIn(pattern: Pattern): readonly Amount[] {
  const before = known.get(pattern);
  if (before) return before;
  const found: Amount[] = [];
  for (const { part, around } of walk(pattern.tree ?? null)) {
    if (!isNumber(part)) continue;
    const parent = around.at(-1) ?? null;
    if (isCall(parent) && TECHNICAL.test(calledName(parent)) && parent.arguments[0] !== part) continue;
    if (parent?.type === "UnaryExpression" && parent.operator === "%") {
      found.push({ value: Number((part.value / 100).toPrecision(12)), tree: parent });
      continue;
    }
    found.push({ value: part.value, tree: part });
    // 1.08 is waste of 8 % in a product.
    if (part.value > 1 && part.value < 2) found.push({ value: Number((part.value - 1).toPrecision(12)), tree: part });
  }
  known.set(pattern, found);
  return found;
}

function observeBuriedRate(study: Study, cell: Cell, pattern: Pattern, rate: Rate, tree: Tree): Observation {
  const { book } = study;
  const formula = must(must(book.grids[cell.sheet]).formula(cell.row, cell.column));
  const at = `$${toCol(rate.target.column)}$${rate.target.row + 1}`;
  const reference =
    rate.name ??
    (rate.target.sheet === cell.sheet ? at : `${quotedSheet(must(book.grids[rate.target.sheet]).name)}!${at}`);
  const corrected = replaced(formula, cell, pattern, tree, rate, reference);
  const shown = rate.value < 1 ? percent(rate.value) : short(rate.value);
  return {
    cell,
    more: [rate.target],
    group: `${cell.sheet}:${pattern.id}`,
    about: formula,
    seen:
      `has ${shown} typed into ${formula}; ` +
      `${rate.name ?? nameOf(book, rate.target)} in ${addressFrom(book, cell, rate.target)} is ${shown}.`,
    todo: `Read ${reference} instead.`,
    ...(corrected !== undefined && { fix: [change(study, cell, corrected)] }),
  };
}

/** The formula with the reference in place of the number; of `1.08` it makes `(1+waste)`. */
function replaced(
  formula: string,
  cell: Cell,
  pattern: Pattern,
  tree: Tree,
  rate: Rate,
  reference: string,
): string | undefined {
  const place = [...walk(pattern.tree ?? null)].findIndex(({ part }) => part === tree);
  const own = new PatternReader().read(formula, cell.row, cell.column);
  const part = [...walk(own.tree ?? null)][place]?.part;
  if (!part?.loc) return undefined;
  const isRaised = isNumber(part) && part.value !== rate.value;
  return formula.slice(0, part.loc[0]) + (isRaised ? `(1+${reference})` : reference) + formula.slice(part.loc[1]);
}
