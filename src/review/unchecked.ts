import type { Cell } from "./book";
import type { Scope } from "./facts";
import type { Pattern } from "./formula/pattern";
import type { Study } from "./study";
import { address, counted, list } from "./words";

/** Something that was not looked at, and why. */
export interface Unchecked {
  readonly what: string;
  /** Where in the workbook; "" where it is the whole of it. */
  readonly where: string;
  readonly why: string;
}

/** Everything that a check of this workbook did not look at. */
export function uncheckedOf(study: Study, scope: Scope): Unchecked[] {
  const { book } = study;
  const unchecked: Unchecked[] = [];
  const note = (what: string, where: string, why: string) => unchecked.push({ what, where, why });
  if (scope.kind !== "workbook") {
    note(
      `Everything outside ${scope.kind === "sheet" ? scope.sheet : `the selection on ${scope.sheet}`}`,
      "",
      "It was not asked for.",
    );
  }
  for (const { name, visibility, protected: isProtected } of book.facts.sheets) {
    if (visibility === "VeryHidden")
      note(`Sheet ${name}`, name, "It is hidden so that the host does not offer to show it.");
    else if (isProtected)
      note(
        `Sheet ${name}`,
        name,
        "It is protected, and its formulas may not show. Take the protection off to have it checked.",
      );
  }
  const cells = cellsByPattern(study);
  for (const [what, why, isSo] of KINDS) {
    const patterns = book.patterns.filter((pattern) => isSo(pattern) && cells.has(pattern));
    if (patterns.length === 0) continue;
    const places = patterns.flatMap((pattern) => cells.get(pattern)!.cells);
    const count = patterns.reduce((sum, pattern) => sum + cells.get(pattern)!.count, 0);
    note(`${counted(count, "formula")} ${what(patterns)}`, list(places.map((cell) => address(book, cell))), why);
  }
  note("Whether what was typed is what was taped and agreed", "", "Only the tape and the supplier know.");
  return unchecked;
}

const KINDS: readonly (readonly [
  what: (patterns: readonly Pattern[]) => string,
  why: string,
  isSo: (pattern: Pattern) => boolean,
])[] = [
  [
    () => "not read",
    "It is written in a way that this check does not know.",
    ({ tree, workbooks }) => tree === undefined && workbooks.length === 0,
  ],
  [
    (patterns) => `with other workbooks: ${list([...new Set(patterns.flatMap(({ workbooks }) => workbooks))])}`,
    "What stands there cannot be seen from here.",
    ({ workbooks }) => workbooks.length > 0,
  ],
  [
    () => "with cells chosen at run time",
    "INDIRECT, OFFSET and ranges that end at a function cannot be followed.",
    ({ wanders }) => wanders,
  ],
];

/** Few cells of each pattern, to name them, and how many there are. */
function cellsByPattern({ book }: Study): Map<Pattern, { cells: Cell[]; count: number }> {
  const found = new Map<Pattern, { cells: Cell[]; count: number }>();
  for (const grid of book.grids) {
    for (const { pattern, ...cell } of book.formulaCells(grid.index)) {
      const known = found.get(pattern) ?? { cells: [], count: 0 };
      known.count++;
      if (known.cells.length < 5) known.cells.push(cell);
      found.set(pattern, known);
    }
  }
  return found;
}
