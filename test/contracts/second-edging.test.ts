import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { planOfEstimate } from "../../src/layout/planOfEstimate";
import { writeCopy } from "../../src/pane/copy/makeCopy";
import { readSource } from "../../src/pane/copy/source";
import { paneDrawings } from "../../src/pane/drawings";
import { startingDetails } from "../../src/pane/papers/details";
import { insertJob, isInJob, priceTogether } from "../../src/pane/papers/jobTogether";
import { jobOf } from "../../src/pane/papers/makePapers";
import { proposalOf } from "../../src/pane/papers/proposalOf";
import { type FoundBed, readJob } from "../../src/pane/papers/readJob";
import { jobChanges, previewJobUpdate } from "../../src/pane/papers/updateJob";
import { writeJobUpdate } from "../../src/pane/papers/writeJobUpdate";
import { openBed, previewUpdate, writeUpdate } from "../../src/pane/updateEstimate";
import { type BedForm, blankForm } from "../../src/quantities/bed/form";
import { EDGING_KINDS, NO_EDGING } from "../../src/quantities/edgingKinds";
import { workOf } from "../../src/quantities/edgingWork";
import { must } from "../../src/quantities/must";
import { cellAround, explain } from "../../src/review/explain/explain";
import { reviewAtOnce } from "../../src/review/review";
import { keyAddresses } from "../../src/sheets/compose";
import { estimateBlock, estimateRows } from "../../src/sheets/estimate/block";
import { findBlocks } from "../../src/sheets/estimate/readBlock";
import { areaIn } from "../../src/spreadsheet/areas";
import { insertPlan } from "../../src/workbook/change/insert";
import { readWorkbook } from "../../src/workbook/read/workbook";
import { callFunction } from "../callFunction";
import { partsOf, wordsOf } from "../drawnParts";
import { foundBed } from "../foundBed";
import type { HeadlessHost } from "../headlessHost";
import { createProductHost } from "../productHost";
import { paneProblems } from "../ratesBench";
import { knowledge } from "../reviewWorkbook";

/*
 * Two kinds of edging on one bed, side by side on its outline: 30 ft by 10 ft along a house, steel at both ends and
 * another kind in front, through everything that shows it. All is worked by hand here.
 */

const CORNER = { row: 0, column: 0 };
const ENDS = { houseEdging: "0", rightEdging: "1", frontEdging: "0", leftEdging: "1" };
const bedOf = (secondKind: string, typed: BedForm["typed"] = {}, name = "Front walk"): BedForm => ({
  ...blankForm(),
  name,
  typed: { length: "30", width: "10", ...ENDS, secondKind, secondFront: "1", ...typed },
});

/** What a kind takes along 30 ft in one run, by the lines of the estimate. */
const ALONG_30_FT: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  // 3 pieces of 8 ft lapped 2 in reach 23' 8", 4 reach 31' 6". Stakes: at both ends, 3 joints, and 30 in or less between:
  // 3 in each of the first three gaps of 7' 10" and 2 in the last of 6' 6"; 12 come with the pieces.
  metal: { secondEdging: 4, secondStakeLine: 4, setSecondEdging: 30 / 14 },
  // 2 pieces of 20 ft; stakes at most 4 ft apart: at 0, 20, and 30 ft, and 4 and 2 between. 10 come with the pieces.
  plastic: { secondEdging: 2, secondStakeLine: 0, setSecondEdging: 30 / 20 },
  // 360 in of 4 in pavers an eighth apart: (360 + 1/8) / 4 1/8 = 87.3. Sand: 30 ft x 8 in x 1 in = 1.67 cu ft = 0.06 cu yd.
  pavers: { secondEdging: 88, sandLine: 0.25, setSecondEdging: 30 / 10 },
  // 4 timbers of 8 ft, with spikes at most 4 ft apart: 3 in each.
  timber: { secondEdging: 4, secondStakeLine: 12, setSecondEdging: 30 / 8 },
  "spade cut": { setSecondEdging: 30 / 25 },
};
/** The steel at both ends: 2 runs of 10 ft, in 2 pieces each. */
const ENDS_TAKE = { edging: 4, setEdging: 20 / 14 };
const SECONDS = EDGING_KINDS.filter((kind) => kind !== NO_EDGING).map(({ name }) => name);

let host: HeadlessHost;
beforeAll(async () => {
  host = await createProductHost();
});
afterAll(() => host.dispose());

describe.each(SECONDS)("steel at the ends and %s in front", (kind) => {
  const expected = must(ALONG_30_FT[kind]);
  const form = bedOf(kind);

  test("has its lines beside those of the first", () => {
    const { lines } = foundBed(form, 1).worked!.estimate;
    const amountOf = (key: string) => lines.find((line) => line.key === key)?.amount;
    for (const [key, amount] of Object.entries({ ...ENDS_TAKE, ...expected }))
      expect(amountOf(key), key).toBeCloseTo(amount, 9);
    const own = lines.filter(({ key }) => /second/i.test(key)).map(({ key }) => key);
    expect(own).toEqual(Object.keys(expected).filter((key) => key !== "sandLine"));
  });

  test("is the same in its block, and reads back from it", async () => {
    const { amounts, lines, price } = foundBed(form, 1).worked!.estimate;
    const inserted = await insertPlan((at) => estimateBlock(form, at), { kind: "new sheet", name: "Bed" });
    if (!inserted.done) throw new Error("a new sheet is free");
    const keys = keyAddresses(estimateRows(form), CORNER);
    const value = (key: string) => host.value(`'${inserted.sheetName}'!${keys.get(key)}`);
    for (const [key, amount] of Object.entries(amounts))
      if (keys.has(key)) expect(value(key), key).toBeCloseTo(amount, 9);
    for (const { key, amount } of lines) expect(value(`${key}.quantity`), key).toBeCloseTo(amount, 9);
    expect(value("price")).toBeCloseTo(price, 9);
    const { facts } = await readWorkbook();
    const { used } = must(facts.sheets.find(({ name }) => name === inserted.sheetName));
    const [block] = findBlocks(must(used).values, CORNER);
    expect(block!.form.typed).toMatchObject({ secondKind: kind, secondFront: "1", secondLeft: "0" });
  });

  test("is ordered, and set by the crew in a step of its own", () => {
    const { order, crew } = jobOf([foundBed(form, 1)]);
    const ordered = order.lines.filter(({ key }) => /^(border|stakes|sand)\b/.test(key));
    const all = Object.entries({ ...ENDS_TAKE, ...expected });
    const bought = all.filter(([key, amount]) => !/^set/.test(key) && amount > 0).map(([, amount]) => amount);
    const inAll = (amounts: readonly number[]) => [...amounts].sort((one, other) => one - other);
    const counted = ordered.map((line) => line.order);
    // Steel of both is one line of the order: 4 pieces in front, and a whole one at each end, whose rests of 2' 2" with the
    // lap come from one more. Of 16 stakes in front and 6 at each end, 21 come with the 7 pieces.
    expect(inAll(counted)).toEqual(kind === "metal" ? [7, 7] : inAll(bought));
    const steps = crew.steps.filter(({ key }) => key === "border");
    const hours = steps.reduce((sum, step) => sum + must(step.hours), 0);
    expect(steps).toHaveLength(kind === "metal" ? 1 : 2);
    expect(hours).toBeCloseTo(ENDS_TAKE.setEdging + must(expected.setSecondEdging), 9);
  });

  test("is drawn along its own side, and told to the customer", () => {
    const found = foundBed(form, 1);
    const { plan } = paneDrawings(found.worked!.bed, must(planOfEstimate(found.worked!.bed)), "Front walk", 350);
    const words = wordsOf(plan);
    const { called, edge } = workOf(must(EDGING_KINDS.find(({ name }) => name === kind)));
    expect(words.filter((word) => word.startsWith("Edging: 20'"))).toHaveLength(1);
    expect(words.filter((word) => word.startsWith(`${called}: 30'`))).toHaveLength(1);
    expect(words.some((word) => word.startsWith(edge))).toBe(true);
    // The house side is the only one without.
    const { plan: without } = paneDrawings(
      foundBed(bedOf("none", { secondFront: "0" }), 1).worked!.bed,
      must(planOfEstimate(foundBed(bedOf("none", { secondFront: "0" }), 1).worked!.bed)),
      "Front walk",
      350,
    );
    const hatched = (svg: string) =>
      partsOf(svg, "path").filter(({ attributes }) => /wall/.test(attributes.stroke ?? ""));
    expect([hatched(plan).length, hatched(without).length]).toEqual([1, 2]);
    const text = proposalOf(jobOf([found]), startingDetails).scope[0]?.text ?? "";
    const told = text.split(/(?<=\.) /).filter((one) => /^(?:Set|Cut) /.test(one));
    expect(told[0]).toBe("Set 20 ft of 4 in edging.");
    expect(told[1]).toMatch(/^(?:Set|Cut) 30 ft of /);
  });
});

describe("a job of beds with two kinds of edging", () => {
  const forms = [
    bedOf("pavers"),
    bedOf("plastic", {}, "Side"),
    { ...blankForm(), name: "Ring", way: "round", typed: { diameter: "8", secondKind: "timber", secondLength: "9" } },
    { ...blankForm(), name: "Back", typed: { length: "12", width: "4" } },
  ] satisfies BedForm[];
  let beds: readonly FoundBed[];
  let sheetName: string;
  beforeAll(async () => {
    await host.dispose();
    host = await createProductHost();
    for (const form of forms) await insertPlan((at) => estimateBlock(form, at), { kind: "new sheet", name: form.name });
    beds = (await readJob()).beds;
    const inserted = await insertJob("Alder Court", beds);
    if (!inserted.done) throw new Error("a new sheet is free");
    sheetName = inserted.sheetName;
  });

  test("has lines for all of them, priced on its sheet as in the pane", async () => {
    const { job } = priceTogether(beds);
    const { jobs } = await readJob();
    const shown = must(jobs.find(({ sheet }) => sheet === sheetName));
    for (const { label, quantity, price } of job.lines.filter(({ key }) => key !== "setUp")) {
      const line = shown.lines.find((one) => one.label === label && Math.abs(one.quantity - quantity) < 1e-9);
      expect(line?.price, label).toBeCloseTo(price, 9);
    }
    expect(shown.amounts.price).toBeCloseTo(Number(job.amounts.price), 9);
    const kinds = job.lines
      .filter(({ label }) => label.startsWith("Edging pieces, "))
      .map(({ label, quantity }) => [label, quantity]);
    expect(kinds).toEqual([
      // Both ends of two beds, the ring of 25.1 ft in 4 pieces, and 20 ft around the last, in 3.
      ["Edging pieces, 4 in high, 8 ft long", expect.any(Number)],
      ["Edging pieces, pavers, 4 in long, 2.375 in thick", 88],
      ["Edging pieces, plastic, 5 in high, 20 ft long", 2],
      // 9 ft of the ring.
      ["Edging pieces, timber, 5.5 in high, 8 ft long", 2],
    ]);
  });

  test("is found to be right by the check, and updating the job has nothing to change", async () => {
    const { facts } = await readWorkbook();
    const { findings } = reviewAtOnce(facts, knowledge, { call: callFunction });
    expect(findings.filter(({ rule }) => rule !== "example-rate").map(({ rule, where }) => `${rule} ${where}`)).toEqual(
      [],
    );
    const found = await readJob();
    const job = must(found.jobs.find(({ sheet }) => sheet === sheetName));
    const preview = await previewJobUpdate(job, found.beds, found);
    expect(preview.lines).toEqual([]);
  });

  test("is explained, and comes to the same in a plain copy", async () => {
    const { facts } = await readWorkbook();
    const keys = keyAddresses(estimateRows(forms[0]!), CORNER);
    for (const key of ["secondRun", "secondPieces", "secondSandYards", "secondTime", "digYards"]) {
      const address = must(keys.get(key));
      const around = cellAround(facts, { sheet: "Front walk", ...must(areaIn(address)) }, knowledge, callFunction);
      const result = must(explain(String(host.formula(`'Front walk'!${address}`)), around)).result ?? "";
      expect(Number.parseFloat(result), key).toBeCloseTo(Number(host.value(`'Front walk'!${address}`)), 2);
    }
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Front walk").activate();
      await context.sync();
    });
    const written = await writeCopy(await readSource("sheet"), "formulas", { kind: "new sheet" });
    if (!written.done) throw new Error("a new sheet is free");
    await host.grid.settled();
    for (const [key, address] of keys) {
      const shown = host.value(`'Front walk'!${address}`);
      if (/second|price$/i.test(key) && typeof shown === "number")
        expect(host.value(`'${written.sheetName}'!${address}`), key).toBeCloseTo(shown, 6);
    }
  });

  test("says in its drawing what isn't drawn, where sides have no names", () => {
    const ring = foundBed(forms[2]!, 1).worked!;
    expect(ring.plan!.notes).toEqual(["The second edging, 9' of timber, isn't drawn. Mark where it goes."]);
  });

  test("takes up a second edging that a bed gets later, and leaves it when it goes", async () => {
    const refitted = async (typed: BedForm["typed"]) => {
      const opened = await openBed({ ...(await placeOf("Back")), name: "Back" }, undefined);
      await writeUpdate(await previewUpdate(opened, { ...opened.form, typed }, undefined), []);
      const found = await readJob();
      const job = must(found.jobs.find(({ sheet }) => sheet === sheetName));
      const own = found.beds.filter((bed) => isInJob(bed, job));
      await writeJobUpdate(await previewJobUpdate(job, own, found), []);
      const after = await readJob();
      const updated = must(after.jobs.find(({ sheet }) => sheet === sheetName));
      const { job: priced } = priceTogether(after.beds.filter((bed) => isInJob(bed, updated)));
      expect(updated.amounts.price).toBeCloseTo(Number(priced.amounts.price), 9);
      expect(jobChanges(updated, own, after)).toEqual([]);
      return updated;
    };
    const before = must((await readJob()).jobs.find(({ sheet }) => sheet === sheetName)).amounts.price;
    const size = { length: "12", width: "4" };
    const added = await refitted({ ...size, ...ENDS, secondKind: "spade cut", secondFront: "1" });
    expect(added.amounts.price).not.toBeCloseTo(Number(before), 2);
    const removed = await refitted(size);
    expect(removed.amounts.price).toBeCloseTo(Number(before), 9);
  });
});

async function placeOf(sheet: string) {
  return Excel.run(async (context) => {
    const worksheet = context.workbook.worksheets.getItem(sheet);
    worksheet.load("id");
    await context.sync();
    return { sheetId: worksheet.id, at: CORNER };
  });
}

describe("what can't be", () => {
  test("a side with both, none picked, and a kind that isn't one", () => {
    const problems = (form: BedForm) => paneProblems(form).map(({ place, message }) => `${place}: ${message}`);
    expect(problems(bedOf("pavers", { frontEdging: "1" }))).toEqual([
      "secondFront: Second edging, front: this side has the first edging, too. Take one of them off it.",
    ]);
    expect(problems(bedOf("pavers", { secondFront: "0" }))).toEqual([
      "form: Second edging: pick the sides that it goes along.",
    ]);
    expect(problems(bedOf("timbers"))).toEqual([expect.stringContaining("Did you mean “timber”?")]);
    expect(problems({ ...blankForm(), way: "round", typed: { diameter: "8", secondKind: "pavers" } })).toEqual([
      expect.stringContaining("Second edging, length"),
    ]);
  });
});
