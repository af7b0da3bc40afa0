import type { CellValue } from "../src/practice/grid/port";
import type { Region } from "../src/sheets/plain/region";
import { toPlain } from "../src/sheets/plain/toPlain";
import { cellAddress } from "../src/spreadsheet/areas";
import type { HeadlessHost } from "./headlessHost";
import type { TriedCall, Typed } from "./nativeCases";

/** What a call gave in the original, and what the ordinary formula gave in the copy. */
export interface Compared {
  readonly id: string;
  readonly original: CellValue;
  readonly copy: CellValue;
  readonly originalFormula: string;
  readonly copyFormula: string;
  readonly inputs: string;
}

const RESULT_COLUMN = 0;
const FIRST_INPUT = 1;
const WIDTH = 10;

/** Puts calls one below the other, with the cells they refer to beside them. */
export function sheetOf(calls: readonly TriedCall[]): { cells: Typed[][]; resultRows: number[] } {
  const cells: Typed[][] = [];
  const resultRows = calls.map(({ id, given }) => {
    const row = cells.length;
    const height = Math.max(1, ...given.map((one) => (one.kind === "cells" ? one.rows.length : 1)));
    for (let down = 0; down < height; down++) cells.push(Array.from({ length: WIDTH }, () => ""));
    let column = FIRST_INPUT;
    const texts = given.map((one) => {
      if (one.kind !== "cells") return one.kind === "typed" ? one.text : "";
      const wide = one.rows[0]?.length ?? 1;
      one.rows.forEach((values, down) => {
        values.forEach((value, across) => {
          cells[row + down]![column + across] = value;
        });
      });
      const first = cellAddress({ row, column });
      const last = cellAddress({ row: row + one.rows.length - 1, column: column + wide - 1 });
      column += wide;
      return one.around.replace("@", first === last ? first : `${first}:${last}`);
    });
    while (texts.at(-1) === "") texts.pop();
    cells[row]![RESULT_COLUMN] = `=BED.${id}(${texts.join(",")})`;
    return row;
  });
  return { cells, resultRows };
}

const asTyped = (value: Typed): Typed =>
  typeof value === "string" && value !== "" && !value.startsWith("=") ? `'${value}` : value;

/** Calculates the calls and their copy in ordinary formulas, on two new sheets of a workbook. */
export async function compare(host: HeadlessHost, calls: readonly TriedCall[]): Promise<Compared[]> {
  const { cells, resultRows } = sheetOf(calls);
  const { grid } = host;
  const area = (sheetId: string) => ({ sheetId, row: 0, column: 0, rowCount: cells.length, columnCount: WIDTH });
  const name = `Calls ${grid.sheets.list().length}`;
  const original = area(grid.sheets.add(name));
  grid.cells.write(
    original,
    cells.map((row) => row.map(asTyped)),
  );
  await grid.settled();
  const read = grid.cells.read(original);
  const region: Region = {
    sheetName: name,
    row: 0,
    column: 0,
    formulas: read.map((row) => row.map((cell) => cell.formula ?? cell.value)),
    values: read.map((row) => row.map((cell) => cell.value)),
    formats: read.map((row) => row.map(() => "General")),
  };
  const copied = toPlain(region).plan.formulas.slice(0, cells.length);
  const copy = area(grid.sheets.add(`${name} copied`));
  grid.cells.write(
    copy,
    copied.map((row) => [...row]),
  );
  await grid.settled();
  const results = grid.cells.read(copy);
  return resultRows.map((row, place) => ({
    id: calls[place]!.id,
    original: read[row]![RESULT_COLUMN]!.value,
    copy: results[row]![RESULT_COLUMN]!.value,
    originalFormula: String(region.formulas[row]![RESULT_COLUMN]),
    copyFormula: String(copied[row]![RESULT_COLUMN]),
    inputs: JSON.stringify(calls[place]!.given.map((one) => (one.kind === "cells" ? one.rows : one))),
  }));
}
