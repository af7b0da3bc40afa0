import { must } from "../../quantities/must";
import { type Cell, cellKey, type Target } from "../book";
import type { Pattern } from "../formula/pattern";
import { targetOfTree } from "../formula/sums";
import { calledName, isCall, isReference, walk } from "../formula/tree";
import { isFailure } from "../formula/values";
import { knownFunction } from "../knowledge";
import type { Study } from "../study";
import { addressFrom, list } from "../words";
import { eachCell, type Observation, type Rule } from "./rule";

/** The host's words for a cell that is still being worked out. */
const WAITING = new Set(["#BUSY!", "#GETTING_DATA", "#CALC!"]);
/** Readers of an error are followed this many steps, to find the totals it spoils. */
const STEPS = 200;
/** A 0 is followed back this far to the blank that it comes from. */
const STEPS_BACK = 3;

export const errors: Rule = {
  id: "error",
  title: "An error carries into other cells",
  level: "error",
  rank: 90,
  matters: "Every total that uses it shows an error or hides one.",
  covers: ["blank"],
  *look(study) {
    // Of many errors of one kind in a column the first is traced, and tells for all.
    const traced = new Set<string>();
    yield* eachCell(study, (cell, grid) => {
      const { row, column } = cell;
      const isError = grid.kind(row, column) === "error" && !WAITING.has(String(grid.value(row, column)));
      if (!isError || comesFromElsewhere(study, cell) || isMeant(study, cell)) return undefined;
      return observe(study, cell, traced);
    });
  },
};

/** A formula with NA() in it shows #N/A on purpose, so that a chart leaves the place open. */
function isMeant({ book }: Study, { sheet, row, column }: Cell): boolean {
  if (must(book.grids[sheet]).value(row, column) !== "#N/A") return false;
  for (const { part } of walk(book.patternAt(sheet, row, column)?.tree ?? null))
    if (isCall(part) && calledName(part) === "NA") return true;
  return false;
}

/** An error that another cell handed on is told where it began. */
function comesFromElsewhere({ book }: Study, cell: Cell): boolean {
  return book.targetsOf(cell).some(({ sheet, row, column, rows, columns }) => {
    const grid = must(book.grids[sheet]);
    for (let r = Math.max(row, grid.top); r < row + rows && r <= grid.bottom; r++) {
      for (let c = Math.max(column, grid.left); c < column + columns && c <= grid.right; c++) {
        if (grid.kind(r, c) === "error" || grid.kind(r, c) === "unknown") return true;
      }
    }
    return false;
  });
}

function observe(study: Study, cell: Cell, traced: Set<string>): Observation {
  const { book } = study;
  const grid = must(book.grids[cell.sheet]);
  const error = String(grid.value(cell.row, cell.column));
  const pattern = book.patternAt(cell.sheet, cell.row, cell.column);
  const blank = pattern && blankNeeded(study, cell, pattern);
  const group = `${cell.sheet}:${cell.column}:${pattern?.id ?? error}`;
  const isFirst = !traced.has(group) || blank !== undefined;
  traced.add(group);
  const spoiled = isFirst ? spoiledBy(study, cell) : [];
  const into =
    spoiled.length > 0 ? ` It carries into ${list(spoiled.map((one) => addressFrom(book, cell, one)))}.` : "";
  if (blank) {
    return {
      cell: blank,
      more: [cell],
      group: `blank:${blank.sheet}:${blank.column}`,
      about: "blank",
      seen: `is blank, so ${addressFrom(book, blank, cell)} shows ${error}.${into}`,
      todo: "Type a value.",
    };
  }
  const reason = isFirst && pattern ? reasonOf(study, cell, pattern, error) : undefined;
  const cause = error === "#VALUE!" ? textBehind(study, cell, reason) : undefined;
  return {
    cell,
    ...(cause && { cause }),
    group,
    about: error,
    echoOf: book.targetsOf(cell),
    seen: `shows ${error}${reason ? `: ${reason}` : "."}${into}`,
    todo:
      error === "#NAME?"
        ? "Check the spelling of the function or name, or load the add-in it comes from."
        : cause
          ? "Fix it there."
          : "Fix the cells this formula reads.",
  };
}

/**
 * The cell whose text a formula can't use: the one that the error quotes, or the only one with a text. Words that the
 * formula reads itself are no amount that someone tried to type: it reads the wrong cell.
 */
function textBehind(study: Study, cell: Cell, reason = ""): Cell | undefined {
  const { book } = study;
  const texts = book
    .targetsOf(cell)
    .filter((target) => target.rows * target.columns === 1)
    .map((target) => ({ text: study.valueAt(target), root: book.shownBy(target) }))
    .filter(({ text, root }) => typeof text === "string" && (/\d/.test(text) || study.valueAt(root) !== text));
  const quoted = texts.filter(({ text }) => reason.includes(`“${text}”`));
  const [first, ...others] = quoted.length > 0 ? quoted : texts;
  return others.every(({ root }) => cellKey(root) === cellKey(must(first).root)) ? first?.root : undefined;
}

/**
 * A blank cell that the formula cannot do without: a divisor, or an argument that has to be given, also where it
 * is one cell of a range.
 */
function blankNeeded(study: Study, cell: Cell, pattern: Pattern): Cell | undefined {
  for (const { part } of walk(pattern.tree ?? null)) {
    const needs =
      part.type === "BinaryExpression" && part.operator === "/"
        ? [part.arguments[1] ?? null]
        : isCall(part)
          ? (knownFunction(study.knowledge, calledName(part))?.arguments ?? []).flatMap(({ fallback }, place) =>
              fallback === undefined ? [part.arguments[place] ?? null] : [],
            )
          : [];
    for (const need of needs) {
      const target = isReference(need) ? targetOfTree(study.book, cell, pattern, need) : undefined;
      const blank = target && firstBlank(study, target);
      if (blank) return blank;
    }
  }
  return undefined;
}

/** The first blank of a range; for a single cell that gives 0, the blank which that 0 comes from. */
function firstBlank(study: Study, target: Target, steps = STEPS_BACK): Cell | undefined {
  for (let row = target.row; row < target.row + target.rows; row++) {
    for (let column = target.column; column < target.column + target.columns; column++) {
      const cell = { sheet: target.sheet, row, column };
      if (study.valueAt(cell) === null) return cell;
    }
  }
  if (steps === 0 || target.rows * target.columns > 1 || study.valueAt(target) !== 0) return undefined;
  for (const before of study.book.targetsOf(target)) {
    const blank = before.rows * before.columns === 1 ? firstBlank(study, before, steps - 1) : undefined;
    if (blank) return blank;
  }
  return undefined;
}

/** What the function itself says, where it can be asked; hosts do not always show it. */
function reasonOf(study: Study, cell: Cell, pattern: Pattern, error: string): string | undefined {
  if (/#REF!/.test(pattern.text) || error === "#REF!") return "it reads deleted cells.";
  for (const { part } of walk(pattern.tree ?? null)) {
    if (!isCall(part) || !knownFunction(study.knowledge, calledName(part))) continue;
    const value = study.valueOf(cell, pattern, part);
    if (isFailure(value) && value.message) return value.message;
  }
  return error === "#DIV/0!" ? "it divides by 0 or a blank." : undefined;
}

/** The sums at the end of what reads the error, or what reads it last. */
function spoiledBy(study: Study, cell: Cell): Cell[] {
  const seen = new Map<string, Cell>();
  const open: Cell[] = [cell];
  const ends: Cell[] = [];
  for (let step = 0; open.length > 0 && step < STEPS; step++) {
    const next = must(open.shift());
    const readers = study.readers.of(next).filter((reader) => isFailure(study.valueAt(reader)));
    if (readers.length === 0 && next !== cell) ends.push(next);
    for (const { sheet, row, column } of readers) {
      const reader = { sheet, row, column };
      if (seen.has(cellKey(reader))) continue;
      seen.set(cellKey(reader), reader);
      open.push(reader);
    }
  }
  return ends;
}
