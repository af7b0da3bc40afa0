import type { CellValue, SheetFacts } from "../facts";

/** "unknown" is a formula whose result this host can't work out: it shows an error that isn't the workbook's. */
export type Kind = "blank" | "number" | "text" | "truth" | "error" | "unknown";

const KINDS: Readonly<Record<string, Kind>> = {
  Empty: "blank",
  String: "text",
  Integer: "number",
  Double: "number",
  Boolean: "truth",
  Error: "error",
  Unknown: "unknown",
};

/** The cells of one sheet, by their rows and columns on the sheet. Outside the used range all are blank. */
export class SheetGrid {
  readonly name: string;
  readonly top: number;
  readonly left: number;
  /** The last row, inclusive; before the first where nothing is on the sheet. */
  readonly bottom: number;
  readonly right: number;
  readonly #hiddenRows: ReadonlySet<number>;
  readonly #hiddenColumns: ReadonlySet<number>;

  constructor(
    readonly facts: SheetFacts,
    readonly index: number,
  ) {
    const { used } = facts;
    this.name = facts.name;
    this.top = used?.row ?? 0;
    this.left = used?.column ?? 0;
    this.bottom = this.top + (used?.values.length ?? 0) - 1;
    this.right = this.left + (used?.values[0]?.length ?? 0) - 1;
    this.#hiddenRows = new Set(facts.hiddenRows);
    this.#hiddenColumns = new Set(facts.hiddenColumns);
  }

  kind(row: number, column: number): Kind {
    const value = this.value(row, column);
    const type = this.facts.used?.valueTypes[row - this.top]?.[column - this.left];
    if (value === "" && this.formula(row, column) === undefined) return "blank";
    const known = type === undefined ? undefined : KINDS[type];
    if (known !== undefined && known !== "blank") return known;
    return typeof value === "number" ? "number" : typeof value === "boolean" ? "truth" : "text";
  }

  value(row: number, column: number): CellValue {
    return this.facts.used?.values[row - this.top]?.[column - this.left] ?? "";
  }

  /** With its "="; undefined where a constant stands, or nothing. */
  formula(row: number, column: number): string | undefined {
    const content = this.facts.used?.formulas[row - this.top]?.[column - this.left];
    return typeof content === "string" && content.length > 1 && content.startsWith("=") && this.#isFormula(row, column)
      ? content
      : undefined;
  }

  /** As a person sees it. */
  text(row: number, column: number): string {
    return this.facts.used?.text[row - this.top]?.[column - this.left] ?? String(this.value(row, column));
  }

  format(row: number, column: number): string {
    return this.facts.used?.numberFormat[row - this.top]?.[column - this.left] ?? "General";
  }

  /** The number in a cell; undefined where there is none. */
  number(row: number, column: number): number | undefined {
    const value = this.value(row, column);
    return typeof value === "number" ? value : undefined;
  }

  isBlank(row: number, column: number): boolean {
    return this.kind(row, column) === "blank";
  }

  /** A number that was typed, and not worked out. */
  isTypedNumber(row: number, column: number): boolean {
    return typeof this.value(row, column) === "number" && this.formula(row, column) === undefined;
  }

  /** Text that was typed. */
  isTypedText(row: number, column: number): boolean {
    return this.kind(row, column) === "text" && this.formula(row, column) === undefined;
  }

  isRowBlank(row: number): boolean {
    for (let column = this.left; column <= this.right; column++) if (!this.isBlank(row, column)) return false;
    return true;
  }

  isColumnBlank(column: number): boolean {
    for (let row = this.top; row <= this.bottom; row++) if (!this.isBlank(row, column)) return false;
    return true;
  }

  isRowHidden(row: number): boolean {
    return this.#hiddenRows.has(row);
  }

  isColumnHidden(column: number): boolean {
    return this.#hiddenColumns.has(column);
  }

  get isEmpty(): boolean {
    return this.bottom < this.top;
  }

  /** Text that begins with "=" is a formula only where the value differs from it. */
  #isFormula(row: number, column: number): boolean {
    const content = this.facts.used?.formulas[row - this.top]?.[column - this.left];
    return content !== this.value(row, column);
  }
}
