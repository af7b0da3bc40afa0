import { FIRST_DATE, LAST_DATE } from "../../quantities/digDate";
import { messages } from "../../quantities/messages";
import { Problem } from "../../quantities/problem";
import * as read from "../readRanges";
import { constant, numberText, type Operand } from "./arithmetic";
import type { Parameter } from "./form";
import { type Given, type GivenRange, NoNative } from "./given";
import { length, operandOf, positiveOrZero } from "./numbers";
import type { Layers } from "./worked";

/** A calculation may give one cell or several; its formula does not tell how many. */
export function refuseUnknown(given: Given): void {
  if (given.kind === "unknown")
    throw new NoNative(`${given.text} may be several cells, and there's no telling how many`);
}

const sizeOf = ({ rows, columns }: GivenRange) => rows * columns;

/** Every cell holds a number, or is blank. */
function numbersOrBlanks(range: GivenRange): string {
  return `COUNT(${range.text})+COUNTBLANK(${range.text})=${sizeOf(range)}`;
}

function sum(numbers: readonly number[]): Operand {
  return constant(numbers.reduce((total, number) => total + number, 0));
}

/** Areas, added up; blanks are skipped. */
export const areas: Parameter<Operand> = {
  reading: "number",
  operand(given) {
    if (given.kind === "list") return sum(read.areas(given.rows, ""));
    refuseUnknown(given);
    if (given.kind !== "range") return positiveOrZero(0).operand(given);
    const { range } = given;
    return {
      text: `SUM(${range.text})`,
      layers: [[numbersOrBlanks(range), `MIN(${range.text})>=0`]],
      least: "0 or more",
    };
  },
};

/** Sides, added up; blanks at the end are skipped, one among them is refused. */
export const sides: Parameter<Operand> = {
  reading: "ft",
  operand(given) {
    if (given.kind === "list") return sum(read.sides(given.rows, ""));
    refuseUnknown(given);
    if (given.kind !== "range") return length("ft").operand(given);
    const { range } = given;
    const { text } = range;
    const first = range.part(0, 0, 0, 0);
    const place = `(ROW(${text})-ROW(${first}))*${range.columns}+COLUMN(${text})-COLUMN(${first})+1`;
    const lastPlace = `SUMPRODUCT(MAX(ISNUMBER(${text})*(${text}>0)*(${place})))`;
    return {
      text: `SUM(${text})`,
      layers: [[numbersOrBlanks(range), `MIN(${text})>=0`, `SUM(${text})>0`, `${lastPlace}=COUNTIF(${text},">0")`]],
      least: "over 0",
    };
  },
};

/** Widths of one row or one column, to be weighed and to be told apart. */
export interface Widths {
  readonly count: number;
  readonly layers: Layers;
  /** Whether none of them is 0, as a condition; undefined where they are typed. */
  readonly someWidth: string;
  /** Their sum, each times its weight. */
  weighed(weights: readonly number[]): string;
  /** From each width to the next, as a list. */
  readonly steps: string;
}

export const widths: Parameter<Widths> = {
  reading: "ft",
  operand(given) {
    if (given.kind !== "range") return typedWidths(given);
    const { range } = given;
    if (range.rows > 1 && range.columns > 1) throw new Problem("value", messages.oneRowOrColumn("widths"));
    const count = atLeastTwo(sizeOf(range));
    const part = (from: number, to: number) =>
      range.rows > 1 ? range.part(from, 0, to, 0) : range.part(0, from, 0, to);
    return {
      count,
      layers: [[`COUNT(${range.text})=${count}`, `MIN(${range.text})>=0`]],
      someWidth: `SUM(${range.text})>0`,
      weighed: (weights) => `SUMPRODUCT(${range.text},${list(weights, range.rows > 1 ? ";" : ",")})`,
      steps: `${part(1, count - 1)}-${part(0, count - 2)}`,
    };
  },
};

function typedWidths(given: Given): Widths {
  refuseUnknown(given);
  // A single width is too few, whatever it is.
  if (given.kind !== "list") throw new Problem("value", messages.tooFewWidths(1));
  const numbers = read.widths(given.rows, "");
  atLeastTwo(numbers.length);
  return {
    count: numbers.length,
    layers: [],
    someWidth: `SUM(${list(numbers, ",")})>0`,
    weighed: (weights) => `SUMPRODUCT(${list(numbers, ",")},${list(weights, ",")})`,
    steps: `${list(numbers.slice(1), ",")}-${list(numbers.slice(0, -1), ",")}`,
  };
}

function atLeastTwo(count: number): number {
  if (count < 2) throw new Problem("value", messages.tooFewWidths(count));
  return count;
}

function list(numbers: readonly number[], parting: "," | ";"): string {
  return `{${numbers.map(numberText).join(parting)}}`;
}

/** Dates as an argument of WORKDAY; no text where there are none. */
export interface Dates {
  readonly text: string | undefined;
  readonly layers: Layers;
}

/** Dates as an argument of WORKDAY; blanks are skipped. */
export const dates: Parameter<Dates> = {
  reading: "date",
  operand(given) {
    if (given.kind === "blank") return { text: undefined, layers: [] };
    if (given.kind === "list") {
      const serials = read.dates(given.rows, "");
      return { text: serials.length > 0 ? list(serials, ",") : undefined, layers: [] };
    }
    refuseUnknown(given);
    if (given.kind !== "range") return oneDate(given);
    const { text } = given.range;
    const isDate = `COUNTIF(${text},">=${FIRST_DATE}")+COUNTIF(${text},0)=COUNT(${text})`;
    return { text, layers: [[numbersOrBlanks(given.range), isDate, `MAX(${text})<${LAST_DATE + 1}`]] };
  },
};

/** One holiday, or a blank. */
function oneDate(given: Given): { readonly text: string; readonly layers: Layers } {
  const { text, layers } = operandOf(given, {
    reading: "date",
    read: (value) => read.dates(value, "")[0] ?? 0,
    zero: "value",
    fallback: 0,
    also: (number) => [`OR(${number}=0,AND(${number}>=${FIRST_DATE},${number}<${LAST_DATE + 1}))`],
  });
  return { text, layers };
}
