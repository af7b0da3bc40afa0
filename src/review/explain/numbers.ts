import { isFailure, isRange, type Value } from "../formula/values";
import type { Kind } from "../knowledge/argument";

/** A number as a working shows it: six digits, thousands apart. */
export const shown = (value: number): string => value.toLocaleString("en-US", { maximumSignificantDigits: 6 });

/** Money with its cents. */
export const moneyShown = (value: number): string =>
  value.toLocaleString("en-US", { minimumFractionDigits: 2, maximumFractionDigits: 2 });

export const shareShown = (share: number): string => `${shown(share * 100)} %`;

const DAYS_TO_1970 = 25_569;
const MS_PER_DAY = 86_400_000;

/** A serial number of the host as a day: `Mon 2026-03-02`. */
export function dayShown(serial: number): string {
  const day = new Date((Math.floor(serial) - DAYS_TO_1970) * MS_PER_DAY);
  if (Number.isNaN(day.getTime())) return shown(serial);
  const name = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"][day.getUTCDay()];
  return `${name} ${day.toISOString().slice(0, 10)}`;
}

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
