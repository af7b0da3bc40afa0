import type { ICellData, Nullable } from "@univerjs/core";
import type { GridLibrary } from "./library";
import type { CellContent, CellValue } from "./port";
import { staysText } from "./staysText";

const blank: CellContent = { kind: "empty", value: "", formula: undefined };

/**
 * Reads what the grid keeps for one cell.
 *
 * @param errors The names of the errors, such as #VALUE!.
 * @param formula The formula's text where the cell has one.
 */
export function readCellData(
  library: GridLibrary,
  errors: ReadonlySet<string>,
  cell: Nullable<ICellData>,
  formula: string | undefined,
): CellContent {
  const value = plainValue(library, cell);
  if (value === undefined || value === "") return formula === undefined ? blank : { kind: "text", value: "", formula };
  if (typeof value === "number") return { kind: "number", value, formula };
  if (typeof value === "boolean") return { kind: "truth", value, formula };
  // Text that was marked as such is no error, whatever it says.
  const isMarked = formula === undefined && cell?.t === library.core.CellValueType.FORCE_STRING;
  return { kind: errors.has(value) && !isMarked ? "error" : "text", value, formula };
}

function plainValue({ core }: GridLibrary, cell: Nullable<ICellData>): CellValue | undefined {
  if (!cell) return undefined;
  // Text that was typed with line breaks or marks is kept as a small document.
  const document = cell.p?.body?.dataStream;
  if (document !== undefined) return document.replace(/\r\n$/, "").replaceAll("\r", "\n");
  if (cell.v === undefined || cell.v === null) return undefined;
  if (cell.t === core.CellValueType.BOOLEAN) return cell.v === 1 || cell.v === true || cell.v === "TRUE";
  if (cell.t === core.CellValueType.NUMBER && typeof cell.v === "string" && cell.v.trim() !== "") return Number(cell.v);
  return cell.v;
}

const emptied = { f: null, si: null, p: null } as const;

/**
 * What the grid is to keep for a cell into which `input` is typed, as the host takes it: text with "=" is a formula,
 * text after an apostrophe stays text, and text that reads as a number, a share or a date becomes one.
 *
 * @param asText Whether the cell's number format is that of text, so that nothing is read into it.
 */
export function writeCellData({ core }: GridLibrary, input: CellValue, asText: boolean): ICellData {
  const { CellValueType } = core;
  if (typeof input === "number") return { ...emptied, v: input, t: CellValueType.NUMBER };
  if (typeof input === "boolean") return { ...emptied, v: input ? 1 : 0, t: CellValueType.BOOLEAN };
  if (input === "") return { ...emptied, v: null, t: null };
  if (asText) return { ...emptied, v: input, t: CellValueType.FORCE_STRING };
  if (input.startsWith("'")) return { ...emptied, v: input.slice(1), t: CellValueType.FORCE_STRING };
  if (input.startsWith("=") && input.length > 1) return { f: input, si: null, p: null, v: null, t: null };
  const read = staysText(input) ? null : core.numfmt.parseValue(input);
  if (!read) return { ...emptied, v: input, t: CellValueType.STRING };
  if (typeof read.v === "boolean") return { ...emptied, v: read.v ? 1 : 0, t: CellValueType.BOOLEAN };
  const style = read.z ? { s: { n: { pattern: read.z } } } : {};
  return { ...emptied, v: read.v, t: CellValueType.NUMBER, ...style };
}
