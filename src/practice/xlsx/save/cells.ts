import type { ICellData, IRange, IStyleData } from "@univerjs/core";
import { needsArray } from "../../../spreadsheet/needsArray";
import { addressOf, type Rectangle } from "../../../xlsx/addresses";
import { shownValue } from "../../../xlsx/contents";
import type { FileValue } from "../../../xlsx/read/cells";
import type { FileStyle } from "../../../xlsx/style";
import type { NewCell } from "../../../xlsx/write/sheet";
import { fromRange } from "../../grid/geometry";
import type { CellContent } from "../../grid/port";
import { worksheetOf } from "../../grid/sheetOf";
import type { Saving } from "../context";
import { toFile } from "../formulas";
import { dayInFile } from "../open/cells";
import { styleToFile } from "../styles";

/** The cells of a sheet for the file: what they hold, what they show, and how they look. */
export function cellsToFile(saving: Saving, id: string): NewCell[] {
  const made: NewCell[] = [];
  const styles = new StylesOf(saving, id);
  const spills = new Spills(saving, id);
  const sheet = saving.kept.sheets[id];
  const places = new Set<string>();
  const write = (row: number, column: number, data: ICellData | undefined) => {
    if (places.has(`${row},${column}`)) return;
    places.add(`${row},${column}`);
    const [[content] = []] = saving.cells.read({ sheetId: id, row, column, rowCount: 1, columnCount: 1 });
    const style = styles.at(row, column, data, content?.kind === "text");
    made.push({ row, column, style, ...(content && heldByCell(saving, content, spills.from(row, column), style)) });
  };
  for (const [row, cells] of numbered(sheet?.cellData ?? {})) {
    for (const [column, data] of numbered(cells)) write(row, column, data);
  }
  for (const { row, column } of spills.cells()) write(row, column, undefined);
  return made;
}

function heldByCell(
  { functions, startsIn1904 }: Saving,
  content: CellContent,
  spill: IRange | undefined,
  style: FileStyle,
): Pick<NewCell, "value" | "formula" | "array"> {
  const shown = valueToFile(content);
  const value = typeof shown === "number" && startsIn1904 ? dayInFile(shown, style.numFmt) : shown;
  if (content.formula === undefined) return value === undefined ? {} : { value };
  return {
    value: value ?? "",
    formula: toFile(content.formula, functions),
    ...(spill && { array: { area: addressOf(fromRange("", spill)), spills: true } }),
  };
}

/** What a cell shows, as a file holds it; undefined for nothing. */
export function valueToFile({ value, kind, formula }: CellContent): FileValue | undefined {
  if (value === "" && formula === undefined) return undefined;
  // Text may read like an error, and is none.
  return kind === "error" ? shownValue(value) : value;
}

/** How cells look with what their row and column add; each look once, so that the file has it once. */
class StylesOf {
  private readonly known = new Map<string, FileStyle>();

  constructor(
    private readonly saving: Saving,
    private readonly id: string,
  ) {}

  at(row: number, column: number, data: ICellData | undefined, isText: boolean): FileStyle {
    const sheet = this.saving.kept.sheets[this.id];
    const key = JSON.stringify([data?.s, sheet?.rowData?.[row]?.s, sheet?.columnData?.[column]?.s, isText]);
    const known = this.known.get(key);
    if (known) return known;
    const { grid } = this.saving;
    const composed: IStyleData = worksheetOf(grid, this.id).getComposedCellStyle(row, column);
    const style = styleToFile(grid.library, composed, isText);
    this.known.set(key, style);
    return style;
  }
}

/** The lists that formulas of a sheet spill into other cells. */
export class Spills {
  private readonly ranges: readonly (readonly [row: number, column: number, range: IRange])[];

  constructor(
    private readonly saving: Pick<Saving, "grid" | "cells">,
    private readonly id: string,
  ) {
    const { injector, library, workbook } = saving.grid;
    const kept = injector.get(library.sheets.FormulaDataModel).getArrayFormulaRange()[workbook.getId()]?.[id] ?? {};
    this.ranges = numbered(kept).flatMap(([row, cells]) =>
      numbered(cells).flatMap(([column, range]) => (range ? [[row, column, range] as const] : [])),
    );
  }

  /** The cells of an array formula; undefined where the formula is an ordinary one. */
  from(row: number, column: number): IRange | undefined {
    const [, , range] = this.ranges.find((one) => one[0] === row && one[1] === column) ?? [];
    if (range && (range.endRow > row || range.endColumn > column)) return range;
    const [[content] = []] = this.saving.cells.read({ sheetId: this.id, row, column, rowCount: 1, columnCount: 1 });
    if (content?.formula === undefined || !needsArray(content.formula)) return undefined;
    return { startRow: row, startColumn: column, endRow: row, endColumn: column };
  }

  /** Whether the array formula of a cell takes other cells here than in the file. */
  differ(row: number, column: number, area: Rectangle): boolean {
    const now = this.from(row, column);
    const [rows, columns] = now ? [now.endRow - row + 1, now.endColumn - column + 1] : [1, 1];
    return rows !== area.rowCount || columns !== area.columnCount;
  }

  *cells(): Generator<{ readonly row: number; readonly column: number }> {
    for (const [, , { startRow, startColumn, endRow, endColumn }] of this.ranges) {
      for (let row = startRow; row <= endRow; row += 1)
        for (let column = startColumn; column <= endColumn; column += 1) yield { row, column };
    }
  }
}

/** The entries of the grid's sparse lists. */
export function numbered<T>(list: Readonly<Record<number, T>> | undefined): [number, T][] {
  return Object.entries(list ?? {}).map(([place, one]) => [Number(place), one]);
}
