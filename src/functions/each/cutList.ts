import { cutListArguments, cutRows, planOf } from "../cutLists";
import { declare } from "../declare";
import { worksheetList } from "../worksheetFunction";

export const CUT_LIST = worksheetList(
  (...list) => {
    const { plan, lengthsFt } = planOf(...list);
    return cutRows(plan, lengthsFt);
  },
  ...cutListArguments,
);

export const cutListDeclared = /* @__PURE__ */ declare(CUT_LIST, {
  name: "CUT_LIST",
  purpose: "Cut stock lengths",
  about: "Cut list for the fewest stock lengths: one row per stock length, with what's left over.",
  gives: "a cut list",
  returns: 'A heading row, then stock, cuts, and leftover in feet; "at least" where fewer might do.',
  kind: "list",
  rule: "The fewest stock lengths that give every piece without joints, allowing for the loss at each cut. It searches for the best plan.",
  example: "=INDEX(BED.CUT_LIST(16, A1:A6), 2, 2) gives 7 for 8, 7, 6, 5, 4, 2",
  source: "One-dimensional cutting stock, solved exactly by patterns of cuts (Gilmore and Gomory 1961) and search.",
  related: ["CUT_COUNT", "FABRIC_CUTS"],
  native: { none: "it searches for the best cut plan, which an ordinary formula can't do" },
});
