import type { ICellData } from "@univerjs/core";
import { shownValue } from "../../xlsx/contents";
import type { FileValue } from "../../xlsx/read/cells";
import { writeBook } from "../../xlsx/write/book";
import type { NewCell } from "../../xlsx/write/sheet";
import type { KeptWorkbook } from "../browser/browserGrid";
import { FunctionNames, toFile } from "../xlsx/formulas";

/** The grid's number for cells that are true or false. */
const TRUTH = 3;

/**
 * Makes an .xlsx file of the cells of saved work without opening it in the grid: values and formulas, without looks.
 *
 * @param functions full names of the add-in's functions, which have other names in files.
 */
export function keptCellsFile(
  { sheetOrder = [], sheets = {} }: KeptWorkbook,
  functions: readonly string[],
): Uint8Array<ArrayBuffer> {
  const names = new FunctionNames(functions);
  return writeBook({
    author: "Practice workbook",
    sheets: sheetOrder.map((id) => ({ name: sheets[id]?.name ?? id, cells: cellsOf(sheets[id]?.cellData, names) })),
    lacksResults: true,
  });
}

type Cells = Readonly<Record<string, Readonly<Record<string, ICellData | null | undefined>> | undefined>>;

function cellsOf(kept: object | undefined, functions: FunctionNames): NewCell[] {
  return Object.entries((kept ?? {}) as Cells).flatMap(([row, cells]) =>
    Object.entries(cells ?? {}).flatMap(([column, cell]) => {
      const held = cell ? heldBy(cell, functions) : {};
      return Object.keys(held).length > 0 ? [{ row: Number(row), column: Number(column), ...held }] : [];
    }),
  );
}

function heldBy({ v, t, f, p }: ICellData, functions: FunctionNames): Pick<NewCell, "value" | "formula"> {
  const text = p?.body?.dataStream.replace(/\r?\n$/, "");
  const held = v ?? text ?? undefined;
  // Only a formula's result can be an error; a text may read like one.
  const shown = held !== undefined && f ? shownValue(held) : held;
  const value: FileValue | undefined = t === TRUTH ? Boolean(v) : shown;
  return {
    ...(value !== undefined && value !== "" && { value }),
    ...(f && { formula: toFile(f.startsWith("=") ? f : `=${f}`, functions) }),
  };
}
