import { describe, expect, test } from "vitest";
import { customerSheet, type Quote, totalOf } from "./customerSheet";

const quote: Quote = {
  ...{
    office: "Elm Stone Co.",
    customer: "A. Reed",
    place: "12 Alder Court",
    date: "12/7/2026",
    validUntil: "1/6/2027",
  },
  beds: [
    { name: "Front", scope: "River rock, 2 in deep", price: 1203.5 },
    { name: "Back", scope: "Pea gravel, 2 in deep", price: 899.25 },
  ],
  byBed: true,
  salesTax: 0,
  notIncluded: ["Permits"],
  terms: "Half on signing",
};

const rowsOf = (change: Partial<Quote> = {}) =>
  customerSheet({ ...quote, ...change }, "letter", { row: 0, column: 0 }).formulas;
const priceOf = (label: string, change?: Partial<Quote>) => rowsOf(change).find(([first]) => first === label)?.[2];

describe("the customer's sheet", () => {
  // 1,203.50 + 899.25 = 2,102.75; with a tax of 147.19 it is 2,249.94 (by hand).
  test("has the price of each bed and their sum", () => {
    expect(priceOf("Front")).toBe(1203.5);
    expect(priceOf("Back")).toBe(899.25);
    expect(priceOf("Price")).toBe(2102.75);
  });

  test("shows one sum only where the beds are not priced apart", () => {
    const numbers = rowsOf({ byBed: false })
      .flat()
      .filter((cell) => typeof cell === "number");
    expect(numbers).toEqual([2102.75]);
    expect(rowsOf({ byBed: false }).find(([first]) => first === "Bed")?.[2]).toBe("");
  });

  test("adds the sales tax below the price", () => {
    const taxed = { salesTax: 147.19 };
    expect(priceOf("Price before tax", taxed)).toBe(2102.75);
    expect(priceOf("Sales tax", taxed)).toBe(147.19);
    expect(priceOf("Price with tax", taxed)).toBe(2249.94);
    expect(priceOf("Sales tax")).toBeUndefined();
  });

  test("says what is not included, and the terms", () => {
    const words = rowsOf().map((cells) => cells[1]);
    expect(words).toContain("Permits");
    expect(words).toContain("Half on signing");
  });
});

test("prices are added in whole cents", () => {
  expect(totalOf([{ price: 0.1 }, { price: 0.2 }])).toBe(0.3);
  expect(totalOf([])).toBe(0);
});
