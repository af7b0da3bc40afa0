import { must } from "../quantities/must";
import { type Anchor, type Area, cellAddress } from "../spreadsheet/areas";
import { type FormatName, type LookName, numberFormats, type Plan } from "./plan";

/** One cell of a sheet that is being composed. */
export interface DraftCell {
  /**
   * A constant, or a formula. In a formula `{key}` stands for the address of the cell with that key, wherever
   * it comes to lie: `=BED.STONE_YARDS({stoneArea},{stoneDepth},{waste})`.
   */
  readonly content: string | number;
  readonly key?: string;
  readonly format?: FormatName;
  readonly look?: LookName;
  /** Stands out while this plain formula holds; in it `{self}` is the cell. */
  readonly warnWhen?: string;
  readonly choices?: readonly string[];
  /** Merged with the cells to its right, so many in all. */
  readonly across?: number;
}

/** A row of a sheet that is being composed: its cells from the first column on; undefined stays blank. */
export interface DraftRow {
  readonly cells: readonly (DraftCell | undefined)[];
  /** A look for the whole width, under the looks of the cells. */
  readonly look?: LookName;
  /** What the row is, by which an update finds it again where the number of its cells may change. */
  readonly id?: string;
}

/** The condition that shows when a formula was typed over. */
export const TYPED_OVER = "=NOT(ISFORMULA({self}))";

const KEY = /\{([A-Za-z][\w.]*)\}/g;

/**
 * Makes a plan of rows, for one place in a sheet.
 *
 * @param title what the plan is, for the person.
 * @param rows its rows, top to bottom.
 * @param widths least column widths in characters; their number is the plan's width.
 * @param at where the plan will stand; its references are relative, so that it can be moved and copied later.
 * @throws {Error} for a key that no cell has, or that two cells have, and for a number that isn't finite: a fault of
 *   this program.
 */
export function compose(title: string, rows: readonly DraftRow[], widths: readonly number[], at: Anchor): Plan {
  const addresses = keyAddresses(rows, at);
  const resolve = (content: string | number) => {
    // The host's client library sends these as "leave the cell alone", so that no one would notice.
    if (typeof content === "number" && !Number.isFinite(content)) throw new Error(`A cell can't hold ${content}.`);
    if (typeof content === "number" || !content.startsWith("=")) return content;
    return content.replace(KEY, (_, key: string) => {
      const address = addresses.get(key);
      if (address === undefined) throw new Error(`No cell has the key "${key}".`);
      return address;
    });
  };

  const blank = () => rows.map(() => widths.map(() => "" as string | number));
  const formulas = blank();
  const formats = rows.map(() => widths.map(() => numberFormats.general as string));
  const looks: { area: Area; look: LookName }[] = [];
  const warnings: { area: Area; template: string; when: string }[] = [];
  const choices: { area: Area; names: readonly string[] }[] = [];
  const merged: Area[] = [];
  rows.forEach((row, index) => {
    if (row.look) looks.push({ area: { row: index, column: 0, rows: 1, columns: widths.length }, look: row.look });
  });
  for (const { cell, row, column } of cellsOf(rows)) {
    const area: Area = { row, column, rows: 1, columns: cell.across ?? 1 };
    must(formulas[row])[column] = resolve(cell.content);
    must(formats[row])[column] = numberFormats[cell.format ?? "general"];
    if (cell.look) looks.push({ area, look: cell.look });
    if (cell.warnWhen) {
      const self = cellAddress({ row: at.row + row, column: at.column + column });
      warnings.push({ area, template: cell.warnWhen, when: cell.warnWhen.replaceAll("{self}", self) });
    }
    if (area.columns > 1) merged.push(area);
    if (cell.choices) choices.push({ area, names: cell.choices });
  }
  return {
    title,
    rows: rows.length,
    columns: widths.length,
    formulas,
    formats,
    looks: joinDown(joinAcross(looks), (one, other) => one.look === other.look),
    widths,
    warnings: joinDown(warnings, (one, other) => one.template === other.template).map(({ area, when }) => ({
      area,
      when,
    })),
    choices: joinDown(choices, (one, other) => one.names === other.names),
    ...(merged.length > 0 && { merged }),
  };
}

/**
 * Addresses of the keyed cells, as {@link compose} places them.
 *
 * @throws {Error} for a key that two cells have.
 */
export function keyAddresses(rows: readonly DraftRow[], at: Anchor): Map<string, string> {
  const addresses = new Map<string, string>();
  for (const { cell, row, column } of cellsOf(rows)) {
    if (cell.key === undefined) continue;
    if (addresses.has(cell.key)) throw new Error(`Two cells have the key "${cell.key}".`);
    addresses.set(cell.key, cellAddress({ row: at.row + row, column: at.column + column }));
  }
  return addresses;
}

function* cellsOf(rows: readonly DraftRow[]): Generator<{ cell: DraftCell; row: number; column: number }> {
  for (const [row, { cells }] of rows.entries()) {
    for (const [column, cell] of cells.entries()) if (cell) yield { cell, row, column };
  }
}

/** Joins cells that stand side by side and look alike, before rows of them are joined. */
function joinAcross<T extends { readonly area: Area; readonly look: LookName }>(cells: readonly T[]): T[] {
  const joined: T[] = [];
  for (const cell of cells) {
    const last = joined.at(-1);
    const isBeside = last?.area.row === cell.area.row && last.area.column + last.area.columns === cell.area.column;
    if (last && isBeside && last.look === cell.look) {
      joined[joined.length - 1] = { ...last, area: { ...last.area, columns: last.area.columns + cell.area.columns } };
    } else joined.push(cell);
  }
  return joined;
}

/** Joins areas that stand right below one another and are alike, since the host is asked once per area. */
function joinDown<T extends { readonly area: Area }>(items: readonly T[], alike: (one: T, other: T) => boolean): T[] {
  const joined: T[] = [];
  for (const item of items) {
    const above = joined.findLastIndex(
      ({ area }) =>
        area.column === item.area.column &&
        area.columns === item.area.columns &&
        area.row + area.rows === item.area.row,
    );
    const found = joined[above];
    if (found && alike(found, item)) joined[above] = { ...found, area: { ...found.area, rows: found.area.rows + 1 } };
    else joined.push(item);
  }
  return joined;
}
