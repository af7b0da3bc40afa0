import { must } from "../../quantities/must";
import { areaAddress } from "../../spreadsheet/areas";
import { contains, type Target } from "../book";
import type { Study, SummingCell } from "../study";
import { counted } from "../words";
import { eachSum, type Observation, type Rule } from "./rule";

/** More empty rows than this are room for more lines. */
const MOST_EMPTY = 3;
/** How many rows may be between a range and its total. */
const MOST_BETWEEN = 3;
/** Functions that take a whole range. */
const TAKES_RANGE = new Set(["SUM", "AVERAGE", "SUBTOTAL"]);

export const emptyRow: Rule = {
  id: "empty-row-in-total",
  title: "A total takes in an empty row",
  level: "question",
  rank: 5,
  matters: "A number typed into the empty row later, such as a note or a date, would be added in.",
  look: (study) =>
    eachSum(study, (summing) =>
      summing.sums
        .filter(({ name }) => TAKES_RANGE.has(name))
        .flatMap(({ targets }) => observe(study, summing, targets)),
    ),
};

function observe(study: Study, { cell }: SummingCell, targets: readonly Target[]): Observation[] {
  const { book } = study;
  const [range, ...others] = targets;
  if (!range || others.length > 0 || range.sheet !== cell.sheet || range.column !== cell.column) return [];
  if (range.columns !== 1 || range.rows < 2 || !isBeside(study, cell, range)) return [];
  const grid = must(book.grids[cell.sheet]);
  let rows = 0;
  // Only rows with nothing in them at all: a line that isn't filled in yet has its label.
  for (let row = range.row + range.rows - 1; row > range.row && grid.isRowBlank(row); row--) rows++;
  if (rows === 0 || rows > MOST_EMPTY || isInTable(study, range)) return [];
  const last = range.row + range.rows - 1;
  const which = rows === 1 ? `row ${last + 1}` : `rows ${last - rows + 2} to ${last + 1}`;
  return [
    {
      cell,
      group: `${cell.sheet}`,
      about: areaAddress(range),
      seen: `adds ${areaAddress(range)}, and ${which} at its end ${rows === 1 ? "is" : "are"} empty.`,
      todo: `End the range at the last line, or ignore this if you keep the ${counted(rows, "empty row")} for inserting lines.`,
    },
  ];
}

/** A table grows by itself, and its empty rows are lines to fill in. */
function isInTable({ book }: Study, range: Target): boolean {
  return book.facts.tables.some(({ sheet, area }) => book.sheetNamed(sheet) === range.sheet && contains(area, range));
}

/** Whether a total is right below its range, or right above it, with nothing between but empty rows. */
function isBeside({ book }: Study, { sheet, row }: SummingCell["cell"], range: Target): boolean {
  if (range.row === row + 1) return true;
  const end = range.row + range.rows;
  if (row < end || row - end > MOST_BETWEEN) return false;
  for (let between = end; between < row; between++) if (!must(book.grids[sheet]).isRowBlank(between)) return false;
  return true;
}
