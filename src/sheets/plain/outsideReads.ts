import type { Noticed } from "./carried";

/** Something outside the copied cells that formulas of the copy read. */
export interface OutsideRead {
  /** Its name or address in the original: `Rate_waste`, `Rates!B3`. */
  readonly what: string;
  /** Cells of the original that read it. */
  readonly readBy: readonly string[];
}

/** Collects what the copy's formulas read outside of it. */
export class OutsideReads {
  private readonly readers = new Map<string, string[]>();

  add(noticed: readonly Noticed[], reader: string): void {
    for (const { what } of noticed) {
      const known = this.readers.get(what);
      if (known) known.push(reader);
      else this.readers.set(what, [reader]);
    }
  }

  get list(): readonly OutsideRead[] {
    return [...this.readers].map(([what, readBy]) => ({ what, readBy }));
  }
}
