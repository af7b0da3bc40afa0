import type { depthFields, FieldKey } from "../../quantities/bed/fields";
import { type BedForm, blankForm, textOf } from "../../quantities/bed/form";
import { pricedRates, type Rates, rateFor, rateLabel } from "../../quantities/bed/rates";
import { toCents } from "../../quantities/cents";
import { readTape } from "../../quantities/tape";
import { INCHES_PER_FOOT } from "../../quantities/units";
import type { BedLine, JobBed } from "../../sheets/job/jobBeds";
import type { JobRow } from "../../sheets/jobRows/findJobRows";
import type { ResultRole } from "../../sheets/jobRows/roles";
import { usualAssumed } from "../../sheets/jobRows/setting";
import { previewOf } from "../preview";
import type { WorkedOutBed } from "./needsOf";

/** Which column of a list is the quantity of which line of an estimate. */
const QUANTITY_OF: Readonly<Record<string, ResultRole>> = {
  stoneLine: "order",
  edging: "pieces",
  stakeLine: "stakes",
  fabric: "rolls",
  pinLine: "boxes",
  haul: "spoilLoads",
  dump: "spoilLoads",
  delivery: "deliveries",
};

/** A row of a list as a bed of the job, worked out as far as its columns go. */
export interface RowBed {
  readonly block: JobBed;
  /** The bed as a form whose inputs follow the row; with it the row gets an estimate of its own. */
  readonly follows: BedForm;
  readonly worked: WorkedOutBed | undefined;
  readonly problem: string | undefined;
}

/**
 * A bed of a list that has one bed a row. What its columns do not say takes the office's rates and starting values; a
 * quantity that is in the row is ordered as it is there. It has the price that the row shows, or none.
 *
 * @param sheet the sheet's name.
 * @param rates the office's, where the workbook has them.
 */
export function rowBed(sheet: string, row: JobRow, rates: Rates | undefined): RowBed {
  const form = formOf(row, rates);
  const preview = previewOf(form);
  const follows: BedForm = { ...form, links: linksOf(row, form) };
  const price = row.quantities.price;
  const base = {
    sheet,
    area: { row: row.row, column: 0, rows: 1, columns: 1 },
    name: form.name,
    form,
    price: price === undefined ? undefined : toCents(price) / 100,
    salesTax: 0,
    samples: rates && price !== undefined ? samplesOf(rates, textOf(form, "stone")) : [],
  };
  if (!preview.estimate)
    return { block: { ...base, lines: [] }, follows, worked: undefined, problem: preview.problems[0]?.message };
  const { bed, plan, estimate } = preview;
  const lines = estimate.lines.map(({ key, label, unit, amount, unitCost, kind }): BedLine => {
    const role = QUANTITY_OF[key];
    const quantity = (role && row.quantities[role]) ?? amount;
    return { key, label, unit, quantity, unitCost, kind, typed: false };
  });
  return { block: { ...base, lines }, follows, worked: { bed, plan, estimate }, problem: undefined };
}

/** A row's price rests on the rates of the workbook, so on those that are still samples. */
function samplesOf(rates: Rates, stone: string): string[] {
  return pricedRates.flatMap((key) => {
    const rate = rateFor(rates, key, stone);
    return rate.problem === undefined && rate.isExample ? [rateLabel(key)] : [];
  });
}

function formOf({ job, bed, stone, measured, quantities }: JobRow, rates: Rates | undefined): BedForm {
  const name = [job, bed].filter(Boolean).join(", ");
  const base: BedForm = { ...blankForm(), name, ...(rates && { rates }) };
  const length = withInches(measured.length, measured.lengthInches);
  const width = withInches(measured.width, measured.widthInches);
  const isRectangle = length !== undefined && width !== undefined;
  const shape: Partial<Record<FieldKey, number | undefined>> = isRectangle
    ? { length, width, cornerRadius: measured.radius, roundedCorners: measured.corners }
    : { area: quantities.area, edge: quantities.border, longest: length, widest: width };
  const given: Partial<Record<FieldKey, number | undefined>> = {
    ...shape,
    waste: measured.waste,
    scrapeDepth: measured.scrape,
    borderHeight: measured.depth === undefined ? undefined : borderFor(measured.depth, base),
  };
  const typed = Object.entries(given).flatMap(([key, value]) => (value === undefined ? [] : [[key, String(value)]]));
  const form: BedForm = {
    ...base,
    way: isRectangle ? "rectangle" : "area",
    typed: { ...Object.fromEntries(typed), ...(stone && { stone }) },
  };
  return isRectangle ? withSides(form, quantities.border) : form;
}

/** How near two runs of edging are the same, in feet: a column may show hundredths. */
const SAME_RUN_FT = 0.01;
const COUNTS = [0, 1, 2];

/**
 * A rectangle with edging along as many long and short sides as the list's formulas count: those that come to what the
 * row shows, or those that lists start with, where it shows nothing or something that was typed.
 */
function withSides(form: BedForm, borderFt: number | undefined): BedForm {
  const along = (long: number, short: number): BedForm => ({
    ...form,
    typed: { ...form.typed, longBorders: String(long), shortBorders: String(short) },
  });
  const usual = along(usualAssumed.longBorders, usualAssumed.shortBorders);
  if (borderFt === undefined) return usual;
  const others = COUNTS.flatMap((long) => COUNTS.map((short) => along(long, short)));
  const comesTo = (one: BedForm) => previewOf(one).estimate?.amounts.borderRun ?? Number.NaN;
  return [usual, ...others].find((one) => Math.abs(comesTo(one) - borderFt) < SAME_RUN_FT) ?? usual;
}

/** The row's cells behind the inputs of its form. */
function linksOf({ formulas }: JobRow, form: BedForm): Record<string, string> {
  const withInchesOf = (feet: string | undefined, inches: string | undefined) =>
    feet && (inches ? `(${feet}+${inches}/${INCHES_PER_FOOT})` : feet);
  const length = withInchesOf(formulas.length, formulas.lengthInches);
  const width = withInchesOf(formulas.width, formulas.widthInches);
  const shape =
    form.way === "rectangle"
      ? { length, width, cornerRadius: formulas.radius, roundedCorners: formulas.corners }
      : { area: formulas.area, edge: formulas.border, longest: length, widest: width };
  const given = {
    ...shape,
    waste: formulas.waste,
    scrapeDepth: formulas.scrape,
    borderHeight: formulas.depth && `(${formulas.depth}+${borderFor(0, form)})`,
    stone: formulas.stone,
  };
  return Object.fromEntries(Object.entries(given).flatMap(([key, formula]) => (formula ? [[key, formula]] : [])));
}

/** A border as high as a depth of stone asks for: the trench below the scrape and the gap below its top come on top. */
function borderFor(depthIn: number, form: BedForm): number {
  const inches = (key: keyof typeof depthFields) => readTape(textOf(form, key), "in");
  return depthIn + inches("trenchDepth") + inches("topGap");
}

function withInches(feet: number | undefined, inches: number | undefined): number | undefined {
  return feet === undefined ? undefined : feet + (inches ?? 0) / INCHES_PER_FOOT;
}
