import { SOILS } from "../../quantities/soil";
import { MOST_TONS_PER_YARD, STONES } from "../../quantities/stone";
import { flag as readFlag } from "../read";
import { soilSwell, stoneWeight, widthRule } from "../readNamed";
import { constant, inParentheses, isBlank, numberText, type Operand } from "./arithmetic";
import type { Parameter } from "./form";
import { type Given, NoNative } from "./given";
import type { Layers } from "./worked";

/** A question in a formula: whether it is yes where that was typed, else a condition. */
export interface Answer {
  readonly constant?: boolean;
  readonly text: string;
  readonly layers: Layers;
}

/** `IF(condition,yes,no)`, or the one of them that a typed answer leaves. */
export function choose(answer: Answer, yes: string, no: string): string {
  if (answer.constant !== undefined) return answer.constant ? yes : no;
  return `IF(${answer.text},${yes},${no})`;
}

/** Tons per cubic yard, from a number or from the name of a stone; an unknown name is #N/A. */
export const stone: Parameter<Operand> = {
  reading: "stone",
  operand(given) {
    const typed = typedNumber(given, (value) => stoneWeight(value, ""));
    if (typed) return typed;
    const { text, layers } = cellOf(given);
    const named = nameLookup(
      text,
      STONES.map(({ name, tonsPerYard }) => [name, tonsPerYard]),
    );
    const limits = [`${text}>0`, `${text}<=${MOST_TONS_PER_YARD}`];
    if (given.kind === "number") return { text, layers: [...layers, limits], least: "over 0" };
    if (given.kind === "text") return { text: named, layers, least: "over 0" };
    return {
      text: `IF(ISTEXT(${text}),${named},${text})`,
      layers: [[`OR(ISTEXT(${text}),AND(${[`ISNUMBER(${text})`, ...limits].join(",")}))`]],
      least: "over 0",
    };
  },
};

const MOST_SWELL = 2;

/** Swell as a share, from a number or from the name of a soil; blank or 0 is loam. */
export const soil: Parameter<Operand> = {
  reading: "soil",
  operand(given) {
    const typed = typedNumber(given, (value) => soilSwell(value, ""));
    if (typed) return typed;
    const { text, layers } = cellOf(given);
    const loam = numberText(soilSwell(undefined, ""));
    const named = nameLookup(
      text,
      SOILS.map(({ name, swell }) => [name, swell]),
    );
    const limits = [`${text}>=0`, `${text}<=${MOST_SWELL}`];
    if (given.kind === "number")
      return { text: `IF(${text}=0,${loam},${text})`, layers: [...layers, limits], least: "over 0" };
    if (given.kind === "text") return { text: named, layers, least: "over 0" };
    return {
      text: `IF(OR(${isBlank(text)},${text}=0),${loam},IF(ISTEXT(${text}),${named},${text}))`,
      layers: [[`OR(${isBlank(text)},ISTEXT(${text}),AND(${[`ISNUMBER(${text})`, ...limits].join(",")}))`]],
      least: "over 0",
    };
  },
};

/** Yes or no, as TRUE and FALSE, 1 and 0, or in words. */
export function flag(fallback: boolean): Parameter<Answer> {
  return {
    reading: "flag",
    operand(given) {
      const typed = typedValue(given);
      if (typed) {
        const yes = readFlag(typed.value, "", fallback);
        return { constant: yes, text: yes ? "TRUE" : "FALSE", layers: [] };
      }
      if (given.kind === "truth") return { text: given.text, layers: [] };
      const { text, layers } = cellOf(given);
      const zeroOrOne = `OR(${text}=0,${text}=1)`;
      if (given.kind === "number") return { text: `${text}=1`, layers: [...layers, [zeroOrOne]] };
      const word = `LOWER(TRIM(${text}))`;
      const blank = isBlank(text);
      return {
        text: `OR(${fallback ? `${blank},` : ""}N(${text})=1,${word}={"yes","true"})`,
        layers: [
          [`OR(${blank},ISLOGICAL(${text}),AND(ISNUMBER(${text}),${zeroOrOne}),${word}={"yes","true","no","false"})`],
        ],
      };
    },
  };
}

/** Whether widths become an area by the trapezoidal rule; by Simpson's otherwise. */
export const trapezoid: Parameter<Answer> = {
  reading: "rule",
  operand(given) {
    const typed = typedValue(given);
    if (typed) {
      const yes = widthRule(typed.value, "") === "trapezoid";
      return { constant: yes, text: yes ? "TRUE" : "FALSE", layers: [] };
    }
    const { text, layers } = cellOf(given);
    if (given.kind === "number") return { constant: false, text: "FALSE", layers: [...layers, [`${text}=0`]] };
    const word = `LOWER(TRIM(${text}))`;
    return {
      text: `${word}="trapezoid"`,
      layers: [[`OR(${isBlank(text)},${text}=0,${word}={"simpson","trapezoid"})`]],
    };
  },
};

/** What stands for an argument, where it has to be looked at when the formula is calculated. */
function cellOf(given: Given): { readonly text: string; readonly layers: Layers } {
  if (given.kind === "range") throw new NoNative(`${given.range.text} is several cells, and the function takes one`);
  if (given.kind === "blank" || given.kind === "constant" || given.kind === "list")
    throw new NoNative("isn't a reference");
  return { text: inParentheses(given.text), layers: given.kind === "number" ? given.layers : [] };
}

/** What was typed into the formula or left out; for a comparison TRUE, which stands for either. */
function typedValue(given: Given): { readonly value: unknown } | undefined {
  if (given.kind === "blank") return { value: undefined };
  if (given.kind === "constant") return { value: given.value };
  if (given.kind === "list") return { value: given.rows };
  return undefined;
}

function typedNumber(given: Given, read: (value: unknown) => number): Operand | undefined {
  const typed = given.kind === "truth" ? { value: true } : typedValue(given);
  return typed && constant(read(typed.value));
}

/** Marks that part the words of a name; the others that MATCH would take for wildcards are among them. */
const PARTING = ["-", "*", "?"];

/** The number that is beside a name: capitals, hyphens and extra spaces do not matter; #N/A where it is unknown. */
function nameLookup(text: string, table: readonly (readonly [name: string, number: number])[]): string {
  const words = PARTING.reduce((inner, mark) => `SUBSTITUTE(${inner},"${mark}"," ")`, `LOWER(${text})`);
  const names = table.map(([name]) => `"${name}"`).join(",");
  const numbers = table.map(([, number]) => numberText(number)).join(",");
  return `INDEX({${numbers}},MATCH(TRIM(${words}),{${names}},0))`;
}
