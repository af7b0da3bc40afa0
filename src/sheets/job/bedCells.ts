import { fields } from "../../quantities/bed/fields";
import type { BedForm } from "../../quantities/bed/form";
import { type Expression, expressionOf } from "../../quantities/bed/inPlan";
import { UNLESS_BY_TON } from "../../quantities/job/bedRows";
import { must } from "../../quantities/must";
import { type Anchor, type Area, cellAddress, quotedSheet } from "../../spreadsheet/areas";
import { alignRows, type Content } from "../blockRows";
import { estimateRows } from "../estimate/block";
import { outlineOf, printed } from "../estimate/printed";

/** Where the cells of an estimate block are now, by the keys of the estimate. */
export type BedCells = ReadonlyMap<string, Anchor>;

/**
 * Finds the cells of a block, wherever rows were added between them, deleted, or renamed.
 *
 * @param values what the block's columns show; @param area where they are; @param form read back from them.
 */
export function bedCells(values: readonly (readonly Content[])[], area: Area, form: BedForm): BedCells {
  const rows = estimateRows(form);
  const cells = new Map<string, Anchor>();
  alignRows(rows, values).forEach((place, index) => {
    if (place === undefined) return;
    must(rows[index]).cells.forEach((draft, column) => {
      if (draft?.key !== undefined) cells.set(draft.key, { row: area.row + place, column: area.column + column });
    });
  });
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
  is: Expression,
  { sheet, form, cells }: { readonly sheet: string; readonly form: BedForm; readonly cells: BedCells },
): string {
  const at = inSheet(sheet);
  const address = (key: string) => {
    const cell = cells.get(key);
    if (!cell) throw new MissingCell(form.name.trim() || sheet, key);
    return cellAddress(cell);
  };
  const expression = expressionOf(is, outlineOf(form));
  const typedOver = expression
    .replace(/\{(\w+)\.isTyped\}/g, (_, line: string) => `NOT(ISFORMULA({${line}.quantity}))`)
    // The last width that there will be, and not the one that there is now.
    .replaceAll("{widths.last}", "INDEX({widths.decimal},ROWS({widths.decimal}))")
    // A block from before stone could be sold otherwise sells it by the ton.
    .replaceAll(cells.has("soldBy") ? "{soldBy.none}" : UNLESS_BY_TON, "")
    // A block from before this field existed has one layer.
    .replaceAll("{fabricLayers}", cells.has("fabricLayers") ? "{fabricLayers}" : fields.fabricLayers.initial);
  return printed(form, typedOver)
    .slice(1)
    .replace(KEYS, (_, one: string, other?: string) => {
      if (other === undefined) return at + address(one);
      const [first, last, below] = [one, other, belowList(other, cells)].map((key) => key && cells.get(key));
      if (!first || !last || !below) return `${at}${address(one)}:${address(other)}`;
      // Up to the row that comes after the list, so that a width added at its end counts, too.
      const column = `${at}${cellAddress({ ...last, row: first.row })}:${cellAddress({ ...last, row: below.row })}`;
      return `${at}${address(one)}:INDEX(${column},ROWS(${column})-${below.row - last.row})`;
    });
}

/** The key of a cell in a row below a list that a person may add to; undefined for any other range. */
function belowList(last: string, cells: BedCells): string | undefined {
  if (/^cutOut\d/.test(last)) return "placedArea";
  if (!/^(?:width|point)\d/.test(last)) return undefined;
  return cells.has("cutOut1.x") ? "cutOut1.x" : "placedArea";
}

/** What is before an address on a sheet; nothing for the formula's own. */
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
