import { type FieldKey, fields } from "../../quantities/bed/fields";
import type { BedForm } from "../../quantities/bed/form";
import { lines as estimateLines } from "../../quantities/bed/lines";
import { estimateBlock } from "../../sheets/estimate/block";
import { blockAt } from "../../sheets/estimate/readBlock";
import { linkedTo } from "../../sheets/estimate/rows";
import { bedAt, followingForm } from "../../sheets/job/jobSheet";
import { isBlock } from "../../sheets/job/jobUpdate";
import { type JobOnSheet, placeIn } from "../../sheets/job/readJobBlock";
import type { SheetBed } from "../../sheets/job/sheetBed";
import type { Anchor } from "../../spreadsheet/areas";
import { type NewSheet, newSheetName } from "../../workbook/change/insert";
import { WorkbookFailure } from "../../workbook/failure";
import { previewOf } from "../preview";
import { isInJob } from "./jobTogether";
import type { FoundBed, FoundJob } from "./readJob";

/*
 * Beds that a job takes in while it is updated, and that have no estimate yet: rows of a list, and for another version of
 * the job the beds that come into the first one. Each gets an estimate on a sheet of its own.
 */

/** A bed with the sheet that its estimate comes onto; none for a bed that has its estimate. */
export interface TakenIn {
  readonly bed: FoundBed & { readonly onSheet: SheetBed };
  readonly sheet?: NewSheet;
}

const CORNER: Anchor = { row: 0, column: 0 };

/**
 * The beds with estimates of their own.
 *
 * @param sheetNames of the workbook; those that are added are appended.
 * @throws WorkbookFailure for a bed that can't be worked out.
 */
export function withEstimates(beds: readonly FoundBed[], sheetNames: string[]): TakenIn[] {
  return beds.map((bed) => {
    const { onSheet, follows, block, where } = bed;
    if (onSheet) return { bed: { ...bed, onSheet } };
    if (!follows) throw new WorkbookFailure(`${where} can't be found again. Nothing was changed. Refresh.`);
    return newEstimate(follows, block.name, sheetNames);
  });
}

function newEstimate(form: BedForm, wanted: string, sheetNames: string[]): TakenIn {
  const name = newSheetName(wanted, sheetNames);
  sheetNames.push(name);
  const preview = previewOf(form);
  if (!preview.estimate)
    throw new WorkbookFailure(`${form.name || "A bed"}: ${preview.problems[0]?.message} Nothing was changed.`);
  const onSheet = bedAt(form, name, CORNER);
  const { bed, plan, estimate } = preview;
  const lines = estimate.lines.map(({ amount, ...line }) => {
    const typed = form.quantities?.[line.key];
    return { ...line, quantity: typed ?? amount, typed: typed !== undefined };
  });
  const block = { sheet: name, area: onSheet.area, name: onSheet.name, form, lines, price: undefined, salesTax: 0 };
  return {
    bed: {
      ...{ id: name, where: name, tickedAtFirst: false, block, onSheet },
      ...{ worked: { bed, plan, estimate }, problem: undefined },
    },
    sheet: { name, plan: estimateBlock(form, CORNER) },
  };
}

/**
 * The beds that another version of a job is to have once the first version has others: each that comes in is followed,
 * with what sets the version apart, and each that goes out goes there, too.
 *
 * @param job the first version as it is; @param wanted the beds that it is to have.
 * @returns undefined where nothing comes or goes.
 */
export function bedsOfOption(
  option: JobOnSheet,
  job: JobOnSheet,
  wanted: readonly TakenIn["bed"][],
  found: FoundJob,
  sheetNames: string[],
): TakenIn[] | undefined {
  const there = found.beds.flatMap((bed) =>
    bed.onSheet && isInJob(bed, option) ? { ...bed, onSheet: bed.onSheet } : [],
  );
  const coming = wanted.filter((bed) => !isInJob(bed, job));
  const going = found.beds.flatMap((bed) => {
    const stays = wanted.some(({ onSheet }) => bed.onSheet && isBlock(onSheet, bed.onSheet));
    return bed.onSheet && isInJob(bed, job) && !stays ? bed.onSheet : [];
  });
  const stays = there.filter(({ onSheet }) => !going.some((bed) => follows(onSheet, bed, found)));
  if (coming.length === 0 && stays.length === there.length) return undefined;
  const differences = differencesOf(
    there.map(({ onSheet }) => onSheet),
    found,
  );
  const { rates } = found;
  return [
    ...stays.map((bed) => ({ bed })),
    ...coming.map(({ onSheet }) => {
      const form = { ...followingForm(onSheet, differences), ...(rates && { rates }) };
      return newEstimate(form, [onSheet.name, option.option].filter(Boolean).join(" "), sheetNames);
    }),
  ];
}

/** What is behind the cells of a bed's estimate. */
function formulaAt({ sheet }: SheetBed, { row, column }: Anchor, { used }: FoundJob): string {
  const there = used.get(sheet);
  return String(there?.formulas[row - there.row]?.[column - there.column] ?? "");
}

/** Whether a bed's inputs follow those of another bed. */
function follows(bed: SheetBed, other: SheetBed, found: FoundJob): boolean {
  return [...bed.cells].some(([key, cell]) => {
    if (!(key in fields)) return false;
    const place = placeIn(linkedTo(formulaAt(bed, cell, found)) ?? "", bed.sheet);
    return place?.sheet === other.sheet && blockAt([other], place.cell) !== undefined;
  });
}

/** What all beds of a version have typed alike, where the others follow: what sets the version apart. */
function differencesOf(beds: readonly SheetBed[], found: FoundJob): Partial<Record<FieldKey, string>> {
  const cellOf = ({ cells }: SheetBed, key: FieldKey) => {
    const line = estimateLines.find(({ cost }) => cost === key && cost !== "crewRate");
    return cells.get(line ? `${line.key}.unitCost` : key);
  };
  const typedOf = (bed: SheetBed, key: FieldKey) => {
    const cell = cellOf(bed, key);
    return cell && !formulaAt(bed, cell, found).startsWith("=") ? bed.form.typed[key] : undefined;
  };
  const [first, ...others] = beds;
  if (!first) return {};
  return Object.fromEntries(
    (Object.keys(fields) as FieldKey[]).flatMap((key) => {
      const typed = typedOf(first, key);
      return typed !== undefined && others.every((bed) => typedOf(bed, key) === typed) ? [[key, typed]] : [];
    }),
  );
}
