import { parseA1Ref, parseStructRef, type RangeA1, type ReferenceIdentifier, stringifyA1Ref, toCol } from "@borgar/fx";
import type { GivenRange } from "../../functions/native/given";
import type { Destination, Region, SheetArea, Surroundings, TableFacts } from "./region";

/** A reference to a rectangle of cells, and how it is written in the copy. */
export interface Found extends SheetArea {
  readonly range: GivenRange;
  /** Whether all of it is copied, too. */
  readonly isInside: boolean;
}

/** Finds what references refer to, and writes them as they have to stand in the copy. */
export class References {
  constructor(
    private readonly region: Region,
    private readonly to: Destination,
    private readonly around: Surroundings,
  ) {}

  /**
   * The cells that a reference means.
   *
   * @param at the cell of its formula, for a table's "this row".
   * @returns undefined where its text does not tell, as of a name nobody explained.
   */
  find(node: ReferenceIdentifier, at: SheetArea): Found | undefined {
    if (node.kind === "table") return this.inTable(node.value, at);
    if (node.kind === "name") return this.named(node.value);
    return this.parsed(node.value);
  }

  /** The reference as it stands in the copy; undefined where it can only stand in the original. */
  written(node: ReferenceIdentifier, at: SheetArea): string | undefined {
    if (node.kind === "name") return node.value;
    if (node.kind === "table") return this.inTable(node.value, at)?.range.text;
    const reference = parseA1Ref(node.value, { allowNamed: false });
    if (!reference || !("range" in reference)) return node.value;
    const sheetName = this.sheetOf(reference.context);
    return sheetName === undefined
      ? node.value
      : this.text(sheetName, reference.range, this.isInside(sheetName, reference.range));
  }

  private parsed(text: string): Found | undefined {
    const reference = parseA1Ref(text, { allowNamed: false });
    if (!reference || !("range" in reference)) return undefined;
    const sheetName = this.sheetOf(reference.context);
    return sheetName === undefined ? undefined : this.found(sheetName, reference.range);
  }

  private named(name: string): Found | undefined {
    const key = Object.keys(this.around.names ?? {}).find((one) => one.toLowerCase() === name.toLowerCase());
    const meant = key === undefined ? undefined : this.parsed(this.around.names![key]!.replace(/^=/, ""));
    if (!meant) return undefined;
    // One cell keeps its name in the copy, since that reads well; of several cells the parts are needed.
    return meant.rows * meant.columns === 1 ? { ...meant, range: { ...meant.range, text: name } } : meant;
  }

  private inTable(text: string, at: SheetArea): Found | undefined {
    const reference = parseStructRef(text);
    if (!reference) return undefined;
    const table = (this.around.tables ?? []).find((one) => isMeant(one, reference.table, at));
    const [first, last, ...more] = reference.columns ?? [];
    if (!table || first === undefined || more.length > 0) return undefined;
    const placeOf = (heading: string) => table.headings.findIndex((one) => one.toLowerCase() === heading.toLowerCase());
    const [left, right] = [placeOf(first), placeOf(last ?? first)];
    const sections = reference.sections ?? [];
    const thisRow = sections.includes("this row");
    if (left < 0 || right < 0) return undefined;
    if (!thisRow && sections.some((section) => section !== "data")) return undefined;
    const { data } = table;
    return this.found(data.sheetName, {
      top: thisRow ? at.row : data.row,
      bottom: thisRow ? at.row : data.row + data.rows - 1,
      left: data.column + Math.min(left, right),
      right: data.column + Math.max(left, right),
    });
  }

  private found(sheetName: string, range: RangeA1): Found | undefined {
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

  private text(sheetName: string, range: RangeA1, isInside: boolean): string {
    if (!isInside) {
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

function isMeant(table: TableFacts, name: string | undefined, at: SheetArea): boolean {
  if (name) return table.name.toLowerCase() === name.toLowerCase();
  const { sheetName, row, column, rows, columns } = table.data;
  const isIn = at.row >= row && at.row < row + rows && at.column >= column && at.column < column + columns;
  return isIn && at.sheetName === sheetName;
}

function a1(range: RangeA1): string {
  const { top, left, bottom, right, $top, $left } = range;
  if (typeof top === "number" && typeof left === "number" && top === bottom && left === right) {
    return `${$left ? "$" : ""}${toCol(left)}${$top ? "$" : ""}${top + 1}`;
  }
  return stringifyA1Ref({ range });
}

function prefix(sheetName: string): string {
  return stringifyA1Ref({ context: [sheetName], name: "_" }).slice(0, -1);
}
