import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { countsInPlan } from "../../src/layout/planOfEstimate";
import { writeCopy } from "../../src/pane/copy/makeCopy";
import { readSource } from "../../src/pane/copy/source";
import { readJob } from "../../src/pane/papers/readJob";
import { estimateBed } from "../../src/quantities/bed/estimate";
import { exampleStonePrices } from "../../src/quantities/bed/examples";
import type { FieldKey } from "../../src/quantities/bed/fields";
import { blankForm } from "../../src/quantities/bed/form";
import { listSamples } from "../../src/quantities/bed/listSamples";
import { listOf } from "../../src/quantities/bed/officeLists";
import { rateNames, stoneListNames, stoneUnitNames } from "../../src/quantities/bed/rates";
import { readForm } from "../../src/quantities/bed/read";
import { EDGING_KINDS } from "../../src/quantities/edgingKinds";
import { must } from "../../src/quantities/must";
import { SOLD_BY } from "../../src/quantities/soldBy";
import { readTape } from "../../src/quantities/tape";
import { cellAround, explain } from "../../src/review/explain/explain";
import { reviewAtOnce } from "../../src/review/review";
import { fitList } from "../../src/sheets/jobRows/fit";
import { isMeasure, type ProductNames } from "../../src/sheets/jobRows/listSheet";
import type { ResultRole } from "../../src/sheets/jobRows/roles";
import { offeredFor } from "../../src/sheets/jobRows/wanted";
import { ratesSheet } from "../../src/sheets/rates/ratesSheet";
import { cellAddress } from "../../src/spreadsheet/areas";
import { insertPlan } from "../../src/workbook/change/insert";
import { readListSheet, writeRows } from "../../src/workbook/jobRows";
import { readRates } from "../../src/workbook/read/rates";
import { readWorkbook } from "../../src/workbook/read/workbook";
import { blockAddress } from "../blockAddress";
import { callFunction } from "../callFunction";
import type { HeadlessHost } from "../headlessHost";
import { rateAddress } from "../insertRates";
import { fillOf, fitOf, listSheet, officeOf, type Rows } from "../listSheets";
import { createProductHost } from "../productHost";
import { paneEstimate } from "../ratesBench";
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

/** Rows that an office adds to its list of stone: name, price, unit, step, minimum, and weight. */
function ownStones(stones: Rows): Record<string, string | number> {
  const { kinds, prices, units, steps, minimums, weights } = stoneListNames;
  const cells = stones.flatMap((stone, row) =>
    [kinds, prices, units, steps, minimums, weights].map((name, column) => [
      // Below the samples.
      `Rates!${blockAddress(rateAddress(name), exampleStonePrices.length + row)}`,
      stone[column] ?? "",
    ]),
  );
  return Object.fromEntries(cells);
}

/** Fills a list with every result that it can have, by rates to which an office may have added rows of its own. */
async function filled(rows: Rows, ownRates: Readonly<Record<string, string | number>> = {}): Promise<Filled> {
  const host = await createProductHost(officeOf(rows));
  await insertPlan(ratesSheet, { kind: "new sheet", name: "Rates" });
  await host.type(ownRates);
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

/** An office's own edging and fabric, below the samples of its Rates sheet; what is left out is blank. */
const PRODUCTS: Readonly<Record<"edging" | "fabric", readonly Readonly<Partial<Record<FieldKey, string | number>>>[]>> =
  {
    edging: [
      {
        edgingProduct: "Poly, 20 ft",
        pieceCost: 31.5,
        pieceLength: 20,
        stakesPerPiece: 6,
        stakeCost: 1.75,
        trenchDepth: 3,
      },
      { edgingProduct: "Cobble, 8 in", pieceCost: 1.1, pieceLength: "8 in", trenchDepth: 1.25 },
      { edgingProduct: "Pine, 10 ft", pieceCost: 36, pieceLength: 10, stakeCost: 1.4, trenchDepth: 2 },
      { edgingProduct: "Poly, no sizes", pieceCost: 22, stakeCost: 2 },
    ],
    fabric: [
      { fabricProduct: "3 ft woven", rollCost: 71, rollWidth: 3, rollLength: 20 },
      { fabricProduct: "No sizes" },
    ],
  };
const ownProducts = Object.fromEntries(
  (["edging", "fabric"] as const).flatMap((list) => {
    const { picks, names, columns } = listOf(list);
    return PRODUCTS[list].flatMap((row, index) =>
      Object.entries(row).map(([key, content]) => {
        const cells = key === picks ? names : must(columns[key as FieldKey]);
        return [`Rates!${blockAddress(rateAddress(cells), listSamples[list].length + index)}`, content];
      }),
    );
  }),
);

/** Each with its edging kind, its edging product, and its fabric product. */
const NAMED: readonly (readonly [kind: string, edging: string, fabric: string])[] = [
  ["plastic", "Poly, 20 ft", ""],
  ["pavers", "Cobble, 8 in", ""],
  ["timber", "Pine, 10 ft", "3 ft woven"],
  ["", " poly,  20 FT", ""],
  ["plastic", "Poly, no sizes", "No sizes"],
  ["metal", "usual", "Usual"],
  ["none", "Poly, 20 ft", "4 ft × 100 ft"],
  ["spade cut", "Pine, 10 ft", ""],
  ["plastic", "", ""],
];
const UNPRICED = NAMED.length - 1;

describe.each<Corners>(["square", "rounded"])("a list of beds with %s corners and columns of products", (corners) => {
  const headings = [...HEADINGS[corners], "Edging product", "Fabric product"];
  let list: Filled;
  beforeAll(async () => {
    const rows = NAMED.map(([kind, edging, fabric], index) => [
      ...[bedAt(index), 20, 10, DEPTH_IN, kind],
      ...(corners === "rounded" ? [2, 2] : []),
      ...[edging, fabric],
    ]);
    list = await filled([headings, ...rows], ownProducts);
  });
  afterAll(() => list.host.dispose());

  /** The estimate of a row's bed, its depth of stone as in the column. */
  async function namedEstimate(index: number) {
    const [typed, edgingProduct, fabricProduct] = must(NAMED[index]);
    const kind = must(EDGING_KINDS.find(({ name }) => name === kindOf(typed)));
    const product = PRODUCTS.edging.find((row) => row.edgingProduct === (index === 3 ? "Poly, 20 ft" : edgingProduct));
    const trench = Number(product?.trenchDepth ?? kind.usual.trenchDepth ?? "1.5");
    const height = String(DEPTH_IN + 0.5 + trench - (kind.inSand ? 1 : 0));
    const { rates } = (await readRates())!;
    return paneEstimate({
      ...blankForm(),
      rates,
      typed: {
        ...{ length: "20", width: "10", edgingKind: kind.name, fabricProduct: fabricProduct || "usual" },
        ...(kind.lines.edging
          ? { borderHeight: height, edgingProduct: edgingProduct || "usual" }
          : { scrapeDepth: String(DEPTH_IN + 0.5) }),
        ...(corners === "rounded" && { cornerRadius: "2", roundedCorners: "2" }),
      },
    });
  }

  test.each(NAMED.map(([kind, edging, fabric], index) => [kind || "no kind", edging, fabric, index] as const))(
    "has in the row of %s, “%s”, and “%s” what its estimate has",
    async (_kind, _edging, _fabric, index) => {
      const estimate = await namedEstimate(index);
      const { materialCost, ...wanted } = { ...resultsOf(estimate), sand: estimate.amounts.sandOrder };
      for (const [role, amount] of Object.entries(wanted))
        expect(list.value(role as ResultRole, index), role).toBeCloseTo(amount, 6);
      const costs = [list.value("materialCost", index), list.value("price", index)];
      if (index === UNPRICED) expect(costs).toEqual(["no rate", "no rate"]);
      else expect(costs).toEqual([expect.closeTo(materialCost, 6), expect.closeTo(estimate.price, 2)]);
    },
  );

  test("has nothing that the check finds wrong", () => checkedFacts());

  test("has beds in a job that say the same, with nothing to note", async () => {
    const { beds } = await readJob();
    expect(beds.map(({ block, notes, problem }) => [block.name, notes, problem])).toEqual(
      NAMED.map((_, index) => [bedAt(index), [], undefined]),
    );
    for (const [index, { block }] of beds.entries()) {
      const { lines } = await namedEstimate(index);
      expect(block.lines.map(({ label, quantity, unitCost }) => [label, quantity, unitCost])).toEqual(
        lines.map(({ label, amount, unitCost }) => [label, expect.closeTo(amount, 6), unitCost]),
      );
    }
  });

  test("has the same numbers in a plain copy", () => holdsInPlainCopy(list, NAMED.length));
});

describe("the products that rows name", () => {
  const headings = ["Bed", "Length, ft", "Width, ft", "Depth, in", "Edging kind", "Edging product", "Fabric product"];
  let list: Filled;
  beforeAll(async () => {
    const rows = NAMED.map(([kind, edging, fabric], index) => [bedAt(index), 20, 10, DEPTH_IN, kind, edging, fabric]);
    list = await filled([headings, ...rows], ownProducts);
  });
  afterAll(() => list.host.dispose());
  const shown = (index: number, roles: readonly ResultRole[]) => roles.map((role) => list.value(role, index));

  // By hand. 20 ft with two ends of 10 ft is 40 ft of edging. 200 sq ft 3 in deep with 8% is 2 cu yd, 2.7 tons, so 3 tons
  // at $62, and 105 pins are 2 boxes at $18: $222 of stone and pins. Fabric of 6 ft by 50 ft is one roll at $64.
  test.each([
    // 40 / 20 = 2 pieces at $31.50. Every 48 in, 40 ft takes 11 stakes, and 2 corners 2 more: 1 beyond 2 × 6, at $1.75.
    ["plastic in 20-ft pieces", 0, { pieces: 2, stakes: 1, rolls: 1, materialCost: 222 + 2 * 31.5 + 1.75 + 64 }],
    // (480 + 1/8) / (8 + 1/8) = 59.1, so 60 at $1.10. Sand, 40 ft × 8 in × 1 in = 0.08 cu yd: a quarter yard at $48.
    ["pavers of 8 in", 1, { pieces: 60, stakes: 0, sand: 0.25, rolls: 1, materialCost: 222 + 60 * 1.1 + 12 + 64 }],
    // 4 timbers at $36. Every 48 in of 10 ft is 3 spaces, so 4 spikes each at $1.40. Rolls of 3 ft cover 3 + 2.5 + 2.5 +
    // 2.5 ft with 6 in of overlap: 4 strips of 20 ft, each a roll at $71. 125 pins are 2 boxes, too.
    ["timber of 10 ft", 2, { pieces: 4, stakes: 16, rolls: 4, materialCost: 222 + 4 * 36 + 16 * 1.4 + 4 * 71 }],
    // The usual 20 ft and 5 stakes of plastic: 13 − 2 × 5 = 3 stakes at $2. Two pieces at $22.
    [
      "plastic without sizes in the list",
      4,
      { pieces: 2, stakes: 3, rolls: 1, materialCost: 222 + 2 * 22 + 3 * 2 + 64 },
    ],
  ] as const)("give %s its count and its cost", (_, index, wanted) => {
    for (const [role, amount] of Object.entries(wanted))
      expect(list.value(role as ResultRole, index), role).toBeCloseTo(amount, 6);
  });

  test("are followed as the office changes them, and a blank goes back to the usual figure", async () => {
    const cell = (name: string, row: number) =>
      `Rates!${blockAddress(rateAddress(name), listSamples.edging.length + row)}`;
    await list.host.type({ [cell("Rate_edging_prices", 0)]: 40, [cell("Rate_edging_lengths", 2)]: "" });
    await list.host.grid.settled();
    // Two pieces at $40 in place of $31.50, and the usual 8 ft of timber: 5 pieces.
    expect(shown(0, ["materialCost"])).toEqual([expect.closeTo(350.75 + 2 * 8.5, 6)]);
    expect(shown(2, ["pieceLength", "pieces"])).toEqual([8, 5]);
    await list.host.type({ [cell("Rate_edging_prices", 0)]: "", [cell("Rate_edging_lengths", 2)]: "long" });
    await list.host.grid.settled();
    expect(shown(0, ["piecePrice", "materialCost", "price"])).toEqual(["no rate", "no rate", "no rate"]);
    expect(list.value("pieces", 2)).toMatch(/^#/);
    await list.host.type({ [cell("Rate_edging_prices", 0)]: 31.5, [cell("Rate_edging_lengths", 2)]: 10 });
    await list.host.grid.settled();
  });

  test("give no number under a name that isn't in the list", async () => {
    await list.host.type({ "List!F2": "Poly 20", "List!G4": "3 ft wove" });
    await list.host.grid.settled();
    expect(shown(0, ["pieceLength", "piecePrice"])).toEqual(["no such product", "no such product"]);
    expect(shown(2, ["rollWidth", "rollPrice"])).toEqual(["no such product", "no such product"]);
    for (const value of [...shown(0, ["pieces", "stakes", "dig", "hours"]), ...shown(2, ["rolls", "pins", "hours"])])
      expect(value).toMatch(/^#/);
    for (const index of [0, 2]) expect(shown(index, ["materialCost", "price"])).not.toContainEqual(expect.any(Number));
    const { beds } = await readJob();
    expect([beds[0]?.problem, beds[2]?.problem]).toEqual([
      "Edging product: “Poly 20” isn't in the list. Did you mean “Poly, 20 ft”?",
      "Fabric product: “3 ft wove” isn't in the list. Did you mean “3 ft woven”?",
    ]);
    await list.host.type({ "List!F2": "Poly, 20 ft", "List!G4": "3 ft woven" });
    await list.host.grid.settled();
  });
});

describe("columns of products", () => {
  const rows = (edging: string, fabric: string) => [
    ["Bed", "Length, ft", "Width, ft", "Edging product", "Fabric product"],
    ["Walk", 20, 10, edging, fabric],
  ];
  const PRODUCT_NAMES = { edging: ["Poly, 20 ft", "Pine, 10 ft"], fabric: ["3 ft woven"] };
  const why = (edging: string, fabric: string, products: ProductNames = PRODUCT_NAMES) =>
    fillOf(fitOf(listSheet(rows(edging, fabric), { products })), { results: ["pieces"] }).skipped.map((row) => row.why);

  test("are found by their headings, and a name that isn't in the list is said with the nearest one", () => {
    const { columns } = fitOf(listSheet(rows("", ""), { products: PRODUCT_NAMES }));
    expect(columns.slice(3).map(({ role }) => role)).toEqual(["edgingProduct", "fabricProduct"]);
    expect(why("pine,  10 FT ", "usual")).toEqual([]);
    expect(why("Pine 10", "")).toEqual(["Edging product: “Pine 10” isn't in the list. Did you mean “Pine, 10 ft”?"]);
    expect(why("", "woven, 3 ft")).toEqual([
      "Fabric product: “woven, 3 ft” isn't in the list. Did you mean “3 ft woven”?",
    ]);
    expect(why("Pine", "", { edging: [] })).toEqual([
      "Edging product: “Pine” isn't in the list in Rates. Add it there.",
    ]);
  });

  test("bring the columns of what a result takes from them, and no others", () => {
    const fit = fitOf(listSheet(rows("Pine, 10 ft", ""), { products: PRODUCT_NAMES }));
    const filledRoles = (results: readonly ResultRole[]) => fillOf(fit, { results }).columns.map(({ role }) => role);
    expect(filledRoles(["area", "border", "tons"])).toEqual(["area", "border", "tons"]);
    expect(filledRoles(["pieces"])).toEqual(["pieceLength", "pieces"]);
    expect(filledRoles(["rolls"])).toEqual(["rollWidth", "rollLength", "rolls"]);
  });

  test("are told of, and what is priced by them", () => {
    const told = (kinds: boolean, names: boolean, products?: ProductNames) => {
      const columns = [...(kinds ? ["Edging kind"] : []), ...(names ? ["Edging product", "Fabric product"] : [])];
      const list = [
        ["Bed", "Length, ft", "Width, ft", ...columns],
        ["Walk", 20, 10, ...columns.map(() => "")],
      ];
      const fit = fitOf(listSheet(list, { names: Object.values(rateNames), ...(products && { products }) }));
      const { assumes } = fillOf(fit, { results: ["materialCost", "rolls"] });
      return assumes.filter((text) => /metal|product|plastic/.test(text));
    };
    expect(told(true, true, PRODUCT_NAMES)).toEqual([
      "Sizes and prices of edging and fabric are those of each row's product in Rates. A row without a product, and what its product leaves blank, has your usual rates.",
      "A row without an edging kind has metal. Other kinds have their usual sizes and paces.",
      "Plastic, pavers, and timber are priced by their product: without one that has prices in Rates, a row has no material cost. Sand under pavers is $48 per cu yd.",
    ]);
    expect(told(false, true, PRODUCT_NAMES)).toHaveLength(1);
    expect(told(true, false, PRODUCT_NAMES).at(-1)).toBe(
      "Your single rates are for metal. To price plastic, pavers, and timber, add a column Edging product with names from Rates: without it, those rows have no material cost.",
    );
    expect(told(true, true).at(-1)).toBe(
      "Your rates have no price for plastic, pavers, or timber, so those rows have no material cost.",
    );
  });

  test("are passed over in a workbook without the office's lists", () => {
    const without = fitOf(listSheet(rows("whatever", "else")));
    expect(without.columns.slice(3).map(({ role }) => role)).toEqual([undefined, undefined]);
    // Nor when someone says what they are.
    const corrections = new Map([[3, { role: "edgingProduct" }] as const]);
    const [fill, said] = [new Map(), corrections].map((one) =>
      fillOf(without, { corrections: one, results: ["pieces", "rolls"] }),
    );
    expect(said?.changes).toEqual(fill?.changes);
    expect(fill?.changes.map(({ after }) => after)).toEqual([
      "Edging pieces",
      "=BED.EDGING_PIECES(BED.EDGE_LENGTH(MAX(BED.FEET(B2),BED.FEET(C2))+2*MIN(BED.FEET(B2),BED.FEET(C2))),8,2)",
      "Fabric rolls",
      "=MIN(BED.FABRIC_ROLLS(B2,C2,6,50,6),BED.FABRIC_ROLLS(C2,B2,6,50,6))",
    ]);
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
      // A plain copy may have a length that was typed as text as a number.
      if (typeof shown === "string" && isMeasure(shown))
        expect(readTape(String(copied), "ft"), `${role} ${index}`).toBeCloseTo(readTape(shown, "ft"), 6);
      else if (typeof shown === "number") expect(copied, `${role} ${index}`).toBeCloseTo(shown, 6);
      else expect(copied, `${role} ${index}`).toBe(shown);
    }
  }
}

describe("a list of beds in an office whose Rates sheet says what stone is sold by", () => {
  const headings = ["Bed", "Length, ft", "Width, ft", "Stone", "Stone sold by"];
  /** Stone, and what its row says that it is sold by. */
  const BEDS = [
    ["hardwood mulch", "Cubic-Yard"],
    ["creek gravel", "bulk bag"],
    ["creek gravel", ""],
    ["creek gravel", "bag"],
    ["river rock", ""],
  ] as const;
  let list: Filled;
  beforeAll(async () => {
    // All are 32 by 10 ft, 2 in deep with 8% of waste: 320 × 2 / 324 × 1.08 = 2.1333 cu yd.
    const stones = ownStones([
      ["hardwood mulch", 38.5, "cubic yard", 0.5, 3],
      ["creek gravel", 129, "Bulk bag", "", 4, 1.4],
    ]);
    list = await filled([headings, ...BEDS.map((bed, index) => [bedAt(index), 32, 10, ...bed])], stones);
  });
  afterAll(() => list.host.dispose());

  test.each([
    // At least 3 cu yd of mulch, at $38.50: $115.50.
    [0, 3, 38.5],
    // 3 bags of a cubic yard, and the yard sells 4 or more, at $129.
    [1, 4, 129],
    // By the ton it isn't listed: 2.1333 × 1.4 = 2.9867 tons go up to 3, at the $62 of any other stone.
    [2, 3, 62],
    // 2.1333 × 27 / 0.5 = 115.2 bags go up to 116; no price of a bulk bag is one of a bag.
    [3, 116, "no rate"],
    // 2.1333 × 1.35 = 2.88 tons go up to 3, at the list's price of river rock.
    [4, 3, 62],
  ])(
    "has in row %i the order and the price of the list where it sells the stone by that unit",
    (index, order, price) => {
      expect(list.value("orderSold", index)).toBe(order);
      expect(list.value("soldPrice", index)).toBe(price);
      expect(typeof list.value("materialCost", index)).toBe(typeof price);
    },
  );

  test("has beds in a job that order and cost the same, with nothing to note", async () => {
    await checkedFacts();
    const { beds } = await readJob();
    expect(beds.map(({ notes, problem }) => [notes, problem])).toEqual(BEDS.map(() => [[], undefined]));
    const lineOf = (index: number) => beds[index]!.block.lines.find(({ key }) => key === "stoneLine")!;
    BEDS.forEach((_, index) => {
      const { quantity, unitCost } = lineOf(index);
      // A bag, which the list has no price for, has the sample in an estimate, marked there.
      expect([quantity, unitCost]).toEqual([
        list.value("orderSold", index),
        index === 3 ? 6.5 : list.value("soldPrice", index),
      ]);
    });
    // Only prices that rows rest on are said to be samples: that of any other stone where it counts.
    const isSaid = BEDS.map((_, index) => beds[index]!.block.samples?.includes("Any other stone"));
    expect(isSaid).toEqual([false, false, true, false, true]);
  });

  test("has the same numbers in a plain copy", () => holdsInPlainCopy(list, BEDS.length));

  test("without a column of units is by the ton", () => {
    const names = Object.values({ ...rateNames, ...stoneListNames });
    const sheet = listSheet([headings.slice(0, 4), [bedAt(0), 32, 10, "creek gravel"]], {
      names,
      stonesHaveSteps: true,
    });
    const { changes, assumes } = fillOf(fitOf(sheet), { results: ["order", "stonePrice"] });
    const [order, price] = ["BED.ORDER_UP", "Rate_stone_prices"].map((part) =>
      String(changes.find(({ after }) => String(after).includes(part))?.after),
    );
    const ofTon = 'OR(TRIM(INDEX(Rate_stone_units,MATCH(TRIM(D2),Rate_stone_kinds,0)))="",';
    expect(order).toContain(ofTon);
    expect(price).toContain(ofTon);
    expect(assumes.join(" ")).not.toContain("Stone by kind");
  });

  test("says where its prices are from", () => {
    const names = Object.values({ ...rateNames, ...stoneListNames });
    const rows = [headings, [bedAt(0), 32, 10, "creek gravel", "bag"]];
    const said = (some: readonly string[]) =>
      fillOf(fitOf(listSheet(rows, { names: some })), { results: ["order", "materialCost"] }).assumes.join(" ");
    expect(said(names)).toContain("Increment and minimum come from Stone by kind in Rates");
    const older = said(names.filter((name) => !(stoneUnitNames as readonly string[]).includes(name)));
    expect(older).toContain("Your rates are by the ton.");
    expect(older).not.toContain("Stone by kind");
  });
});

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
