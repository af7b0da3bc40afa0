import { NoNative } from "../../functions/native/given";
import { type Anchor, cellAddress } from "../../spreadsheet/areas";
import type { CellContent, SheetArea, Surroundings } from "./region";

/** A cell outside the copy whose value a workbook of its own brings along, so that formulas can go on reading it. */
export interface CarriedValue {
  /** Its name in the original, or its address: `Rate_waste`, `Rates!B3`. */
  readonly what: string;
  readonly value: CellContent;
}

/** Something outside the copy that a formula reads. */
export interface Noticed {
  readonly what: string;
  /** Where it is one cell. */
  readonly cell?: SheetArea;
}

/** More would make a list that no one reads. */
const MOST_CARRIED = 500;

/** Collects the values to bring along, first all that are wanted, and then gives each its cell. */
export class Carried {
  private readonly kept = new Map<string, CarriedValue>();
  private places: ReadonlyMap<string, number> | undefined;

  /** @param first the cell of the first value in the copy; the others are below it. */
  constructor(
    private readonly around: Surroundings,
    private readonly first: Anchor,
  ) {}

  get values(): readonly CarriedValue[] {
    return [...this.kept.values()];
  }

  /** Keeps what a formula reads, once it was found that the formula can be copied. */
  keep(noticed: Iterable<Noticed>): void {
    for (const { what, cell } of noticed) {
      if (!cell || this.kept.has(keyOf(cell)) || this.kept.size === MOST_CARRIED) continue;
      this.kept.set(keyOf(cell), { what, value: this.valueAt(cell) });
    }
  }

  /** From here on each value has its cell. */
  settle(): void {
    this.places = new Map([...this.kept.keys()].map((key, place) => [key, place]));
  }

  /**
   * The address in the copy of the value of a cell outside.
   *
   * @throws NoNative where nothing is known of it, or too many others are read.
   */
  addressOf(cell: SheetArea): string {
    if (!this.around.valueAt) throw new NoNative("it reads cells outside the copy");
    const place = this.places ? this.places.get(keyOf(cell)) : 0;
    if (place === undefined) throw new NoNative(`it reads more than ${MOST_CARRIED} cells outside the copy`);
    const { row, column } = this.first;
    return cellAddress({ row: row + place, column }).replace(/^([A-Z]+)/, "$$$1$$");
  }

  private valueAt({ sheetName, row, column }: SheetArea): CellContent {
    return this.around.valueAt?.(sheetName, row, column) ?? "";
  }
}

function keyOf({ sheetName, row, column }: SheetArea): string {
  return `${sheetName.toLowerCase()}!${row},${column}`;
}
