import type { Role } from "../../headings/roles";
import { areaAddress } from "../../spreadsheet/areas";
import type { Cell } from "../book";
import { cellKey } from "../book";
import { readBy } from "../sheet/family";
import { companion, type Measure } from "../sheet/measures";
import type { Study } from "../study";
import { nameOf, short } from "../words";
import { eachMeasure } from "./each";
import { type Observation, offBy, type Rule } from "./rule";

const COST_OF: Partial<Record<Role, Role>> = { price: "cost", "unit price": "unit cost" };

export const priceUnderCost: Rule = {
  id: "price-under-cost",
  title: "A price is lower than its cost",
  level: "odd",
  rank: 30,
  matters: "The line is sold at a loss.",
  look: (study) =>
    eachMeasure(study, (price) => {
      const role = COST_OF[price.role];
      const cost = role && companion(study, price, role);
      // Rounding down to whole money is no loss.
      if (!cost || cost.amount <= 0 || price.amount >= cost.amount - Math.min(1, cost.amount * 0.01)) return undefined;
      return isPriceOf(study, price.cell, cost.cell) ? observe(study, price, cost) : undefined;
    }),
};

/** Whether the price follows from the cost, or would if no number stood there. */
function isPriceOf(study: Study, price: Cell, cost: Cell): boolean {
  const key = cellKey(cost);
  if (study.book.targetsOf(price).some((target) => cellKey(target) === key)) return true;
  return study.outliers.some(
    ({ cell, family }) =>
      cellKey(cell) === cellKey(price) &&
      readBy(study.book, family, price).some((target) => target !== undefined && cellKey(target) === key),
  );
}

function observe(study: Study, { cell, amount }: Measure, cost: Measure): Observation {
  return {
    cell,
    more: [cost.cell],
    group: `${cell.sheet}:${cell.column}`,
    about: `${amount} ${cost.amount}`,
    seen: `${areaAddress(cell)} (${nameOf(study.book, cell)}) is ${short(amount)}; its cost in ${areaAddress(cost.cell)} is ${short(cost.amount)}.`,
    todo: "Check the markup and what the price is made of.",
    rank: Math.max(10, offBy(amount, cost.amount, priceUnderCost.rank)),
  };
}
