import type { Corrections } from "./fitList";
import type { ListRow } from "./listRows";
import type { CellContent } from "./listSheet";
import type { ResultRole } from "./roles";
import type { Assumed } from "./setting";

/** What the estimator wants of a list. */
export interface ListWish {
  readonly corrections: Corrections;
  /** In the order in which new columns are to stand. */
  readonly results: readonly ResultRole[];
  readonly assumed: Assumed;
  /** Results whose filled cells may be written over. */
  readonly replace: ReadonlySet<ResultRole>;
}

/** One cell that would change: what stands there, and what would stand there. */
export interface CellChange {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly before: CellContent;
  readonly after: CellContent;
  /** For a cell that has no number format of its own yet. */
  readonly formatIfPlain?: string;
}

export interface FilledColumn {
  readonly role: ResultRole;
  readonly heading: string;
  readonly column: number;
  readonly isNew: boolean;
  /** It was not asked for: another one rests on it. */
  readonly isAdded: boolean;
  /** The formula of the first bed, and the cells that it reads, with their headings. */
  readonly first: { readonly address: string; readonly formula: string; readonly reads: readonly string[] };
  /** How many cells are written, and how many have the very formula already. */
  readonly written: number;
  readonly same: number;
  /** Filled cells that hold something else: left alone unless they may be written over. */
  readonly clashes: readonly { readonly address: string; readonly before: CellContent; readonly after: string }[];
  readonly replaces: boolean;
}

/** What would be written into a list, told before anything is. */
export interface Filling {
  readonly columns: readonly FilledColumn[];
  readonly beds: readonly ListRow[];
  readonly skipped: readonly ListRow[];
  readonly changes: readonly CellChange[];
  /** Results that cannot be worked out, and why. */
  readonly troubles: readonly string[];
  /** What is taken for granted. */
  readonly assumes: readonly string[];
}
