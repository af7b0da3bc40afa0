import type { Content } from "../sheets/blockRows";
import type { BlockUpdate, CellUpdate } from "../sheets/blockUpdate";
import type { DraftRow } from "../sheets/compose";
import { cellAddress } from "../spreadsheet/areas";

/*
 * What an update of a block changes and keeps, in words for its preview.
 */

/** Something that the person changed on the sheet, and the cells that an update would undo to how they are made. */
export interface KeptChange {
  readonly words: string;
  readonly cells: readonly CellUpdate[];
}

/** What was changed by hand, row by row. */
export function keptChanges(byHand: readonly CellUpdate[]): KeptChange[] {
  const rows = new Map<number, CellUpdate[]>();
  for (const cell of byHand) rows.set(cell.row, [...(rows.get(cell.row) ?? []), cell]);
  return [...rows.values()].flatMap((cells): KeptChange[] => {
    const [first] = cells;
    if (first?.after === "" && cells.every(({ after }) => !isFormula(after)))
      return [{ words: `line “${textOf(first.before)}” added`, cells }];
    return cells.map((cell) => ({ words: byHandWords(cell), cells: [cell] }));
  });
}

function byHandWords({ label, before, after }: CellUpdate): string {
  if (!label.endsWith(", label")) return `${label}: ${before === "" ? "emptied" : textOf(before)}`;
  return isFormula(after)
    ? `“${textOf(before)}” typed over a label`
    : `“${textOf(after)}” renamed to “${textOf(before)}”`;
}

export const ownRowWords = (label: string) => `row “${cut(label)}” added`;

/** What an update changes, for the preview: rows that come and go, then what was typed, then formulas. */
export function linesOf({ changes, inserted, removed }: BlockUpdate): string[] {
  const typedFirst = [...changes].sort((one, other) => Number(isFormulaOnly(one)) - Number(isFormulaOnly(other)));
  const labelOf = ({ cells: [label, value] }: DraftRow) => {
    const holds = value && !isFormula(value.content) && value.content !== "" ? `: ${textOf(value.content)}` : "";
    return `${String(label?.content || "row")}${holds}`;
  };
  return [
    ...removed.map(({ row, label }) => `row ${row + 1} ${cut(label)}: removed`),
    ...inserted.flatMap(({ row, rows }) => rows.map((one, index) => `row ${row + index + 1} added, ${labelOf(one)}`)),
    ...typedFirst.map(changeWords),
  ];
}

/** How a cell changes, for the preview: `B12 Width: 5 → 6`. */
function changeWords({ row, column, label, before, after }: CellUpdate): string {
  const cell = `${cellAddress({ row, column })} ${label}`;
  if (isFormula(after)) {
    if (/\bRate_/.test(String(after)) && !isFormula(before)) return `${cell}: ${textOf(before)} → follows Rates`;
    return `${cell}: ${isFormula(before) ? "its formula changes" : `${textOf(before)} → formula`}`;
  }
  return `${cell}: ${isFormula(before) ? "formula" : textOf(before)} → ${textOf(after)}`;
}

const isFormula = (content: Content) => typeof content === "string" && content.startsWith("=");
/** Nothing that was typed: such changes come last. */
const isFormulaOnly = ({ before, after }: CellUpdate) => isFormula(before) && isFormula(after);
const LONGEST = 40;
const cut = (text: string) => (text.length > LONGEST ? `${text.slice(0, LONGEST)}…` : text);
const textOf = (content: Content) => (content === "" ? "blank" : cut(String(content).replace(/^'/, "")));
