import { must } from "../../quantities/must";
import { type Anchor, type Area, areaAddress, cellAddress } from "../../spreadsheet/areas";
import { needsArray } from "../../spreadsheet/needsArray";
import { Carried } from "./carried";
import { callsOwnFunction } from "./formula";
import { copyFormula, type FormulaCopy } from "./formulaCopy";
import { OutsideReads } from "./outsideReads";
import { type Found, References } from "./references";
import {
  type CellContent,
  type Destination,
  isFormula,
  type Region,
  type SheetArea,
  type Surroundings,
} from "./region";
import { ReplacedCells } from "./replacedCells";
import { replacedFormat } from "./replacedFormat";
import type { LeftAsValue, ReplacedInput } from "./result";
import { type Spill, spillsOf } from "./spills";
import { type CellReader, type Replacement, TapedCells } from "./taped";
import { written } from "./written";

/** The cells of a copy in ordinary formulas, and the account of what became of them. */
export class Copying {
  readonly contents: (string | number)[][];
  /** What the copy's cells show. */
  readonly results: CellContent[][];
  readonly formats: string[][];
  /** Where values stand that were formulas, from the first cell on. */
  readonly valueAreas: Area[] = [];
  readonly converted: string[] = [];
  readonly replaced: ReplacedInput[] = [];
  readonly leftAsValues: LeftAsValue[] = [];
  readonly alsoRead: string[] = [];
  readonly arrays: string[] = [];
  readonly outside = new OutsideReads();
  /** Where the copy goes into a workbook of its own: the values that it brings along. */
  readonly carried: Carried | undefined;

  private readonly references: References;
  private readonly spills: readonly Spill[];
  private readonly replacements: ReadonlyMap<string, Replacement>;
  private readonly replacedCells: ReplacedCells;

  constructor(
    private readonly region: Region,
    around: Surroundings,
    private readonly to: Destination,
  ) {
    this.carried = to.isElsewhere ? new Carried(around, carriedPlace(region, to)) : undefined;
    this.references = new References(region, to, around, this.carried);
    this.spills = spillsOf(region, around);
    this.contents = region.values.map((row) => row.map(written));
    this.results = region.values.map((row) => [...row]);
    this.formats = region.formats.map((row) => [...row]);
    const taped = new TapedCells(region, around);
    this.eachFormula((formula, row, column) => {
      if (!this.carried && !callsOwnFunction(formula)) return;
      const asking = taped.asking();
      if ("reason" in this.copyOf(formula, row, column, asking)) return;
      asking.keep();
      this.carried?.keep(this.references.noticed);
    });
    this.replacements = taped.settle();
    this.replacedCells = new ReplacedCells(this.replacements);
    this.carried?.settle();
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
      const reason = `its result is the text “${text}”, which ordinary formulas can't read`;
      this.leave(formula, row, column, reason, undefined);
    } else if ("reason" in copy) this.leave(formula, row, column, copy.reason, spill);
    else {
      const address = cellAddress(this.place(row, column));
      this.outside.add(this.references.noticed, cellAddress(this.original(row, column)));
      if (spill) {
        this.clear(spill);
        this.arrays.push(areaAddress({ ...spill, ...this.place(row, column) }));
      }
      must(this.contents[row])[column] = copy.formula;
      if (copy.isConverted) this.converted.push(address);
      if (!spill && needsArray(copy.formula)) this.arrays.push(address);
      const mayDiffer =
        copy.read.some((found) => this.holdsReplaced(found)) ||
        copy.askedForZero.some((found) => this.holdsReplaced(found, ({ content }) => content === 0));
      if (mayDiffer) this.alsoRead.push(address);
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

  private replace(key: string, replacement: Replacement): void {
    const { was, content, reading } = replacement;
    const [row = 0, column = 0] = key.split(",").map(Number);
    must(this.contents[row])[column] = written(content);
    must(this.results[row])[column] = content;
    must(this.formats[row])[column] = replacedFormat(must(must(this.formats[row])[column]), replacement);
    if (isFormula(must(this.region.formulas[row])[column])) return;
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

  private holdsReplaced(found: Found, counts?: (replacement: Replacement) => boolean): boolean {
    if (!found.isInside) return false;
    const { row, column } = this.region;
    return this.replacedCells.any({ ...found, row: found.row - row, column: found.column - column }, counts);
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

/** The values that are brought along are below the cells and a heading, beside what they are. */
function carriedPlace(region: Region, { at }: Destination): Anchor {
  return { row: at.row + region.formulas.length + 2, column: at.column + 1 };
}
