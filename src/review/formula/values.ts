import { must } from "../../quantities/must";
import type { CellValue } from "../facts";

/** An error in a cell, and what its function said about it, where that is known. */
export interface Failure {
  readonly error: string;
  readonly message?: string;
}

/** A value as a formula passes it on: null is a blank cell. */
export type Single = CellValue | null | Failure;
export type Value = Single | readonly (readonly Single[])[];

/** Thrown where a formula uses something that is not worked out here. */
export class Unknown extends Error {}

export const isFailure = (value: Value | undefined): value is Failure =>
  typeof value === "object" && value !== null && "error" in value;
export const isRange = (value: Value): value is readonly (readonly Single[])[] => Array.isArray(value);

/** A single value; a range of one cell counts as one, and a larger one is not worked out here. */
export function single(value: Value): Single {
  if (!isRange(value)) return value;
  const [row] = value;
  if (value.length !== 1 || row?.length !== 1) throw new Unknown("a range where one value is needed");
  return must(row[0]);
}

export function numberOf(value: Value): number | Failure {
  const one = single(value);
  if (typeof one === "number" || isFailure(one)) return one;
  if (one === null) return 0;
  if (typeof one === "boolean") return one ? 1 : 0;
  const number = one.trim() === "" ? Number.NaN : Number(one.replace(/^\$|,/g, ""));
  return Number.isFinite(number) ? number : { error: "#VALUE!" };
}

export function truthOf(value: Value): boolean | Failure {
  const one = single(value);
  if (typeof one === "boolean") return one;
  const number = numberOf(one);
  return typeof number === "number" ? number !== 0 : number;
}

export const textOf = (value: CellValue | null): string =>
  value === null ? "" : typeof value === "boolean" ? String(value).toUpperCase() : String(value);
