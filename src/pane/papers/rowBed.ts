import type { WorkedOutBed } from "../../layout/planOfEstimate";
import type { FieldKey } from "../../quantities/bed/fields";
import { type BedForm, blankForm, edgingOf, soldByIn, textOf } from "../../quantities/bed/form";
import { pricedRates, type Rates, rateFor, rateLabel } from "../../quantities/bed/rates";
import { toCents } from "../../quantities/cents";
import { edgingKindOf, hasPieces } from "../../quantities/edgingKinds";
import { soldByOf, TON } from "../../quantities/soldBy";
import { readTape } from "../../quantities/tape";
import { INCHES_PER_FOOT } from "../../quantities/units";
import type { BedLine, JobBed } from "../../sheets/job/jobBeds";
import type { JobRow } from "../../sheets/jobRows/findJobRows";
import { productLists, productNames, productRole, productTrouble } from "../../sheets/jobRows/products";
import { type ResultRole, roleLabel } from "../../sheets/jobRows/roles";
import { usualAssumed } from "../../sheets/jobRows/setting";
import { amountText } from "../numbers";
import { type Preview, previewOf } from "../preview";
import { typedLines } from "./needsOf";

/** Which column of a list is the quantity of which line of an estimate. */
const QUANTITY_OF: Readonly<Record<string, ResultRole>> = {
  stoneLine: "order",
  edging: "pieces",
  stakeLine: "stakes",
  sandLine: "sand",
  fabric: "rolls",
  pinLine: "boxes",
  haul: "spoilLoads",
  dump: "spoilLoads",
  delivery: "deliveries",
};

/** The same for a row whose stone is sold otherwise than by the ton: its tons are no order. */
const quantityRoles = ({ soldBy }: JobRow): typeof QUANTITY_OF =>
  soldByOf(soldBy) === TON ? QUANTITY_OF : { ...QUANTITY_OF, stoneLine: "orderSold" };

/** A row of a list as a bed of the job, worked out as far as its columns go. */
export interface RowBed {
  readonly block: JobBed;
  /** The bed as a form whose inputs follow the row; with it the row gets an estimate of its own. */
  readonly follows: BedForm;
  readonly worked: WorkedOutBed | undefined;
  readonly problem: string | undefined;
  /** What the row says otherwise than its measurements do, and which of the two counts. */
  readonly notes: readonly string[];
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
  const links = linksOf(row, form);
  const price = row.quantities.price;
  const base = {
    sheet,
    area: { row: row.row, column: 0, rows: 1, columns: 1 },
    name: form.name,
    form,
    price: price === undefined ? undefined : toCents(price) / 100,
    salesTax: 0,
    samples: rates && price !== undefined ? samplesOf(rates, form) : [],
  };
  const unknown = unknownProduct(row, rates);
  if (!preview.estimate || unknown) {
    const problem = unknown ?? preview.problems[0]?.message;
    return { block: { ...base, lines: [] }, follows: { ...form, links }, worked: undefined, problem, notes: [] };
  }
  const { bed, plan, estimate } = preview;
  const roles = quantityRoles(row);
  const lines = estimate.lines.map(({ key, label, unit, amount, unitCost, kind }): BedLine => {
    const role = roles[key];
    const quantity = (role && row.quantities[role]) ?? amount;
    return { key, label, unit, quantity, unitCost, kind, typed: false };
  });
  const block = { ...base, lines };
  const typed = typedLines(block, estimate).flatMap(({ line, quantity }) =>
    quantity === undefined ? [] : [[line, quantity] as const],
  );
  return {
    block,
    follows: { ...form, links, ...(typed.length > 0 && { quantities: Object.fromEntries(typed) }) },
    worked: { bed, plan, estimate },
    problem: undefined,
    notes: notesOf(row, preview),
  };
}

/** What is wrong with the name of a row's product; undefined where nothing is. */
function unknownProduct(row: JobRow, rates: Rates | undefined): string | undefined {
  const names = productNames(rates);
  const troubles = productLists.map((list) => productTrouble(list, row[productRole(list)] ?? "", names[list] ?? []));
  return troubles.find((trouble) => trouble !== undefined);
}

/** Where the row and the estimate of its measurements differ, in words: nothing of it is a surprise in what is written. */
function notesOf(row: JobRow, { form, estimate }: Preview): string[] {
  if (!estimate) return [];
  const { quantities, measured } = row;
  const { amounts } = estimate;
  const isByArea = form.way === "area" && measured.length !== undefined && measured.width !== undefined;
  const own: Partial<Record<ResultRole, number>> = {
    border: amounts.borderRun,
    pieces: amounts.pieces,
    stakes: amounts.extraStakes,
    sand: amounts.sandOrder,
    orderSold: amounts.stoneOrder,
    order: amounts.orderTons,
    rolls: amounts.rolls,
    pins: amounts.pins,
    boxes: amounts.pinBoxes,
    spoilLoads: amounts.spoilLoads,
    deliveries: amounts.deliveries,
  };
  const counts = Object.values(quantityRoles(row));
  const differ = Object.entries(own).flatMap(([key, calculated]) => {
    const role = key as ResultRole;
    const shown = quantities[role];
    if (shown === undefined || Math.abs(shown - calculated) < SAME_RUN_FT) return [];
    const used = counts.includes(role) ? ", and the row's is used" : "";
    return [`${roleLabel(role)}: ${amountText(shown)} in the row, ${amountText(calculated)} calculated${used}.`];
  });
  const edging = `${amountText(quantities.border ?? 0)} lin ft of edging fits no sides of the bed`;
  return [...(isByArea ? [`${edging}, so it's estimated by area and edging, without a drawing.`] : []), ...differ];
}

/** A row's price rests on the rates of the workbook, so on those that are still samples. */
function samplesOf(rates: Rates, form: BedForm): string[] {
  return pricedRates.flatMap((key) => {
    const rate = rateFor(rates, key, textOf(form, "stone"), soldByIn(form));
    return rate?.problem === undefined && rate?.isExample ? [rateLabel(key)] : [];
  });
}

function formOf(row: JobRow, rates: Rates | undefined): BedForm {
  const { job, bed, stone, edgingKind, edgingProduct, fabricProduct, soldBy, measured, quantities } = row;
  const name = [job, bed].filter(Boolean).join(", ");
  const typedNames = {
    ...(edgingKind && { edgingKind }),
    // A cut edge, or none, is bought from no list.
    ...(edgingProduct && hasPieces(edgingKindOf(edgingKind)) && { edgingProduct }),
    ...(fabricProduct && { fabricProduct }),
  };
  const base: BedForm = { ...blankForm(), name, ...(rates && { rates }), typed: typedNames };
  const length = withInches(measured.length, measured.lengthInches);
  const width = withInches(measured.width, measured.widthInches);
  const isRectangle = length !== undefined && width !== undefined;
  const shape: Partial<Record<FieldKey, number | undefined>> = isRectangle
    ? { length, width, cornerRadius: measured.radius, roundedCorners: measured.corners }
    : { area: quantities.area, edge: quantities.border, longest: length, widest: width };
  const given: Partial<Record<FieldKey, number | undefined>> = {
    ...shape,
    waste: measured.waste,
    ...depthsOf(measured, base),
  };
  const typed = Object.entries(given).flatMap(([key, value]) => (value === undefined ? [] : [[key, String(value)]]));
  const form: BedForm = {
    ...base,
    way: isRectangle ? "rectangle" : "area",
    // A list is in tons where it doesn't say otherwise, whatever its stone is usually sold by.
    typed: { ...base.typed, ...Object.fromEntries(typed), ...(stone && { stone }), soldBy: soldBy ?? TON.name },
  };
  if (!isRectangle) return form;
  return alongSides(form, length, width, quantities.border) ?? byArea(form, quantities, length * width);
}

/** How near two runs of edging are the same, in feet: a column may show hundredths. */
const SAME_RUN_FT = 0.01;
/** How near a run is still that of whole sides: lists round to feet. */
const ROUNDED_RUN_FT = 0.5;
const COUNTS = [0, 1, 2];

/**
 * A rectangle with edging along as many long and short sides as the list's formulas count: those that come to what the
 * row shows, or those that lists start with, where it shows nothing. Undefined where no sides come to it.
 */
function alongSides(form: BedForm, length: number, width: number, borderFt: number | undefined): BedForm | undefined {
  const along = (long: number, short: number): BedForm => ({
    ...form,
    typed: { ...form.typed, longBorders: String(long), shortBorders: String(short) },
  });
  const usual = [usualAssumed.longBorders, usualAssumed.shortBorders] as const;
  if (borderFt === undefined) return along(...usual);
  const isRounded = Number(form.typed.cornerRadius ?? 0) > 0 && Number(form.typed.roundedCorners ?? 0) > 0;
  const runOf = (long: number, short: number) =>
    isRounded
      ? (previewOf(along(long, short)).estimate?.amounts.borderRun ?? Number.POSITIVE_INFINITY)
      : long * Math.max(length, width) + short * Math.min(length, width);
  const all = [usual, ...COUNTS.flatMap((long) => COUNTS.map((short) => [long, short] as const))];
  const offs = all.map((sides) => ({ sides, off: Math.abs(runOf(...sides) - borderFt) }));
  const nearest = offs.find(({ off }) => off < SAME_RUN_FT) ?? offs.reduce((a, b) => (b.off < a.off ? b : a));
  return nearest.off <= ROUNDED_RUN_FT ? along(...nearest.sides) : undefined;
}

/**
 * A bed by its area and edging, where the edging was typed and runs along no whole sides: counted by the rule that the
 * list's formulas have for it, with as many corners as come to the row's stakes.
 */
function byArea(form: BedForm, { area, border, stakes }: JobRow["quantities"], sidesSqFt: number): BedForm {
  const { length = "", width = "", cornerRadius: _, roundedCorners: __, ...typed } = form.typed;
  const cornered = (corners: number): BedForm => ({
    ...form,
    way: "area",
    typed: {
      ...typed,
      area: String(area ?? sidesSqFt),
      edge: String(border),
      longest: length,
      widest: width,
      corners: String(corners),
    },
  });
  const usual = usualAssumed.longBorders * usualAssumed.shortBorders;
  const all = [usual, 0, 1, 3, 4].map(cornered);
  const fits = (one: BedForm) => previewOf(one).estimate?.amounts.extraStakes === stakes;
  return all.find(fits) ?? cornered(usual);
}

/** The row's cells behind the inputs of its form. */
function linksOf({ formulas }: JobRow, form: BedForm): Record<string, string> {
  const withInchesOf = (feet: string | undefined, inches: string | undefined) =>
    feet && (inches ? `(${feet}+${inches}/${INCHES_PER_FOOT})` : feet);
  const length = withInchesOf(formulas.length, formulas.lengthInches);
  const width = withInchesOf(formulas.width, formulas.widthInches);
  const ofSides = length && width && `BED.AREA_RECTANGLE(${length},${width})`;
  const shape =
    form.way === "rectangle"
      ? { length, width, cornerRadius: formulas.radius, roundedCorners: formulas.corners }
      : { area: formulas.area ?? ofSides, edge: formulas.border, longest: length, widest: width };
  const given = {
    ...shape,
    waste: formulas.waste,
    ...depthLinks(formulas, form),
    stone: formulas.stone,
    fabricProduct: formulas.fabricProduct,
    ...(hasTop(form) && { edgingProduct: formulas.edgingProduct }),
  };
  return Object.fromEntries(Object.entries(given).flatMap(([key, formula]) => (formula ? [[key, formula]] : [])));
}

type Depths = Partial<Record<FieldKey, number | undefined>>;

/**
 * The inputs that give a row's depth of stone and its scrape: an edge as high as that asks for, or, where none stands above
 * the ground, a scrape that deep with the gap on top, or the gap that both leave.
 */
function depthsOf({ depth, scrape }: JobRow["measured"], form: BedForm): Depths {
  if (hasTop(form) || depth === undefined)
    return { scrapeDepth: scrape, borderHeight: depth === undefined ? undefined : depth + aboveStone(form) };
  return isDeeper(scrape, depth)
    ? { scrapeDepth: scrape, topGap: scrape - depth }
    : { scrapeDepth: depth + aboveStone(form) };
}

/** The same as formulas on the row's cells. */
function depthLinks({ depth, scrape }: JobRow["formulas"], form: BedForm): Record<string, string | undefined> {
  if (hasTop(form) || !depth) return { scrapeDepth: scrape, borderHeight: depth && `(${depth}+${aboveStone(form)})` };
  return form.typed.topGap === undefined
    ? { scrapeDepth: `(${depth}+${aboveStone(form)})` }
    : { scrapeDepth: scrape, topGap: `(${scrape}-${depth})` };
}

const hasTop = (form: BedForm): boolean => hasPieces(edgingOf(form));
const isDeeper = (scrape: number | undefined, depth: number): scrape is number =>
  scrape !== undefined && scrape >= depth;

/**
 * What of an edge isn't beside stone: the gap below its top, and what is in the trench below the scrape. Sand under it lifts
 * it.
 */
function aboveStone(form: BedForm): number {
  const inches = (key: FieldKey) => readTape(textOf(form, key), "in");
  if (!hasTop(form)) return inches("topGap");
  return inches("trenchDepth") + inches("topGap") - (edgingOf(form).inSand ? inches("sandDepth") : 0);
}

function withInches(feet: number | undefined, inches: number | undefined): number | undefined {
  return feet === undefined ? undefined : feet + (inches ?? 0) / INCHES_PER_FOOT;
}
