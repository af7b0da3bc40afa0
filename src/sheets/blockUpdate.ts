import { type Anchor, cellAddress } from "../spreadsheet/areas";
import { alignRows, type Content, isSame, movesOf, type RowOperation } from "./blockRows";
import type { DraftCell, DraftRow } from "./compose";
import { numberFormats } from "./plan";

/*
 * A block is updated where it is: the rows it was printed from, the rows it is to have, and what is on the sheet by now
 * are compared cell by cell. What the person changed on the sheet is told from what the product wrote there, and kept.
 */

/** A block's columns as they are on the sheet, from its first row to its last. */
export interface BlockCells {
  readonly at: Anchor;
  /** Contents: formulas with their "=", text that begins like one with its mark. */
  readonly contents: readonly (readonly Content[])[];
}

/** A cell that is to change, or that holds what the person put there. */
export interface CellUpdate extends Anchor {
  /** What the cell is, for the person: "Width", "Stone, markup". */
  readonly label: string;
  /** Its row before rows come and go. */
  readonly rowBefore: number;
  readonly before: Content;
  readonly after: Content;
  /** The number format of a cell that the block had not before. */
  readonly format?: string;
}

/** Rows of a block that are new on the sheet: where they are once all rows have come and gone. */
export interface NewRows {
  readonly row: number;
  /** With addresses in their formulas, and without keys. */
  readonly rows: readonly DraftRow[];
}

/** What an update comes to. The cells' rows are those after rows have come and gone. */
export interface BlockUpdate {
  /** Cells that the new rows change. */
  readonly changes: readonly CellUpdate[];
  /** Cells that were changed by hand on the sheet, with what the new rows have for them. */
  readonly byHand: readonly CellUpdate[];
  /** Labels of rows that the person put in. */
  readonly ownRows: readonly string[];
  /** Rows to insert and delete, in that order, from the bottom up. */
  readonly operations: readonly RowOperation[];
  readonly inserted: readonly NewRows[];
  /** Rows of the sheet that go, and the rows that they were printed from. */
  readonly removed: readonly { readonly row: number; readonly label: string; readonly printed: DraftRow }[];
  /** How many rows of the sheet are the block's: what was read may reach further down. */
  readonly rows: number;
  /** Labels of rows that are gone from the sheet, where a changed formula needs them. */
  readonly missing: readonly string[];
}

/**
 * Compares a block's rows with the rows that it is to have, and with its cells.
 *
 * @param previous the rows for what the sheet holds now; further ones that would be just as right, such as with a rate
 *   followed that was typed over.
 * @param next the rows that it is to have.
 */
export function blockUpdate(
  [previous, ...others]: readonly [readonly DraftRow[], ...(readonly DraftRow[])[]],
  next: readonly DraftRow[],
  there: BlockCells,
): BlockUpdate {
  const { at } = there;
  const places = alignRows(previous, there.contents);
  const rows = places.reduce<number>((last, place) => Math.max(last, (place ?? -1) + 1), 0);
  // What is below the block's last row in its columns is not the block's.
  const contents = there.contents.slice(0, rows);
  const moves = movesOf(previous, next, places, contents.length);
  const before = addressesOf(previous, places, at);
  const after = addressesOf(next, moves.placesAfter, at);
  const changes: CellUpdate[] = [];
  const byHand: CellUpdate[] = [];
  const missing = new Set<string>();
  next.forEach((row, nextIndex) => {
    const index = moves.previousOf[nextIndex];
    const [place, placeAfter] = [index === undefined ? undefined : places[index], moves.placesAfter[nextIndex]];
    if (index === undefined || place === undefined || placeAfter === undefined) return;
    const printed = previous[index]?.cells ?? [];
    for (let column = 0; column < Math.max(printed.length, row.cells.length); column += 1) {
      const [was, is] = [printed[column], row.cells[column]];
      if (!was && !is) continue;
      const holds = contents[place]?.[column] ?? "";
      const [wanted, ...lacking] = resolved(is?.content ?? "", after);
      const isChanged = (was?.content ?? "") !== (is?.content ?? "");
      const made = [was, ...others.map((rows) => rows[index]?.cells[column])].map((cell) =>
        resolved(cell?.content ?? "", before),
      );
      // A formula that read a row which is gone is in error, and no work of anyone's.
      const isAsMade = made.some(([content, ...gone]) => gone.length > 0 || isSame(holds, content));
      if (isAsMade && (!isChanged || (moves.operations.length === 0 && isSame(holds, wanted)))) continue;
      if (isAsMade && lacking.length > 0) {
        for (const key of lacking) missing.add(rowLabel(previous, key));
        continue;
      }
      if (!isAsMade && isSame(holds, wanted)) continue;
      (isAsMade ? changes : byHand).push({
        row: at.row + placeAfter,
        rowBefore: at.row + place,
        column: at.column + column,
        label: labelOf(next, nextIndex, column, is ?? was, contents[place]?.[0]),
        before: holds,
        after: wanted,
        ...(!was && is?.format && { format: numberFormats[is.format] }),
      });
    }
  });
  const taken = new Set(places);
  const ownRows = contents.flatMap((cells, row) =>
    taken.has(row) || cells.every((cell) => cell === "") ? [] : [String(cells.find((cell) => cell !== ""))],
  );
  const removed = moves.removed.map(({ place, index, around }) => {
    const printed = withoutSharedRules(previous[index] ?? { cells: [] }, around);
    const label = String(contents[place]?.[0] || printed.cells[0]?.content || "row");
    return { row: at.row + place, label, printed };
  });
  return {
    changes,
    byHand,
    ownRows,
    operations: moves.operations.map((one) => ({ ...one, row: at.row + one.row })),
    inserted: moves.inserted.map(({ place, rows: fresh, around }) => ({
      row: at.row + place,
      rows: fresh.map((row) => {
        const { cells, ...rest } = withoutSharedRules(row, around);
        return { ...rest, cells: cells.map((cell) => cell && withoutKey(cell, resolved(cell.content, after)[0])) };
      }),
    })),
    removed,
    rows,
    missing: [...missing],
  };
}

/** A row between two with the same color rule gets it from them. */
function withoutSharedRules(row: DraftRow, [above, below]: readonly (DraftRow | undefined)[]): DraftRow {
  const isShared = (rule: string | undefined, column: number) =>
    above?.cells[column]?.warnWhen === rule && below?.cells[column]?.warnWhen === rule;
  const cells = row.cells.map((cell, column) => {
    if (!cell || cell.warnWhen === undefined || !isShared(cell.warnWhen, column)) return cell;
    const { warnWhen: _, ...rest } = cell;
    return rest;
  });
  return { ...row, cells };
}

function withoutKey({ key: _, ...cell }: DraftCell, content: Content): DraftCell {
  return { ...cell, content: typeof content === "boolean" ? String(content) : content };
}

const KEY = /\{([A-Za-z][\w.]*)\}/g;

/** The addresses of keyed cells, from the places of their rows on the sheet. */
export function addressesOf(
  rows: readonly DraftRow[],
  places: readonly (number | undefined)[],
  at: Anchor,
): ReadonlyMap<string, string> {
  const addresses = new Map<string, string>();
  rows.forEach(({ cells }, index) => {
    const place = places[index];
    if (place === undefined) return;
    cells.forEach((cell, column) => {
      if (cell?.key) addresses.set(cell.key, cellAddress({ row: at.row + place, column: at.column + column }));
    });
  });
  return addresses;
}

/** Content with the addresses of its keys, and the keys that have none. */
export function resolved(
  content: string | number,
  addresses: ReadonlyMap<string, string>,
): readonly [content: Content, ...lacking: string[]] {
  if (typeof content === "number" || !content.startsWith("=")) return [content];
  const lacking: string[] = [];
  const text = content.replace(KEY, (given, key: string) => {
    const address = addresses.get(key);
    if (address === undefined) lacking.push(key);
    return address ?? given;
  });
  return [text, ...lacking];
}

/** What the parts of a line's row are called. */
const PART_WORDS: Readonly<Record<string, string>> = {
  quantity: "quantity",
  unitCost: "unit cost",
  cost: "cost",
  markup: "markup",
  price: "price",
  kind: "kind",
  remark: "remark",
  decimal: "reads as",
  note: "note",
};

function labelOf(
  rows: readonly DraftRow[],
  index: number,
  column: number,
  cell: DraftCell | undefined,
  shown: Content | undefined,
): string {
  const label = String(rows[index]?.cells[0]?.content || shown || "").replace(/^'/, "") || `row ${index + 1}`;
  if (column === 0) return `${label}, label`;
  const key = cell?.key ?? "";
  const part = PART_WORDS[key.slice(key.lastIndexOf(".") + 1)];
  return key.includes(".") && part ? `${label}, ${part}` : label;
}

function rowLabel(rows: readonly DraftRow[], key: string): string {
  const row = rows.find(({ cells }) => cells.some((cell) => cell?.key === key));
  return String(row?.cells[0]?.content || key);
}
