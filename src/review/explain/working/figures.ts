import type { Taken } from "../given";
import { shown } from "../numbers";

/** The lines of a working, and the number that they come to. */
export interface Worked {
  readonly lines: readonly string[];
  readonly answer: number;
}

/** Shows how one function comes to its number. */
export type Working = (figures: Figures) => Worked;

/** Thrown where a working lacks a figure, since an argument could not be read. */
export class Lacking extends Error {}

/** The arguments of a call as a working asks for them. */
export class Figures {
  constructor(private readonly taken: Readonly<Record<string, Taken | undefined>>) {}

  number(name: string): number {
    const one = this.taken[name];
    if (typeof one !== "number") throw new Lacking(name);
    return one;
  }

  /** The number, or undefined where the argument was left out. */
  maybe(name: string): number | undefined {
    const one = this.taken[name];
    return typeof one === "number" ? one : undefined;
  }

  flag(name: string): boolean {
    const one = this.taken[name];
    return one === true || one === 1;
  }

  word(name: string): string {
    return String(this.taken[name] ?? "");
  }

  rows(name: string): readonly (readonly (number | undefined)[])[] {
    const rows = this.taken[name];
    if (typeof rows === "object") return rows;
    return typeof rows === "number" ? [[rows]] : [];
  }

  /** The numbers of a range in order, without its blanks. */
  list(name: string): number[] {
    return this.rows(name)
      .flat()
      .filter((one) => one !== undefined);
  }
}

/** How far above a whole number a count may lie and still be that number, as our functions have it. */
export const TOLERANCE = 1e-9;

/** Up to the next whole one; what only binary arithmetic adds does not count. */
export function upTo(amount: number): number {
  const nearest = Math.round(amount);
  return Math.abs(amount - nearest) <= TOLERANCE * Math.max(1, Math.abs(amount)) ? nearest : Math.ceil(amount);
}

/** `4.63 ÷ 5 = 0.926, so 1`. */
export function roundedUp(how: string, amount: number): { readonly line: string; readonly whole: number } {
  const whole = upTo(amount);
  return { line: `${how} = ${shown(amount)}${whole === amount ? "" : `, so ${shown(whole)}`}`, whole };
}

export const FEET_IN = 12;

/** Inches as feet, in words: `6 in = 0.5 ft`. */
export const inFeet = (inches: number): string => `${shown(inches)} in = ${shown(inches / FEET_IN)} ft`;
