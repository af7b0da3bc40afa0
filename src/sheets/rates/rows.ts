import { quoted } from "../../quantities/bed/evaluate";
import { type Field, type FieldKey, fields } from "../../quantities/bed/fields";
import { isPriced, type RateKey, rateLabel, rateNames, SAMPLE } from "../../quantities/bed/rates";
import { readNumber, readShare } from "../../quantities/numberText";
import type { DraftCell, DraftRow } from "../compose";
import { isLength, usableNumber, whatIsWrong } from "../estimate/rateFormulas";
import type { OfficeRates } from "../office/officeFile";
import type { FormatName } from "../plan";
import { typed } from "../typed";

export const OWN = "own";
/** What is offered in the column that says whose a rate is; it may be typed over with it. */
const MARKS = [SAMPLE, OWN] as const;

/**
 * A rate's row: what it is called, its cell, its unit, whose it is, what it started with, and a note.
 *
 * @param loaded the office's own rates; what they lack starts as in any sheet.
 */
export function rateRow(key: RateKey, note: string, loaded?: OfficeRates): DraftRow {
  const field: Field = fields[key];
  const start = startingContent(field);
  const format = formatOf(field);
  const own = loaded?.values[rateNames[key]];
  const mark = isPriced(key) && own !== undefined && markOf(own, start, loaded?.samples.includes(rateNames[key]));
  return {
    cells: [
      { content: rateLabel(key), look: "label" },
      { content: typeof own === "string" ? typed(own) : (own ?? start), key, format, look: "input" },
      { content: field.unit, look: "note" },
      whoseCell(key, mark || `=${whose(key, field)}`),
      { content: start, key: startKey(key), format, look: "aside" },
      undefined,
      { content: note, look: "note" },
    ],
  };
}

/** The keys of the cells beside a rate: whose it is, and what it started with. */
export const whoseKey = (key: string) => `${key}.whose`;
export const startKey = (key: string) => `${key}.start`;

/** The cell that says whose a rate is, or what is wrong with it; it stands out then. */
export function whoseCell(key: string, content: string): DraftCell {
  return { content, key: whoseKey(key), look: "note", choices: MARKS, warnWhen: '=ISNUMBER(SEARCH("rate ",{self}))' };
}

/**
 * What the cell has to say whose a price is, where the formula there would say otherwise; "" where it wouldn't.
 *
 * @param start what the formula compares the price with.
 */
export function markOf(price: string | number, start: string | number, isSample = false): string {
  return (price === start) === isSample ? "" : isSample ? SAMPLE : OWN;
}

/** What a rate starts with: invented prices, and usual sizes and shares. */
export function startingContent({ reads, initial }: Field): string | number {
  if (reads === "share") return readShare(initial, "share");
  return reads === "number" || reads === "whole" ? readNumber(initial, "rate") : typed(initial);
}

/** The same for a field of a list's sample row; "" for one that the row leaves blank. */
export const sampleContent = (key: FieldKey, initial: string | undefined): string | number =>
  initial === undefined ? "" : startingContent({ ...fields[key], initial });

export function formatOf({ reads, unit }: Field): FormatName {
  if (reads === "share") return "share";
  return unit.startsWith("per ") ? "money" : "general";
}

/** A price that is still what it started with is an example; a size may well be the office's own. */
function whose(key: RateKey, field: Field): string {
  const started = isPriced(key) ? SAMPLE : "default";
  const known = `IF({${key}}={${startKey(key)}},${quoted(started)},${quoted(OWN)})`;
  return whoseOrWrong(field, key, known);
}

/** Whose a rate is, or what is wrong with its cell. */
export function whoseOrWrong(field: Field, key: string, known: string): string {
  return `IF(${isUsable(field, `{${key}}`)},${known},${whatIsWrong(field, `{${key}}`)})`;
}

/** Whose the price of a row of a list is: a sample as long as the row started with it. */
export const whoseInList = (price: string, start: string): string =>
  `IF(IF(LEN(${start})=0,FALSE,${price}=${start}),${quoted(SAMPLE)},${quoted(OWN)})`;

/** The cells of a row of a list that say whether it's one, and all names of the list. */
interface NamedRow {
  readonly name: string;
  readonly names: string;
  readonly price: string;
  /** What a price without a name is said to lack. */
  readonly lacks: string;
}

/** What is wrong with the name of a row, or `known`: a price has one, and the list has it once. */
export function namedOrWrong({ name, names, price, lacks }: NamedRow, known: string): string {
  return (
    `IF(LEN(${name})=0,IF(LEN(${price})=0,"",${quoted(`rate has no ${lacks} beside it`)}),` +
    `IF(EXACT(${name},TRIM(${name})),IF(COUNTIF(${names},${name})>1,"listed twice; the first counts",${known}),` +
    `"name has spaces around it"))`
  );
}

/** What is wrong with a cell of a row that may be blank, after its field's label; `otherwise` where nothing is. */
export function ifFilledWrong(field: Field, cell: string, otherwise: string): string {
  const isFine = `IF(IFERROR(LEN(${cell})=0,FALSE),TRUE,${isUsable(field, cell)})`;
  return `IF(${isFine},${otherwise},${quoted(`${field.label}: `)}&${whatIsWrong(field, cell)})`;
}

/** The condition under which a cell is usable, which is never in error itself. */
export function isUsable(field: Field, cell: string): string {
  if (!isLength(field)) return `IFERROR(${usableNumber(field, cell)},FALSE)`;
  const read = `${field.reads === "feet" ? "BED.FEET" : "BED.INCHES"}(${cell})`;
  return field.mayBeZero ? `IFERROR(AND(LEN(${cell})>0,${read}>=0),FALSE)` : `ISNUMBER(1/${read})`;
}

/** A heading across the sheet, with what its columns hold. */
export function headingRow(heading: string, ...columns: readonly string[]): DraftRow {
  const words = ["Unit", "Source", "Sold by", "Note", "Quoted by", "Quoted on", ""];
  const cells = columns.map(
    (content): DraftCell => ({ content, look: words.includes(content) ? "textHeading" : "numberHeading" }),
  );
  return { look: "section", cells: [{ content: heading }, ...cells] };
}
