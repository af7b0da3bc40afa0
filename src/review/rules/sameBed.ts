import type { Role } from "../../headings/roles";
import { must } from "../../quantities/must";
import { areaAddress } from "../../spreadsheet/areas";
import type { Cell, Target } from "../book";
import type { HeadingRow } from "../sheet/places";
import type { Study } from "../study";
import type { Observation, Rule } from "./rule";

/** A table is one of beds if it has one of these typed in. */
const MEASURES = new Set<Role>(["area", "border", "length", "depth", "width"]);
/** Two beds with this many typed numbers alike, and their names too, are one bed. */
export const FEWEST_NUMBERS = 2;

export const sameBed: Rule = {
  id: "same-bed",
  title: "The same bed is listed twice",
  level: "warning",
  rank: 50,
  matters: "It's charged, ordered, and dug twice.",
  *look(study) {
    for (const grid of study.book.grids) {
      if (!study.isChecked(grid.index)) continue;
      const places = must(study.book.places[grid.index]);
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
function* bedsDown(study: Study, sheet: number, { first, last, row: head }: HeadingRow, end: number): Generator<Bed> {
  const { grid, places } = { grid: must(study.book.grids[sheet]), places: must(study.book.places[sheet]) };
  const rows = range(head + 1, end);
  const columns = range(first, last).filter((column) => !isRunning(rows.map((row) => grid.value(row, column))));
  const isMeasured = columns.some(
    (column) =>
      isMeasure(places.roleIn(places.headingOf(head + 1, column))) &&
      rows.some((row) => isTyped(study, { sheet, row, column })),
  );
  if (!isMeasured) return;
  for (const row of rows) {
    const cells = columns.map((column) => ({ sheet, row, column }));
    yield { place: { sheet, row, column: first, rows: 1, columns: last - first + 1 }, ...typedIn(study, cells) };
  }
}

/** One bed a column, its name in the heading. */
function* bedsAcross(study: Study, sheet: number, { first, last, row: head }: HeadingRow, end: number): Generator<Bed> {
  const { grid, places } = { grid: must(study.book.grids[sheet]), places: must(study.book.places[sheet]) };
  const columns = range(first + 1, last);
  // In a table of one bed a row the headings are measures themselves.
  if (columns.some((column) => isMeasure(places.roleIn(places.headingOf(head + 1, column))))) return;
  // Rows in which most columns are filled belong to the beds; others are notes and totals below them.
  const rows = range(head, end).filter(
    (row) => columns.filter((column) => !grid.isBlank(row, column)).length * 2 > columns.length,
  );
  if (!rows.some((row) => row > head && isMeasure(places.roleIn(places.labelOf(row, last))))) return;
  for (const column of columns) {
    const cells = rows.map((row) => ({ sheet, row, column }));
    yield { place: { sheet, row: head, column, rows: end - head + 1, columns: 1 }, ...typedIn(study, cells) };
  }
}

const isMeasure = (role: Role | undefined): boolean => role !== undefined && MEASURES.has(role);

function* twins(
  study: Study,
  sheet: number,
  beds: Iterable<Bed>,
  what: "row" | "column",
): Generator<Observation | undefined> {
  const known = new Map<string, Bed>();
  let count = 0;
  for (const bed of beds) {
    if (count++ % 300 === 0) yield undefined;
    if (bed.texts.length === 0 || bed.numbers.length < FEWEST_NUMBERS) continue;
    const sign = JSON.stringify([bed.texts, bed.numbers]);
    const before = known.get(sign);
    if (!before) {
      known.set(sign, bed);
      continue;
    }
    const name = must(study.book.grids[sheet]).text(bed.place.row, bed.place.column);
    const which = (place: Target) =>
      what === "row" ? `row ${place.row + 1}` : `column ${areaAddress(place).replace(/\d.*/, "")}`;
    yield {
      cell: { sheet, row: bed.place.row, column: bed.place.column },
      more: [bed.place, before.place],
      group: `${sheet}:${sign}`,
      about: sign,
      seen: `“${name}” has the same name and measurements as ${which(before.place)}.`,
      isSentence: true,
      todo: "Delete one, or give them different names.",
    };
  }
}

const range = (from: number, to: number) =>
  Array.from({ length: Math.max(0, to - from + 1) }, (_, place) => from + place);

function isTyped({ book }: Study, { sheet, row, column }: Cell): boolean {
  const grid = must(book.grids[sheet]);
  return grid.formula(row, column) === undefined && !grid.isBlank(row, column);
}

/** What was typed for a bed: names in small letters, and measures; tape text counts as a measure. */
function typedIn(study: Study, cells: readonly Cell[]): { texts: string[]; numbers: string[] } {
  const [texts, numbers]: [string[], string[]] = [[], []];
  for (const cell of cells) {
    if (!isTyped(study, cell)) continue;
    const value = String(must(study.book.grids[cell.sheet]).value(cell.row, cell.column)).trim();
    if (/^'?[\d.]/.test(value)) numbers.push(value);
    else texts.push(value.toLowerCase().replaceAll(/\s+/g, " "));
  }
  return { texts, numbers };
}

/** A column that counts the rows, 1, 2, 3, tells no bed from another. */
function isRunning(values: readonly unknown[]): boolean {
  const numbers = values.filter((value) => typeof value === "number");
  return numbers.length > 2 && numbers.every((value, place) => place === 0 || value === must(numbers[place - 1]) + 1);
}
