import ExcelJS from "exceljs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { startingDetails } from "../../src/pane/papers/details";
import { jobOf, orderPaper } from "../../src/pane/papers/makePapers";
import { measuresOf } from "../../src/pane/papers/measures";
import { proposalOf, proposalPlan } from "../../src/pane/papers/proposalOf";
import { type FoundBed, readJob } from "../../src/pane/papers/readJob";
import { rowBed } from "../../src/pane/papers/rowBed";
import type { Way } from "../../src/quantities/bed/form";
import { type BedForm, blankForm } from "../../src/quantities/bed/form";
import { cautions } from "../../src/sheets/cautions";
import { estimateBlock } from "../../src/sheets/estimate/block";
import { workbookFile } from "../../src/sheets/file/workbookFile";
import { crewSheet } from "../../src/sheets/papers/crewSheet";
import { proposalSheet } from "../../src/sheets/papers/proposal";
import { insertPlan } from "../../src/workbook/change/insert";
import { foundBed } from "../foundBed";
import { createProductHost } from "../productHost";
import { unzip } from "../unzip";

const CORNER = { row: 0, column: 0 };

const tenths = (least: number, most: number) => fc.integer({ min: least * 10, max: most * 10 }).map((n) => n / 10);
const forms = fc
  .record({
    length: tenths(6, 60),
    width: tenths(2, 14),
    round: fc.boolean(),
    stone: fc.constantFrom("river rock", "pea gravel"),
  })
  .map(({ length, width, round, stone }, index?: number): BedForm => {
    const way: Way = round ? "round" : "rectangle";
    const shape = round ? { diameter: String(width) } : { length: String(length), width: String(width) };
    return { ...blankForm(), name: `Bed ${index ?? ""}`, way, typed: { ...shape, stone } };
  });
const jobs = fc.array(forms, { minLength: 1, maxLength: 20 });

describe("the papers of a job", () => {
  test("agree with the blocks to the pin and the cent, on random jobs of one to twenty beds", () => {
    fc.assert(
      fc.property(jobs, (list) => {
        const beds = list.map((form, index) => foundBed({ ...form, name: `Bed ${index + 1}` }, index));
        const job = jobOf(beds);
        const added = (of: (bed: FoundBed) => number) => beds.reduce((sum, bed) => sum + of(bed), 0);
        const pins = added(({ worked }) => worked!.estimate.amounts.pins);
        const tons = added(({ worked }) => worked!.estimate.amounts.stoneTons);

        const { plan } = orderPaper(job, startingDetails, undefined);
        const rows = (item: string) => plan.formulas.filter((row) => row[0] === item);
        expect(rows("Pins").reduce((sum, row) => sum + Number(row[4]), 0)).toBe(pins);
        const stones = job.order.lines.filter(({ key }) => key.startsWith("stone|"));
        expect(stones.reduce((sum, { needed }) => sum + needed, 0)).toBeCloseTo(tons, 6);
        expect(rows("Dump fee")).toEqual([]);
        for (const { item, specification, order, key } of job.order.lines) {
          if (key === "dump") continue;
          expect(rows(item).find((row) => String(row[1]).replace(/^'/, "") === specification)?.[2]).toBe(order);
        }

        const measures = measuresOf(job);
        expect(measures.find(({ measure }) => measure.key === "pins")?.planned).toBe(pins);
        // The site is cleaned up once, for as long as the longest of its beds takes.
        const cleanUps = beds.map(({ worked }) => worked!.estimate.amounts.cleanUpHours);
        const saved = cleanUps.reduce((sum, hours) => sum + hours, 0) - Math.max(...cleanUps);
        expect(job.crew.personHours).toBeCloseTo(added(({ worked }) => worked!.estimate.laborHours) - saved, 6);
        const cents = added(({ block }) => Math.round(block.price! * 100));
        const { price, scope } = proposalOf(job, startingDetails);
        expect(Math.round(price!.total * 100)).toBe(cents);
        expect(scope.reduce((sum, item) => sum + Math.round(item.price! * 100), 0)).toBe(cents);
        for (const { order, bedByBed, key } of job.order.lines) {
          if (!key.startsWith("stakes")) expect(order).toBeLessThanOrEqual(bedByBed + 1e-9);
        }
      }),
      { numRuns: 25 },
    );
  });

  test("what was typed over in a block is ordered as typed", () => {
    const form: BedForm = { ...blankForm(), name: "Front strip", typed: { length: "20", width: "5" } };
    const job = jobOf([foundBed(form, 1, { fabric: 7 }), foundBed({ ...form, name: "Other" }, 2)]);
    const fabric = job.order.lines.find(({ key }) => key.startsWith("fabric|"));
    // 7 rolls as typed, and one for the other bed: 20 ft of a 50 ft roll.
    expect(fabric?.order).toBe(8);
  });

  test("the crew's sheet counts what was planned in whole pieces and pins, and measures hours in hundredths", () => {
    const job = jobOf([foundBed({ ...blankForm(), name: "Front strip", typed: { length: "20", width: "5" } }, 1)]);
    const measures = measuresOf(job).map(({ measure: { label, unit }, planned }) => ({
      ...{ measure: label, unit, estimated: planned },
    }));
    const head = { job: "", place: "", start: "", people: 2, drawings: [], measures };
    const { formulas, formats } = crewSheet(job.crew, job.order, head, "letter", CORNER);
    const formatOf = (unit: string) => formats[formulas.findLastIndex((row) => row[2] === unit)]?.[4];
    expect(formatOf("pieces")).toBe("#,##0");
    expect(formatOf("pins")).toBe("#,##0");
    expect(formatOf("labor hours")).toBe("#,##0.00");
  });

  test("the crew's sheet says what to mind about each covering where it is spread", () => {
    const bedOf = (stone: string, index: number) =>
      foundBed({ ...blankForm(), name: `Bed ${index}`, typed: { length: "20", width: "5", stone } }, index);
    const job = jobOf([bedOf("river rock", 1), bedOf("Wood-chips", 2), bedOf("rubber nuggets", 3)]);
    const head = { job: "", place: "", start: "", people: 2, drawings: [], measures: [] };
    const { formulas } = crewSheet(job.crew, job.order, head, "letter", CORNER);
    const row = formulas.findIndex(([, label]) => label === "Wheelbarrow and spread stone");
    const said = formulas.slice(row + 1, row + 8).map((cells) => cells[1]);
    expect(said.slice(3, 6)).toEqual([
      "Fire: Can burn: keep it 5 ft from the house.",
      "Floating: Floats away in hard rain.",
      "Siding: Damp and insects: keep it off siding.",
    ]);
    const plain = jobOf([bedOf("river rock", 1)]);
    expect(JSON.stringify(crewSheet(plain.crew, plain.order, head, "letter", CORNER).formulas)).not.toContain("Fire");
  });

  test("the crew's sheet has a box for each step, each caution at its step, and fits its paper", () => {
    const job = jobOf([foundBed({ ...blankForm(), name: "Front strip", typed: { length: "20", width: "5" } }, 1)]);
    const head = { job: "Alder Court", place: "", start: "", people: job.people, drawings: [], measures: [] };
    const { formulas, page } = crewSheet(job.crew, job.order, head, "a4", CORNER);
    const steps = formulas.filter(([box, label]) => box === "☐" && job.crew.steps.some((step) => step.label === label));
    expect(steps).toHaveLength(job.crew.steps.length);
    const starts = steps.map((step) => formulas.indexOf(step));
    const under = (label: string) => {
      const step = steps.findIndex((row) => row[1] === label);
      const lines = formulas.slice(starts[step]! + 1, starts[step + 1] ?? formulas.length);
      return lines.map((row) => row[1]).join(" ");
    };
    for (const [label, ...said] of [
      ["Notice and marks", "Buried lines: Call 811", "Private lines", "aren't marked"],
      ["Scrape and load", "Buried lines: see “Notice and marks”", "Trailers and trucks: "],
      ["Level, and tamp low spots", "Water: "],
      [
        "Trench and set edging",
        "Buried lines: see “Notice and marks”",
        "Dust, where stone is cut: see “Wheelbarrow and spread stone”",
      ],
      ["Wheelbarrow and spread stone", "Dust: Crushing or cutting stone", "Lifting: ", "Meters and vents: "],
    ] as const)
      for (const words of said) expect(under(label), label).toContain(words);
    for (const { text } of cautions)
      expect(formulas.flat().join(" ").split(text.split(".")[0]!.slice(0, 60)), text).toHaveLength(2);
    expect(page).toMatchObject({ paper: "a4", pagesWide: 1, headingRows: 1 });
  });

  test.each([1, 10])("a proposal for %d beds comes back from its file to the cent, with no formula", async (count) => {
    const beds = Array.from({ length: count }, (_, index) => {
      const typed = { length: String(12 + 3 * index), width: "5" };
      return foundBed({ ...blankForm(), name: `Bed ${index + 1}`, typed }, index);
    });
    const made = proposalOf(jobOf(beds), { ...startingDetails, depositPercent: "30" });
    const total = made.price!.total;
    for (const many of [0, 1, 4]) {
      const options = ["One", "Two", "Three", "Four"].slice(0, many).map((name, index) => ({
        ...{
          name,
          differs: name,
          price: total + index,
          salesTax: 0.35,
          total: total + index + 0.35,
          difference: index,
        },
        isChosen: index === 0,
      }));
      const price = {
        discount: { listPrice: total + 100.01, label: "Discount", amount: 100.01 },
        ...{ ...made.price!, salesTax: 0.35, total: total + 0.35 },
      };
      for (const paper of ["letter", "a4"] as const) {
        const plan = proposalSheet({ ...made, options, price }, paper, CORNER);
        const file = await workbookFile([{ sheetName: "Proposal", plan }], { valuesOnly: true });
        const book = new ExcelJS.Workbook();
        await book.xlsx.load(file.slice().buffer);
        const cells: ExcelJS.Cell[] = [];
        // A merged cell is read once.
        book.worksheets[0]!.eachRow((row) => row.eachCell((cell) => cell.master === cell && cells.push(cell)));
        expect(cells.filter((cell) => cell.formula || cell.note)).toEqual([]);
        const { salesTax, deposit, balance, discount } = price;
        const given = [
          ...made.scope.map((item) => item.price),
          ...options.map((option) => option.price),
          ...options.map((option) => option.salesTax),
          ...options.map((option) => option.total),
          ...(many > 1 ? options.slice(1).map((option) => option.difference) : []),
          ...[discount.listPrice, -discount.amount, price.price, salesTax, price.total, deposit, balance],
        ];
        expect(cells.flatMap(({ value }) => (typeof value === "number" ? [value] : []))).toEqual(given);
        expect(book.worksheets[0]!.pageSetup.paperSize).toBe(paper === "a4" ? 9 : 1);
      }
    }
  });

  test("the proposal's file holds none of the office's costs", async () => {
    const form: BedForm = {
      ...blankForm(),
      name: "=Front, +strip",
      typed: { length: "20", width: "5", stoneCost: "61.37" },
    };
    const bed = foundBed(form, 1);
    const details = { ...startingDetails, customer: "=cmd|' /c calc'!A0", job: "Alder Court" };
    const plan = proposalPlan(proposalOf(jobOf([bed]), details), details);
    const file = await workbookFile([{ sheetName: "Proposal", plan }], { valuesOnly: true, title: "Proposal" });
    const secrets = [
      ...bed.worked!.estimate.lines.flatMap(({ unitCost, costSum }) => [unitCost, costSum]),
      bed.worked!.estimate.directCost,
      bed.worked!.estimate.fullCost,
      bed.worked!.estimate.overheadCost,
    ].filter((figure) => figure > 60 && figure !== bed.block.price);
    const parts = [...unzip(file)];
    expect(
      parts.map(([path]) => path).filter((path) => /comments|externalLink|calcChain|vml|customXml/.test(path)),
    ).toEqual([]);
    const sheets = parts.filter(([path]) => /worksheets\/|sharedStrings|workbook\.xml$/.test(path));
    for (const [path, text] of sheets) {
      expect(text, path).not.toMatch(/<f[ >]|hidden="1"|dataValidation|conditionalFormatting/);
      for (const name of text.matchAll(/<definedName name="([^"]*)"/g)) expect(name[1]).toMatch(/^_xlnm\.Print/);
      const shown = [...text.matchAll(/<v>([^<]*)<\/v>/g)].map((match) => Number(match[1]));
      if (path.includes("worksheets/")) for (const secret of secrets) expect(shown).not.toContain(secret);
    }
  });
});

describe("the sample prices of a block", () => {
  const prices = { stoneCost: "71.5", pieceCost: "27", stakeCost: "3.1", rollCost: "77", pinBoxCost: "21" };
  const others = { haulCost: "52", dumpFee: "33", deliveryCost: "99", crewRate: "51" };
  const shares = {
    materialMarkup: "22%",
    laborMarkup: "36%",
    haulingMarkup: "16%",
    overhead: "11%",
    minimumCharge: "450",
  };

  async function samplesOf(typed: BedForm["typed"]): Promise<readonly string[]> {
    const host = await createProductHost();
    try {
      const bed: BedForm = { ...blankForm(), name: "Front", typed: { length: "20", width: "5", ...typed } };
      const inserted = await insertPlan((at) => estimateBlock(bed, at), { kind: "new sheet", name: "Bed" });
      expect(inserted.done).toBe(true);
      return (await readJob()).beds.find(({ where }) => where.startsWith("Bed!"))?.block.samples ?? [];
    } finally {
      host.dispose();
    }
  }

  test("are all of them where no one has set a price", async () => {
    expect(await samplesOf({})).toEqual(
      expect.arrayContaining(["Stone", "Edging pieces", "Scrape and load", "Markup on labor", "Overhead on cost"]),
    );
  });

  test("are those that are left", async () => {
    expect(await samplesOf({ ...prices, ...others, ...shares })).toEqual([]);
    const { stoneCost: _, ...rest } = prices;
    expect(await samplesOf({ ...rest, ...others, ...shares })).toEqual(["Stone"]);
  });
});

describe("a row of a list", () => {
  const row = {
    row: 4,
    job: "Alder Court 4",
    bed: "Front strip",
    stone: "river rock",
    measured: { length: 18.5, width: 5, depth: 2, waste: 0.08 },
    quantities: { order: 1.5, price: 812.345 },
    formulas: {},
  };

  test("is a bed of the job, ordered as it is there, at the price that it shows", () => {
    const { block, worked, problem } = rowBed("Jobs", row, undefined);
    expect(problem).toBeUndefined();
    expect(block).toMatchObject({ name: "Alder Court 4, Front strip", price: 812.35 });
    expect(worked?.estimate.amounts.stoneDepth).toBe(2);
    // 92.5 sq ft at 2 in is 92.5 / 162 cu yd.
    expect(worked?.estimate.amounts.stoneYards).toBeCloseTo((92.5 / 162) * 1.08, 9);
    const bed = { id: "1", where: "Jobs, row 5", tickedAtFirst: false, block, worked, problem };
    expect(jobOf([bed]).order.lines.find(({ key }) => key.startsWith("stone|"))?.order).toBe(1.5);
  });

  test("has edging along the sides that its list counts, whichever of its sides is the longer", () => {
    const runOf = (border?: number) => {
      const shown = {
        ...row,
        measured: { length: 5, width: 18.5 },
        quantities: border === undefined ? {} : { border },
      };
      return rowBed("Jobs", shown, undefined).worked?.estimate.amounts.borderRun;
    };
    // By hand: one long side and two ends are 18.5 + 2 × 5, as lists start; two and one 2 × 18.5 + 5; all around 47.
    expect(runOf()).toBeCloseTo(28.5, 9);
    for (const border of [28.5, 42, 47]) expect(runOf(border)).toBeCloseTo(border, 9);
    // What was typed and fits no sides is the edging, along a bed that is known by its area; what fits but for rounding to
    // feet leaves it along its sides.
    expect(runOf(30)).toBeCloseTo(30, 9);
    expect(runOf(28)).toBeCloseTo(28.5, 9);
  });

  test("with the area alone is measured by it", () => {
    const { worked } = rowBed("Jobs", { ...row, measured: {}, quantities: { area: 80, border: 30 } }, undefined);
    expect(worked?.bed.way ?? "area").toBe("area");
  });
});
