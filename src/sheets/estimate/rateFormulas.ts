import { quoted } from "../../quantities/bed/evaluate";
import { type Field, fields, MOST_SHARE } from "../../quantities/bed/fields";
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

/** The formula of a cell that follows a rate. A length may be tape text, which the functions read and refuse. */
export function followingFormula(key: RateKey): string {
  const [field, name] = [fields[key] as Field, rateNames[key]];
  if (key === "stoneCost") return stonePriceFormula();
  if (isLength(field)) return `=IFERROR(IF(${name}<=0,${quoted(NO_RATE)},${name}),${quoted(NO_RATE)})`;
  return `=IFERROR(${usableOrNone(field, name)},${quoted(NO_RATE)})`;
}

/** What a cell that follows a rate is to be said about: what is wrong, or that its price is an example, or `otherwise`. */
export function rateRemark(key: RateKey, followed: string, example: string, otherwise: string): string {
  if (key === "stoneCost") return stoneRemark(followed);
  const said = isPriced(key) ? `IF(${isExample(whoseName(key))},${example},${otherwise})` : otherwise;
  return `IF(ISNUMBER(${followed}),${said},${whatIsWrong(fields[key], rateNames[key])})`;
}

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
  return `IF(${usableNumber(field, cell)},${cell},${quoted(NO_RATE)})`;
}
