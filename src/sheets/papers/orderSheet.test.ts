import { describe, expect, test } from "vitest";
import type { JobOrder, OrderLine } from "../../quantities/job/order";
import { figure, orderSheet } from "./orderSheet";

const head = { office: "Elm Stone Co.", job: "Alder Court", place: "", date: "12/7/2026 (Mon)", wantedBy: "" };
const none = { orderCents: 0, bedByBedCents: 0, savedCents: 0 };

const stone: OrderLine = {
  ...{ key: "stone|river rock", supplier: "stone yard", item: "River rock", specification: "1 1/4 in" },
  ...{ needed: 2.437, neededUnit: "tons", allowance: 0.181, order: 2.5, orderUnit: "tons", bedByBed: 3, saved: 0.5 },
  money: undefined,
  weightTons: 2.5,
  whereUsed: [
    { bed: "Front", needed: 1.2185, ownQuantity: 1.5, typed: false },
    { bed: "Back", needed: 1.2185, ownQuantity: 1.75, typed: true },
    { bed: "Side", needed: undefined, ownQuantity: 0.5, typed: false },
  ],
  notes: ["Ordered in one load."],
};
const pins: OrderLine = {
  ...{ key: "pins|100", supplier: "fabric and pins", item: "Pins", specification: "box of 100" },
  ...{ needed: 240, neededUnit: "pins", allowance: 0, order: 3, orderUnit: "boxes", bedByBed: 4, saved: 1 },
  money: undefined,
  whereUsed: [],
  notes: [],
};
const order: JobOrder = {
  lines: [pins, stone],
  money: none,
  unpriced: [],
  warnings: [{ line: stone.key, text: "Over the payload of one truck." }],
};

/** Rows without blank cells at their end. */
const rowsOf = (job: JobOrder) =>
  orderSheet(job, head, "letter", { row: 0, column: 0 }).formulas.map((cells) =>
    cells.slice(0, cells.findLastIndex((cell) => cell !== "") + 1),
  );
const rowOf = (first: string, job = order) => rowsOf(job).find(([cell]) => cell === first);

describe("the order sheet", () => {
  test("says what to order, what is needed, how much of it is allowance, and for which beds", () => {
    expect(rowOf("River rock")).toEqual([
      ...["River rock", "'1 1/4 in", 2.5, "tons", 2.437, "tons", 0.181],
      "Front: 1.22 tons; Back: 1.75 tons, typed; Side: 0.5 tons",
    ]);
    expect(rowOf("Pins")).toEqual(["Pins", "'box of 100", 3, "boxes", 240, "pins"]);
  });

  test("lists suppliers in the order of the work, and leaves out those with nothing to order", () => {
    const headings = rowsOf(order).flatMap(([first, second]) => (second === "Specification" ? [first] : []));
    expect(headings).toEqual(["Stone yard", "Fabric and pins"]);
  });

  test("puts notes under their line", () => {
    const rows = rowsOf(order);
    expect(rows[rows.findIndex(([first]) => first === "River rock") + 1]).toEqual(["", "Ordered in one load."]);
  });

  test("weighs only what has a weight, and repeats the warnings about trucks", () => {
    const rows = rowsOf(order);
    const weights = rows.slice(rows.findIndex(([first]) => first === "Weights") + 1);
    expect(weights.slice(0, 2)).toEqual([
      ["River rock", "'1 1/4 in", 2.5, "tons"],
      ["Check", "Over the payload of one truck."],
    ]);
    expect(weights[2]?.[0]).toBe("Limits");
  });

  test("counts pieces, boxes, and loads in whole numbers, and weighs in hundredths", () => {
    const { formulas, formats } = orderSheet(order, head, "letter", { row: 0, column: 0 });
    const formatOf = (item: string, column: number) => formats[formulas.findIndex(([cell]) => cell === item)]?.[column];
    expect([formatOf("Pins", 2), formatOf("Pins", 4)]).toEqual(["#,##0", "#,##0"]);
    expect([formatOf("River rock", 2), formatOf("River rock", 4)]).toEqual(["#,##0.00", "#,##0.00"]);
  });

  test("shows a part of a piece that someone typed as it was typed", () => {
    const half = orderSheet({ ...order, lines: [{ ...pins, order: 2.5 }] }, head, "letter", { row: 0, column: 0 });
    expect(half.formats[half.formulas.findIndex(([cell]) => cell === "Pins")]?.[2]).toBe("#,##0.00");
  });

  test("leaves the dump fee to the estimate", () => {
    const dump = { ...pins, key: "dump", supplier: "hauling", item: "Dump fee", orderUnit: "loads" } as const;
    expect(rowOf("Dump fee", { ...order, lines: [pins, dump] })).toBeUndefined();
    expect(rowOf("Hauling", { ...order, lines: [pins, dump] })).toBeUndefined();
  });

  test("leaves a blank to write in where a fact is not known, and prints landscape", () => {
    expect(rowOf("From")).toEqual(["From", "Elm Stone Co."]);
    expect(rowOf("Deliver to")).toEqual(["Deliver to"]);
    const { page } = orderSheet(order, head, "a4", { row: 0, column: 0 });
    expect(page).toMatchObject({ paper: "a4", landscape: true, headingRows: 1 });
  });
});

test.each([
  [1.2185, "1.22"],
  [0.5, "0.5"],
  [3, "3"],
  [0.004, "0"],
])("the figure %d is written %s", (value, text) => {
  expect(figure(value)).toBe(text);
});
