import { WHOLE_TOLERANCE, wholeUp } from "../../quantities/whole";
import type { Layers, Least } from "./worked";

/** A number as it is in a formula. */
export interface Operand {
  /** A reference, a number, a function's call or something in parentheses, so that it can be in any arithmetic. */
  readonly text: string;
  /** The number itself where it was typed into the formula. */
  readonly constant?: number;
  readonly layers: Layers;
  readonly least: Least;
}

export function constant(value: number): Operand {
  const text = numberText(value);
  return {
    // The practice workbook's engine takes 1E-9 for text where it is alone in a comparison.
    text: text.includes("E") ? `(${text}*1)` : text,
    constant: value,
    layers: [],
    least: value > 0 ? "over 0" : "0 or more",
  };
}

/** A number as it is typed into a formula, with all its digits. */
export function numberText(value: number): string {
  const text = String(value).toUpperCase();
  return value < 0 ? `(${text})` : text;
}

const TOLERANCE = numberText(WHOLE_TOLERANCE);

/** {@link wholeUp} of an amount of 0 or more, as arithmetic that every spreadsheet program has. */
export function wholeUpOf(amount: string): string {
  return `-INT(${TOLERANCE}*MAX(1,${amount})-${inParentheses(amount)})`;
}

/** A limit with the tolerance of exact fits on top. */
export function withSlack(limit: string): string {
  return `${limit}*(1+${TOLERANCE})`;
}

/** A limit with that tolerance taken off. */
export function withoutSlack(limit: string): string {
  return `${limit}*(1-${TOLERANCE})`;
}

/** What counts as nothing beside a larger amount. */
export function nothingBeside(amount: string): string {
  return `${TOLERANCE}*${inParentheses(amount)}`;
}

const ATOM = /^(?:[\d.]+|[A-Z]*\([^()]*\)|\$?[A-Z]{1,3}\$?\d+)$/;

export function inParentheses(text: string): string {
  return ATOM.test(text) ? text : `(${text})`;
}

/** Whether a cell is blank or holds spaces alone; as a text, since some programs take a 0 for an empty text. */
export function isBlank(text: string): string {
  return `TRIM(${text})=""`;
}

/** Inches in feet. */
export function feetOf(inches: Operand): string {
  return inches.constant === 0 ? "0" : `${inches.text}/12`;
}

/** `from-less`, without what takes nothing away. */
export function minus(from: string, less: string): string {
  return less === "0" ? from : `(${from}-${less})`;
}

/** `text*(1+share)`, or the text alone where the share is none. */
export function withShare(text: string, share: Operand): string {
  return share.constant === 0 ? text : `${text}*(1+${share.text})`;
}
