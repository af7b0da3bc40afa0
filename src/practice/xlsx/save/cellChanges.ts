import type { ICellData, IStyleData } from "@univerjs/core";
import { cellAddress } from "../../../spreadsheet/areas";
import { addressOf, type Rectangle, rectangleOf } from "../../../xlsx/addresses";
import type { FileCell, FileValue } from "../../../xlsx/read/cells";
import type { CellEdit } from "../../../xlsx/write/cellEdit";
import type { StyleSheet } from "../../../xlsx/write/styles";
import { readCellData } from "../../grid/cellData";
import type { CellContent } from "../../grid/port";
import type { Saving } from "../context";
import { movedFormula, toFile } from "../formulas";
import { dayInFile } from "../open/cells";
import { type Difference, isSame, isVolatile, words } from "../openedMessage";
import { styleToFile } from "../styles";
import { Spills, valueToFile } from "./cells";
import type { FileInGrid } from "./fileInGrid";

/** What is other in a sheet's cells than in the file that was opened. */
export interface CellChanges {
  readonly edits: readonly CellEdit[];
  /** Formulas that show something else here than in the file, and keep what they show there. */
  readonly kept: readonly Difference[];
  /** Whether a formula came, went, or became another one. */
  readonly hasFormulas: boolean;
}

const key = (row: number, column: number) => `${row},${column}`;

/** Finds what is other in a sheet's cells than in its file. @param place the sheet's among the file's sheets of cells. */
export function cellChanges(
  saving: Saving,
  file: FileInGrid,
  place: number,
  id: string,
  styles: StyleSheet,
): CellChanges {
  return new CellComparison(saving, file, place, id, styles).changes();
}

class CellComparison {
  private readonly edits = new Map<string, CellEdit>();
  private readonly kept: Difference[] = [];
  private readonly inFile: ReadonlyMap<string, FileCell>;
  private readonly errors: ReadonlySet<string>;
  private readonly spills: Spills;
  private readonly lookNumbers = new Map<string, number>();
  private hasFormulas = false;

  constructor(
    private readonly saving: Saving,
    private readonly file: FileInGrid,
    private readonly place: number,
    private readonly id: string,
    private readonly styles: StyleSheet,
  ) {
    const cells = file.book.sheets[place]?.cells ?? [];
    this.inFile = new Map(cells.map((cell) => [key(cell.row, cell.column), cell]));
    this.errors = new Set(Object.values(saving.grid.library.sheets.ErrorType));
    this.spills = new Spills(saving, id);
  }

  changes(): CellChanges {
    const [before, now] = [this.sheetBefore.cellData ?? {}, this.sheetNow.cellData ?? {}];
    const rows = new Set([...Object.keys(before), ...Object.keys(now)].map(Number));
    for (const row of rows) {
      const [one, other] = [before[row] ?? {}, now[row] ?? {}];
      for (const column of new Set([...Object.keys(one), ...Object.keys(other)].map(Number)))
        this.compare(row, column, one[column] ?? undefined, other[column] ?? undefined);
    }
    this.splitShared();
    return { edits: [...this.edits.values()], kept: this.kept, hasFormulas: this.hasFormulas };
  }

  private get sheetBefore() {
    return this.file.opened.book.sheets[this.id] ?? {};
  }

  private get sheetNow() {
    return this.saving.kept.sheets[this.id] ?? {};
  }

  private compare(row: number, column: number, before: ICellData | undefined, now: ICellData | undefined): void {
    const one = this.content(before, before?.f ?? undefined);
    const other = this.content(now, this.formulaNow(row, column, now));
    if (other.formula !== undefined && one.formula === other.formula) this.compareShown(row, column, one);
    else if (one.formula !== other.formula || one.value !== other.value || one.kind !== other.kind)
      this.put(row, column, other);
    const style = this.changedStyle(row, column, before, now, other.kind === "text");
    if (style !== undefined) this.edit({ row, column, style });
  }

  /** A formula that is the one of the file: what it shows is written where it hangs on what was changed. */
  private compareShown(row: number, column: number, before: CellContent): void {
    const cell = this.inFile.get(key(row, column));
    if (!cell?.formula || cell.value === undefined || isVolatile(before.formula)) return;
    const now = this.shown(row, column);
    const area = cell.formula.kind === "array" ? rectangleOf(cell.formula.area ?? "") : undefined;
    const isAlike = isSame(before.value, now);
    if (this.file.differs.has(`${this.id}!${key(row, column)}`)) {
      if (!isAlike)
        this.kept.push({ sheetId: this.id, row, column, inFile: words(before.value), here: words(now.value) });
    } else if (this.spillDiffers(row, column, area)) this.put(row, column, now);
    else {
      if (!isAlike) this.edit({ row, column, value: this.toFileValue(row, column, now) });
      if (area) this.compareSpilled(area);
    }
  }

  private spillDiffers(row: number, column: number, area: Rectangle | undefined): boolean {
    return area !== undefined && this.spills.differ(row, column, area);
  }

  /** The other cells of an array formula. */
  private compareSpilled(area: Rectangle): void {
    for (const [row, column] of placesIn(area)) {
      const cell = this.inFile.get(key(row, column));
      const now = this.shown(row, column);
      const stored = typeof cell?.value === "object" ? cell.value.error : cell?.value;
      if (!cell?.formula && (stored === undefined ? now.value !== "" : !isSame(stored, now)))
        this.edit({ row, column, value: this.toFileValue(row, column, now) });
    }
  }

  /** Writes what a cell holds now in the place of what it held. */
  private put(row: number, column: number, now: CellContent): void {
    const cell = this.inFile.get(key(row, column));
    const range = now.formula === undefined ? undefined : this.spills.from(row, column);
    if (cell?.formula || now.formula !== undefined) this.hasFormulas = true;
    if (cell?.formula?.kind === "dataTable")
      this.saving.findings.fact(
        `the table of what-if values at ${this.file.book.sheets[this.place]?.name}!${cellAddress(cell)}`,
      );
    if (cell?.formula?.kind === "array") {
      const area = rectangleOf(cell.formula.area ?? "");
      for (const [down, across] of area ? placesIn(area) : []) {
        // What else is in these cells is compared in its turn.
        if (this.inFile.has(key(down, across)) && !this.edits.has(key(down, across)))
          this.edit({ row: down, column: across, value: this.toFileValue(down, across, this.shown(down, across)) });
      }
    }
    const shown = this.shown(row, column);
    const value = this.toFileValue(row, column, now.formula === undefined ? now : shown);
    if (now.formula === undefined) {
      this.edit({ row, column, value, ...(cell?.formula && { formula: null }) });
      return;
    }
    const area = range && { row, column, rowCount: range.endRow - row + 1, columnCount: range.endColumn - column + 1 };
    const cm = area && this.file.spillNumber();
    this.edit({
      row,
      column,
      value,
      formula: toFile(now.formula, this.saving.functions),
      ...(area && { array: { area: addressOf(area), ...(cm !== undefined && { cm }) } }),
    });
    if (!area) return;
    for (const [down, across] of placesIn(area))
      if (down !== row || across !== column)
        this.edit({ row: down, column: across, value: this.toFileValue(down, across, this.shown(down, across)) });
  }

  /** Cells that share the formula of a cell that has another one now get a formula of their own. */
  private splitShared(): void {
    for (const master of this.inFile.values()) {
      const { shared, text, kind } = master.formula ?? {};
      if (kind !== "shared" || shared === undefined || !text) continue;
      if (this.edits.get(key(master.row, master.column))?.formula === undefined) continue;
      for (const cell of this.inFile.values()) {
        if (cell.formula?.shared !== shared || cell.formula.text) continue;
        if (this.edits.get(key(cell.row, cell.column))?.formula !== undefined) continue;
        const formula = movedFormula(text, cellAddress(master), cellAddress(cell));
        this.edit({ row: cell.row, column: cell.column, formula });
      }
    }
  }

  private edit(edit: CellEdit): void {
    const at = key(edit.row, edit.column);
    const number = this.inFile.has(at) ? undefined : this.blankStyle(edit.row, edit.column);
    this.edits.set(at, { ...(number && { style: number }), ...this.edits.get(at), ...edit });
  }

  private content(data: ICellData | undefined, formula: string | undefined): CellContent {
    return readCellData(this.saving.grid.library, this.errors, data, formula);
  }

  private formulaNow(row: number, column: number, now: ICellData | undefined): string | undefined {
    if (!now?.f && !now?.si) return undefined;
    const { injector, library, workbook } = this.saving.grid;
    const formulas = injector.get(library.sheets.FormulaDataModel);
    return formulas.getFormulaStringByCell(row, column, this.id, workbook.getId()) ?? undefined;
  }

  private shown(row: number, column: number): CellContent {
    const [[content] = []] = this.saving.cells.read({ sheetId: this.id, row, column, rowCount: 1, columnCount: 1 });
    return content ?? { kind: "empty", value: "", formula: undefined };
  }

  private toFileValue(row: number, column: number, now: CellContent): FileValue | null {
    const value = valueToFile(now);
    if (value === undefined) return null;
    if (typeof value !== "number" || !this.file.book.startsIn1904) return value;
    return dayInFile(
      value,
      this.composed(row, column, this.saving.kept.sheets[this.id]?.cellData?.[row]?.[column], "now").n?.pattern,
    );
  }

  /** The number of the style that a cell without one of its own has in the file. */
  private blankStyle(row: number, column: number): number {
    return this.file.blankStyle(this.place, row, column);
  }

  private changedStyle(
    row: number,
    column: number,
    before: ICellData | undefined,
    now: ICellData | undefined,
    isText: boolean,
  ): number | undefined {
    const [one, other] = [this.look(before?.s, "before"), this.look(now?.s, "now")];
    if (one === other) return undefined;
    const number = this.inFile.get(key(row, column))?.style ?? this.blankStyle(row, column);
    const rowOrColumn = `${this.file.blankStyle(this.place, row, column)} ${JSON.stringify([this.sheetNow.rowData?.[row]?.s, this.sheetNow.columnData?.[column]?.s])}`;
    const known = `${number} ${one} ${other} ${isText} ${rowOrColumn}`;
    const made =
      this.lookNumbers.get(known) ??
      this.styles.changed(
        number,
        styleToFile(this.saving.grid.library, this.composed(row, column, before, "before"), isText),
        styleToFile(this.saving.grid.library, this.composed(row, column, now, "now"), isText),
      );
    this.lookNumbers.set(known, made);
    return made === number ? undefined : made;
  }

  private look(style: ICellData["s"], when: "before" | "now"): string {
    return JSON.stringify(this.styleOf(style, when) ?? {});
  }

  private styleOf(style: ICellData["s"], when: "before" | "now"): IStyleData | undefined {
    const { styles } = when === "before" ? this.file.opened.book : this.saving.kept;
    return (typeof style === "string" ? styles[style] : style) ?? undefined;
  }

  /** A cell's look with what its row and column add, as the grid does it. */
  private composed(row: number, column: number, data: ICellData | undefined, when: "before" | "now"): IStyleData {
    const sheet = when === "before" ? this.sheetBefore : this.sheetNow;
    const layers = [sheet.rowData?.[row]?.s, sheet.columnData?.[column]?.s, data?.s];
    return Object.assign({}, ...layers.map((style) => this.styleOf(style, when)));
  }
}

function* placesIn({ row, column, rowCount, columnCount }: Rectangle): Generator<readonly [number, number]> {
  for (let down = row; down < row + rowCount; down += 1)
    for (let across = column; across < column + columnCount; across += 1) yield [down, across];
}
