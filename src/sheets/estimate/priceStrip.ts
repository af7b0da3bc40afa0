import type { Anchor } from "../plan";
import { readBlockAt } from "./readBlock";

const number = new Intl.NumberFormat("en-US", { maximumFractionDigits: 2 });
const share = new Intl.NumberFormat("en-US", { style: "percent", maximumFractionDigits: 1 });

/**
 * How the price of the block that a cell lies in comes about, from quantity to price, a step a line; for a cell in a
 * priced line, that line first.
 *
 * @param values what the sheet's used range shows.
 * @param at where that range begins.
 * @param cell a cell of the sheet.
 * @returns nothing where the cell lies in no block, or a step of it shows no number.
 */
export function priceStrip(values: readonly (readonly unknown[])[], at: Anchor, cell: Anchor): string[] {
  const block = readBlockAt(values, at, cell);
  if (!block) return [];
  const top = block.area.row - at.row;
  const left = block.area.column - at.column;
  const rows = values.slice(top, top + block.area.rows).map((row) => row.slice(left, left + block.area.columns));
  const sums = rows.find(([label]) => label === "Sums");
  const last = (label: string) => rows.findLast(([first]) => first === label)?.[1];
  const steps = [
    sums?.[4],
    sums?.[6],
    last("Overhead"),
    last("Smallest job charge"),
    last("Price"),
    last("Cost with overhead"),
  ];
  if (!steps.every((step) => typeof step === "number")) return [];
  const [cost, withMarkups, overhead, smallest, price, full] = steps as [
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const lines = lineOf(rows[cell.row - block.area.row]);
  return [
    ...lines,
    `Costs of all lines together: ${number.format(cost)}`,
    `with the markup of each line: ${number.format(withMarkups)}`,
    `and overhead ${number.format(overhead)}: ${number.format(withMarkups + overhead)}`,
    ...(smallest > withMarkups + overhead
      ? [`less than the smallest job charge, ${number.format(smallest)}, which applies`]
      : []),
    `Price: ${number.format(price)}`,
    ...(full > 0 && price > 0
      ? [
          `Over cost with overhead, ${number.format(full)}: markup ${share.format(price / full - 1)}, margin ${share.format(1 - full / price)}`,
        ]
      : []),
  ];
}

/** A priced line has quantity, unit, unit cost, cost, markup, price and a kind. */
function lineOf(row: readonly unknown[] | undefined): string[] {
  const [label, quantity, unit, unitCost, cost, markup, price, kind] = row ?? [];
  const isLine = ["material", "labor", "hauling"].includes(String(kind));
  const figures = [quantity, unitCost, cost, markup, price];
  if (!isLine || !figures.every((figure) => typeof figure === "number")) return [];
  const [amount, each, costs, added, comes] = figures as [number, number, number, number, number];
  return [
    `${label}: ${number.format(amount)} ${unit} × ${number.format(each)} = ${number.format(costs)}`,
    `and ${share.format(added)} on it: ${number.format(comes)}`,
  ];
}
