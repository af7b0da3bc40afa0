import { cutListArguments, planOf, totalLength } from "../cutLists";
import { declare } from "../declare";
import { roundedUp, shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const CUT_COUNT = worksheetFunction((...list) => planOf(...list).plan.count, ...cutListArguments);

export const cutCountDeclared = /* @__PURE__ */ declare(CUT_COUNT, {
  name: "CUT_COUNT",
  purpose: "Cut stock lengths",
  about: "The fewest stock lengths (rolls, edging) you can cut all the pieces from without joints.",
  gives: "stock lengths to buy",
  returns: "Whole stock lengths.",
  kind: "count",
  whole: true,
  rule: "The fewest stock lengths that give every piece without joints, allowing for the loss at each cut. It searches for the best plan.",
  example: "=BED.CUT_COUNT(16, A1:A6) gives 2 for 8, 7, 6, 5, 4, 2",
  source: "One-dimensional cutting stock, solved exactly by patterns of cuts (Gilmore and Gomory 1961) and search.",
  related: ["CUT_LIST", "EDGING_PIECES"],
  native: { none: "it searches for the best cut plan, which an ordinary formula can't do" },
  working: (answer, stock, lengths, counts) => {
    // The search itself can't be shown in lines; what it can't fall below can.
    const total = totalLength(lengths, counts);
    const least = roundedUp(`total ${shown(total)} ft ÷ ${shown(stock)}`, total / stock);
    return [`${least} stock lengths at least`, `searched: ${shown(answer)}`];
  },
});
