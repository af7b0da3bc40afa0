import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { planOfEstimate } from "../../src/layout/planOfEstimate";
import { type BedForm, blankForm } from "../../src/quantities/bed/form";
import { readForm } from "../../src/quantities/bed/read";
import { SHORT_PIECE_WORDS } from "../../src/quantities/edging";
import { crewPlan } from "../../src/quantities/job/crewPlan";
import { orderJob } from "../../src/quantities/job/orderJob";
import { kindsOfBeds } from "../../src/quantities/job/priceJob";
import { keyAddresses } from "../../src/sheets/compose";
import { estimateBlock, estimateRows } from "../../src/sheets/estimate/block";
import { jobBlock, jobRows } from "../../src/sheets/job/jobBlock";
import { findSheetBeds } from "../../src/sheets/job/sheetBed";
import { crewSheet } from "../../src/sheets/papers/crewSheet";
import { insertPlan } from "../../src/workbook/change/insert";
import { readWorkbook } from "../../src/workbook/read/workbook";
import type { HeadlessHost } from "../headlessHost";
import { createProductHost } from "../productHost";
import { bedOfJob } from "../properties/jobToPrice";

/*
 * A piece of edging that covers less than an inch is never bought without a word, and the word is the same wherever the
 * pieces are counted: in the pane, the block, the drawing, the job, the order, and the crew's sheet.
 *
 * By hand: pieces of 8 ft that lap 2 in reach 8 ft, 15' 10", 23' 8"; around a closed run each reaches 7' 10" farther, and
 * four of them 31' 4". Half an inch more takes a piece more.
 */

type Case = readonly [what: string, form: Partial<BedForm>, pieces: readonly number[]];
const one = { longBorders: "1", shortBorders: "0" };

const cases: readonly Case[] = [
  ["one side", { typed: { length: `15' 10 1/2"`, width: "4", ...one } }, [3]],
  ["one side that its pieces just reach along", { typed: { length: `15' 10"`, width: "4", ...one } }, []],
  ["one side, an inch and a half more", { typed: { length: `15' 11 1/2"`, width: "4", ...one } }, []],
  ["two opposite sides", { typed: { length: `15' 10 1/2"`, width: "4", longBorders: "2", shortBorders: "0" } }, [3, 6]],
  [
    // 2 (10' 8 1/4" + 5') = 31' 4 1/2"
    "all around",
    { typed: { length: `10' 8 1/4"`, width: "5", longBorders: "2", shortBorders: "2" } },
    [5],
  ],
  // 18 + 2 × 3.2834 − 4 + π = 23.7084, and 23' 8 1/2" is 23.7083
  ["rounded corners", { typed: { length: "18", width: "3.2834", cornerRadius: "1", roundedCorners: "2" } }, [4]],
  // π × 9.987 = 31.3751 ft, and 31' 4 1/2" is 31.375
  ["a round bed", { way: "round", typed: { diameter: "9.987" } }, [5]],
  // π × 9 = 28.27 ft: four pieces; π × 2.507 = 7.876 ft, and 7' 10 1/2" is 7.875
  ["a ring inside", { way: "round", typed: { diameter: "9", innerDiameter: "2.507", innerBorder: "1" } }, [6]],
  ["widths", { way: "widths", typed: { spacing: `15' 10 1/2"`, endBorders: "0" }, widths: ["4", "4"] }, [3]],
  [
    "corners",
    {
      way: "points",
      points: [
        ["0", "0", "1"],
        ["15.875", "0", "0"],
        ["2", "8", "0"],
      ],
    },
    [3],
  ],
  ["a known area", { way: "area", typed: { area: "60", edge: "15.875", longest: "16", widest: "4" } }, [3]],
  ["a plain bed", { typed: { length: `18' 6"`, width: "5" } }, []],
];

const formOf = (what: string, form: Partial<BedForm>): BedForm => ({ ...blankForm(), ...form, name: what });

let host: HeadlessHost;
beforeAll(async () => {
  host = await createProductHost();
});
afterAll(() => host.dispose());

describe("a piece of edging bought for less than an inch", () => {
  test.each(cases)("is told of by its number along %s: pane, block, drawing, order, crew's sheet", async (...given) => {
    const [what, changes, pieces] = given;
    const form = formOf(what, changes);
    const { estimate, needs } = bedOfJob(form);
    expect(estimate.shortPieces).toEqual(pieces);

    const told = pieces.map((piece) => `P${piece} ${SHORT_PIECE_WORDS}`);
    const plan = planOfEstimate(readForm(form).bed!);
    if (plan) expect(plan.notes.filter((note) => note.includes(SHORT_PIECE_WORDS))).toEqual(told);

    const order = orderJob([needs]);
    const line = order.lines.find(({ supplier }) => supplier === "border");
    const named = told.map((words) => `${what}: ${words}`);
    expect(line?.warnings ?? []).toEqual(named);
    expect(line?.notes.filter((note) => note.includes(SHORT_PIECE_WORDS))).toEqual(named);

    const head = { job: "", place: "", start: "", people: 2, drawings: [], measures: [] };
    const crew = crewSheet(crewPlan([needs], order, { people: 2, dayHours: 8 }), order, head, "letter", CORNER);
    expect(crew.formulas.flat().filter((cell) => String(cell).includes(SHORT_PIECE_WORDS))).toEqual(named);

    const inserted = await insertPlan((at) => estimateBlock(form, at), { kind: "new sheet", name: "Bed" });
    if (!inserted.done) throw new Error("a new sheet is free");
    const note = keyAddresses(estimateRows(form), CORNER).get("pieces.note");
    const said = host.value(`'${inserted.sheetName}'!${note}`);
    expect(said).toBe(pieces.length > 0 ? `A piece ${SHORT_PIECE_WORDS}` : "");
  });

  test.each([
    ["some bed's", [cases[0]!, cases[6]!, cases[11]!], true],
    ["no bed's", [cases[2]!, cases[11]!], false],
  ])("is told of at the price of the job where it is %s", async (_, made, isTold) => {
    const forms = made.map(([what, changes]) => formOf(what, changes));
    const before = new Set((await bedsOfWorkbook()).map(({ sheet }) => sheet));
    for (const form of forms)
      await insertPlan((at) => estimateBlock(form, at), { kind: "new sheet", name: form.name.slice(0, 20) });
    const beds = (await bedsOfWorkbook()).filter(({ sheet }) => !before.has(sheet));
    expect(beds).toHaveLength(forms.length);
    const kinds = kindsOfBeds(forms.map((form) => bedOfJob(form).toPrice));
    const job = { name: "Job", option: "Option 1", differs: "", isChosen: true, beds, kinds };
    const inserted = await insertPlan((at) => jobBlock(job, at), { kind: "new sheet", name: "Job" });
    if (!inserted.done) throw new Error("a new sheet is free");
    const words = keyAddresses(jobRows(job), CORNER).get("headEdging");
    expect(host.value(`'${inserted.sheetName}'!${words}`)).toBe(isTold ? `Edging: a piece ${SHORT_PIECE_WORDS}` : "");
  });
});

const CORNER = { row: 0, column: 0 };

async function bedsOfWorkbook() {
  const { facts } = await readWorkbook();
  return facts.sheets.flatMap(({ name, used }) => (used ? findSheetBeds(name, used) : []));
}
