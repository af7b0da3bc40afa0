import type { BedForm } from "../../quantities/bed/form";
import type { Outline } from "../../quantities/bed/inPlan";
import { type Anchor, type Area, cellAddress, quotedSheet } from "../../spreadsheet/areas";
import type { DraftRow } from "../compose";
import { estimateRows } from "../estimate/block";
import { outlineOf, printed } from "../estimate/printed";
import { partsOf } from "../estimate/readBlock";

type Row = readonly unknown[];

/** Where the cells of an estimate block are now, by the keys of the estimate. */
export type BedCells = ReadonlyMap<string, Anchor>;

/**
 * Finds the cells of a block by the labels of its rows, wherever rows were added between them. A row whose label was
 * changed is found at its place in its part.
 *
 * @param values what the block's columns show; @param area where they are; @param form read back from them.
 */
export function bedCells(values: readonly Row[], area: Area, form: BedForm): BedCells {
  const rows = estimateRows(form);
  const cells = new Map<string, Anchor>();
  const place = ({ cells: drafts }: DraftRow, row: number) => {
    drafts.forEach((draft, column) => {
      if (draft?.key !== undefined) cells.set(draft.key, { row: area.row + row, column: area.column + column });
    });
  };
  const written = partsOf(rows.map(({ cells: drafts }) => drafts.map((draft) => draft?.content ?? "")));
  rows.slice(0, written[0] ? written[0].first - 1 : 0).forEach(place);
  const found = partsOf(values);
  for (const { heading, first, rows: drafted } of written) {
    const part = found.find((one) => one.heading === heading);
    if (!part) continue;
    const taken = new Set<number>();
    const labels = part.rows.map(([label]) => String(label ?? ""));
    const at = drafted.map(([label]) => {
      const row = labels.findIndex((one, index) => one === label && one !== "" && !taken.has(index));
      if (row >= 0) taken.add(row);
      return row;
    });
    at.forEach((row, index) => {
      const actual = row >= 0 ? row : taken.has(index) ? -1 : index;
      const draft = rows[first + index];
      if (actual >= 0 && actual < labels.length && draft) place(draft, part.first + actual);
    });
  }
  return cells;
}

/** A key in an expression, alone or as the first of a range. */
const KEYS = /\{([\w.]+)\}(?::\{([\w.]+)\})?/g;

/**
 * An expression of a bed as a formula elsewhere in the workbook.
 *
 * @param sheet the sheet that the bed's block is on; "" for the formula's own.
 * @throws {MissingCell} for a cell that the block doesn't have anymore.
 */
export function fromBed(
  is: string | ((outline: Outline) => string),
  { sheet, form, cells }: { readonly sheet: string; readonly form: BedForm; readonly cells: BedCells },
): string {
  const at = inSheet(sheet);
  const address = (key: string) => {
    const cell = cells.get(key);
    if (!cell) throw new MissingCell(form.name.trim() || sheet, key);
    return cellAddress(cell);
  };
  const expression = typeof is === "string" ? is : is(outlineOf(form));
  const typedOver = expression.replace(
    /\{(\w+)\.isTyped\}/g,
    (_, line: string) => `NOT(ISFORMULA({${line}.quantity}))`,
  );
  return printed(form, typedOver)
    .slice(1)
    .replace(KEYS, (_, one: string, other?: string) =>
      other === undefined ? at + address(one) : `${at}${address(one)}:${address(other)}`,
    );
}

/** What stands before an address on a sheet; nothing for the formula's own. */
export const inSheet = (sheet: string): string => (sheet === "" ? "" : `${quotedSheet(sheet)}!`);

/** A block has lost a cell that a job needs. */
export class MissingCell extends Error {
  constructor(
    readonly bed: string,
    readonly key: string,
  ) {
    super(`The block of ${bed} has no cell "${key}".`);
  }
}
