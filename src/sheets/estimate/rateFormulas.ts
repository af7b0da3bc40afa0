import { quoted } from "../../quantities/bed/evaluate";
import { type Field, type FieldKey, fields, MOST_SHARE } from "../../quantities/bed/fields";
import { type BedForm, followedRate, hasSingleRate } from "../../quantities/bed/form";
import { type ListKey, listFeeding, listOf, listWhose } from "../../quantities/bed/officeLists";
import {
  isPriced,
  OLD_SAMPLE,
  type RateKey,
  rateNames,
  SAMPLE,
  stoneListNames,
  whoseName,
} from "../../quantities/bed/rates";

/*
 * Formulas that read a rate by its name. A rate that is missing, blank, text or absurd gives the text "no rate",
 * with which no arithmetic works, so that it can never come to a wrong price.
 */

export const NO_RATE = "no rate";

/** The condition under which a cell holds a number that the field can take; in error for some that it cannot. */
export function usableNumber({ reads, mayBeZero, shareUnder }: Field, cell: string): string {
  const least = mayBeZero ? `${cell}>=0` : `${cell}>0`;
  const others = {
    share: [shareUnder === undefined ? `${cell}<=${MOST_SHARE}` : `${cell}<${shareUnder}`],
    whole: [`${cell}=INT(${cell})`],
  }[reads as string];
  return `AND(${[`ISNUMBER(${cell})`, least, ...(others ?? [])].join(",")})`;
}

/** What is wrong with a cell that is not usable, as a formula's part. */
export function whatIsWrong(field: Field, cell: string): string {
  const isText = isLength(field) ? "rate isn't a length" : "rate is text, not a number";
  return (
    `IF(ISERROR(${cell}),"rate is missing or has an error",` +
    `IF(ISNUMBER(${cell}),${quoted(wrongNumber(field))},IF(${cell}="","rate is blank",${quoted(isText)})))`
  );
}

function wrongNumber({ reads, mayBeZero, shareUnder }: Field): string {
  if (reads === "share") return shareUnder === undefined ? "rate is not 0% to 200%" : "rate is not 0% to under 100%";
  if (reads === "whole") return mayBeZero ? "rate isn't a whole number" : "rate isn't a whole number over 0";
  return mayBeZero ? "rate is under 0" : "rate is 0 or less";
}

export function isLength({ reads }: Field): boolean {
  return reads === "feet" || reads === "inches";
}

/** Where the cell of a field has its rate from: a row of a list that the block names, a single rate, or both in this order. */
export interface RateSource {
  readonly key: FieldKey;
  readonly list?: ListKey;
  readonly single?: RateKey;
}

/** The source of a field of a block; undefined for one that follows no rate. */
export function rateSource(form: BedForm, key: FieldKey): RateSource | undefined {
  if (!followedRate(form, key)) return undefined;
  const list = listFeeding(key);
  return {
    key,
    ...(list && form.rates?.lists?.[list] && { list }),
    ...(hasSingleRate(form, key) && { single: key }),
  };
}

/**
 * The formula of a cell that follows a rate. A length may be tape text, which the functions read and refuse.
 *
 * @param other what it follows where the list's row has nothing; left out: the single rate.
 */
export function followingFormula({ key, list, single }: RateSource, other = singleOrNone(key, single)): string {
  if (key === "stoneCost") return stonePriceFormula();
  const field: Field = fields[key];
  if (!list) return `=IFERROR(${other},${quoted(NO_RATE)})`;
  const { cell, column, has } = listed(key, list);
  const { names } = listOf(list);
  return `=IFERROR(IF(ROWS(${names})<>ROWS(${column}),${quoted(NO_RATE)},IF(${has},${usableOrNone(field, cell)},${other})),${quoted(NO_RATE)})`;
}

const singleOrNone = (key: FieldKey, single: RateKey | undefined) =>
  single ? usableOrNone(fields[key], rateNames[single]) : quoted(NO_RATE);

/** The cell of a list that a block takes for a field, in its row; and whether the block names a row that has it. */
function listed(key: FieldKey, list: ListKey) {
  const { names, columns, picks } = listOf(list);
  const column = columns[key] ?? "";
  const place = `MATCH(TRIM({${picks}}),${names},0)`;
  const cell = `INDEX(${column},${place})`;
  return { place, column, cell, has: `IFERROR(LEN(${cell})>0,FALSE)` };
}

/** What a cell that follows a rate is to be said about: what is wrong, or that its price is an example, or `otherwise`. */
export function rateRemark(source: RateSource, followed: string, example: string, otherwise: string): string {
  const { key, list, single } = source;
  if (key === "stoneCost") return stoneRemark(followed);
  const ofMark = (mark: string) => (isPriced(key) ? `IF(${isExample(mark)},${example},${otherwise})` : otherwise);
  const said = single && isPriced(single) ? ofMark(whoseName(single)) : otherwise;
  const wrong = single ? whatIsWrong(fields[key], rateNames[single]) : quoted("rate isn't in the list");
  if (!list) return `IF(ISNUMBER(${followed}),${said},${wrong})`;
  const { of, names } = listOf(list);
  const { place, cell, column, has } = listed(key, list);
  const mark = `INDEX(${listWhose(listOf(list))},${place})`;
  const saidOfAny = isPriced(key) ? `IF(${has},${ofMark(mark)},${said})` : otherwise;
  const wrongInAny = `IF(${has},${whatIsWrong(fields[key], cell)},${wrong})`;
  const isLost = `ISERROR(ROWS(${names})=ROWS(${column}))`;
  return `IF(ISNUMBER(${followed}),${saidOfAny},IF(${isLost},${quoted(`list of ${of} is missing`)},${wrongInAny}))`;
}

/** What the name of a row is to be said about: that the list doesn't have it, or `otherwise`. */
export function pickRemark(list: ListKey, otherwise: string): string {
  return `IF(${isListed(list)},${otherwise},${quoted(NOT_LISTED)})`;
}

/**
 * The condition under which the name of a row is the usual one or in its list.
 *
 * @param alsoUsual other names for the usual one.
 */
export function isListed(list: ListKey, alsoUsual: readonly string[] = []): string {
  const { names, picks } = listOf(list);
  const isUsual = [...alsoUsual, fields[picks].initial].map((name) => `TRIM({${picks}})=${quoted(name)}`);
  return `OR(${isUsual.join(",")},ISNUMBER(MATCH(TRIM({${picks}}),${names},0)))`;
}

/** What a block says of a name that its list doesn't have. */
export const NOT_LISTED = "Not in the list in Rates, so the usual rates count.";

const PARTS = 1000;

/**
 * The condition under which a typed cell still holds an sample price. It is compared as the text of a whole number,
 * which reads alike in every country, so that no price is in the formula, where it would look like a buried rate.
 */
export function isStillExample(cell: string, example: number): string {
  return `${cell}*${PARTS}&""=${quoted(String(Math.round(example * PARTS)))}`;
}

const { kinds, prices, weights, whose } = stoneListNames;
const PLACE = `MATCH(TRIM({stone}),${kinds},0)`;
const LISTED_PRICE = `INDEX(${prices},${PLACE})`;

/** A listed stone has its own price; any other, and one given by its weight, has the price of any other stone. */
function stonePriceFormula(): string {
  const none = quoted(NO_RATE);
  const price = fields.stoneCost;
  return (
    `=IFERROR(IF(ROWS(${kinds})<>ROWS(${prices}),${none},IF(ISNUMBER(${PLACE}),` +
    `${usableOrNone(price, LISTED_PRICE)},${usableOrNone(price, rateNames.stoneCost)})),${none})`
  );
}

function stoneRemark(followed: string): string {
  const [field, other] = [fields.stoneCost, rateNames.stoneCost];
  const listed = `IF(${isExample(`INDEX(${whose},${PLACE})`)},"sample price","")`;
  const any = `IF(${isExample(whoseName("stoneCost"))},"sample price, any other stone","price of any other stone")`;
  const wrong = `IF(ISNUMBER(${PLACE}),${whatIsWrong(field, LISTED_PRICE)},${whatIsWrong(field, other)})`;
  return `IF(ISNUMBER(${followed}),IF(ISNUMBER(${PLACE}),${listed},${any}),IF(ISERROR(ROWS(${kinds})=ROWS(${prices})),"list of stone is missing",${wrong}))`;
}

/** What the stone weighs: as the office weighed it, else by the table of common stone. */
export function stoneWeightFormula(): string {
  const [weight, table] = [`INDEX(${weights},${PLACE})`, "BED.STONE_DENSITY({stone})"];
  const isWhole = `IFERROR(ROWS(${weights})=ROWS(${kinds}),FALSE)`;
  return `=IF(${isWhole},IF(IFERROR(LEN(${weight})>0,FALSE),${weight},${table}),${quoted(NO_RATE)})`;
}

/** A mark that is missing marks nothing: the price itself still says what is wrong with it. */
function isExample(mark: string): string {
  return `IFERROR(OR(${mark}=${quoted(SAMPLE)},${mark}=${quoted(OLD_SAMPLE)}),FALSE)`;
}

function usableOrNone(field: Field, cell: string): string {
  if (isLength(field)) {
    const isNone = field.mayBeZero ? `OR(LEN(${cell})=0,${cell}<0)` : `${cell}<=0`;
    return `IF(${isNone},${quoted(NO_RATE)},${cell})`;
  }
  return `IF(${usableNumber(field, cell)},${cell},${quoted(NO_RATE)})`;
}
