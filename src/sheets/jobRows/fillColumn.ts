import { cellAddress } from "../../spreadsheet/areas";
import { numberFormats } from "../plan";
import type { CellChange, FilledColumn, ListWish } from "./filling";
import type { FittedColumn } from "./fitColumns";
import type { ListFit } from "./fitList";
import type { ListRow } from "./listRows";
import type { CellContent } from "./listSheet";
import { resultFormula } from "./resultFormula";
import { results } from "./results";
import type { ResultRole } from "./roles";
import type { ListSetting } from "./setting";

/** What all columns of a filling have in common; its changes are gathered as they come. */
export interface Job {
  readonly fit: ListFit;
  readonly wish: ListWish;
  readonly made: ListSetting;
  readonly beds: readonly ListRow[];
  readonly changes: CellChange[];
  readonly headings: ReadonlyMap<string, string>;
}

/** Fills one column: the formula of each bed, where it is not there yet and nothing else is, or may be written over. */
export function fillColumn(
  { fit, wish, made, beds, changes, headings }: Job,
  role: ResultRole,
  isAdded: boolean,
  existing: FittedColumn | undefined,
): FilledColumn {
  const { cells, heading } = fit;
  const { column } = made.columns.get(role)!;
  const [sheet, formatIfPlain] = [cells.sheet.name, numberFormats[results[role].format]];
  const replaces = wish.replace.has(role);
  const clashes: { address: string; before: CellContent; after: string }[] = [];
  let [written, same] = [0, 0];
  if (!existing) changes.push({ sheet, row: heading.row, column, before: "", after: results[role].heading });
  for (const { row } of beds) {
    const before = cells.content(row, column);
    const after = resultFormula(made, role, row);
    if (isSame(before, after)) {
      same += 1;
      continue;
    }
    const isFilled = !cells.isBlank(row, column);
    if (isFilled) clashes.push({ address: cellAddress({ row, column }), before, after });
    if (isFilled && !replaces) continue;
    written += 1;
    changes.push({ sheet, row, column, before, after, formatIfPlain });
  }
  const row = beds[0]?.row ?? fit.rows.first;
  const formula = resultFormula(made, role, row);
  return {
    role,
    heading: existing?.heading ?? results[role].heading,
    column,
    isNew: !existing,
    isAdded,
    first: { address: cellAddress({ row, column }), formula, reads: readsOf(formula, headings) },
    written,
    same,
    clashes,
    replaces,
  };
}

/** The cells that a formula reads, each once, with the heading of its column. */
function readsOf(formula: string, headings: ReadonlyMap<string, string>): string[] {
  const cells = formula.replace(/"(?:[^"]|"")*"/g, "").matchAll(/(?<![A-Z_.\d])([A-Z]{1,3})(\d+)(?![\d(])/g);
  return [...new Set([...cells].map(([cell, letters]) => `${cell} ${headings.get(letters!) ?? ""}`.trim()))];
}

/** Whether two formulas differ in nothing but spaces and capitals. */
function isSame(before: CellContent, after: string): boolean {
  return typeof before === "string" && plain(before) === plain(after);
}

function plain(formula: string): string {
  return formula.replace(/("(?:[^"]|"")*")|\s+/g, (_, text: string | undefined) => text ?? "").toUpperCase();
}
