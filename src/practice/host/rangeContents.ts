import { eachCell } from "../grid/geometry";
import type { Area, CellContent } from "../grid/port";
import { addressOf } from "./areas";
import type { Loadable } from "./clientObject";
import { HostError } from "./error";
import type { Members } from "./mirror";
import { Placed } from "./placed";
import { carriable, checkSize, isCellValue, isText, partsOf, shaped } from "./tableOfValues";

type Carried = Members<
  Excel.Range,
  | "address"
  | "cellCount"
  | "clear"
  | "columnCount"
  | "columnIndex"
  | "formulas"
  | "height"
  | "isNullObject"
  | "left"
  | "merge"
  | "numberFormat"
  | "rowCount"
  | "rowHidden"
  | "rowIndex"
  | "select"
  | "text"
  | "top"
  | "unmerge"
  | "valueTypes"
  | "values"
  | "width"
>;

const typeNames = { empty: "Empty", text: "String", number: "Double", truth: "Boolean", error: "Error" } as const;

const clearParts = new Map<string, "all" | "contents" | "formats">([
  ["All", "all"],
  ["Contents", "contents"],
  ["Formats", "formats"],
]);

/** What is in a range's cells: reading and writing it. */
export abstract class RangeContents extends Placed<Area> implements Carried {
  protected loadable(): Loadable {
    const { session } = this.context;
    const { cells, looks } = session.grid;
    const each = (part: (cell: CellContent) => unknown) => () =>
      cells.read(carriable(this.place)).map((row) => row.map(part));
    return {
      properties: {
        address: () => addressOf(session, this.place),
        rowHidden: () => looks.rowHidden(this.place.sheetId, this.place.row),
        rowIndex: () => this.place.row,
        columnIndex: () => this.place.column,
        rowCount: () => this.place.rowCount,
        columnCount: () => this.place.columnCount,
        cellCount: () => this.place.rowCount * this.place.columnCount,
        values: each((cell) => cell.value),
        formulas: each((cell) => cell.formula ?? cell.value),
        // An error that only this grid shows is no error of the workbook's.
        valueTypes: each((cell) => (cell.isBeyond ? "Unknown" : typeNames[cell.kind])),
        left: () => total(0, this.place.column, (column) => looks.columnWidth(this.place.sheetId, column)),
        top: () => total(0, this.place.row, (row) => looks.rowHeight(this.place.sheetId, row)),
        width: () => {
          const { sheetId, column, columnCount } = this.place;
          return total(column, column + columnCount, (one) => looks.columnWidth(sheetId, one));
        },
        height: () => {
          const { sheetId, row, rowCount } = this.place;
          return total(row, row + rowCount, (one) => looks.rowHeight(sheetId, one));
        },
        text: () => cells.text(carriable(this.place)),
        numberFormat: () => {
          const { sheetId } = this.place;
          return eachCell(carriable(this.place), (row, column) => looks.read(sheetId, row, column).numberFormat);
        },
      },
    };
  }

  get address(): string {
    return this.loadedValue("address");
  }

  /** Whether the first row does not show; set, it is that of all of them. */
  get rowHidden(): boolean {
    return this.loadedValue("rowHidden");
  }

  set rowHidden(given: boolean) {
    this.assign("rowHidden", given, () => {
      this.context.session.checkWritable(this.place.sheetId);
      this.context.session.grid.looks.setRowsHidden(this.place, given);
    });
  }

  get rowIndex(): number {
    return this.loadedValue("rowIndex");
  }

  get columnIndex(): number {
    return this.loadedValue("columnIndex");
  }

  get rowCount(): number {
    return this.loadedValue("rowCount");
  }

  get columnCount(): number {
    return this.loadedValue("columnCount");
  }

  /** In points from the sheet's left edge. */
  get left(): number {
    return this.loadedValue("left");
  }

  /** In points from the sheet's top edge. */
  get top(): number {
    return this.loadedValue("top");
  }

  /** In points. */
  get width(): number {
    return this.loadedValue("width");
  }

  /** In points. */
  get height(): number {
    return this.loadedValue("height");
  }

  get cellCount(): number {
    return this.loadedValue("cellCount");
  }

  get text(): string[][] {
    return this.loadedValue("text");
  }

  get valueTypes(): Excel.RangeValueType[][] {
    return this.loadedValue("valueTypes");
  }

  get values(): Excel.Range["values"] {
    return this.loadedValue("values");
  }

  set values(given: Excel.Range["values"]) {
    this.assignInParts("values", given, (area, part) => this.write(area, part));
  }

  get formulas(): Excel.Range["formulas"] {
    return this.loadedValue("formulas");
  }

  set formulas(given: Excel.Range["formulas"]) {
    this.assignInParts("formulas", given, (area, part) => this.write(area, part));
  }

  private write(area: Area, given: unknown): void {
    const { session } = this.context;
    session.checkWritable(area.sheetId);
    session.grid.cells.write(area, shaped(area, given, isCellValue));
  }

  /** Sets a property of the cells; a large table in several changes of the same request, as the host does. */
  private assignInParts(property: string, given: unknown, apply: (area: Area, part: unknown) => void): void {
    const parts = partsOf(given);
    if (parts.length === 0) {
      this.assign(property, given, () => apply(this.place, given));
      return;
    }
    this.keep(property, given);
    this.checkUsable();
    const [first = []] = given as unknown[][];
    this.context.find(`Range.${property}`, () => checkSize(this.place, (given as unknown[][]).length, first.length));
    for (const { row, rows } of parts) {
      const partOf = (area: Area) => ({ ...area, row: area.row + row, rowCount: rows.length });
      this.context.change(`Range.${property}`, () => apply(partOf(this.place), rows));
    }
  }

  get numberFormat(): Excel.Range["numberFormat"] {
    return this.loadedValue("numberFormat");
  }

  set numberFormat(given: Excel.Range["numberFormat"]) {
    this.assignInParts("numberFormat", given, (area, part) => {
      this.context.session.checkWritable(area.sheetId);
      const looks = shaped(area, part, isText).map((row) =>
        row.map((numberFormat) => (numberFormat === undefined ? undefined : { numberFormat })),
      );
      this.context.session.grid.looks.setEach(area, looks);
    });
  }

  /** Empties the cells: of everything, of their contents, or of their formats. */
  clear(applyTo: Parameters<Excel.Range["clear"]>[0] = "All"): void {
    this.act("clear", () => {
      const part = clearParts.get(applyTo);
      if (!part) throw new HostError("InvalidArgument", "Range.clear");
      this.context.session.checkWritable(this.place.sheetId);
      this.context.session.grid.cells.clear(this.place, part);
    });
  }

  merge(across = false): void {
    this.act("merge", () => {
      this.context.session.checkWritable(this.place.sheetId);
      const { row, rowCount } = this.place;
      const bands = across ? Array.from({ length: rowCount }, (_, band) => ({ row: row + band, rowCount: 1 })) : [{}];
      for (const band of bands) this.context.session.grid.cells.merge({ ...this.place, ...band });
    });
  }

  unmerge(): void {
    this.act("unmerge", () => {
      this.context.session.checkWritable(this.place.sheetId);
      this.context.session.grid.cells.unmerge(this.place);
    });
  }

  /** Selects the cells, and brings their sheet to the front. */
  select(): void {
    this.act("select", () => this.context.session.grid.selection.set(this.place));
  }
}

/** The lengths of all from one place up to another, together. */
function total(from: number, before: number, length: (place: number) => number): number {
  let sum = 0;
  for (let place = from; place < before; place += 1) sum += length(place);
  return sum;
}
