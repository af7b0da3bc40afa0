import { expect, test } from "vitest";
import { contentsOf } from "./contents";
import type { Template } from "./template";

const template: Template = {
  format: "bedrow-template",
  version: 1,
  name: "Two lines",
  rows: 4,
  columns: 4,
  widths: [20, 10, 10, 10],
  cells: [
    { at: "A1", text: "Line" },
    { at: "B1", text: "Quantity" },
    { at: "C1", text: "Unit cost" },
    { at: "D1", text: "Waste" },
    { at: "A2", text: "Stone" },
    { at: "B2", text: `18' 6"` },
    { at: "C2", number: 62 },
    { at: "D2", number: 0.08 },
    { at: "A3", text: "Markup on labor" },
    { at: "B3", number: 0.35 },
    { at: "A4", formula: "=BED.FEET(B2)*sum(C2:C3)*(1+Rate_waste)+rate_waste*Rates!$B$2" },
    { at: "B4", formula: "=_xlfn.XLOOKUP(A2,A2:A3,Rates!b2:b2)" },
    { at: "D4", text: "river rock" },
  ],
  looks: [{ at: ["D2", "B3"], numberFormat: "0.0%" }],
  choices: [{ at: "D4", names: ["river rock", "pea gravel"] }],
  outside: [{ reads: "Rates!$B$2", opened: "ask", value: 3 }],
};

test("a template tells its prices apart from its other inputs, each by its row and column", () => {
  const { prices, inputs } = contentsOf(template);
  expect(prices).toEqual([
    { at: "C2", label: "Stone, Unit cost", shows: "62" },
    { at: "B3", label: "Markup on labor", shows: "35%" },
  ]);
  expect(inputs).toEqual([
    { at: "B2", label: "Stone", shows: `18' 6"` },
    { at: "D2", label: "Stone, Waste", shows: "8%" },
    { at: "D4", label: "Waste", shows: "river rock" },
  ]);
});

test("it names the functions, the rates and what is read outside, and in how many formulas", () => {
  expect(contentsOf(template)).toMatchObject({
    formulas: 2,
    functions: ["BED.FEET", "SUM", "XLOOKUP"],
    rates: [{ name: "Rate_waste", formulas: 1 }],
    outside: [{ reads: "Rates!$B$2", opened: "ask", value: 3, formulas: 2 }],
  });
});
