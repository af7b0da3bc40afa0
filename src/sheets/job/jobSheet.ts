import type { FieldKey } from "../../quantities/bed/fields";
import { fields } from "../../quantities/bed/fields";
import type { BedForm } from "../../quantities/bed/form";
import { lines } from "../../quantities/bed/lines";
import { edgingFieldKeys } from "../../quantities/edgingKinds";
import type { Kinds } from "../../quantities/job/jobAmounts";
import { must } from "../../quantities/must";
import { soldByFieldKeys } from "../../quantities/soldBy";
import { type Anchor, type Area, areaIn, cellAddress } from "../../spreadsheet/areas";
import { keyAddresses } from "../compose";
import { estimateBlock, estimateRows } from "../estimate/block";
import { BLOCK_COLUMNS } from "../estimate/readBlock";
import type { Plan } from "../plan";
import { inSheet } from "./bedCells";
import { type JobHead, jobBlock, jobRows } from "./jobBlock";
import type { SheetBed } from "./sheetBed";

/** A job of beds that have blocks elsewhere, and of forms whose blocks come below it on its own sheet. */
export interface JobWithBeds extends JobHead {
  readonly beds: readonly (SheetBed | BedForm)[];
  readonly kinds: Kinds;
}

/**
 * The estimate of a job, and below it the blocks of its beds that have none: for another version of a job, and for beds
 * that are rows of a list.
 *
 * @param at the first cell; the plan is for a sheet of its own.
 */
export function jobSheet(job: JobWithBeds, at: Anchor): Plan {
  // How many rows the job has doesn't depend on where its beds are.
  const first = jobRows({ ...job, beds: placed(job.beds, at) }).length + 1;
  const beds = placed(job.beds, { ...at, row: at.row + first });
  const blocks = beds.filter(({ sheet }) => sheet === "").map(({ form, area }) => estimateBlock(form, area));
  return stacked(jobBlock({ ...job, beds }, at), blocks, first);
}

function placed(beds: JobWithBeds["beds"], at: Anchor): SheetBed[] {
  const below = bedsBelow(
    beds.flatMap((bed) => ("cells" in bed ? [] : bed)),
    at,
  );
  return beds.map((bed) => ("cells" in bed ? bed : must(below.shift())));
}

/** Beds one below the other, a row apart. */
function bedsBelow(forms: readonly BedForm[], at: Anchor): SheetBed[] {
  let { row } = at;
  return forms.map((form) => {
    const bed = bedAt(form, "", { row, column: at.column });
    row += bed.area.rows + 1;
    return bed;
  });
}

/** A bed as its estimate will be on a sheet, once it is written there. */
export function bedAt(form: BedForm, sheet: string, { row, column }: Anchor): SheetBed {
  const rows = estimateRows(form);
  const area: Area = { row, column, rows: rows.length, columns: BLOCK_COLUMNS };
  const cells = new Map([...keyAddresses(rows, area)].map(([key, address]) => [key, must(areaIn(address))] as const));
  return { sheet, area, name: form.name.trim(), form, cells, own: [] };
}

/** One plan of several, each beginning where the one before has ended and a row is left blank. */
function stacked(top: Plan, below: readonly Plan[], first: number): Plan {
  const all = [top, ...below];
  let start = 0;
  const starts = all.map(({ rows }, index) => {
    const from = index === 0 ? 0 : start;
    start = index === 0 ? first : from + rows + 1;
    return from;
  });
  const columns = Math.max(...all.map((plan) => plan.columns));
  const rows = must(starts.at(-1)) + must(all.at(-1)).rows;
  const table = <T>(part: (plan: Plan) => readonly (readonly T[])[], blank: T): T[][] => {
    const cells = Array.from({ length: rows }, () => Array<T>(columns).fill(blank));
    all.forEach((plan, index) => {
      part(plan).forEach((row, at) => {
        row.forEach((content, column) => {
          must(cells[must(starts[index]) + at])[column] = content;
        });
      });
    });
    return cells;
  };
  const moved = <T extends { readonly area: Area }>(part: (plan: Plan) => readonly T[]): T[] =>
    all.flatMap((plan, index) =>
      part(plan).map((one) => ({ ...one, area: { ...one.area, row: one.area.row + must(starts[index]) } })),
    );
  return {
    ...top,
    rows,
    columns,
    formulas: table(({ formulas }) => formulas, ""),
    formats: table(({ formats }) => formats, "General"),
    looks: moved(({ looks }) => looks),
    warnings: moved(({ warnings }) => warnings),
    choices: moved(({ choices }) => choices),
    widths: Array.from({ length: columns }, (_, column) => Math.max(...all.map(({ widths }) => widths[column] ?? 0))),
    ...(top.page && { page: { ...top.page, breaksAbove: [...(top.page.breaksAbove ?? []), ...starts.slice(1)] } }),
  };
}

/** Keys of the cells that hold what was taped in a list. */
const TAPED = /^(?:width\d+|point\d+(?:\.y|\.border)?|cutOut\d+\.(?:x|y|across|deep))$/;

/**
 * The form of a bed that follows another bed's block, but for what is different in it.
 *
 * @param differences what was typed in place of the other bed's, by field.
 * @example followingForm(bed, { stone: "pea gravel" }) // its length is that of the other block, whatever comes to be there
 */
export function followingForm(bed: SheetBed, differences: Readonly<Partial<Record<FieldKey, string>>>): BedForm {
  const links: Record<string, string> = {};
  for (const [key, cell] of bed.cells) {
    if (key in fields || TAPED.test(key)) links[key] = inSheet(bed.sheet) + cellAddress(cell);
  }
  for (const { key, cost } of lines) {
    const cell = bed.cells.get(`${key}.unitCost`);
    if (cell && cost !== "crewRate") links[cost] = inSheet(bed.sheet) + cellAddress(cell);
  }
  // Another stone has another price, which the office's rates or the person give.
  const own = "stone" in differences ? { ...differences, stoneCost: differences.stoneCost } : differences;
  for (const key of Object.keys(own)) delete links[key];
  // Edging of another kind has other sizes and prices.
  const others = "edgingKind" in differences ? edgingFieldKeys.filter((key) => !(key in differences)) : [];
  for (const key of others) delete links[key];
  if ("soldBy" in differences) for (const key of soldByFieldKeys) if (!(key in differences)) delete links[key];
  const kept = Object.fromEntries(Object.entries(bed.form.typed).filter(([key]) => !others.includes(key as FieldKey)));
  const { stoneCost: _, ...typed } = kept as BedForm["typed"];
  return {
    ...bed.form,
    typed: { ...("stone" in differences ? typed : kept), ...differences },
    links,
  };
}
