import { type FieldKey, fields } from "../../quantities/bed/fields";
import { type BedForm, blankForm, type CutOutText, type PointText, type Way, ways } from "../../quantities/bed/form";
import { currentText } from "../../quantities/bed/olderTexts";
import { TON } from "../../quantities/soldBy";
import type { Anchor, Area } from "../../spreadsheet/areas";
import { BLOCK_TITLE, fieldsBelow, headings, MEASURED } from "./headings";

export const BLOCK_COLUMNS = 9;

/** An estimate block that was found in a sheet. */
export interface FoundBlock {
  readonly area: Area;
  /** What its inputs hold now, as if typed into the form. */
  readonly form: BedForm;
}

/** The one of a sheet's blocks that a cell lies in; undefined where it lies in none. */
export function blockAt(blocks: readonly FoundBlock[], cell: Anchor): FoundBlock | undefined {
  return blocks.find(
    ({ area }) =>
      area.row <= cell.row &&
      cell.row < area.row + area.rows &&
      area.column <= cell.column &&
      cell.column < area.column + area.columns,
  );
}

/**
 * Every estimate block of a sheet, read back from its labels, so that it is found wherever it was copied or moved to,
 * with lines added and cells typed over.
 *
 * @param shown what the sheet's used range shows.
 * @param at where that range begins.
 * @param formulas what is in the same cells; with it, a cell that follows one of the office's rates was not typed.
 *   Without it such a cell reads as the rate that it shows now.
 */
export function findBlocks(
  shown: readonly (readonly unknown[])[],
  at: Anchor,
  formulas?: readonly (readonly unknown[])[],
): FoundBlock[] {
  const values = formulas
    ? shown.map((cells, row) => cells.map((cell, column) => (followsRate(formulas[row]?.[column]) ? FOLLOWS : cell)))
    : shown;
  const titles = values.flatMap((cells, row) =>
    cells.flatMap((content, column) => (content === BLOCK_TITLE ? [{ row, column }] : [])),
  );
  return titles.flatMap(({ row, column }) => {
    const next = titles.find((other) => other.column === column && other.row > row);
    const rows = values.slice(row, next?.row).map((cells) => cells.slice(column, column + BLOCK_COLUMNS));
    const form = readForm(rows);
    const area = { row: at.row + row, column: at.column + column, rows: lastFilled(rows) + 1, columns: BLOCK_COLUMNS };
    return form ? [{ area, form }] : [];
  });
}

/** What stands for a cell that follows a rate. */
const FOLLOWS = Symbol("follows a rate");

function followsRate(formula: unknown): boolean {
  return typeof formula === "string" && /^=.*\bRate_/s.test(formula);
}

function lastFilled(rows: readonly (readonly unknown[])[]): number {
  return rows.findLastIndex(([label, value]) => text(label) !== "" || text(value) !== "");
}

type Row = readonly unknown[];

function readForm(rows: readonly Row[]): BedForm | undefined {
  const parts = partsOf(rows);
  const measured = parts.find(({ heading }) => heading.startsWith(MEASURED));
  const way = wayOf(measured?.heading.slice(MEASURED.length));
  if (!measured || !way) return undefined;
  const listed = (label: string) => measured.rows.filter(([first]) => new RegExp(`^${label} \\d+$`).test(text(first)));
  return {
    ...blankForm(),
    name: text(rows[0]?.[1]),
    way,
    typed: asBefore(Object.assign({}, ...parts.map(typedIn))),
    widths: listed("Width").map(([, width]) => text(width)),
    points: listed("Point").map((row): PointText => [text(row[1]), text(row[2]), Number(row[6]) > 0 ? "1" : "0"]),
    cutOuts: listed("Cut-out").map((row): CutOutText => [text(row[1]), text(row[2]), text(row[3]), text(row[4])]),
  };
}

/** A part of a block: its heading, and where below the block's first row its own rows begin. */
export interface Part {
  readonly heading: string;
  readonly first: number;
  readonly rows: readonly Row[];
}

/** The parts of a block, from the rows of its columns. */
export function partsOf(rows: readonly Row[]): Part[] {
  const known: readonly string[] = Object.values(headings);
  const starts = rows.flatMap(([first], row) => {
    const heading = text(currentText(first));
    // A row of the head says "Price", too; parts begin below the measurements.
    return heading.startsWith(MEASURED) || (known.includes(heading) && row > 2) ? [{ heading, row }] : [];
  });
  return starts.map(({ heading, row }, index) => ({
    heading,
    first: row + 1,
    rows: rows.slice(row + 1, starts[index + 1]?.row).map(([label, ...cells]) => [currentText(label), ...cells]),
  }));
}

/** The inputs below one heading. A label that stands twice is an input first and a result after. */
function typedIn({ heading, rows }: Part): Partial<Record<FieldKey, string>> {
  const keys = fieldsBelow[heading.startsWith(MEASURED) ? MEASURED : heading] ?? [];
  return Object.fromEntries(
    keys.flatMap((key) => {
      const row = rows.find(([label]) => label === fields[key].label);
      return row && row[1] !== FOLLOWS ? [[key, text(row[1])]] : [];
    }),
  );
}

/** In blocks of earlier versions everything is sold by the ton, whatever its stone is usually or by now sold by. */
function asBefore(typed: BedForm["typed"]): BedForm["typed"] {
  return typed.soldBy !== undefined || typed.stone === undefined ? typed : { ...typed, soldBy: TON.name };
}

function wayOf(label: string | undefined): Way | undefined {
  return (Object.keys(ways) as Way[]).find((way) => way === label);
}

function text(content: unknown): string {
  return content === null || content === undefined ? "" : String(content);
}
