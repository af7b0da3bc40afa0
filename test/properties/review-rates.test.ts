import { expect, test } from "vitest";
import { type BedForm, blankForm } from "../../src/quantities/bed/form";
import { SAMPLE } from "../../src/quantities/bed/rates";
import { reviewAtOnce } from "../../src/review/review";
import { estimateBlock } from "../../src/sheets/estimate/block";
import type { Plan } from "../../src/sheets/plan";
import { ratesFrom } from "../../src/sheets/rates/ratesFrom";
import { ratesSheet } from "../../src/sheets/rates/ratesSheet";
import { cellAddress } from "../../src/spreadsheet/areas";
import { callFunction } from "../callFunction";
import { factsOf, knowledge, type SheetInput } from "../reviewWorkbook";

/*
 * A workbook with a sheet of rates and estimates of ours that follow it, as they are inserted: what is an example is
 * asked about once, where it stands, and an office that has typed its own is left in peace.
 */
const ORIGIN = { row: 0, column: 0 };
const ratesPlan = ratesSheet(ORIGIN);

const names = Object.fromEntries(
  ratesPlan.names!.map(({ name, area }) => {
    const [first, last] = [area, { row: area.row + area.rows - 1, column: area.column }].map(fixed);
    return [name, `=Rates!${first}${area.rows > 1 ? `:${last}` : ""}`];
  }),
);

function fixed(cell: { row: number; column: number }): string {
  return cellAddress(cell).replace(/([A-Z]+)(\d+)/, "$$$1$$$2");
}

const rates = ratesFrom(new Map(ratesPlan.names!.map(({ name, area }) => [name, partOf(ratesPlan, area)] as const)))!;

function partOf({ formulas }: Plan, { row, column, rows, columns }: NonNullable<Plan["names"]>[number]["area"]) {
  return formulas.slice(row, row + rows).map((cells) => cells.slice(column, column + columns));
}

const beds: BedForm[] = [
  { ...blankForm(), name: "Front walk", typed: { length: `18' 6"`, width: "5", cutAround: "6" }, rates },
  {
    ...blankForm(),
    name: "Long border",
    way: "area",
    typed: { area: "210", edge: "44", longest: "30", widest: "8", corners: "2", stone: "crushed basalt" },
    rates,
  },
];

/** The sheet of an office that has typed its own over every price, or nothing yet. */
function rateRows(isOwn: boolean): (string | number)[][] {
  return ratesPlan.formulas.map((cells) => {
    const isPriced = String(cells[3]).includes(`"${SAMPLE}"`) && typeof cells[1] === "number";
    return cells.map((cell, column) => (isOwn && isPriced && column === 1 ? Number(cell) * 1.1 : cell));
  });
}

function check(isOwn: boolean, others: readonly BedForm[] = [], rows = rateRows(isOwn)) {
  const plans = [...beds, ...others].map((form) => ({ name: form.name, plan: estimateBlock(form, ORIGIN) }));
  const sheets: SheetInput[] = [
    { name: "Rates", rows, formats: formatsOf(ratesPlan) },
    ...plans.map(({ name, plan }) => ({ name, rows: plan.formulas, formats: formatsOf(plan) })),
  ];
  return reviewAtOnce(factsOf({ sheets, names }), knowledge, { call: callFunction }).findings;
}

function formatsOf({ formats }: Plan): Record<string, string> {
  const byCell = formats.flatMap((cells, row) => cells.map((format, column) => [cellAddress({ row, column }), format]));
  return Object.fromEntries(byCell.filter(([, format]) => format !== "General"));
}

test("examples are asked about once, on the sheet of rates", () => {
  const findings = check(false);
  expect(findings.map(({ rule, where }) => `${rule} ${where.split("!")[0]}`)).toEqual(["example-rate Rates"]);
  expect(findings[0]!.seen).toMatch(/^“.*” is marked “sample” and is in use/);
});

test("an office that has typed its own is not asked, also where an estimate keeps prices of its own", () => {
  expect(check(true)).toEqual([]);
  const { rates: _, ...older } = { ...beds[1]!, name: "Of last year", typed: { ...beds[1]!.typed, rollCost: "58" } };
  expect(check(true, [older]).map(({ rule, where }) => `${rule} ${where.split("!")[0]}`)).toEqual([
    "example-rate 'Of last year'",
  ]);
});

test("in a workbook without rates the lines themselves are asked about", () => {
  const { rates: _, ...bed } = beds[0]!;
  const plan = estimateBlock(bed, ORIGIN);
  const sheets = [{ name: "Bed", rows: plan.formulas, formats: formatsOf(plan) }];
  const { findings } = reviewAtOnce(factsOf({ sheets }), knowledge, { call: callFunction });
  expect([...new Set(findings.map(({ rule }) => rule))]).toEqual(["example-rate"]);
  expect(findings.map(({ seen }) => seen).join("\n")).toMatch(/is marked “sample price” and is in use/);
});

test.each([
  ["Edging piece, length", "8 x", "error", /holds “8 x”.*can't read “8 x” as a length.*The same in 5 more cells/],
  ["Edging piece, length", "", "error", /is blank.*The same in 5 more cells/],
  ["Fabric roll width", 0.5, "overlap-sense", /holds 0\.5\. 'Front walk'!B\d+ .*laps 6 in of a roll 6 in wide/],
  ["Markup on labor", "", "error", /is blank.*The same in 9 more cells/],
  ["Markup on hauling", "16 or so", "error", /holds “16 or so”.*The same in 5 more cells/],
  ["Waste and low spots", 8, "error", /holds 8\. .*The same in 3 more cells/],
])(
  "a wrong rate, %s of “%s”, is one finding at the rate, with the cells that it reaches",
  (label, wrong, rule, seen) => {
    const rows = rateRows(true).map((cells) => (cells[0] === label ? [label, wrong, ...cells.slice(2)] : cells));
    const at = rows.findIndex(([first]) => first === label);
    const findings = check(true, [], rows);
    expect(findings.map((finding) => `${finding.rule} ${finding.where}`)).toEqual([`${rule} Rates!B${at + 1}`]);
    expect(findings[0]!.seen).toMatch(seen);
    expect(new Set(findings[0]!.related.map(({ sheet }) => sheet))).toEqual(new Set(["Front walk", "Long border"]));
  },
);
