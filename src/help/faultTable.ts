/** What goes wrong, in four kinds. */
export type TroubleGroup = "fails" | "protected" | "selected" | "others";

/** What came of trying everything that writes in every trouble, as the tests found it. */
export interface FaultTable {
  readonly troubles: readonly {
    readonly key: string;
    readonly group: TroubleGroup;
    readonly title: string;
    readonly about: string;
  }[];
  readonly operations: readonly {
    readonly title: string;
    /** How many requests to the spreadsheet program it takes. */
    readonly steps: number;
    /** By the key of the trouble; left out where it does not come up. */
    readonly cells: Readonly<Record<string, FaultCell>>;
  }[];
  /** What happens in two panes of one workbook. */
  readonly panes: readonly { readonly title: string; readonly outcome: string; readonly says: readonly number[] }[];
  /** What the person is told; the others name them by their places in this list. */
  readonly sentences: readonly string[];
}

/** What came of an operation in a trouble, over all tries. */
export interface FaultCell {
  /** Tries after which the workbook was as it was. */
  readonly asBefore: number;
  /** Tries in which all of it was done. */
  readonly done: number;
  /** Tries after which something may have been left, and the person was told so. */
  readonly told: number;
  readonly says: readonly number[];
}
