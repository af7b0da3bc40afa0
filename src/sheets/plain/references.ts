import { parseA1Ref, type RangeA1, type ReferenceIdentifier } from "@borgar/fx";
import { type GivenRange, NoNative } from "../../functions/native/given";
import { must } from "../../quantities/must";
import type { Carried, Noticed } from "./carried";
import type { Destination, Region, SheetArea, Surroundings } from "./region";
import { a1, prefix } from "./spelling";
import { tableColumns } from "./tableColumns";

/** A reference to a rectangle of cells, and how it is written in the copy. */
export interface Found extends SheetArea {
  readonly range: GivenRange;
  /** Whether all of it is copied, too. */
  readonly isInside: boolean;
}

/** Finds what references refer to, and writes them as they have to be in the copy. */
export class References {
  constructor(
    private readonly region: Region,
    private readonly to: Destination,
    private readonly around: Surroundings,
    /** Where the copy goes into a workbook of its own: the values that it brings along. */
    private readonly carried?: Carried,
  ) {}

  private readonly seen = new Map<string, Noticed>();
  private definesNames = false;

  /** Begins a formula. Names that it defines by itself are no one else's. */
  begin(definesNames: boolean): void {
    this.seen.clear();
    this.definesNames = definesNames;
  }

  /** Whether the copy goes into a workbook of its own. */
  get isElsewhere(): boolean {
    return this.carried !== undefined;
  }

  /** What lies outside the copy of all that was looked for since the formula began. */
  get noticed(): readonly Noticed[] {
    return [...this.seen.values()];
  }

  /**
   * The cells that a reference means.
   *
   * @param at the cell of its formula, for a table's "this row".
   * @returns undefined where its text does not tell, as of a name no one explained.
   * @throws NoNative where the copy cannot read it, in a workbook of its own.
   */
  find(node: ReferenceIdentifier, at: SheetArea): Found | undefined {
    const found = this.found(node, at);
    if (found && !found.isInside) this.notice(node, found);
    return found;
  }

  /**
   * The reference as it is in the copy; undefined where it can only are in the original.
   *
   * @throws NoNative where the copy cannot read it, in a workbook of its own.
   */
  written(node: ReferenceIdentifier, at: SheetArea): string | undefined {
    const found = this.find(node, at);
    if (node.kind === "table") return found?.range.text;
    if (node.kind === "name") return this.nameWritten(node.value, found);
    const reference = parseA1Ref(node.value, { allowNamed: false });
    const sheetName = reference && "range" in reference ? this.sheetOf(reference.context) : undefined;
    if (!reference || !("range" in reference) || sheetName === undefined) {
      if (this.carried) throw new NoNative(`it reads ${node.value}, which isn't in the copy`);
      return node.value;
    }
    return this.text(sheetName, reference.range, this.isInside(sheetName, reference.range));
  }

  private nameWritten(name: string, found: Found | undefined): string {
    if (!this.carried) return name;
    if (found) return found.range.text;
    if (!this.definesNames || this.meaningOf(name) !== undefined)
      throw new NoNative(`${name} is a name of the original workbook`);
    return name;
  }

  private found(node: ReferenceIdentifier, at: SheetArea): Found | undefined {
    if (node.kind === "table") return this.inTable(node.value, at);
    if (node.kind === "name") return this.named(node.value);
    return this.parsed(node.value);
  }

  private notice(node: ReferenceIdentifier, { sheetName, row, column, rows, columns }: Found): void {
    const isAddress = node.kind !== "name" && node.kind !== "table";
    const bare = { top: row, left: column, bottom: row + rows - 1, right: column + columns - 1 };
    const what = isAddress ? prefix(sheetName) + a1(bare) : node.value;
    const isCell = rows * columns === 1;
    this.seen.set(what, { what, ...(isCell && { cell: { sheetName, row, column, rows, columns } }) });
  }

  private parsed(text: string): Found | undefined {
    const reference = parseA1Ref(text, { allowNamed: false });
    if (!reference || !("range" in reference)) return undefined;
    const sheetName = this.sheetOf(reference.context);
    return sheetName === undefined ? undefined : this.area(sheetName, reference.range);
  }

  private meaningOf(name: string): string | undefined {
    const key = Object.keys(this.around.names ?? {}).find((one) => one.toLowerCase() === name.toLowerCase());
    return key === undefined ? undefined : must(must(this.around.names)[key]).replace(/^=/, "");
  }

  private named(name: string): Found | undefined {
    const meaning = this.meaningOf(name);
    const meant = meaning === undefined ? undefined : this.parsed(meaning);
    // A workbook of its own does not know the name.
    if (!meant || this.carried) return meant;
    // One cell keeps its name in the copy, since that reads well; of several cells the parts are needed.
    return meant.rows * meant.columns === 1 ? { ...meant, range: { ...meant.range, text: name } } : meant;
  }

  private inTable(text: string, at: SheetArea): Found | undefined {
    const meant = tableColumns(text, this.around.tables ?? [], at);
    return meant && this.area(meant.sheetName, meant.range);
  }

  private area(sheetName: string, range: RangeA1): Found | undefined {
    const { top, left, bottom = top, right = left } = range;
    if (top === null || left === null || bottom === null || right === null) return undefined;
    const isInside = this.isInside(sheetName, range);
    const area: SheetArea = { sheetName, row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 };
    return {
      ...area,
      isInside,
      range: {
        text: this.text(sheetName, range, isInside),
        rows: area.rows,
        columns: area.columns,
        part: (fromRow, fromColumn, toRow, toColumn) =>
          this.text(
            sheetName,
            { ...range, top: top + fromRow, left: left + fromColumn, bottom: top + toRow, right: left + toColumn },
            isInside,
          ),
      },
    };
  }

  /** The sheet of a reference; undefined for another workbook and for several sheets. */
  private sheetOf(context: readonly string[] | undefined): string | undefined {
    const [name = this.region.sheetName, ...more] = context ?? [];
    return more.length > 0 || name.includes(":") ? undefined : name;
  }

  private isOwn(sheetName: string): boolean {
    return sheetName.toLowerCase() === this.region.sheetName.toLowerCase();
  }

  private isInside(sheetName: string, { top, left, bottom = top, right = left }: RangeA1): boolean {
    if (!this.isOwn(sheetName)) return false;
    if (this.to.wholeSheet) return true;
    if (top === null || left === null || bottom === null || right === null) return false;
    const { row, column, formulas } = this.region;
    if (top === undefined || left === undefined || bottom === undefined || right === undefined) return false;
    const columns = formulas[0]?.length ?? 0;
    return top >= row && left >= column && bottom < row + formulas.length && right < column + columns;
  }

  private broughtAlong(carried: Carried, sheetName: string, range: RangeA1): string {
    const { top, left, bottom = top, right = left } = range;
    if (typeof top !== "number" || typeof left !== "number" || top !== bottom || left !== right) {
      const what = prefix(sheetName) + a1(range);
      throw new NoNative(`it reads ${what}, which isn't in the copy; only single cells are brought along`);
    }
    return carried.addressOf({ sheetName, row: top, column: left, rows: 1, columns: 1 });
  }

  private text(sheetName: string, range: RangeA1, isInside: boolean): string {
    if (!isInside) {
      if (this.carried) return this.broughtAlong(this.carried, sheetName, range);
      const isNear = this.to.sameSheet && this.isOwn(sheetName);
      return isNear ? a1(range) : prefix(sheetName) + a1(range);
    }
    const down = this.to.at.row - this.region.row;
    const across = this.to.at.column - this.region.column;
    const moved = (value: number | null | undefined, by: number) => (typeof value === "number" ? value + by : value);
    return a1({
      ...range,
      top: moved(range.top, down) ?? null,
      bottom: moved(range.bottom, down) ?? null,
      left: moved(range.left, across) ?? null,
      right: moved(range.right, across) ?? null,
    });
  }
}
