import { quoted } from "../../quantities/bed/evaluate";
import { type Field, type FieldKey, fields, MOST_SHARE } from "../../quantities/bed/fields";
import { type BedForm, followedRate, singleRate, soldByIn, textOf } from "../../quantities/bed/form";
import { type ListKey, listFeeding, listOf, listWhose } from "../../quantities/bed/officeLists";
import {
  isPriced,
  OLD_SAMPLE,
  type RateKey,
  rateNames,
  SAMPLE,
  stoneListNames,
  stoneSoldBy,
  whoseName,
} from "../../quantities/bed/rates";
import { firstField, secondKey } from "../../quantities/bed/secondEdging";
import { SOLD_BY, type SoldBy, soldByFieldKeys, TON } from "../../quantities/soldBy";

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
  /** For what goes with a unit of stone, where the list of stone has units: that of the bed. */
  readonly soldBy?: SoldBy;
}

/** The source of a field of a block; undefined for one that follows no rate. */
export function rateSource(form: BedForm, key: FieldKey): RateSource | undefined {
  if (form.rates?.stonesHaveUnits && soldByFieldKeys.includes(key)) {
    const soldBy = soldByIn(form);
    // A step that the list's row leaves blank is the usual one, until the office types its own.
    const isListed = soldBy === TON || stoneSoldBy(form.rates, textOf(form, "stone"), soldBy) !== undefined;
    return isListed && form.typed[key] === undefined ? { key, soldBy, single: key as RateKey } : undefined;
  }
  if (!followedRate(form, key)) return undefined;
  if (soldByFieldKeys.includes(key) && !singleRate(form, key)) return undefined;
  const list = listFeeding(firstField(key) ?? key);
  const single = singleRate(form, key);
  return { key, ...(list && form.rates?.lists?.[list] && { list }), ...(single && { single }) };
}

/**
 * The formula of a cell that follows a rate. A length may be tape text, which the functions read and refuse.
 *
 * @param other what it follows where the list's row has nothing; left out: the single rate.
 */
export function followingFormula(source: RateSource, other = singleOrNone(source)): string {
  const { key, list, soldBy } = source;
  if (soldBy) return key === "stoneCost" ? unitPriceFormula(soldBy) : unitFigureFormula(key, soldBy);
  if (key === "stoneCost") return stonePriceFormula();
  const field: Field = fields[key];
  if (!list) return `=IFERROR(${other},${quoted(NO_RATE)})`;
  const { cell, column, has } = listed(key, list);
  const { names } = listOf(list);
  return `=IFERROR(IF(ROWS(${names})<>ROWS(${column}),${quoted(NO_RATE)},IF(${has},${usableOrNone(field, cell)},${other})),${quoted(NO_RATE)})`;
}

const singleOrNone = ({ key, single }: RateSource) =>
  single ? usableOrNone(fields[key], rateNames[single]) : quoted(NO_RATE);

/** The cell of a list that a block takes for a field, in its row; and whether the block names a row that has it. */
function listed(key: FieldKey, list: ListKey) {
  const { names, columns, picks } = listOf(list);
  const first = firstField(key);
  const column = columns[first ?? key] ?? "";
  const place = `MATCH(TRIM({${first ? secondKey(picks) : picks}}),${names},0)`;
  const cell = `INDEX(${column},${place})`;
  return { place, column, cell, has: `IFERROR(LEN(${cell})>0,FALSE)` };
}

/** What a cell that follows a rate is to be said about: what is wrong, or that its price is an example, or `otherwise`. */
export function rateRemark(source: RateSource, followed: string, example: string, otherwise: string): string {
  const { key, list, single, soldBy } = source;
  if (key === "stoneCost") return stoneRemark(followed, soldBy);
  if (soldBy) return unitFigureRemark(key, soldBy, followed, otherwise);
  const isMoney = isPriced(firstField(key) ?? key);
  const ofMark = (mark: string) => (isMoney ? `IF(${isExample(mark)},${example},${otherwise})` : otherwise);
  const said = single && isPriced(single) ? ofMark(whoseName(single)) : otherwise;
  const wrong = single ? whatIsWrong(fields[key], rateNames[single]) : quoted("rate isn't in the list");
  if (!list) return `IF(ISNUMBER(${followed}),${said},${wrong})`;
  const { of, names } = listOf(list);
  const { place, cell, column, has } = listed(key, list);
  const mark = `INDEX(${listWhose(listOf(list))},${place})`;
  const saidOfAny = isMoney ? `IF(${has},${ofMark(mark)},${said})` : otherwise;
  const wrongInAny = `IF(${has},${whatIsWrong(fields[key], cell)},${wrong})`;
  const isLost = `ISERROR(ROWS(${names})=ROWS(${column}))`;
  return `IF(ISNUMBER(${followed}),${saidOfAny},IF(${isLost},${quoted(`list of ${of} is missing`)},${wrongInAny}))`;
}

/** What the name of a row is to be said about: that the list doesn't have it, or `otherwise`. */
export function pickRemark(list: ListKey, picks: FieldKey, otherwise: string): string {
  return `IF(${isListed(list, [], picks)},${otherwise},${quoted(NOT_LISTED)})`;
}

/**
 * The condition under which the name of a row is the usual one or in its list.
 *
 * @param alsoUsual other names for the usual one; @param picks the field that holds the name.
 */
export function isListed(
  list: ListKey,
  alsoUsual: readonly string[] = [],
  picks: FieldKey = listOf(list).picks,
): string {
  const { names } = listOf(list);
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

const { kinds, prices, weights, whose, units, steps, minimums } = stoneListNames;
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

/**
 * The condition under which a cell has a name of a table; capitals, hyphens, and spaces around it don't matter.
 *
 * @example isCalled("K2", "bulk bag") // SUBSTITUTE(TRIM(K2),"-"," ")="bulk bag"
 */
export function isCalled(cell: string, name: string): string {
  const plain = name.includes(" ") ? `SUBSTITUTE(TRIM(${cell}),"-"," ")` : `TRIM(${cell})`;
  return `${plain}=${quoted(name)}`;
}

/** The same for several names. */
export const isAnyOf = (cell: string, names: readonly string[]): string => {
  const [first = "FALSE", ...others] = names.map((name) => isCalled(cell, name));
  return others.length === 0 ? first : `OR(${[first, ...others].join(",")})`;
};

/** Whether a workbook with these names has a list of stone that says what each is sold by. */
export const listHasUnits = (names: readonly string[]): boolean =>
  names.some((name) => name.toLowerCase() === units.toLowerCase());

const LISTED_UNIT = `INDEX(${units},${PLACE})`;
const namesOf = (soldBy: SoldBy) => [...(soldBy === TON ? [""] : []), soldBy.name];
/** Whether the list sells the stone by a unit; in error for a stone that isn't listed. */
const sellsBy = (soldBy: SoldBy) => isAnyOf(LISTED_UNIT, namesOf(soldBy));
/** Whether the list sells it by another one; false for a unit that isn't in the table. */
const sellsByOther = (soldBy: SoldBy) => isAnyOf(LISTED_UNIT, SOLD_BY.filter((one) => one !== soldBy).flatMap(namesOf));
const isWhole = (...columns: readonly string[]) => columns.map((column) => `ROWS(${kinds})=ROWS(${column})`).join(",");

/**
 * The price of stone by a unit: that of the list's row, where the list sells it so. By the ton any other stone has the
 * single rate, as one has that the list sells by another unit.
 */
function unitPriceFormula(soldBy: SoldBy): string {
  const none = quoted(NO_RATE);
  const price = fields.stoneCost;
  const other = soldBy === TON ? usableOrNone(price, rateNames.stoneCost) : none;
  const elsewhere = soldBy === TON ? `IF(${sellsByOther(TON)},${other},${none})` : none;
  const listed = `IF(${sellsBy(soldBy)},${usableOrNone(price, LISTED_PRICE)},${elsewhere})`;
  return `=IFERROR(IF(AND(${isWhole(prices, units)}),IF(ISNUMBER(${PLACE}),${listed},${other}),${none}),${none})`;
}

/** The step or the minimum by a unit: that of the list's row, else by the ton the single rate, and the usual one by any other. */
function unitFigureFormula(key: FieldKey, soldBy: SoldBy): string {
  const { column, cell, has, usual } = unitFigure(key, soldBy);
  const [field, none] = [fields[key], quoted(NO_RATE)];
  const other = soldBy === TON ? usableOrNone(field, usual) : usual;
  return `=IFERROR(IF(AND(${isWhole(column, units)}),IF(${has},${usableOrNone(field, cell)},${other}),${none}),${none})`;
}

function unitFigure(key: FieldKey, soldBy: SoldBy) {
  const column = key === "orderStep" ? steps : minimums;
  const cell = `INDEX(${column},${PLACE})`;
  const usual = soldBy === TON ? rateNames[key as RateKey] : (soldBy.usual[key] ?? fields[key].initial);
  return { column, cell, has: `IFERROR(AND(LEN(${cell})>0,${sellsBy(soldBy)}),FALSE)`, usual };
}

/** The same for a row of a list of beds: a step or minimum that the office typed for the stone, or `otherwise`. */
export function listedFigure(key: FieldKey, soldBy: SoldBy, otherwise: string): string {
  const { cell, has } = unitFigure(key, soldBy);
  return `IF(${has},${cell},${otherwise})`;
}

function unitFigureRemark(key: FieldKey, soldBy: SoldBy, followed: string, otherwise: string): string {
  const { column, cell, has, usual } = unitFigure(key, soldBy);
  const said = soldBy === TON ? otherwise : `IF(${has},${otherwise},"usual, none in Rates")`;
  const wrong = `IF(${has},${whatIsWrong(fields[key], cell)},${soldBy === TON ? whatIsWrong(fields[key], usual) : '""'})`;
  return `IF(ISNUMBER(${followed}),${said},IF(ISERROR(AND(${isWhole(column, units)})),"list of stone is missing",${wrong}))`;
}

/** What there is to say about the price of stone; by a unit, where the list of stone has units. */
function stoneRemark(followed: string, soldBy?: SoldBy): string {
  const [field, other] = [fields.stoneCost, rateNames.stoneCost];
  const isListed = soldBy ? `IFERROR(${sellsBy(soldBy)},FALSE)` : `ISNUMBER(${PLACE})`;
  const listed = `IF(${isExample(`INDEX(${whose},${PLACE})`)},"sample price","")`;
  const any = `IF(${isExample(whoseName("stoneCost"))},"sample price, any other stone","price of any other stone")`;
  const others = soldBy && soldBy !== TON ? '""' : any;
  const wrongUnit = quoted(soldBy === TON ? WRONG_UNIT : `not sold by the ${soldBy?.name} in Rates`);
  const wrongOther =
    soldBy === TON ? `IF(IFERROR(${sellsByOther(TON)},TRUE),${whatIsWrong(field, other)},${wrongUnit})` : wrongUnit;
  const wrong = `IF(${isListed},${whatIsWrong(field, LISTED_PRICE)},${soldBy ? wrongOther : whatIsWrong(field, other)})`;
  const isLost = soldBy ? `ISERROR(AND(${isWhole(prices, units)}))` : `ISERROR(ROWS(${kinds})=ROWS(${prices}))`;
  return `IF(ISNUMBER(${followed}),IF(${isListed},${listed},${others}),IF(${isLost},"list of stone is missing",${wrong}))`;
}

/** What is said of a stone whose unit in the list is none of the table, there and in the blocks that need it. */
export const WRONG_UNIT = `rate has a wrong unit: use ${SOLD_BY.slice(0, -1)
  .map(({ name }) => name)
  .join(", ")}, or ${SOLD_BY.at(-1)?.name}`;
/** Whether a cell has the name of a unit, or is blank. */
export const isUnit = (cell: string): string => isAnyOf(cell, SOLD_BY.flatMap(namesOf));

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
