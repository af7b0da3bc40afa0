import type { Cell, Target } from "../book";
import type { HeadingRow } from "../sheet/headings";
import { type Role, roleOf } from "../sheet/roles";
import type { Study } from "../study";
import { localAddress } from "../words";
import type { Observation, Rule } from "./rule";

/** A table is one of beds if it has one of these typed in. */
const MEASURES = new Set<Role>(["area", "border run", "length", "stone depth", "width"]);
/** Two beds with this many typed numbers alike, and their names too, are one bed. */
const FEWEST_NUMBERS = 2;

export const sameBed: Rule = {
  id: "same-bed",
  title: "The same bed stands there twice",
  level: "odd",
  rank: 50,
  matters: "It is charged, ordered and dug twice.",
  *look(study) {
    for (const grid of study.book.grids) {
      if (!study.isChecked(grid.index)) continue;
      const places = study.book.places[grid.index]!;
      for (const [index, heading] of places.headingRows.entries()) {
        yield undefined;
        const next = places.headingRows
          .slice(index + 1)
          .find(({ first, last }) => first <= heading.last && heading.first <= last);
        const end = (next?.row ?? grid.bottom + 1) - 1;
        yield* twins(study, grid.index, bedsDown(study, grid.index, heading, end), "row");
        yield* twins(study, grid.index, bedsAcross(study, grid.index, heading, end), "column");
      }
    }
  },
};

interface Bed {
  readonly place: Target;
  readonly texts: readonly string[];
  readonly numbers: readonly string[];
}

/** One bed a row. */
function bedsDown(study: Study, sheet: number, { first, last, row: head }: HeadingRow, end: number): Bed[] {
  const grid = study.book.grids[sheet]!;
  const columns = range(first, last).filter(
    (column) => !isRunning(range(head + 1, end).map((row) => grid.value(row, column))),
  );
  const measures = columns.filter((column) =>
    MEASURES.has(roleOf(study.book.places[sheet]!.headingOf(head + 1, column)) as Role),
  );
  if (!measures.some((column) => range(head + 1, end).some((row) => isTyped(study, { sheet, row, column })))) return [];
  return range(head + 1, end).map((row) => ({
    place: { sheet, row, column: first, rows: 1, columns: last - first + 1 },
    ...typedIn(
      study,
      columns.map((column) => ({ sheet, row, column })),
    ),
  }));
}

/** One bed a column, its name in the heading. */
function bedsAcross(study: Study, sheet: number, { first, last, row: head }: HeadingRow, end: number): Bed[] {
  const places = study.book.places[sheet]!;
  const rows = range(head, end);
  const measures = range(head + 1, end).filter((row) => MEASURES.has(roleOf(places.labelOf(row, last)) as Role));
  // In a table of one bed a row the headings are measures themselves.
  if (
    measures.length === 0 ||
    range(first, last).some((column) => MEASURES.has(roleOf(places.headingOf(head + 1, column)) as Role))
  )
    return [];
  return range(first + 1, last).map((column) => ({
    place: { sheet, row: head, column, rows: end - head + 1, columns: 1 },
    ...typedIn(
      study,
      rows.map((row) => ({ sheet, row, column })),
    ),
  }));
}

function* twins(study: Study, sheet: number, beds: readonly Bed[], what: "row" | "column"): Generator<Observation> {
  const known = new Map<string, Bed>();
  for (const bed of beds) {
    if (bed.texts.length === 0 || bed.numbers.length < FEWEST_NUMBERS) continue;
    const sign = JSON.stringify([bed.texts, bed.numbers]);
    const before = known.get(sign);
    if (!before) {
      known.set(sign, bed);
      continue;
    }
    const name = study.book.grids[sheet]!.text(bed.place.row, bed.place.column);
    const which = (place: Target) =>
      what === "row" ? `row ${place.row + 1}` : `column ${localAddress(place).replace(/\d.*/, "")}`;
    yield {
      cell: { sheet, row: bed.place.row, column: bed.place.column },
      more: [bed.place, before.place],
      group: `${sheet}:${sign}`,
      about: sign,
      seen: `${which(bed.place)} (“${name}”) has the same name and measures as ${which(before.place)}.`,
      todo: "Delete one of them, or give them names that tell them apart.",
    };
  }
}

const range = (from: number, to: number) =>
  Array.from({ length: Math.max(0, to - from + 1) }, (_, place) => from + place);

function isTyped({ book }: Study, { sheet, row, column }: Cell): boolean {
  const grid = book.grids[sheet]!;
  return grid.formula(row, column) === undefined && !grid.isBlank(row, column);
}

/** What was typed for a bed: names in small letters, and measures; tape text counts as a measure. */
function typedIn(study: Study, cells: readonly Cell[]): { texts: string[]; numbers: string[] } {
  const typed = cells
    .filter((cell) => isTyped(study, cell))
    .map(({ sheet, row, column }) => study.book.grids[sheet]!.value(row, column));
  const isMeasure = (value: unknown) =>
    typeof value === "number" || (typeof value === "string" && /^\s*'?[\d.]/.test(value));
  const plain = (value: unknown) => String(value).toLowerCase().replaceAll(/\s+/g, " ").trim();
  return { texts: typed.filter((value) => !isMeasure(value)).map(plain), numbers: typed.filter(isMeasure).map(plain) };
}

/** A column that counts the rows, 1, 2, 3, tells no bed from another. */
function isRunning(values: readonly unknown[]): boolean {
  const numbers = values.filter((value) => typeof value === "number");
  return numbers.length > 2 && numbers.every((value, place) => place === 0 || value === numbers[place - 1]! + 1);
}
