import type { TapeUnit } from "../../quantities/tape";
import type { Layers, Least } from "./worked";

export type Constant = string | number | boolean;

/** A reference to a rectangle of cells. */
export interface GivenRange {
  readonly text: string;
  readonly rows: number;
  readonly columns: number;
  /** A part of it, from one cell to another, counted from 0 and both included. */
  part(fromRow: number, fromColumn: number, toRow: number, toColumn: number): string;
}

/** What stands for one argument of a call, as far as its formula tells. */
export type Given =
  /** Left out. */
  | { readonly kind: "blank" }
  /** Typed into the formula. */
  | { readonly kind: "constant"; readonly value: Constant }
  /** Typed into the formula in braces. */
  | { readonly kind: "list"; readonly rows: readonly (readonly Constant[])[] }
  | GivenCell
  | { readonly kind: "range"; readonly range: GivenRange }
  /** Arithmetic, or another call, that gives a number or an error. */
  | { readonly kind: "number"; readonly text: string; readonly layers: Layers; readonly least: Least }
  /** A comparison: TRUE, FALSE or an error. */
  | { readonly kind: "truth"; readonly text: string }
  | { readonly kind: "text"; readonly text: string }
  /** A calculation that may give anything. */
  | { readonly kind: "unknown"; readonly text: string };

/** A reference to one cell. */
export interface GivenCell {
  readonly kind: "cell";
  readonly text: string;
  /** The unit of the number that took the place of tape text; a number that was typed is in the argument's own. */
  readonly holds?: TapeUnit;
  /** The tape text was a 0 with its unit, so that this 0 is a measure and no blank. */
  readonly tapedZero?: boolean;
}

export const BLANK: Given = { kind: "blank" };

/** Why a call has no ordinary formula, in words for the person. */
export class NoNative extends Error {}
