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
  purpose: "Cut from stock lengths",
  about: "How to cut all the pieces from the fewest stock lengths: a row for each, with what is left over.",
  gives: "a plan of cuts",
  returns: 'A heading row, then stock, cuts and what is left over, in feet; "at least" where fewer might do.',
  kind: "list",
  rule: "The fewest stock lengths from which all pieces can be cut without joints, each cut taking its loss; searched, not guessed.",
  example: "=INDEX(BED.CUT_LIST(16, A1:A6), 2, 2) gives 7 for 8, 7, 6, 5, 4, 2",
  source: "One-dimensional cutting stock, solved exactly by patterns of cuts (Gilmore and Gomory 1961) and search.",
  related: ["CUT_COUNT", "FABRIC_CUTS"],
  native: { none: "the best way to cut is searched for, which no arithmetic does" },
});
