import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { planOfEstimate } from "../../src/layout/planOfEstimate";
import { paneDrawings } from "../../src/pane/drawings";
import { startingDetails } from "../../src/pane/papers/details";
import { jobOf } from "../../src/pane/papers/makePapers";
import { proposalOf } from "../../src/pane/papers/proposalOf";
import { borderChoices, fillsAfter } from "../../src/quantities/bed/choices";
import type { FieldKey } from "../../src/quantities/bed/fields";
import { asks, type BedForm, blankForm } from "../../src/quantities/bed/form";
import { EDGING_KINDS, edgingFieldKeys } from "../../src/quantities/edgingKinds";
import { keyAddresses } from "../../src/sheets/compose";
import { estimateBlock, estimateRows } from "../../src/sheets/estimate/block";
import { crewSheet } from "../../src/sheets/papers/crewSheet";
import { insertPlan } from "../../src/workbook/change/insert";
import { partsOf, wordsOf } from "../drawnParts";
import { foundBed } from "../foundBed";
import type { HeadlessHost } from "../headlessHost";
import { createProductHost } from "../productHost";

/*
 * What a bed is edged with, through everything that shows it: 30 ft by 10 ft along a house, edged in front and at both
 * ends, 50 ft in one run. The figures are those of `test/references/edging-kinds.test.ts`.
 */

interface Expected {
  /** The lines of the estimate that a kind adds, with what is on them. */
  readonly lines: Readonly<Record<string, number>>;
  /** The lines of the order. */
  readonly ordered: readonly string[];
  /** The crew's step, and words of its hint; none takes none. */
  readonly step?: readonly [label: string, ...hint: RegExp[]];
  /** How the gap is closed. */
  readonly close?: RegExp;
  readonly cautions: readonly string[];
  /** Tools that some other kind doesn't take. */
  readonly tools: readonly string[];
  /** The edge and its fasteners in the plan's legend, and the heading below the plan. */
  readonly legend: readonly string[];
  readonly heading?: string;
  /** What the section calls its depths. */
  readonly depths: readonly string[];
  /** What the customer reads in a proposal. */
  readonly scope?: string;
  /** Sizes and prices that the pane asks for, of those that not every kind has. */
  readonly asks: readonly FieldKey[];
}

const DUG: readonly FieldKey[] = ["trenchDepth", "trenchWidth", "edgingRate"];
const SIZES: readonly FieldKey[] = [...DUG, "borderFinish", "borderHeight", "pieceLength", "pieceCost"];
const STAKED: readonly FieldKey[] = [...SIZES, "pieceLap", "stakesPerPiece", "stakeSpacing", "stakeCost"];
const SLEDGES = "Sledges and a wood block";
const EXPECTED: Readonly<Record<string, Expected>> = {
  metal: {
    lines: { "Edging pieces": 7, "Extra stakes": 7, "Set edging": 50 / 14 },
    ordered: ["Edging pieces: 4 in high, 8 ft long", "Extra stakes: 4 in high, 8 ft long"],
    step: ["Trench and set edging", /^Smooth face out; /, /leave one piece out for wheelbarrows/],
    close: /^Set the last pieces /,
    cautions: [],
    tools: [SLEDGES, "Cut-off saw, file, ear protection"],
    legend: ["edging, gap at a joint", "stake", "stake through a joint", "no edging"],
    heading: "Edging: 50' in 7 pieces, 28 stakes",
    depths: ['edging 4"', 'gap 1/2"', 'stone 2"', 'trench 1 1/2"'],
    scope: "Set 50 ft of 4 in edging.",
    asks: STAKED,
  },
  plastic: {
    lines: { "Edging pieces": 3, "Extra stakes": 0, "Set edging": 50 / 20 },
    ordered: ["Edging pieces: plastic, 5 in high, 20 ft long"],
    step: ["Trench and set plastic edging", /smooth face out/, /leave a piece out for wheelbarrows/],
    close: /^Set the last pieces /,
    cautions: [],
    tools: [SLEDGES, "Cut-off saw, file, ear protection"],
    legend: ["plastic edging, gap at a joint", "stake", "stake through a joint", "no edging"],
    heading: "Plastic edging: 50' in 3 pieces, 15 stakes",
    depths: ['edging 5"', 'gap 1/2"', 'stone 2"', 'trench 2 1/2"'],
    scope: "Set 50 ft of 5 in plastic edging.",
    asks: STAKED,
  },
  pavers: {
    lines: { Pavers: 146, Sand: 0.25, "Set pavers": 50 / 10 },
    ordered: ["Sand: concrete sand, to set pavers in", "Pavers: pavers, 4 in long, 2.375 in thick"],
    step: ["Trench, bed sand, and set pavers", /smooth face out/, /leave a few out for wheelbarrows/],
    close: /^Set the pavers /,
    cautions: ["Silica"],
    tools: ["Screed board and rails", "Rubber mallets", "Masonry saw with water to the blade, or splitter"],
    legend: ["pavers, each drawn", "no edging"],
    heading: "Pavers: 50' in 146 pavers",
    depths: ['pavers 2 3/8"', 'sand 1"', 'gap 1/2"', 'stone 2"', 'trench 7/8"'],
    scope: "Set 50 ft of pavers in sand.",
    asks: [...SIZES, "joint", "sandDepth", "sandStep", "sandCost"],
  },
  timber: {
    lines: { Timbers: 7, Spikes: 21, "Set timbers": 50 / 8 },
    ordered: ["Timbers: timber, 5.5 in high, 8 ft long", "Spikes: timber, 5.5 in high, 8 ft long"],
    step: ["Trench, set, and spike timbers", /smooth face out/, /leave a timber out for wheelbarrows/],
    close: /^Set and spike /,
    cautions: ["Spikes", "Treated wood", "Heavy timbers"],
    tools: [SLEDGES, "Drill and long bit", "Saw for timbers, goggles"],
    legend: ["timber, gap at a joint", "spike", "no edging"],
    heading: "Timber: 50' in 7 timbers, 21 spikes",
    depths: ['timber 5 1/2"', 'gap 1/2"', 'stone 2"', 'trench 3"'],
    scope: "Set 50 ft of 5 1/2 in timber edging.",
    asks: [...SIZES, "stakeSpacing", "stakeCost"],
  },
  "spade cut": {
    lines: { "Cut the edge": 50 / 25 },
    ordered: [],
    step: ["Cut the edge", /leave a ramp for wheelbarrows/],
    close: /^Cut the ramp away/,
    cautions: ["Cut edge"],
    tools: ["Half-moon edger"],
    legend: ["spade-cut edge", "no edging"],
    heading: "Spade-cut edge: 50'",
    depths: ['gap 1/2"', 'stone 2"', 'cut 2 1/2"'],
    scope: "Cut 50 ft of edge with a spade.",
    asks: DUG,
  },
  none: {
    lines: {},
    ordered: [],
    cautions: ["No edging"],
    tools: [],
    legend: [],
    depths: ['gap 1/2"', 'stone 2"'],
    asks: [],
  },
};

const KINDS = EDGING_KINDS.map(({ name }) => name);
const expectedOf = (kind: string): Expected => {
  const expected = EXPECTED[kind];
  if (!expected) throw new Error(`What follows from ${kind} edging is missing from this test.`);
  return expected;
};

const formOf = (kind: string, name = "Front walk"): BedForm => ({
  ...blankForm(),
  name,
  // Metal is what a bed has until another kind is picked.
  typed: { length: "30", width: "10", ...(kind !== "metal" && { edgingKind: kind }) },
});

/** The lines of the estimate that one kind has and another doesn't. */
const EDGING_LINES = new Set(Object.values(EXPECTED).flatMap(({ lines }) => Object.keys(lines)));
const BORDER_TOOLS = new Set(Object.values(EXPECTED).flatMap(({ tools }) => tools));
const HEAD = { job: "", place: "", start: "", people: 2, drawings: [], measures: [] };
const CORNER = { row: 0, column: 0 };

let host: HeadlessHost;
beforeAll(async () => {
  host = await createProductHost();
});
afterAll(() => host.dispose());

describe.each(KINDS)("a bed with edging of the kind %s", (kind) => {
  const expected = expectedOf(kind);
  const form = formOf(kind);
  const job = jobOf([foundBed(form, 1)]);

  test("is asked for what it has, and picked without a change to what was typed", () => {
    const some = edgingFieldKeys.filter((key) => asks(form, key));
    expect([...some].sort()).toEqual([...expected.asks].sort());
    if (kind === "metal") return;
    const typed = { length: "30", pieceCost: "31", trenchDepth: "2" };
    const picked = { edgingKind: kind };
    // Those sizes are no ready choice of metal, so that all of them were typed.
    expect({ ...typed, ...fillsAfter(undefined, picked) }).toEqual({ ...typed, ...picked });
    // Those of a ready choice go with it, and the kind goes when metal is picked again.
    const [, steel] = borderChoices;
    const metal = { ...steel!.fills, length: "30", pieceLap: "1" };
    expect({ ...metal, ...fillsAfter(steel, picked) }).toEqual({ length: "30", pieceLap: "1", ...picked });
    expect({ ...picked, ...fillsAfter({ name: kind, fills: picked }, steel!.fills) }).toEqual(steel!.fills);
  });

  test("is told to the customer in a proposal", () => {
    const text = proposalOf(job, startingDetails).scope[0]?.text ?? "";
    const ofEdge = text.split(/(?<=\.) /).filter((one) => /^(?:Set|Cut) /.test(one));
    expect(ofEdge).toEqual(expected.scope ? [expected.scope] : []);
  });

  test("has its lines in the pane", () => {
    const { lines } = foundBed(form, 1).worked!.estimate;
    const own = lines.filter(({ label }) => EDGING_LINES.has(label));
    expect(own.map(({ label }) => label)).toEqual(Object.keys(expected.lines));
    for (const { label, amount } of own) expect(amount, label).toBeCloseTo(expected.lines[label]!, 9);
  });

  test("is worked out in its block, with what to mind about it", async () => {
    const { amounts, lines, price } = foundBed(form, 1).worked!.estimate;
    const inserted = await insertPlan((at) => estimateBlock(form, at), { kind: "new sheet", name: "Bed" });
    if (!inserted.done) throw new Error("a new sheet is free");
    const rows = estimateRows(form);
    const keys = keyAddresses(rows, CORNER);
    const value = (key: string) => host.value(`'${inserted.sheetName}'!${keys.get(key)}`);
    for (const [key, amount] of Object.entries(amounts))
      if (keys.has(key)) expect(value(key), key).toBeCloseTo(amount, 9);
    for (const { key, amount } of lines) expect(value(`${key}.quantity`), key).toBeCloseTo(amount, 9);
    expect(value("price")).toBeCloseTo(price, 9);
    const abouts = rows.flatMap(({ cells }) => (cells[1]?.look === "caution" ? [cells[0]?.content] : []));
    expect(abouts.filter((about) => expected.cautions.includes(String(about)))).toEqual(expected.cautions);
  });

  test("is drawn, with the marks that it has and no others", () => {
    const { bed } = foundBed(form, 1).worked!;
    const { plan, section } = paneDrawings(bed, planOfEstimate(bed)!, "Front walk", 350);
    const words = wordsOf(plan);
    const marks = words.slice(
      words.indexOf("pin") + 1,
      words.findIndex((word) => word.startsWith("Fabric: ")),
    );
    expect(marks).toEqual(expected.legend);
    const heading = /^(?:(?:Plastic e|E)dging|Pavers|Timber|Spade-cut edge): /;
    expect(words.filter((word) => heading.test(word))).toEqual(expected.heading ? [expected.heading] : []);
    const depths = wordsOf(section).filter((word) =>
      /^(?:edging|pavers|timber|sand|gap|stone|trench|cut) \d/.test(word),
    );
    expect(depths).toEqual(expected.depths);
    const drawn = (name: string) =>
      partsOf(plan, "path").filter(({ attributes }) => attributes["stroke-width"] === name);
    // Stakes are small squares, those at joints on their corners; the legend has one of each.
    const stakes = drawn("1.1").length;
    expect(stakes > 0).toBe(expected.legend.includes("stake"));
  });

  test("is ordered as it's sold", () => {
    const lines = job.order.lines.filter(({ key }) => /^(border|stakes|sand)\b/.test(key));
    expect(lines.map(({ item, specification }) => `${item}: ${specification}`)).toEqual(expected.ordered);
    for (const { item, order } of lines) expect(order, item).toBeCloseTo(expected.lines[item]!, 9);
  });

  test("is a step of the crew's with its tools, cautions, and hours, and the gap is closed its own way", () => {
    const { steps, tools } = job.crew;
    const step = steps.find(({ key }) => key === "border");
    const [label, ...hints] = expected.step ?? [];
    expect(step?.label).toBe(label);
    for (const hint of hints) expect(step?.hint).toMatch(hint as RegExp);
    if (step) expect(step.hours).toBeCloseTo(Object.values(expected.lines).at(-1)!, 9);
    const close = steps.find((one) => one.key === "close");
    expect(close === undefined).toBe(expected.close === undefined);
    if (expected.close) {
      expect(close!.hint).toMatch(expected.close);
      expect(close!.hoursIn).toBe(label);
    }
    expect(tools.map(({ tool }) => tool).filter((tool) => BORDER_TOOLS.has(tool))).toEqual(expected.tools);
    const { formulas } = crewSheet(job.crew, job.order, HEAD, "letter", CORNER);
    const minded = step?.label ?? "Wheelbarrow and spread stone";
    const at = formulas.findIndex((row) => row[1] === minded);
    const next = formulas.findIndex((row, index) => index > at && row[0] === "☐");
    const said = formulas.slice(at + 1, next).map((row) => String(row[1]));
    for (const about of expected.cautions)
      expect(
        said.some((text) => text.startsWith(`${about}: `)),
        about,
      ).toBe(true);
  });
});

test("each kind in a job with all of them keeps its own step, hours, and cautions", () => {
  const { crew } = jobOf(KINDS.map((kind, index) => foundBed(formOf(kind, `Bed ${index + 1}`), index + 1)));
  const steps = crew.steps.filter(({ key }) => key === "border");
  const wanted = KINDS.map(expectedOf).filter(({ step }) => step);
  expect(steps.map(({ label }) => label)).toEqual(wanted.map(({ step }) => step![0]));
  steps.forEach(({ hours, cautions }, index) => {
    expect(hours).toBeCloseTo(Object.values(wanted[index]!.lines).at(-1)!, 9);
    expect(cautions.map(({ about }) => about)).toEqual(wanted[index]!.cautions);
  });
  expect(crew.steps.find(({ key }) => key === "stone")?.cautions.map(({ about }) => about)).toEqual(["No edging"]);
  const close = crew.steps.filter(({ key }) => key === "close");
  expect(close).toHaveLength(1);
  for (const { close: how } of wanted) expect(close[0]!.hint).toMatch(new RegExp(how!.source.replace("^", "")));
});
