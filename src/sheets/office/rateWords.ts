import { type Field, fields } from "../../quantities/bed/fields";
import type { RateKey } from "../../quantities/bed/rates";
import { soldByOf, TON } from "../../quantities/soldBy";
import { formatOf } from "../rates/rows";
import { type OfficeStone, stonePrice } from "./officeFile";

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

type Cell = number | string;

/** What the columns of the list of stone hold of a file's stone: its price, its weight, and its unit with step and minimum. */
export const stoneCells = (stone: OfficeStone): [price: Cell, weight: Cell, ...sold: Cell[]] => {
  const { tonsPerYard = "", soldBy = "", orderStep = "", orderMinimum = "" } = stone;
  return [stonePrice(stone), tonsPerYard, soldBy, orderStep, orderMinimum];
};

/**
 * The price of a stone, with its weight and the yard's step and minimum where it has its own.
 *
 * @example stoneWords([38, "", "cubic yard", 0.5]) // "$38.00 a cubic yard, increment 0.5 cu yd"
 */
export function stoneWords([price = "", weight = "", soldBy = "", step = "", minimum = ""]: readonly Cell[]): string {
  const number = (cell: Cell) => (typeof cell === "number" ? plainNumber(cell) : cell);
  const { unit } = soldByOf(String(soldBy));
  return [
    typeof price === "number" ? `${dollars(price)} a ${soldBy || TON.name}` : price || "(no price)",
    ...(weight === "" ? [] : [`${number(weight)} tons/cu yd`]),
    ...(step === "" ? [] : [`increment ${number(step)} ${unit}`]),
    ...(minimum === "" ? [] : [`minimum ${number(minimum)} ${unit}`]),
  ].join(", ");
}

const dollars = (value: number) => value.toLocaleString("en-US", { style: "currency", currency: "USD" });

/** Twelve digits, so that 7% doesn't show as 7.000000000000001%. */
const DIGITS = 12;

function plainNumber(value: number): string {
  return Number(value.toPrecision(DIGITS)).toLocaleString("en-US", { maximumFractionDigits: 6 });
}
