import type { ICellData, IObjectMatrixPrimitiveType, Worksheet } from "@univerjs/core";
import type { ErrorMessages } from "../functions/messages";
import { readCellData, writeCellData } from "./cellData";
import { command } from "./command";
import { eachCell, fromRange, toRange } from "./geometry";
import type { OpenGrid } from "./library";
import { readLocks, setLocked } from "./locked";
import type { Area, CellContent, CellInput, CellsPort, CopyPart } from "./port";
import { setStyles } from "./setStyle";
import { heldRange, makeRoom, worksheetOf } from "./sheetOf";
import { usedArea } from "./used";

/** Reading and writing what is in the grid's cells. */
export class GridCells implements CellsPort {
  private readonly errors: ReadonlySet<string>;

  constructor(
    private readonly grid: OpenGrid,
    private readonly messages: ErrorMessages,
  ) {
    this.errors = new Set(Object.values(grid.library.sheets.ErrorType));
  }

  read(area: Area): CellContent[][] {
    return eachCell(area, this.reader(worksheetOf(this.grid, area.sheetId)));
  }

  /** Reads cells of a sheet, with what the grid holds of its formulas looked up once for all of them. */
  private reader(sheet: Worksheet): (row: number, column: number) => CellContent {
    const { library, injector, workbook } = this.grid;
    const formulas = injector.get(library.sheets.FormulaDataModel);
    const unitId = workbook.getId();
    const sheetId = sheet.getSheetId();
    const spilled = formulas.getArrayFormulaCellData()[unitId]?.[sheetId];
    return (row, column) => {
      const cell = sheet.getCellRaw(row, column);
      if (!cell?.f && !cell?.si) return readCellData(library, this.errors, spilled?.[row]?.[column] ?? cell, undefined);
      const formula = formulas.getFormulaStringByCell(row, column, sheetId, unitId) ?? undefined;
      const content = readCellData(library, this.errors, cell, formula);
      const isBeyond = content.kind === "error" && formula !== undefined && cell.custom?.beyond === formula;
      return isBeyond ? { ...content, isBeyond } : content;
    };
  }

  /** Kept with the formula, so that another one that is typed into the cell isn't meant. */
  noteBeyond(sheetId: string, row: number, column: number): void {
    const sheet = worksheetOf(this.grid, sheetId);
    const cell = sheet.getCellRaw(row, column);
    const { formula } = this.reader(sheet)(row, column);
    if (cell && formula !== undefined) cell.custom = { ...cell.custom, beyond: formula };
  }

  text(area: Area): string[][] {
    const sheet = worksheetOf(this.grid, area.sheetId);
    const read = this.reader(sheet);
    return eachCell(area, (row, column) => {
      const { kind, value } = read(row, column);
      if (kind === "truth") return value ? "TRUE" : "FALSE";
      return kind === "number" ? String(sheet.getCell(row, column)?.v ?? "") : String(value);
    });
  }

  write(area: Area, input: CellInput[][]): void {
    makeRoom(this.grid, area);
    const sheet = worksheetOf(this.grid, area.sheetId);
    const value: IObjectMatrixPrimitiveType<ICellData> = {};
    eachCell(area, (row, column) => {
      const cell = input[row - area.row]?.[column - area.column];
      if (cell === undefined) return;
      const pattern = sheet.getComposedCellStyleByCellData(row, column, sheet.getCellRaw(row, column)).n?.pattern;
      const data = writeCellData(this.grid.library, cell, pattern === "@");
      // A format that someone chose is kept: only a cell without one takes the format that was typed.
      if (pattern) delete data.s;
      const cells = value[row] ?? {};
      cells[column] = data;
      value[row] = cells;
    });
    this.setCells(area, value);
  }

  private setCells(area: Area, value: IObjectMatrixPrimitiveType<ICellData>): void {
    if (Object.keys(value).length === 0) return;
    const { SetRangeValuesCommand } = this.grid.library.sheets;
    command(this.grid, SetRangeValuesCommand.id, area.sheetId, { range: toRange(area), value });
  }

  clear(area: Area, part: "all" | "contents" | "formats"): void {
    const range = heldRange(this.grid, area);
    if (part === "contents") {
      // The grid empties a cell of all that is not its style.
      const locks = readLocks(this.grid, area);
      range?.clearContent();
      setLocked(this.grid, area, locks);
    } else if (part === "formats") {
      range?.clearFormat();
      setLocked(this.grid, area, () => true);
    } else range?.clear();
  }

  copy(from: Area, to: Area, part: CopyPart): void {
    if (part !== "formats") {
      const formulas = this.grid.api.getFormula();
      const input = this.read(from).map((cells) =>
        cells.map((cell) =>
          cell.formula === undefined || part === "values"
            ? untyped(cell)
            : formulas.moveFormulaRefOffset(cell.formula, to.column - from.column, to.row - from.row),
        ),
      );
      this.write(to, input);
    }
    if (part === "all" || part === "formats") this.copyStyles(from, to);
  }

  private copyStyles(from: Area, to: Area): void {
    const source = worksheetOf(this.grid, from.sheetId);
    const styles = eachCell(from, (row, column) => source.getCellStyle(row, column) ?? {});
    this.clear(to, "formats");
    setStyles(this.grid, to, (row, column) => styles[row - to.row]?.[column - to.column]);
    const locks = readLocks(this.grid, from);
    setLocked(this.grid, to, (row, column) => locks(row - to.row + from.row, column - to.column + from.column));
  }

  used(sheetId: string, valuesOnly: boolean): Area | undefined {
    return usedArea(this.grid, sheetId, valuesOnly);
  }

  merge(area: Area): void {
    makeRoom(this.grid, area);
    heldRange(this.grid, area)?.merge({ isForceMerge: true });
  }

  unmerge(area: Area): void {
    heldRange(this.grid, area)?.breakApart();
  }

  merged(sheetId: string): Area[] {
    return worksheetOf(this.grid, sheetId)
      .getMergeData()
      .map((range) => fromRange(sheetId, range));
  }

  errorMessage(sheetId: string, row: number, column: number): string | undefined {
    const { kind, formula } = this.reader(worksheetOf(this.grid, sheetId))(row, column);
    return kind === "error" && formula !== undefined ? this.messages.get(sheetId, row, column) : undefined;
  }
}

/** Text is marked as text, so that it is not read again as a number or a formula. */
function untyped(cell: CellContent): CellInput {
  return cell.kind === "text" && cell.value !== "" ? `'${cell.value}` : cell.value;
}
