import { currentText } from "../../quantities/bed/olderTexts";
import { type JobPriceKey, jobLines, jobPrice } from "../../quantities/job/jobAmounts";
import { type Anchor, type Area, areaIn } from "../../spreadsheet/areas";
import { BLOCK_TITLE } from "../estimate/headings";
import { columnsOf, FIRST_BED } from "./jobBlock";
import { CHOSEN_LABEL, JOB_TITLE, jobHeadings, OPTION_LABEL, SAMPLE_WORDS } from "./jobHeadings";

/** A line of a job as its block shows it now. */
export interface JobLineShown {
  readonly label: string;
  readonly quantity: number;
  readonly unit: string;
  /** Before markup; undefined where the cell holds no number. */
  readonly unitCost: number | undefined;
  readonly price: number | undefined;
  readonly kind: string;
  /** Above the standard lines: work that comes first. */
  readonly comesFirst: boolean;
  /** One of the standard lines, whatever its quantity. */
  readonly isStandard: boolean;
  /** It follows a line that was added to a bed's own block. */
  readonly isLinked: boolean;
  /** The quantity was typed over its formula. */
  readonly isTyped: boolean;
}

/** A job block that was found in a workbook. */
export interface JobOnSheet {
  readonly sheet: string;
  readonly area: Area;
  readonly name: string;
  /** The cells of the beds' names, in the beds' own blocks. */
  readonly beds: readonly { readonly sheet: string; readonly cell: Anchor; readonly price: number | undefined }[];
  readonly lines: readonly JobLineShown[];
  /** How many of its standard lines have another name than the product gave them. */
  readonly renamed: number;
  /** What the price part shows; undefined for a cell without a number. */
  readonly amounts: Readonly<Partial<Record<JobPriceKey, number>>>;
  /** Which version of the job it is, what sets it apart, and whether it is the chosen one. */
  readonly option: string;
  readonly differs: string;
  readonly isChosen: boolean;
}

/** What is read of a sheet's used range. */
interface UsedCells extends Anchor {
  readonly values: readonly (readonly unknown[])[];
  readonly formulas: readonly (readonly unknown[])[];
}

type Row = readonly unknown[];
/** Labels of the standard lines; those of a kind of stone, edging, or fabric begin so. */
const STANDARD = jobLines({ stone: 1, edging: 1, fabric: 1 }).map(
  ({ label }) => /^="([^"]*)"/.exec(label)?.[1] ?? label,
);
const FIRST_LINE = STANDARD[0];
/** The column of the beds' prices. */
const PRICE = 4;
/** A line that follows a bed's block has nothing but the place of a cell there. */
export const ELSEWHERE = /^=(?:'(?:[^']|'')*'|[\w.]+)!\$?[A-Z]{1,3}\$?\d+$/i;
/** The name of a bed follows its block: `=IF('Front walk'!B1="",…`. */
const NAME_FORMULA = /^=IF\(((?:(?:'(?:[^']|'')*'|[\w.]+)!)?\$?[A-Z]{1,3}\$?\d+)=/i;

/**
 * Every job block of a sheet, with what it shows.
 *
 * @param sheet its name; @param used what is used of it.
 */
export function findJobBlocks(sheet: string, used: UsedCells): JobOnSheet[] {
  const startsOf = (title: string) =>
    used.values.flatMap((cells, row) =>
      cells.flatMap((content, column) => (content === title ? [{ row, column }] : [])),
    );
  const titles = startsOf(JOB_TITLE);
  // Beds of its own are below it.
  const starts = [...titles, ...startsOf(BLOCK_TITLE)].sort((one, other) => one.row - other.row);
  return titles.flatMap(({ row, column }) => {
    const next = starts.find((other) => other.column === column && other.row > row);
    const cut = (cells: readonly Row[]) => cells.slice(row, next?.row).map((all) => all.slice(column));
    const [values, formulas] = [cut(used.values), cut(used.formulas)];
    const part = jobParts(values);
    const beds = part(jobHeadings.beds);
    const lines = part(jobHeadings.lines);
    if (!beds || !lines) return [];
    const places = bedPlaces(sheet, values, formulas);
    const headOf = (label: string) => values.slice(0, beds.first).find(([first]) => first === label);
    const rows = values.findLastIndex(([label]) => text(label) !== "") + 1;
    return {
      sheet,
      area: {
        row: used.row + row,
        column: used.column + column,
        rows,
        columns: columnsOf(Math.max(places.length, wordsOf(values, formulas).length)),
      },
      name: text(values[0]?.[1]),
      beds: places.flatMap(({ at, price }) => (at ? [{ ...at, price }] : [])),
      ...linesIn(values, formulas, lines),
      amounts: amountsIn(values, part(jobHeadings.price)),
      option: text(headOf(OPTION_LABEL)?.[1]),
      differs: text(headOf(OPTION_LABEL)?.[4]),
      isChosen: /^\s*yes\s*$/i.test(text(headOf(CHOSEN_LABEL)?.[1])),
    };
  });
}

interface Rows {
  readonly first: number;
  readonly end: number;
}

/** Where the rows of a part are: below its heading, up to a blank row or a row of sums. */
export function jobParts(values: readonly Row[]): (heading: string) => Rows | undefined {
  return (heading) => {
    // The head of the block says "Price", too.
    const at = values.findIndex(([label], row) => row > 4 && label === heading);
    if (at < 0) return undefined;
    const ends = ["All beds", "Totals"];
    const length = values.slice(at + 1).findIndex((cells) => {
      const label = currentText(text(cells[0]));
      return ends.includes(label) || (heading === jobHeadings.price && AFTER_PRICE.includes(label));
    });
    return { first: at + 1, end: length < 0 ? values.length : at + 1 + length };
  };
}

/** A cell of another block, which a job follows. */
export interface PlaceElsewhere {
  readonly sheet: string;
  readonly cell: Anchor;
}

/**
 * The cells of beds' own blocks that a job's table of beds follows, a row a bed.
 *
 * @param own the job's sheet; @param values what its block shows, from its title on; @param formulas what is behind it.
 * @returns no place for a bed whose block is gone.
 */
export function bedPlaces(
  own: string,
  values: readonly Row[],
  formulas: readonly Row[],
): { readonly at: PlaceElsewhere | undefined; readonly price: number | undefined }[] {
  const part = jobParts(values)(jobHeadings.beds);
  if (!part) return [];
  // The name may be typed over; what the bed says of its prices is further down.
  const words = wordsOf(values, formulas);
  const isBed = (index: number) => isFormula(formulas[index]?.[PRICE]);
  const rows = Array.from({ length: part.end - part.first }, (_, index) => part.first + index).filter(isBed);
  return rows.map((row, index) => {
    const name = NAME_FORMULA.exec(text(formulas[row]?.[0]))?.[1];
    return { at: placeIn(name ?? text(words[index]).slice(1), own), price: number(values[row]?.[PRICE]) };
  });
}

/** What the columns of a job's working say of prices: the beds', and those of their second edgings. */
function wordsOf(values: readonly Row[], formulas: readonly Row[]): Row {
  const words = formulas[values.findLastIndex(([label]) => label === SAMPLE_WORDS)]?.slice(FIRST_BED) ?? [];
  return words.slice(0, words.findLastIndex((content) => text(content) !== "") + 1);
}

/** The cell that a reference names, on its sheet; undefined for what is no reference to one. */
export function placeIn(reference: string, own: string): PlaceElsewhere | undefined {
  const cut = reference.lastIndexOf("!");
  const cell = areaIn(reference.slice(cut + 1));
  if (!cell) return undefined;
  const sheet = cut < 0 ? own : reference.slice(0, cut).replace(/^'|'$/g, "").replaceAll("''", "'");
  return { sheet, cell };
}

function linesIn(
  values: readonly Row[],
  formulas: readonly Row[],
  { first, end }: Rows,
): Pick<JobOnSheet, "lines" | "renamed"> {
  let renamed = 0;
  const labels = values.slice(first, end).map(([label]) => text(label));
  const from = labels.indexOf(FIRST_LINE ?? "");
  const lines = values.slice(first, end).flatMap((cells, index): JobLineShown[] => {
    const [label, quantity, unit, unitCost, , , , price, kind] = cells;
    if (typeof quantity !== "number") return [];
    const formula = formulas[first + index]?.[1];
    const hasName = STANDARD.some((standard) =>
      standard.endsWith(" ") ? text(label).startsWith(standard) : label === standard,
    );
    // A standard line that was renamed still works its quantity out.
    const isRenamed = !hasName && isFormula(formula) && !ELSEWHERE.test(text(formula));
    if (isRenamed) renamed += 1;
    const isStandard = hasName || isRenamed;
    return [
      {
        label: text(label),
        quantity,
        unit: text(unit),
        unitCost: number(unitCost),
        price: number(price),
        kind: text(kind),
        comesFirst: index < from,
        isStandard,
        isLinked: ELSEWHERE.test(text(formula)),
        isTyped: !isFormula(formula),
      },
    ];
  });
  return { lines, renamed };
}

function amountsIn(values: readonly Row[], part: Rows | undefined): JobOnSheet["amounts"] {
  if (!part) return {};
  const rows = values.slice(part.first, part.end);
  return Object.fromEntries(
    Object.entries(jobPrice).flatMap(([key, { label }]) => {
      const shown = number(rows.findLast(([first]) => first === label)?.[1]);
      return shown === undefined ? [] : [[key, shown]];
    }),
  );
}

/** Headings of what may follow the price. */
const AFTER_PRICE: readonly string[] = [jobHeadings.options, jobHeadings.cautions];

const isFormula = (content: unknown) => typeof content === "string" && content.startsWith("=");
const number = (content: unknown) => (typeof content === "number" && Number.isFinite(content) ? content : undefined);
const text = (content: unknown) => (content === null || content === undefined ? "" : String(content));
