import { parseA1Ref } from "@borgar/fx";
import type { CellContent, Region } from "../src/sheets/plain/region";
import type { Anchor } from "../src/spreadsheet/areas";

type Cells = Readonly<Record<string, CellContent>>;

/** The zero-based place of an address such as B2. */
export function fromA1(address: string): Anchor {
  const reference = parseA1Ref(address, { allowNamed: false });
  if (!reference || !("range" in reference)) throw new RangeError(`${address} is no cell.`);
  return { row: reference.range.top ?? 0, column: reference.range.left ?? 0 };
}

/** The cells from the first one given to the last as a region of an invented sheet; formulas give 0 where no value is given. */
export function regionOf(cells: Cells, values: Cells = {}): Region {
  const places = Object.keys({ ...cells, ...values }).map((address) => ({ address, ...fromA1(address) }));
  const row = Math.min(...places.map((place) => place.row));
  const column = Math.min(...places.map((place) => place.column));
  const rows = Math.max(...places.map((place) => place.row)) - row + 1;
  const columns = Math.max(...places.map((place) => place.column)) - column + 1;
  const at = (down: number, across: number) =>
    places.find((place) => place.row === row + down && place.column === column + across)?.address ?? "";
  const each = <T>(of: (address: string) => T): T[][] =>
    Array.from({ length: rows }, (_, down) => Array.from({ length: columns }, (_, across) => of(at(down, across))));
  const isFormula = (content: CellContent | undefined) => typeof content === "string" && content.startsWith("=");
  return {
    sheetName: "Front yard",
    row,
    column,
    formulas: each((address) => cells[address] ?? ""),
    values: each((address) => values[address] ?? (isFormula(cells[address]) ? 0 : (cells[address] ?? ""))),
    formats: each(() => "General"),
  };
}
