import { type FunctionKnowledge, needed, optional } from "./argument";

const cost = needed("cost", "money", { zero: true, role: "cost" });
const margin = needed("margin", "share", { zero: true, under: 1, role: "margin" });

/** The functions of money and dates. */
export const money: readonly FunctionKnowledge[] = [
  {
    name: "PRICE_MARKUP",
    gives: "price from a markup",
    kind: "money",
    rule: "Markup is a share of the cost: cost times 1 + markup.",
    arguments: [cost, needed("markup", "share", { zero: true, role: "markup" })],
  },
  {
    name: "PRICE_MARGIN",
    gives: "price from a margin",
    kind: "money",
    rule: "Margin is a share of the price: cost over 1 − margin.",
    arguments: [cost, margin],
  },
  {
    name: "MARKUP_FOR_MARGIN",
    gives: "markup that leaves a margin",
    kind: "share",
    rule: "Margin over 1 − margin.",
    arguments: [margin],
  },
  {
    name: "DIG_DATE",
    gives: "first day to dig",
    kind: "date",
    rule: "So many full working days after the day of notice, which is not counted. The utility ticket and local law rule.",
    arguments: [
      needed("notice_date", "date"),
      needed("working_days", "count"),
      optional("holidays", "date", "", { many: true }),
    ],
  },
];
