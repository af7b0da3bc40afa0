import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { countsInPlan } from "../../src/layout/planOfEstimate";
import { writeCopy } from "../../src/pane/copy/makeCopy";
import { readSource } from "../../src/pane/copy/source";
import { readJob } from "../../src/pane/papers/readJob";
import { estimateBed } from "../../src/quantities/bed/estimate";
import { blankForm } from "../../src/quantities/bed/form";
import { readForm } from "../../src/quantities/bed/read";
import { EDGING_KINDS } from "../../src/quantities/edgingKinds";
import { must } from "../../src/quantities/must";
import { SOLD_BY } from "../../src/quantities/soldBy";
import { cellAround, explain } from "../../src/review/explain/explain";
import { reviewAtOnce } from "../../src/review/review";
import { fitList } from "../../src/sheets/jobRows/fit";
import type { ResultRole } from "../../src/sheets/jobRows/roles";
import { offeredFor } from "../../src/sheets/jobRows/wanted";
import { ratesSheet } from "../../src/sheets/rates/ratesSheet";
import { cellAddress } from "../../src/spreadsheet/areas";
import { insertPlan } from "../../src/workbook/change/insert";
import { readListSheet, writeRows } from "../../src/workbook/jobRows";
import { readWorkbook } from "../../src/workbook/read/workbook";
import { callFunction } from "../callFunction";
import type { HeadlessHost } from "../headlessHost";
import { fillOf, fitOf, listSheet, officeOf, type Rows } from "../listSheets";
import { createProductHost } from "../productHost";
import { resultsOf } from "../resultsOf";
import { knowledge } from "../reviewWorkbook";

/*
 * A list of beds that says what each is edged with or what its stone is sold by, through its formulas, its beds in a
 * job, Explain, the check, and a plain copy: a row has what the estimate of the same bed has.
 */

const KINDS = EDGING_KINDS.map(({ name }) => name);
/** As people type them; a blank is metal. */
const TYPED = [...KINDS, "", " Spade-Cut", "PAVERS"];
const kindOf = (typed: string) => typed.trim().toLowerCase().replace("-", " ") || "metal";
const DEPTH_IN = 3;
/** With 10 ft of width, 56 ft of edging: just seven timbers, which butt, and eight if they lapped. */
const LENGTH_FT = 36;
const HEADINGS = {
  square: ["Bed", "Length, ft", "Width, ft", "Depth, in", "Edging kind"],
  rounded: ["Bed", "Length, ft", "Width, ft", "Depth, in", "Edging kind", "Corner radius, ft", "Rounded corners"],
} as const;
type Corners = keyof typeof HEADINGS;
const bedAt = (index: number) => `Bed ${index + 1}`;

/** The estimate of a row's bed. Stone 3 in deep reaches half an inch below the top of the edging, or below the ground. */
function estimateOf(typed: string, corners: Corners) {
  const kind = must(EDGING_KINDS.find(({ name }) => name === kindOf(typed)));
  const trench = Number(kind.usual.trenchDepth ?? "1.5");
  const height = String(DEPTH_IN + 0.5 + trench - (kind.inSand ? 1 : 0));
  const form = {
    ...blankForm(),
    typed: {
      ...{ length: String(LENGTH_FT), width: "10", edgingKind: kind.name },
      ...(kind.lines.edging ? { borderHeight: height } : { scrapeDepth: String(DEPTH_IN + 0.5) }),
      ...(corners === "rounded" && { cornerRadius: "2", roundedCorners: "2" }),
    },
  };
  const { bed, problems } = readForm(form);
  if (!bed) throw new Error(problems.map(({ message }) => message).join(" "));
  return estimateBed(bed, countsInPlan(bed));
}

interface Filled {
  readonly host: HeadlessHost;
  readonly value: (role: ResultRole, index: number) => unknown;
  readonly address: (role: ResultRole, index: number) => string;
  readonly roles: readonly ResultRole[];
}

/** Fills a list with every result that it can have. */
async function filled(rows: Rows): Promise<Filled> {
  const host = await createProductHost(officeOf(rows));
  await insertPlan(ratesSheet, { kind: "new sheet", name: "Rates" });
  await Excel.run(async (context) => {
    context.workbook.worksheets.getItem("List").activate();
    await context.sync();
  });
  const { sheet, selection } = await readListSheet();
  const fit = must(fitList(sheet, selection));
  const results = offeredFor((role) => fit.columns.some((column) => column.role === role));
  const { changes, columns, troubles, skipped } = fillOf(fit, { results });
  expect([troubles, skipped]).toEqual([[], []]);
  await writeRows(fit, changes);
  await host.grid.settled();
  const places = new Map(columns.map(({ role, column }) => [role, column]));
  const address = (role: ResultRole, index: number) => cellAddress({ row: index + 1, column: must(places.get(role)) });
  const value = (role: ResultRole, index: number) => host.value(`List!${address(role, index)}`);
  return { host, address, value, roles: [...places.keys()] };
}

describe.each<Corners>(["square", "rounded"])("a list of beds with %s corners and a column of edging", (corners) => {
  let list: Filled;
  beforeAll(async () => {
    const rows = TYPED.map((typed, index) => [
      ...[bedAt(index), LENGTH_FT, 10, DEPTH_IN, typed],
      ...(corners === "rounded" ? [2, 2] : []),
    ]);
    list = await filled([HEADINGS[corners], ...rows]);
  });
  afterAll(() => list.host.dispose());

  test.each(TYPED.map((typed, index) => [typed, index] as const))(
    "has in the row of “%s” what its estimate has",
    (typed, index) => {
      const estimate = estimateOf(typed, corners);
      const { lines } = must(EDGING_KINDS.find(({ name }) => name === kindOf(typed)));
      const { materialCost, ...wanted } = { ...resultsOf(estimate), sand: estimate.amounts.sandOrder };
      for (const [role, amount] of Object.entries(wanted))
        expect(list.value(role as ResultRole, index), role).toBeCloseTo(amount, 6);
      // The office has a price for pieces of metal, and an edge without pieces needs none.
      if (!lines.edging || kindOf(typed) === "metal") {
        expect(list.value("materialCost", index)).toBeCloseTo(materialCost, 6);
        expect(list.value("price", index)).toBeCloseTo(estimate.price, 6);
      } else {
        expect(list.value("materialCost", index)).toBe("no rate");
        expect(list.value("price", index)).toBe("no rate");
      }
    },
  );

  test("has beds in a job that say the same, with nothing to note", async () => {
    const { beds } = await readJob();
    expect(beds.map(({ block, notes, problem }) => [block.name, notes, problem])).toEqual(
      TYPED.map((_, index) => [bedAt(index), [], undefined]),
    );
    beds.forEach(({ worked, block }, index) => {
      const typed = must(TYPED[index]);
      const { amounts, lines } = estimateOf(typed, corners);
      expect(worked!.estimate.amounts).toEqual(
        Object.fromEntries(Object.entries(amounts).map(([key, amount]) => [key, expect.closeTo(amount, 6)])),
      );
      expect(block.lines.map(({ label, quantity }) => [label, quantity])).toEqual(
        lines.map(({ label, amount }) => [label, expect.closeTo(amount, 6)]),
      );
    });
  });

  test("is explained, and the check finds nothing wrong with it", async () => {
    const facts = await checkedFacts();
    for (const role of ["border", "pieces", "stakes", "sand", "dig"] as const) {
      TYPED.forEach((_, index) => {
        const formula = String(list.host.formula(`List!${list.address(role, index)}`));
        const column = HEADINGS[corners].length + list.roles.indexOf(role);
        const around = cellAround(facts, { sheet: "List", row: index + 1, column }, knowledge, callFunction);
        const result = must(explain(formula, around)).result ?? "";
        expect(Number.parseFloat(result.replaceAll(",", "")), `${role} ${index}`).toBeCloseTo(
          Number(list.value(role, index)),
          2,
        );
      });
    }
  });

  test("has the same numbers in a plain copy, kind by kind", () => holdsInPlainCopy(list, TYPED.length));
});

const UNITS = [...SOLD_BY.map(({ name }) => name), "", "Cubic-Yard "];
const unitOf = (typed: string) =>
  must(SOLD_BY.find(({ name }) => name === (typed.trim().toLowerCase().replace("-", " ") || "ton")));

describe("a list of beds with a column of what stone is sold by", () => {
  const headings = ["Bed", "Length, ft", "Width, ft", "Stone sold by"];
  let list: Filled;
  beforeAll(async () => {
    list = await filled([headings, ...UNITS.map((typed, index) => [bedAt(index), 30, 10, typed])]);
  });
  afterAll(() => list.host.dispose());
  const estimates = UNITS.map((typed) => {
    const form = { ...blankForm(), typed: { length: "30", width: "10", soldBy: unitOf(typed).name } };
    return estimateBed(must(readForm(form).bed));
  });

  test("has nothing that the check finds wrong", () => checkedFacts());

  test.each(UNITS.map((typed, index) => [typed, index] as const))(
    "has in the row of “%s” the order, its tons, and its price as its estimate has them",
    async (typed, index) => {
      const { amounts, ...estimate } = must(estimates[index]);
      const { materialCost, ...wanted } = { ...resultsOf({ amounts, ...estimate }), orderSold: amounts.stoneOrder };
      for (const [role, amount] of Object.entries(wanted))
        expect(list.value(role as ResultRole, index), role).toBeCloseTo(amount, 6);
      const { usual } = unitOf(typed);
      if (usual.stoneCost !== undefined) {
        // The office's prices are by the ton, so that of a yard or a bag is typed.
        const none = (["soldPrice", "materialCost", "price"] as const).map((role) => list.value(role, index));
        expect(none).toEqual(["no rate", "no rate", "no rate"]);
        await list.host.type({ [`List!${list.address("soldPrice", index)}`]: Number(usual.stoneCost) });
        await list.host.grid.settled();
      }
      expect(list.value("materialCost", index)).toBeCloseTo(materialCost, 6);
      expect(list.value("price", index)).toBeCloseTo(estimate.price, 6);
    },
  );

  test("has beds in a job that order the same, with nothing to note", async () => {
    const { beds } = await readJob();
    expect(beds.map(({ block, notes, problem }) => [block.name, notes, problem])).toEqual(
      UNITS.map((_, index) => [bedAt(index), [], undefined]),
    );
    beds.forEach(({ block }, index) => {
      const lines = must(estimates[index]).lines.map(({ label, unit, amount }) => [
        ...[label, unit, expect.closeTo(amount, 6)],
      ]);
      expect(block.lines.map(({ label, unit, quantity }) => [label, unit, quantity])).toEqual(lines);
    });
    // What is in the column of the order counts, whatever its measurements come to.
    await list.host.type({ [`List!${list.address("orderSold", 1)}`]: 9 });
    await list.host.grid.settled();
    const [, yards] = (await readJob()).beds;
    expect(yards!.block.lines.find(({ key }) => key === "stoneLine")?.quantity).toBe(9);
    expect(yards!.notes?.join(" ")).toContain("Stone to order, as sold: 9 in the row");
  });

  test("is explained, and has the same numbers in a plain copy", async () => {
    const { facts } = await readWorkbook();
    for (const role of ["orderSold", "order"] as const) {
      UNITS.forEach((_, index) => {
        const formula = list.host.formula(`List!${list.address(role, index)}`);
        if (!String(formula).startsWith("=")) return;
        const column = headings.length + list.roles.indexOf(role);
        const around = cellAround(facts, { sheet: "List", row: index + 1, column }, knowledge, callFunction);
        const result = must(explain(String(formula), around)).result ?? "";
        expect(Number.parseFloat(result), `${role} ${index}`).toBeCloseTo(Number(list.value(role, index)), 2);
      });
    }
    await holdsInPlainCopy(list, UNITS.length);
  });
});

/** What was read of the workbook, in whose list the check finds nothing wrong. */
async function checkedFacts() {
  const { facts } = await readWorkbook();
  const sheets = facts.sheets.filter(({ name }) => name === "List");
  const { findings } = reviewAtOnce({ ...facts, sheets }, knowledge, { call: callFunction });
  // It asks about the dig notice and cleanup of any list.
  const wrong = findings.filter(({ rule }) => rule !== "missing");
  expect(wrong.map(({ rule, where }) => `${rule} ${where}`)).toEqual([]);
  return facts;
}

async function holdsInPlainCopy(list: Filled, beds: number): Promise<void> {
  await Excel.run(async (context) => {
    context.workbook.worksheets.getItem("List").activate();
    await context.sync();
  });
  const written = await writeCopy(await readSource("sheet"), "formulas", { kind: "new sheet" });
  if (!written.done) throw new Error("a new sheet is free");
  await list.host.grid.settled();
  for (const role of list.roles) {
    for (let index = 0; index < beds; index += 1) {
      const copied = list.host.value(`'${written.sheetName}'!${list.address(role, index)}`);
      const shown = list.value(role, index);
      if (typeof shown === "number") expect(copied, `${role} ${index}`).toBeCloseTo(shown, 6);
      else expect(copied, `${role} ${index}`).toBe(shown);
    }
  }
}

test.each([
  ["Sold by", ["ton", "bag"], "soldBy"],
  ["Stone sold by", ["Cubic yard", "sack"], "soldBy"],
  ["Sold by", ["Ann", "Bob"], undefined],
])("a column that says “%s” is what stone is sold by where it holds such units", (heading, cells, role) => {
  const rows = cells.map((cell, index) => [bedAt(index), 30, 10, cell]);
  const fit = fitOf(listSheet([["Bed", "Length, ft", "Width, ft", heading], ...rows]));
  expect(fit.columns[3]?.role).toBe(role);
  const whys = fillOf(fit, { results: ["order"] }).skipped.map(({ why }) => why);
  expect(whys).toEqual(
    cells.includes("sack") ? ["Stone sold by: “sack” isn't in the list. Did you mean “bulk bag”?"] : [],
  );
});

test.each([
  ["says “Edging” above the names", "Edging", ["timber", "none", ""], "edgingKind"],
  ["holds lengths below that", "Edging", [40, 50, 60], "border"],
  ["holds other words, too", "Edging", ["timber", "see plan", ""], "border"],
])("a column that %s is taken for what it holds", (_, heading, cells, role) => {
  const rows = cells.map((cell, index) => [bedAt(index), 30, 10, cell]);
  const { columns } = fitOf(listSheet([["Bed", "Length, ft", "Width, ft", heading], ...rows]));
  const last = must(columns[3]);
  // Words below a heading of lengths are asked about.
  expect(last.role ?? last.asks[0]).toBe(role);
});

test("where no edging stands above the ground, stone is as deep as a scrape that a column says, less the gap", () => {
  const rows = [
    ["Bed", "Length, ft", "Width, ft", "Scrape depth, in", "Edging kind"],
    ["Walk", 30, 10, 4, "none"],
    ["Wall", 30, 10, 4, "timber"],
  ];
  const { changes } = fillOf(fitOf(listSheet(rows)), { results: ["yards"] });
  const NO_TOP = 'OR(SUBSTITUTE(TRIM(E2),"-"," ")="spade cut",TRIM(E2)="none")';
  expect(String(changes.at(-2)?.after)).toContain(`IF(${NO_TOP},BED.INCHES(D2)-0.5,"no such edging")`);
});

describe("a kind that isn't in the table", () => {
  const rows = [
    [...HEADINGS.square],
    ["Walk", 30, 10, DEPTH_IN, "pavrs"],
    ["Wall", 30, 10, DEPTH_IN, "brick"],
    ["Tree", 30, 10, DEPTH_IN, "timber"],
  ];

  test("is said with the nearest one, and its row is left alone", () => {
    const { beds, skipped } = fillOf(fitOf(listSheet(rows)), { results: ["pieces"] });
    expect(beds.map(({ row }) => row)).toEqual([3]);
    expect(skipped.map(({ kind, why }) => `${kind}: ${why}`)).toEqual([
      "short: Edging kind: “pavrs” isn't in the list. Did you mean “pavers”?",
      "short: Edging kind: “brick” isn't in the list. Did you mean “pavers”?",
    ]);
  });
});
