import { areaAddress } from "../../spreadsheet/areas";
import type { Cell } from "../book";
import type { Study } from "../study";
import { nameOf } from "../words";
import { eachCell } from "./each";
import type { Observation, Rule } from "./rule";

/** A rate marked so is not the office's own. */
const EXAMPLE = /\bexamples?\b/i;
const LONGEST = 60;

export const exampleRate: Rule = {
  id: "example-rate",
  title: "An example rate is still in use",
  level: "question",
  rank: 40,
  matters: "Example prices are invented; nobody sells at them.",
  look: (study) =>
    eachCell(study, (cell, grid) => {
      const text = String(grid.value(cell.row, cell.column));
      return text.length <= LONGEST && EXAMPLE.test(text) ? observe(study, cell, text) : undefined;
    }),
};

/**
 * The number in the row of the mark that is in use. Where the mark is a formula, as in blocks and in the sheet of rates,
 * only a constant counts: what follows a rate is told of where the rate stands.
 */
function observe(study: Study, mark: Cell, text: string): Observation | undefined {
  const grid = study.book.grids[mark.sheet]!;
  const isWorkedOut = grid.formula(mark.row, mark.column) !== undefined;
  for (let column = grid.left; column <= grid.right; column++) {
    const cell = { ...mark, column };
    if (grid.number(mark.row, column) === undefined) continue;
    const isFormula = grid.formula(mark.row, column) !== undefined;
    if (isFormula ? isWorkedOut : !isUsed(study, cell)) continue;
    return {
      cell,
      more: [mark],
      group: isWorkedOut ? `${mark.sheet}` : `${mark.sheet}:${text}`,
      about: text,
      seen: `${areaAddress(cell)} (${nameOf(study.book, cell)}) is marked “${text}”, and is in use.`,
      todo: isWorkedOut
        ? "Type the office's own; the mark goes by itself."
        : "Type the office's own, and take the mark off.",
    };
  }
  return undefined;
}

/** Whether a number goes into another; a cell beside it that only tells whose it is makes no use of it. */
function isUsed(study: Study, cell: Cell): boolean {
  return study.readers.of(cell).some((reader) => {
    const isBeside = reader.sheet === cell.sheet && reader.row === cell.row;
    return !isBeside || study.book.grids[reader.sheet]!.number(reader.row, reader.column) !== undefined;
  });
}
