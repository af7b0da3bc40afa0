import type { Kind } from "../../functions/declare";
import { dayShown, shareShown, shown } from "../../functions/working";
import { isFailure, isRange, type Value } from "../formula/values";

/** Money with its cents. */
export const moneyShown = (value: number): string =>
  value.toLocaleString("en-US", { minimumFractionDigits: 2, maximumFractionDigits: 2 });

/** What a unit is called behind a number; "" where there is none. */
const UNITS: Partial<Record<Kind, string>> = {
  count: "",
  amount: "",
  money: "",
  stone: "tons/cu yd",
  soil: "",
  degrees: "degrees",
};

/** A number of a kind with its unit: `2.5 in`, `8 %`, `Mon 2026-03-02`. */
export function withUnit(value: number, kind: Kind): string {
  if (kind === "share" || kind === "soil") return shareShown(value);
  if (kind === "date") return dayShown(value);
  return `${shown(value)} ${UNITS[kind] ?? kind}`.trim();
}

/** Any value as it is shown in a formula with numbers in it. */
export function valueShown(value: Value | undefined): string {
  if (value === undefined) return "?";
  if (value === null) return "blank";
  if (isFailure(value)) return value.error;
  if (isRange(value)) return `${value.length} × ${value[0]?.length ?? 0} cells`;
  if (typeof value === "number") return shown(value);
  return typeof value === "boolean" ? String(value).toUpperCase() : `“${value}”`;
}
