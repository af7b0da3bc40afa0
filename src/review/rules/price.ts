import type { Role } from "../../headings/roles";
import { must } from "../../quantities/must";
import { areaAddress } from "../../spreadsheet/areas";
import { type Cell, cellKey } from "../book";
import type { Pattern } from "../formula/pattern";
import { targetOfTree } from "../formula/sums";
import { calledName, factorsOf, isBinary, isCall, isNumber, isReference, type Tree, walk } from "../formula/tree";
import { fullName } from "../knowledge";
import { readBy } from "../sheet/family";
import { companion, type Measure } from "../sheet/measures";
import { asNumber, type Study } from "../study";
import { addressFrom, nameOf, percent, short } from "../words";
import { eachFormula, eachMeasure, type Observation, offBy, type Rule } from "./rule";

const COST_OF: Partial<Record<Role, Role>> = { price: "cost", "unit price": "unit cost" };

export const priceUnderCost: Rule = {
  id: "price-under-cost",
  title: "A price is below its cost",
  level: "warning",
  rank: 30,
  matters: "You lose money on this line.",
  look: (study) =>
    eachMeasure(study, (price) => {
      const role = COST_OF[price.role];
      const cost = role && companion(study, price, role);
      // Rounding down to whole money is no loss.
      if (!cost || cost.amount <= 0 || price.amount >= cost.amount - Math.min(1, cost.amount * 0.01)) return undefined;
      return isPriceOf(study, price.cell, cost.cell) ? observePriceUnderCost(price, cost) : undefined;
    }),
};

/** Whether the price follows from the cost, or would if no number was there. */
function isPriceOf(study: Study, price: Cell, cost: Cell): boolean {
  const key = cellKey(cost);
  if (study.book.targetsOf(price).some((target) => cellKey(target) === key)) return true;
  return study.outliers.some(
    ({ cell, family }) =>
      cellKey(cell) === cellKey(price) &&
      readBy(study.book, family, price).some((target) => target !== undefined && cellKey(target) === key),
  );
}

function observePriceUnderCost({ cell, amount }: Measure, cost: Measure): Observation {
  return {
    cell,
    more: [cost.cell],
    group: `${cell.sheet}:${cell.column}`,
    about: `${amount} ${cost.amount}`,
    seen: `is ${short(amount)}; its cost in ${areaAddress(cost.cell)} is ${short(cost.amount)}.`,
    todo: "Check the markup and what goes into the price.",
    rank: Math.max(10, offBy(amount, cost.amount, priceUnderCost.rank)),
  };
}

export const marginAsMarkup: Rule = {
  id: "margin-as-markup",
  title: "Markup and margin are mixed up",
  level: "error",
  rank: 20,
  matters: "Markup is a % of cost, margin a % of price: a 35% margin is a 54% markup.",
  covers: ["unlike-neighbors"],
  look: (study) =>
    eachFormula(study, (cell, pattern) =>
      pricingIn(study, pattern).flatMap((use) => observeMarginAsMarkup(study, cell, pattern, use) ?? []),
    ),
};

/** A price that a formula makes of a cost and a share, and in which way. */
interface Pricing {
  readonly way: "markup" | "margin";
  readonly share: Tree;
  /** Absent where the cost is not one part of the formula. */
  readonly cost: Tree | undefined;
}

const known = new WeakMap<Pattern, readonly Pricing[]>();

function pricingIn(study: Study, pattern: Pattern): readonly Pricing[] {
  const before = known.get(pattern);
  if (before) return before;
  const found = [...findPricing(study, pattern)];
  known.set(pattern, found);
  return found;
}

function* findPricing(study: Study, pattern: Pattern): Generator<Pricing> {
  for (const { part, around } of walk(pattern.tree ?? null)) {
    if (isCall(part)) {
      const [cost = null, share = null] = part.arguments as Tree[];
      const name = calledName(part);
      if (name === fullName(study.knowledge, "PRICE_MARKUP").toUpperCase()) yield { way: "markup", share, cost };
      if (name === fullName(study.knowledge, "PRICE_MARGIN").toUpperCase()) yield { way: "margin", share, cost };
      continue;
    }
    if (!isBinary(part)) continue;
    const isInner =
      isBinary(around.at(-1) ?? null) && /[*/]/.test((around.at(-1) as { operator?: string }).operator ?? "");
    if (/[*/]/.test(part.operator) && !isInner) yield* inProduct(part);
    if (part.operator === "+") yield* inSum(part);
  }
}

/** `cost*(1+share)` and `cost/(1-share)`. */
function* inProduct(tree: Tree): Generator<Pricing> {
  const factors = factorsOf(tree);
  for (const { factor, above } of factors) {
    if (!isBinary(factor) || (factor.operator !== "+" && factor.operator !== "-")) continue;
    const [left = null, right = null] = factor.arguments as Tree[];
    const isOne = (part: Tree) => isNumber(part) && part.value === 1;
    const share = isOne(left) ? right : isOne(right) && factor.operator === "+" ? left : undefined;
    if (share === undefined) continue;
    const others = factors.filter((other) => other.factor !== factor);
    const cost = others.length === 1 ? must(others[0]).factor : undefined;
    if (factor.operator === "+" && above) yield { way: "markup", share, cost };
    if (factor.operator === "-" && !above) yield { way: "margin", share, cost };
  }
}

/** `cost+cost*share`. */
function* inSum(tree: Tree): Generator<Pricing> {
  if (!isBinary(tree)) return;
  const [left = null, right = null] = tree.arguments as Tree[];
  for (const [cost, product] of [
    [left, right],
    [right, left],
  ] as const) {
    if (!isReference(cost) || !isBinary(product) || product.operator !== "*") continue;
    const share = product.arguments.find((one) => !(isReference(one) && one.value === cost.value));
    const has = product.arguments.some((one) => isReference(one) && one.value === cost.value);
    if (has && share) yield { way: "markup", share, cost };
  }
}

function observeMarginAsMarkup(
  study: Study,
  cell: Cell,
  pattern: Pattern,
  { way, share, cost }: Pricing,
): Observation | undefined {
  const { book } = study;
  const target = targetOfTree(book, cell, pattern, share);
  if (!target || target.rows * target.columns !== 1) return undefined;
  const name = isReference(share) && share.kind === "name" ? share.value : nameOf(book, target);
  const says = calls(name);
  if (says === undefined || says === way) return undefined;
  const shareIs = asNumber(study.valueAt(target));
  const costIs = cost ? asNumber(study.valueOf(cell, pattern, cost)) : undefined;
  const both =
    shareIs === undefined || shareIs >= 1
      ? ""
      : costIs === undefined
        ? ` A margin of ${percent(shareIs)} is a markup of ${percent(shareIs / (1 - shareIs))}.`
        : ` On ${short(costIs)} a markup of ${percent(shareIs)} makes ${short(costIs * (1 + shareIs))}, a margin of ${percent(shareIs)} makes ${short(costIs / (1 - shareIs))}.`;
  const formula = must(must(book.grids[cell.sheet]).formula(cell.row, cell.column));
  return {
    cell,
    more: [target],
    group: `${cell.sheet}:${pattern.id}`,
    about: `${pattern.relative} ${name}`,
    seen: `takes ${addressFrom(book, cell, target)} (${name}) as a ${way}: ${formula}.${both}`,
    todo:
      says === "margin"
        ? "For a margin, divide cost by 1 − margin. If it's a markup, say so in the heading."
        : "For a markup, multiply cost by 1 + markup. If it's a margin, say so in the heading.",
    rank:
      shareIs === undefined || shareIs >= 1
        ? marginAsMarkup.rank
        : Math.max(5, offBy(1 + shareIs, 1 / (1 - shareIs), 20)),
  };
}

/** Which of the two a heading, a label or a name says; undefined where it says neither, or both. */
function calls(name: string): "markup" | "margin" | undefined {
  const [margin, markup] = [/margin/i.test(name), /mark[\s-]?up/i.test(name)];
  return margin === markup ? undefined : margin ? "margin" : "markup";
}
