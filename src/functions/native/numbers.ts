import { FIRST_DATE, LAST_DATE } from "../../quantities/digDate";
import { must } from "../../quantities/must";
import { Problem } from "../../quantities/problem";
import type { TapeUnit } from "../../quantities/tape";
import * as read from "../read";
import { date as readDate } from "../readNamed";
import { constant, inParentheses, isBlank, type Operand } from "./arithmetic";
import type { Parameter } from "./form";
import { type Given, type GivenCell, NoNative } from "./given";
import type { Reading } from "./textReading";
import type { Least } from "./worked";

/** The rules of one argument that is a number. */
interface NumberRule {
  readonly reading: Reading;
  /** How the function reads what is typed into the formula; a blank where the argument is left out. */
  readonly read: (value: unknown) => number;
  /** Whether 0 is a blank, a value, or a value only where it was taped with its unit. */
  readonly zero: "blank" | "value" | "taped";
  /** What a blank is taken for, where it may be blank. */
  readonly fallback?: number;
  /** Further conditions on the text that stands for the number. */
  readonly also?: (text: string) => readonly string[];
}

/** What is in a formula where the function takes infinity: larger than any bed. */
const NO_LIMIT = 1e15;

export function numberParameter(rule: NumberRule): Parameter<Operand> {
  return { reading: rule.reading, operand: (given) => operandOf(given, rule) };
}

/** A number in a formula, with the conditions under which the function takes it. */
export function operandOf(given: Given, rule: NumberRule): Operand {
  switch (given.kind) {
    case "blank":
      return constant(rule.read(undefined));
    case "constant":
      return constant(rule.read(given.value));
    case "list":
      if (given.rows.length === 1 && must(given.rows[0]).length === 1)
        return constant(rule.read(must(given.rows[0])[0]));
      throw new Problem("value", "it takes one number, not several");
    case "truth":
      return constant(rule.read(true));
    case "range":
      throw new NoNative(`${given.range.text} is several cells, and the function takes one`);
    case "text":
      throw new NoNative(`${given.text} joins text, which an ordinary formula can't read`);
    case "number":
      return knownNumber(given, rule);
    default:
      return cellOrUnknown(given, rule);
  }
}

function knownNumber({ text, layers, least }: Extract<Given, { kind: "number" }>, rule: NumberRule): Operand {
  const { zero, fallback, also = () => [] } = rule;
  const atom = inParentheses(text);
  const needsMore = zero !== "value" && fallback === undefined;
  const conditions = [
    ...(needsMore && least !== "over 0" ? [`${atom}>0`] : []),
    ...(!needsMore && least === "anything" ? [`${atom}>=0`] : []),
    ...also(atom),
  ];
  const mayFallBack = zero === "blank" && fallback !== undefined && least !== "over 0";
  return {
    text: mayFallBack ? `IF(${atom}=0,${finite(fallback)},${atom})` : atom,
    layers: conditions.length > 0 ? [...layers, conditions] : layers,
    least: leastOf(rule),
  };
}

function cellOrUnknown(given: GivenCell | Extract<Given, { kind: "unknown" }>, rule: NumberRule): Operand {
  const { zero, fallback, also = () => [] } = rule;
  const { text } = given;
  const tapedZero = given.kind === "cell" && given.tapedZero === true;
  const takesZero = zero === "value" || (zero === "taped" && tapedZero);
  const holds = given.kind === "cell" ? given.holds : undefined;
  const scaled = (number: string) => {
    if (holds === undefined || holds === rule.reading) return number;
    return rule.reading === "in" ? `(${number}*12)` : `(${number}/12)`;
  };
  if (fallback === undefined) {
    const over = takesZero ? `${text}>=0` : `${text}>0`;
    return {
      text: scaled(text),
      layers: [[`ISNUMBER(${text})`, over, ...also(text)]],
      least: takesZero ? "0 or more" : "over 0",
    };
  }
  // A 0 that was typed may be a blank; one that was taped is a length, and too small where 0 makes no sense.
  const least = tapedZero && !takesZero ? `${text}>0` : `${text}>=0`;
  const condition = `OR(${isBlank(text)},AND(${[`ISNUMBER(${text})`, least, ...also(`N(${text})`)].join(",")}))`;
  const takesFallback = zero === "blank" ? `N(${text})=0` : isBlank(text);
  const value = fallback === 0 ? scaled(`N(${text})`) : `IF(${takesFallback},${finite(fallback)},${scaled(text)})`;
  return { text: value, layers: [[condition]], least: leastOf(rule) };
}

function leastOf({ zero, fallback }: NumberRule): Least {
  return zero !== "value" && fallback !== 0 ? "over 0" : "0 or more";
}

function finite(number: number): string {
  return constant(Math.min(number, NO_LIMIT)).text;
}

/** A length over 0; with a fallback, 0 or blank is taken for it. */
export function length(unit: TapeUnit, fallback?: number): Parameter<Operand> {
  const reader = unit === "ft" ? read.feet : read.inches;
  return rule({ reading: unit, read: (value) => reader(value, "", fallback), zero: "blank" }, fallback);
}

/** A length of 0 or more. */
export function lengthOrZero(unit: TapeUnit, fallback?: number): Parameter<Operand> {
  const reader = unit === "ft" ? read.feetOrZero : read.inchesOrZero;
  return rule({ reading: unit, read: (value) => reader(value, "", fallback), zero: "value" }, fallback);
}

/** A measure by itself: 0 only where it was taped. */
export function measure(unit: TapeUnit): Parameter<Operand> {
  const reader = unit === "ft" ? read.measureInFeet : read.measureInInches;
  return numberParameter({ reading: unit, read: (value) => reader(value, ""), zero: "taped" });
}

export function positive(fallback?: number): Parameter<Operand> {
  return rule({ reading: "number", read: (value) => read.positive(value, "", fallback), zero: "blank" }, fallback);
}

export function positiveOrZero(fallback?: number, most = Number.POSITIVE_INFINITY): Parameter<Operand> {
  const reads = (value: unknown) => {
    const number = read.positiveOrZero(value, "", fallback);
    if (number > most) throw new Problem("value", "too large");
    return number;
  };
  return rule({ reading: "number", read: reads, zero: "value", also: atMost(most) }, fallback);
}

/** A whole number over 0. */
export function count(most: number, fallback?: number): Parameter<Operand> {
  const also = (text: string) => [`${text}=INT(${text})`, ...atMost(most)(text)];
  return rule(
    { reading: "number", read: (value) => read.count(value, "", fallback, most), zero: "blank", also },
    fallback,
  );
}

export function shareUnderOne(fallback?: number): Parameter<Operand> {
  const also = (text: string) => [`${text}<1`];
  return rule(
    { reading: "share", read: (value) => read.shareUnderOne(value, "", fallback), zero: "value", also },
    fallback,
  );
}

/** As the functions refuse it: a share over this was meant in percent. */
const MOST_SHARE = 2;

/** A share up to 2. */
export const share = /* @__PURE__ */ numberParameter({
  reading: "share",
  read: (value) => read.share(value, ""),
  zero: "value",
  also: /* @__PURE__ */ atMost(MOST_SHARE),
});

/** A date; its time of day is still with it. */
export const date = /* @__PURE__ */ numberParameter({
  reading: "date",
  read: (value) => readDate(value, ""),
  zero: "blank",
  also: (text) => [`${text}>=${FIRST_DATE}`, `${text}<${LAST_DATE + 1}`],
});

function atMost(most: number): (text: string) => readonly string[] {
  return (text) => (Number.isFinite(most) ? [`${text}<=${most}`] : []);
}

function rule(known: NumberRule, fallback: number | undefined): Parameter<Operand> {
  return numberParameter(fallback === undefined ? known : { ...known, fallback });
}
