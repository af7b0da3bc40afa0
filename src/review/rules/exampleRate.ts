import type { Cell } from "../book";
import type { Study } from "../study";
import { localAddress, nameOf } from "../words";
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
  *look(study) {
    for (const grid of study.book.grids) {
      if (!study.isChecked(grid.index)) continue;
      for (let row = grid.top; row <= grid.bottom; row++) {
        if (row % 500 === 0) yield undefined;
        for (let column = grid.left; column <= grid.right; column++) {
          if (grid.kind(row, column) !== "text") continue;
          const text = String(grid.value(row, column));
          if (text.length > LONGEST || !EXAMPLE.test(text)) continue;
          const seen = observe(study, { sheet: grid.index, row, column }, text);
          if (seen) yield seen;
        }
      }
    }
  },
};

/** The number in the row of the mark that a formula reads, or that is itself worked out from rates. */
function observe(study: Study, mark: Cell, text: string): Observation | undefined {
  const grid = study.book.grids[mark.sheet]!;
  for (let column = grid.left; column <= grid.right; column++) {
    const cell = { ...mark, column };
    if (grid.number(mark.row, column) === undefined) continue;
    const isUsed = grid.formula(mark.row, column) !== undefined || study.readers.of(cell).length > 0;
    if (!isUsed) continue;
    return {
      cell,
      more: [mark],
      group: `${mark.sheet}:${text}`,
      about: text,
      seen: `${localAddress(cell)} (${nameOf(study.book, cell)}) is marked “${text}”, and is in use.`,
      todo: "Type the office's own, and take the mark off.",
    };
  }
  return undefined;
}
