import type { Area } from "../../../src/practice/grid/port";
import { lookDefaults } from "../../../src/practice/host/lookDefaults";
import type { HeadlessHost } from "../../headlessHost";

/** At least so many are measured, and all up to the last cell that holds anything. */
const COLUMNS_MEASURED = 60;
const ROWS_MEASURED = 90;
const EDGES = ["top", "bottom", "left", "right"] as const;

/** Everything of a workbook that a write could spoil, with sheets by their names, to be compared as a whole. */
export type Snapshot = Readonly<Record<string, unknown>>;

export function snapshotOf(host: HeadlessHost): Snapshot {
  const { grid, session } = host;
  const sheets = grid.sheets.list();
  const active = grid.sheets.activeId();
  const all = {
    sheets: sheets.map(({ id, name, hidden }) => ({
      name,
      hidden,
      isProtected: session.protectedSheets.has(id),
      ...sheetContent(host, id),
    })),
    names: grid.names.list(),
    tables: grid.tables.list().map(({ id: _, ...table }) => table),
    // A note that was emptied is none.
    kept: Object.fromEntries(
      grid.kept
        .keys()
        .sort()
        .map((key) => [key, grid.kept.get(key)])
        .filter(([, value]) => value !== ""),
    ),
    front: sheets.find(({ id }) => id === active)?.name,
    selection: grid.selection.get(),
  };
  // Sheets that were made again have other ids.
  return fromText(sheets.reduce((so, { id, name }) => so.replaceAll(id, `sheet ${name}`), JSON.stringify(all)));
}

/** The texts of whole snapshots: each is compared many times. */
const texts = new WeakMap<object, string>();
const masked = new WeakMap<Snapshot, Snapshot>();

function fromText(text: string): Snapshot {
  const snapshot = JSON.parse(text) as Snapshot;
  texts.set(snapshot, text);
  return snapshot;
}

const textOf = (value: unknown) =>
  (typeof value === "object" && value !== null ? texts.get(value) : undefined) ?? JSON.stringify(value);

function sheetContent({ grid, open }: HeadlessHost, id: string) {
  const sheet = open.workbook.getSheetBySheetId(id)!.getSheet();
  const cells: Record<string, unknown> = {};
  const plain = JSON.stringify(dressOf(grid, id, ROWS_MEASURED - 1, COLUMNS_MEASURED - 1));
  const written: [row: number, column: number][] = [];
  sheet.getCellMatrix().forValue((row, column) => {
    written.push([row, column]);
  });
  const lastRow = written.reduce((last, [row]) => Math.max(last, row + 1), ROWS_MEASURED);
  const lastColumn = written.reduce((last, [, column]) => Math.max(last, column + 1), COLUMNS_MEASURED);
  // One read for all that is written: a read for each cell took a sixth of the time of the whole table.
  const read = around(id, written);
  const contents = read ? grid.cells.read(read) : [];
  for (const [row, column] of written) {
    const content = contents[row - read!.row]![column - read!.column]!;
    const dress = dressOf(grid, id, row, column);
    if (content.kind === "empty" && content.formula === undefined && JSON.stringify(dress) === plain) continue;
    cells[`${row},${column}`] = [content, dress];
  }
  const whole: Area = { sheetId: id, row: 0, column: 0, rowCount: lastRow, columnCount: lastColumn };
  return {
    cells,
    // What is as usual is left out, so that a sheet that has grown compares as it was.
    widths: unusual(lastColumn, (column) => grid.looks.columnWidth(id, column)),
    heights: unusual(lastRow, (row) => grid.looks.rowHeight(id, row)),
    hiddenRows: places(lastRow, (row) => grid.looks.rowHidden(id, row)),
    hiddenColumns: places(lastColumn, (column) => grid.looks.columnHidden(id, column)),
    merged: sorted(grid.cells.merged(id)),
    rules: sorted(grid.rules.shadings(whole).map(({ id: _, ...rule }) => rule)),
    lists: sorted(grid.rules.lists(whole).flatMap(({ area, rule }) => cellsOf(area).map((cell) => ({ cell, rule })))),
    pictures: sorted(grid.pictures.list(id).map(({ id: _, ...picture }) => picture)),
    page: grid.pages.get(id),
    groups: grid.groups.list(id),
    frozen: sheet.getConfig().freeze,
  };
}

/** The area that holds these cells. */
function around(sheetId: string, cells: readonly (readonly [row: number, column: number])[]): Area | undefined {
  if (cells.length === 0) return undefined;
  const [rows, columns] = [cells.map(([row]) => row), cells.map(([, column]) => column)];
  const [row, column] = [Math.min(...rows), Math.min(...columns)];
  return {
    sheetId,
    row,
    column,
    rowCount: Math.max(...rows) - row + 1,
    columnCount: Math.max(...columns) - column + 1,
  };
}

/** The size that most have, and those that are not so, by place. */
function unusual(count: number, sizeAt: (place: number) => number): Record<string, number | undefined> {
  const sizes = Array.from({ length: count }, (_, place) => sizeAt(place));
  const usual = [...sizes].sort((one, other) => one - other)[Math.floor(count / 2)];
  return { usual, ...Object.fromEntries([...sizes.entries()].filter(([, size]) => size !== usual)) };
}

const places = (count: number, is: (place: number) => boolean) =>
  Array.from({ length: count }, (_, place) => place).filter(is);

/** What says no more than that a cell is plain is left out. */
function dressOf(grid: HeadlessHost["grid"], id: string, row: number, column: number) {
  const borders = EDGES.map((edge) => grid.looks.border(id, row, column, edge)).filter(({ style }) => style !== "None");
  const look = Object.entries(grid.looks.read(id, row, column)).filter(
    ([part, value]) => value !== undefined && value !== Reflect.get(lookDefaults, part),
  );
  return [Object.fromEntries(look), borders];
}

/** The host may cut one list's cells into areas in another way. */
function cellsOf({ row, column, rowCount, columnCount }: Area): string[] {
  return Array.from({ length: rowCount * columnCount }, (_, index) => {
    return `${row + Math.floor(index / columnCount)},${column + (index % columnCount)}`;
  });
}

const sorted = <T>(things: readonly T[]): T[] =>
  [...things].sort((one, other) => (JSON.stringify(one) < JSON.stringify(other) ? -1 : 1));

/** The same without what is made up again each time: ids, and names that hold one. */
export function withoutIds(snapshot: Snapshot): Snapshot {
  const known = masked.get(snapshot);
  if (known) return known;
  const text = textOf(snapshot)
    .replace(/[\da-f]{8}-[\da-f]{4}-[\da-f]{4}-[\da-f]{4}-[\da-f]{12}/g, "an id")
    .replace(/\b(Bedrow [a-z]+|Bedrow \d+) [\da-f]{8}\b/g, "$1");
  const without = fromText(text);
  masked.set(snapshot, without);
  return without;
}

/** Names of sheets that are in one snapshot and not in another. */
export function sheetsAdded(before: Snapshot, after: Snapshot): string[] {
  const names = ({ sheets }: Snapshot) => (sheets as readonly { readonly name: string }[]).map(({ name }) => name);
  return names(after).filter((name) => !names(before).includes(name));
}

/** Where two snapshots differ, up to six places, for a message; "" where they do not. */
export function difference(one: unknown, other: unknown, path = ""): string {
  const [text, otherText] = [textOf(one), textOf(other)];
  if (text === otherText) return "";
  const isDeep = [one, other].every((value) => typeof value === "object" && value !== null);
  if (!isDeep) return `${path}: ${text} became ${otherText}`;
  const [before, after] = [one, other] as [Record<string, unknown>, Record<string, unknown>];
  const found: string[] = [];
  for (const key of new Set([...Object.keys(before), ...Object.keys(after)])) {
    const inside = difference(before[key], after[key], `${path}/${key}`);
    if (inside) found.push(inside);
    if (found.length === 6) break;
  }
  return found.join("\n");
}
