import { type Field, fields } from "../../quantities/bed/fields";
import type { RateKey } from "../../quantities/bed/rates";
import { formatOf } from "../rates/rows";

/**
 * A rate as a preview shows it.
 *
 * @example rateWords("waste", 0.08) // "8%"; rateWords("rollCost", 64) // "$64.00"; rateWords("rollWidth", 6) // "6 ft"
 */
export function rateWords(key: RateKey, value: number | string): string {
  const field: Field = fields[key];
  if (typeof value !== "number") return value;
  if (field.reads === "share") return `${plainNumber(value * 100)}%`;
  return formatOf(field) === "money" ? dollars(value) : `${plainNumber(value)} ${field.unit}`;
}

/** The price of a stone, with its weight where it has one of its own. */
export function stoneWords(perTon: number | string, tonsPerYard: number | string): string {
  const price = typeof perTon === "number" ? `${dollars(perTon)} a ton` : perTon || "(no price)";
  if (tonsPerYard === "") return price;
  return `${price}, ${typeof tonsPerYard === "number" ? plainNumber(tonsPerYard) : tonsPerYard} tons/cu yd`;
}

const dollars = (value: number) => value.toLocaleString("en-US", { style: "currency", currency: "USD" });

/** Twelve digits, so that 7% doesn't show as 7.000000000000001%. */
const DIGITS = 12;

function plainNumber(value: number): string {
  return Number(value.toPrecision(DIGITS)).toLocaleString("en-US", { maximumFractionDigits: 6 });
}
