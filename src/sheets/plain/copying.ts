import { areaAddress, cellAddress } from "../address";
import type { Area } from "../plan";
import { callsOwnFunction } from "./formula";
import { copyFormula, type FormulaCopy } from "./formulaCopy";
import { type Found, References } from "./references";
import { type Destination, isFormula, type Region, type SheetArea, type Surroundings } from "./region";
import type { LeftAsValue, ReplacedInput } from "./result";
import { covers, type Spill, spillsOf } from "./spills";
import { type CellReader, type Replacement, TapedCells } from "./taped";
import { written } from "./written";

/** The cells of a copy in ordinary formulas, and the account of what became of them. */
export class Copying {
  readonly contents: (string | number)[][];
  readonly formats: string[][];
  /** Where values stand that were formulas, from the first cell on. */
  readonly valueAreas: Area[] = [];
  readonly converted: string[] = [];
  readonly replaced: ReplacedInput[] = [];
  readonly leftAsValues: LeftAsValue[] = [];
  readonly alsoRead: string[] = [];
  readonly arrays: string[] = [];

  private readonly references: References;
  private readonly spills: readonly Spill[];
  private readonly replacements: ReadonlyMap<string, Replacement>;

  constructor(
    private readonly region: Region,
    around: Surroundings,
    private readonly to: Destination,
  ) {
    this.references = new References(region, to, around);
    this.spills = spillsOf(region, around);
    this.contents = region.values.map((row) => row.map(written));
    this.formats = region.formats.map((row) => [...row]);
    const taped = new TapedCells(region, around);
    this.eachFormula((formula, row, column) => {
      const asking = taped.asking();
      if (callsOwnFunction(formula) && "formula" in this.copyOf(formula, row, column, asking)) asking.keep();
    });
    this.replacements = taped.settle();
    this.eachFormula((formula, row, column) => this.enter(formula, row, column, taped.settled));
    for (const [key, replacement] of this.replacements) this.replace(key, replacement);
  }

  private copyOf(formula: string, row: number, column: number, cells: CellReader): FormulaCopy {
    const at: SheetArea = { ...this.original(row, column), sheetName: this.region.sheetName, rows: 1, columns: 1 };
    return copyFormula(formula, at, this.references, cells, (found) => this.isListOfOurs(found));
  }

  private enter(formula: string, row: number, column: number, cells: CellReader): void {
    const copy = this.copyOf(formula, row, column, cells);
    const spill = this.spills.find((one) => one.row === row && one.column === column);
    const text = this.replacements.get(`${row},${column}`)?.was;
    if (text !== undefined) {
      const reason = `it gives the text “${text}”, which ordinary arithmetic cannot read`;
      this.leave(formula, row, column, reason, undefined);
    } else if ("reason" in copy) this.leave(formula, row, column, copy.reason, spill);
    else {
      const address = cellAddress(this.place(row, column));
      if (spill) this.clear(spill);
      this.contents[row]![column] = copy.formula;
      if (copy.isConverted) this.converted.push(address);
      // Only arithmetic of ours turns columns into rows within a formula.
      if (copy.isConverted && copy.formula.includes("TRANSPOSE(")) this.arrays.push(address);
      if (copy.read.some((found) => this.holdsReplaced(found))) this.alsoRead.push(address);
    }
  }

  private leave(formula: string, row: number, column: number, reason: string, spill: Spill | undefined): void {
    const { rows, columns } = spill ?? { rows: 1, columns: 1 };
    this.valueAreas.push({ row, column, rows, columns });
    this.leftAsValues.push({
      from: cellAddress(this.original(row, column)),
      to: areaAddress({ ...this.place(row, column), rows, columns }),
      formula,
      reason,
    });
  }

  private replace(key: string, { was, content, reading }: Replacement): void {
    const [row = 0, column = 0] = key.split(",").map(Number);
    this.contents[row]![column] = written(content);
    this.formats[row]![column] = formatOf(this.formats[row]![column]!, was, reading);
    if (isFormula(this.region.formulas[row]![column])) return;
    this.replaced.push({
      from: cellAddress(this.original(row, column)),
      to: cellAddress(this.place(row, column)),
      was,
      is: content,
      ...((reading === "ft" || reading === "in") && { unit: reading }),
    });
  }

  /** Room for a list that spills in the copy as well. */
  private clear({ row, column, rows, columns }: Spill): void {
    for (const cells of this.contents.slice(row, row + rows)) cells.fill("", column, column + columns);
  }

  private isListOfOurs({ isInside, row, column }: Found): boolean {
    const content = isInside ? this.region.formulas[row - this.region.row]?.[column - this.region.column] : undefined;
    return isFormula(content) && callsOwnFunction(content);
  }

  private holdsReplaced(found: Found): boolean {
    if (!found.isInside) return false;
    const area: Spill = { ...found, row: found.row - this.region.row, column: found.column - this.region.column };
    if (area.rows * area.columns === 1) return this.replacements.has(`${area.row},${area.column}`);
    return [...this.replacements.keys()].some((key) => {
      const [row = 0, column = 0] = key.split(",").map(Number);
      return covers(area, row, column);
    });
  }

  private original(row: number, column: number) {
    return { row: this.region.row + row, column: this.region.column + column };
  }

  private place(row: number, column: number) {
    return { row: this.to.at.row + row, column: this.to.at.column + column };
  }

  private eachFormula(visit: (formula: string, row: number, column: number) => void): void {
    this.region.formulas.forEach((cells, row) => {
      cells.forEach((content, column) => {
        if (isFormula(content)) visit(content, row, column);
      });
    });
  }
}

/** A number must not stand in a cell that is formatted as text, and a share or a date has to look like one. */
function formatOf(format: string, was: string, reading: Replacement["reading"]): string {
  if (format !== "@" && format !== "General") return format;
  if (reading === "date") return "yyyy-mm-dd";
  return was.trim().endsWith("%") ? "0.0%" : "General";
}
