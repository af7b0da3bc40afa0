import { describe, expect, test } from "vitest";
import { type BedForm, blankForm, textOf } from "../quantities/bed/form";
import type { NamedCells } from "../sheets/rates/ratesFrom";
import { ratesFrom } from "../sheets/rates/ratesFrom";
import { ratesSheet } from "../sheets/rates/ratesSheet";
import { listChoices, listChosen } from "./listChoices";

const { formulas, names } = ratesSheet({ row: 0, column: 0 });
/** A cell's text without its text mark. */
const shown = (content: string | number) => (typeof content === "string" ? content.replace(/^'/, "") : content);
const cells = new Map<string, NamedCells>(
  names!.map(({ name, area: { row, column, rows, columns } }) => [
    name,
    formulas.slice(row, row + rows).map((line) => line.slice(column, column + columns).map(shown)),
  ]),
);
const mark = (whose: string) => cells.get("Whose_edging_names")!.map(() => [whose]);
/** A bed in a workbook whose single edging price is 31, and whose list still has its sample rows. */
const form = (typed: BedForm["typed"] = {}): BedForm => ({
  ...blankForm(),
  typed,
  rates: ratesFrom(new Map([...cells, ["Whose_edging_names", mark("sample")], ["Rate_border_piece", [[31]]]]))!,
});

describe("the choices of edging in a workbook with a list of it", () => {
  const choices = listChoices(form(), "edging")!;

  test("are its rows by name, and say which are samples", () => {
    expect(choices.map(({ label }) => label).slice(0, 2)).toEqual([
      "From Rates",
      "Steel, 4 in, 8 ft pieces, from Rates (sample)",
    ]);
  });

  test("put no figure in the place of the office's own", () => {
    expect(textOf(form(), "pieceCost")).toBe("31");
    for (const { fills } of choices)
      expect(Object.entries(fills).filter(([key, text]) => key !== "edgingProduct" && text !== undefined)).toEqual([]);
  });

  test("are known again by the name, until a figure is typed for the bed", () => {
    expect(listChosen(form(), "edging")).toBe(0);
    expect(listChosen(form({ edgingProduct: "steel, 6 IN, 10 ft pieces" }), "edging")).toBe(2);
    expect(listChosen(form({ edgingProduct: "Nothing of ours" }), "edging")).toBeUndefined();
    expect(listChosen(form({ pieceCost: "33" }), "edging")).toBeUndefined();
  });

  test("aren't there without the list", () => {
    expect(listChoices(blankForm(), "edging")).toBeUndefined();
  });
});
