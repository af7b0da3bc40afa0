import { intersection } from "../grid/geometry";
import type { Area } from "../grid/port";
import { areaAt, onSheet, wholeSheet } from "./areas";
import { bordersOf, cellProperties, isProperties, lookOf } from "./cellProperties";
import type { Loadable } from "./clientObject";
import { ClientResult } from "./clientResult";
import { ConditionalFormats } from "./conditionalFormats";
import { DataValidation } from "./dataValidation";
import { refuse } from "./error";
import type { Members } from "./mirror";
import { RangeAreas } from "./rangeAreas";
import { RangeContents } from "./rangeContents";
import { copyInto } from "./rangeCopy";
import { RangeFormat } from "./rangeFormat";
import type { RequestContext } from "./requestContext";
import { carriable, shaped } from "./tableOfValues";
import { TableScopedCollection } from "./tables";
import { Worksheet } from "./worksheet";

type Carried = Members<
  Excel.Range,
  | "copyFrom"
  | "delete"
  | "format"
  | "getCell"
  | "getCellProperties"
  | "getCellProperties"
  | "getColumn"
  | "getEntireColumn"
  | "getEntireRow"
  | "getIntersectionOrNullObject"
  | "getLastCell"
  | "getMergedAreasOrNullObject"
  | "getOffsetRange"
  | "getResizedRange"
  | "getColumnProperties"
  | "getRow"
  | "getRowProperties"
  | "getTables"
  | "group"
  | "insert"
  | "setCellProperties"
  | "setCellProperties"
  | "worksheet"
>;

/** Cells that lie together on one sheet, and the ranges that one gets to from them. */
export class Range extends RangeContents implements Carried {
  private ownSheet: Worksheet | undefined;

  constructor(context: RequestContext, location: string, find: () => Area | null) {
    super(context, "Range", location, find);
    context.endsWithRun(this);
  }

  protected override loadable(): Loadable {
    return {
      ...super.loadable(),
      children: {
        conditionalFormats: () => this.conditionalFormats,
        dataValidation: () => this.dataValidation,
        format: () => this.format,
        worksheet: () => this.worksheet,
      },
    };
  }

  get format(): RangeFormat {
    return this.child("format", () => new RangeFormat(this.context, () => this.place));
  }

  get conditionalFormats(): ConditionalFormats {
    return this.child("conditionalFormats", () => new ConditionalFormats(this.context, () => this.place));
  }

  get dataValidation(): DataValidation {
    return this.child("dataValidation", () => new DataValidation(this.context, () => this.place));
  }

  protected override settableObjects(): readonly string[] {
    return ["format", "dataValidation"];
  }

  get worksheet(): Worksheet {
    if (!this.ownSheet) this.checkUsable();
    this.ownSheet ??= new Worksheet(this.context, "Range.worksheet", () => this.place.sheetId, this.isPlaced);
    return this.ownSheet;
  }

  private step(method: string, to: (from: Area) => Area): Range {
    this.checkUsable();
    return new Range(this.context, `Range.${method}`, () => onSheet(to(this.place)));
  }

  /** One cell, counted from the range's first; it may lie outside the range. */
  getCell(row: number, column: number): Range {
    return this.step("getCell", (from) => {
      return { ...from, row: from.row + row, column: from.column + column, rowCount: 1, columnCount: 1 };
    });
  }

  getLastCell(): Range {
    return this.step("getLastCell", ({ sheetId, row, column, rowCount, columnCount }) => {
      return { sheetId, row: row + rowCount - 1, column: column + columnCount - 1, rowCount: 1, columnCount: 1 };
    });
  }

  getRow(row: number): Range {
    return this.step("getRow", (from) => ({ ...from, row: from.row + row, rowCount: 1 }));
  }

  getColumn(column: number): Range {
    return this.step("getColumn", (from) => ({ ...from, column: from.column + column, columnCount: 1 }));
  }

  getEntireRow(): Range {
    return this.step("getEntireRow", (from) => {
      return { ...wholeSheet(from.sheetId), row: from.row, rowCount: from.rowCount };
    });
  }

  getEntireColumn(): Range {
    return this.step("getEntireColumn", (from) => {
      return { ...wholeSheet(from.sheetId), column: from.column, columnCount: from.columnCount };
    });
  }

  getOffsetRange(rowOffset: number, columnOffset: number): Range {
    return this.step("getOffsetRange", (from) => {
      return { ...from, row: from.row + rowOffset, column: from.column + columnOffset };
    });
  }

  /** A range that is this many rows and columns larger, or smaller where negative. */
  getResizedRange(deltaRows: number, deltaColumns: number): Range {
    return this.step("getResizedRange", (from) => {
      return { ...from, rowCount: from.rowCount + deltaRows, columnCount: from.columnCount + deltaColumns };
    });
  }

  getIntersectionOrNullObject(other: Range | string): Range {
    this.accepted(other);
    return new Range(this.context, "Range.getIntersectionOrNullObject", () => {
      return intersection(this.place, this.areaOf(other)) ?? null;
    });
  }

  private areaOf(other: Range | string): Area {
    return typeof other === "string" ? areaAt(this.context.session, this.place.sheetId, other) : other.place;
  }

  /** Which rows do not show; nothing else can be asked for here. */
  getRowProperties(asked: Excel.RowPropertiesLoadOptions): ClientResult<Excel.RowProperties[]> {
    this.checkUsable();
    return new ClientResult(this.context, "Range.getRowProperties", () => {
      const { sheetId, row, rowCount } = carriable(this.place);
      if (!asked.rowHidden) throw refuse("InvalidArgument");
      const { looks } = this.context.session.grid;
      return Array.from({ length: rowCount }, (_, index) => ({ rowHidden: looks.rowHidden(sheetId, row + index) }));
    });
  }

  /** Which columns do not show, and how wide they are in points; nothing else can be asked for here. */
  getColumnProperties(asked: Excel.ColumnPropertiesLoadOptions): ClientResult<Excel.ColumnProperties[]> {
    this.checkUsable();
    return new ClientResult(this.context, "Range.getColumnProperties", () => {
      const { sheetId, column, columnCount } = carriable({ ...this.place, rowCount: 1 });
      const wantsWidth = asked.format?.columnWidth;
      if (!asked.columnHidden && !wantsWidth) throw refuse("InvalidArgument");
      const { looks } = this.context.session.grid;
      return Array.from({ length: columnCount }, (_, index) => ({
        ...(asked.columnHidden && { columnHidden: looks.columnHidden(sheetId, column + index) }),
        ...(wantsWidth && { format: { columnWidth: looks.columnWidth(sheetId, column + index) } }),
      }));
    });
  }

  getMergedAreasOrNullObject(): RangeAreas {
    this.checkUsable();
    return new RangeAreas(this.context, "Range.getMergedAreasOrNullObject", () => {
      const merged = this.context.session.grid.cells.merged(this.place.sheetId);
      const here = merged.filter((area) => intersection(area, this.place));
      return here.length > 0 ? here : null;
    });
  }

  getTables(fullyContained = false): TableScopedCollection {
    this.checkUsable();
    return new TableScopedCollection(this.context, () => {
      const tables = this.context.session.tablesIn(this.place);
      if (!fullyContained) return tables;
      return tables.filter(({ area }) => {
        const shared = intersection(area, this.place);
        return shared?.rowCount === area.rowCount && shared.columnCount === area.columnCount;
      });
    });
  }

  /** How each cell looks, after the next sync. */
  getCellProperties(asked: Excel.CellPropertiesLoadOptions): ClientResult<Excel.CellProperties[][]> {
    this.checkUsable();
    return new ClientResult(this.context, "Range.getCellProperties", () => {
      return cellProperties(this.context.session.grid.looks, carriable(this.place), asked);
    });
  }

  setCellProperties(given: Excel.SettableCellProperties[][]): void {
    this.act("setCellProperties", () => {
      this.context.session.checkWritable(this.place.sheetId);
      const { looks } = this.context.session.grid;
      const cells = shaped(this.place, given, isProperties);
      looks.setEach(
        this.place,
        cells.map((row) => row.map((cell) => cell && lookOf(cell))),
      );
      looks.setBorders(
        this.place,
        cells.map((row) => row.map((cell) => cell && bordersOf(cell))),
      );
    });
  }

  /** Inserts rows of the whole sheet; cells alone can't be moved here. */
  insert(shift: Parameters<Carried["insert"]>[0]): Range {
    const rows = this.step("insert", (from) => from);
    this.act("insert", () => this.moveRows("rowsInserted", shift === "Down"));
    return rows;
  }

  /** Deletes rows of the whole sheet; cells alone can't be moved here. */
  delete(shift: Parameters<Carried["delete"]>[0]): void {
    this.act("delete", () => this.moveRows("rowsDeleted", shift === "Up"));
  }

  private moveRows(kind: "rowsInserted" | "rowsDeleted", isVertical: boolean): void {
    const { place } = this;
    const { sheetId, row, rowCount, columnCount } = place;
    const { grid } = this.context.session;
    this.context.session.checkWritable(sheetId);
    const whole = wholeSheet(sheetId);
    if (!isVertical || columnCount !== whole.columnCount) throw refuse("InvalidArgument");
    const selected = grid.selection.get();
    const shadings = grid.rules.shadings(whole);
    if (kind === "rowsInserted") grid.sheets.insertRows(sheetId, row, rowCount);
    else grid.sheets.deleteRows(sheetId, row, rowCount);
    grid.rules.followRows(shadings, { kind, area: place, byHost: true });
    // The grid selects the rows as where a person inserts them.
    grid.selection.set(selected);
  }

  /** Puts the rows into a group that can be collapsed; columns can't be grouped here. */
  group(groupOption: Parameters<Carried["group"]>[0]): void {
    this.act("group", () => {
      const { sheetId, row, rowCount } = this.place;
      const { session } = this.context;
      session.checkWritable(sheetId);
      if (groupOption !== "ByRows") throw refuse("InvalidArgument");
      session.grid.groups.add(sheetId, { row, rowCount });
    });
  }

  /** Copies cells here; a source that goes into the range several times fills it. */
  copyFrom(...[source, copyType = "All", skipBlanks, transpose]: Parameters<Carried["copyFrom"]>): void {
    this.accepted(source);
    this.act("copyFrom", () => {
      const { session } = this.context;
      session.checkWritable(this.place.sheetId);
      if (source instanceof RangeAreas) throw refuse("InvalidArgument");
      copyInto(session.grid.cells, this.areaOf(source), this.place, copyType, { skipBlanks, transpose });
    });
  }
}
