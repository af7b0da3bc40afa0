import { Problem } from "../quantities/problem";
import { layoutMessages as messages } from "./messages";
import type { Point } from "./plane";

/** The value, if it is a number over 0; otherwise a Problem that names it. */
export function positive(what: string, value: number, argument: string): number {
  if (finite(what, value, argument) <= 0) throw new Problem("value", messages.notPositive(what, value), argument);
  return value;
}

/** The value, if it is a number of at least 0; otherwise a Problem that names it. */
export function atLeastZero(what: string, value: number, argument: string): number {
  if (finite(what, value, argument) < 0) throw new Problem("value", messages.negative(what, value), argument);
  return value;
}

/** The value, if it is a number from least to most; otherwise a Problem that names it and adds the hint. */
export function inRange(
  what: string,
  value: number,
  least: number,
  most: number,
  hint: string,
  argument: string,
): number {
  finite(what, value, argument);
  if (value < least || value > most)
    throw new Problem("value", messages.notBetween(what, value, least, most, hint), argument);
  return value;
}

export function finite(what: string, value: number, argument: string): number {
  if (typeof value !== "number" || !Number.isFinite(value))
    throw new Problem("value", messages.notFinite(what, value), argument);
  return value;
}

export function finitePoint(what: string, { x, y }: Point, argument: string): Point {
  return { x: finite(`x of ${what}`, x, argument), y: finite(`y of ${what}`, y, argument) };
}
