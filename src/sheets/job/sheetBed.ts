import { type BedForm, secondOf } from "../../quantities/bed/form";
import { lines, secondLines } from "../../quantities/bed/lines";
import { currentText } from "../../quantities/bed/olderTexts";
import { NO_EDGING } from "../../quantities/edgingKinds";
import type { Anchor, Area } from "../../spreadsheet/areas";
import type { Content } from "../blockRows";
import { headings } from "../estimate/headings";
import { findBlocks, partsOf } from "../estimate/readBlock";
import { type BedCells, bedCells } from "./bedCells";

/** A bed's estimate block as a job refers to it. */
export interface SheetBed {
  readonly sheet: string;
  readonly area: Area;
  readonly name: string;
  readonly form: BedForm;
  readonly cells: BedCells;
  /** The first cells of lines that the estimator added to the block. */
  readonly own: readonly Anchor[];
  /** Whether the job has a column for its second edging; left out: where it has one. */
  readonly hasSecond?: boolean;
}

/** A column of a job's working: a bed, or the second edging of one. */
export interface JobColumn extends SheetBed {
  readonly isSecond: boolean;
}

/** What a second edging is called after its bed. */
export const SECOND_EDGING = ", second edging";

/** The columns of a job's working: its beds, and after them the second edgings that some of them have. */
export const jobColumns = (beds: readonly SheetBed[]): JobColumn[] => [
  ...beds.map((bed) => ({ ...bed, isSecond: false })),
  ...beds
    .filter(({ form, hasSecond = secondOf(form) !== NO_EDGING }) => hasSecond)
    .map((bed) => ({ ...bed, isSecond: true })),
];

/** What is read of a sheet's used range. */
interface UsedCells extends Anchor {
  readonly values: readonly (readonly unknown[])[];
}

/**
 * The estimate blocks on a sheet, with the places of their cells.
 *
 * @param sheet its name; @param used what is used of it; @param blocks those of it, where they were found already.
 */
export function findSheetBeds(sheet: string, used: UsedCells, blocks = findBlocks(used.values, used)): SheetBed[] {
  return blocks.map(({ area, form }) => {
    const values = used.values
      .slice(area.row - used.row, area.row - used.row + area.rows)
      .map((row) => row.slice(area.column - used.column, area.column - used.column + area.columns));
    const cells = bedCells(values as readonly (readonly Content[])[], area, form);
    return { sheet, area, name: form.name.trim(), form, cells, own: ownLines(values, area, cells, form) };
  });
}

/** Rows among the lines that are none of the estimate's own, and say how much of what. */
function ownLines(values: readonly (readonly unknown[])[], area: Area, cells: BedCells, form: BedForm): Anchor[] {
  const part = partsOf(values).find(({ heading }) => heading === headings.lines);
  if (!part) return [];
  const known = [...lines, ...secondLines(secondOf(form))].map(({ key }) => cells.get(`${key}.quantity`)?.row);
  const end = part.rows.findIndex(([label]) => currentText(label) === "Totals");
  return part.rows.slice(0, end < 0 ? undefined : end).flatMap((row, index) => {
    const at = area.row + part.first + index;
    const isOwn = !known.includes(at) && typeof row[1] === "number";
    return isOwn ? [{ row: at, column: area.column }] : [];
  });
}
