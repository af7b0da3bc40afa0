import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { insertEstimate } from "../../src/pane/insertEstimate";
import { insertJob, insertOption, priceTogether } from "../../src/pane/papers/jobTogether";
import { type FoundBed, type FoundJob, readJob } from "../../src/pane/papers/readJob";
import { previewJobUpdate, updateComparison, writeJobUpdate } from "../../src/pane/papers/updateJob";
import { fields } from "../../src/quantities/bed/fields";
import { type BedForm, blankForm } from "../../src/quantities/bed/form";
import { keyAddresses } from "../../src/sheets/compose";
import { estimateRows } from "../../src/sheets/estimate/block";
import type { HeadlessHost } from "../headlessHost";
import { createProductHost } from "../productHost";
import { difference, snapshotOf } from "./faults/snapshot";

/*
 * The estimate of a job is updated where it is when beds are added, removed, or get another stone. What was typed by hand
 * stays with its bed and its line.
 */
const form = (name: string, typed: BedForm["typed"]): BedForm => ({ ...blankForm(), name, typed });
const forms = [
  form("Wall", { length: "32", width: "3" }),
  form("Walk", { length: "18", width: "5", stone: "pea gravel", stoneSize: "3/8" }),
  form("Gate", { length: "12", width: "4" }),
];
const fourth = form("Ring", { length: "10", width: "6", stone: "crushed granite" });

let host: HeadlessHost;
beforeEach(async () => {
  host = await createProductHost();
  for (const one of [...forms, fourth]) await insertEstimate(one, { kind: "new sheet", name: one.name });
  const { beds } = await readJob();
  await insertJob("Alder Court", bedsNamed(beds, "Wall", "Walk", "Gate"));
});
afterEach(() => host.dispose());

function bedsNamed(beds: readonly FoundBed[], ...names: readonly string[]): FoundBed[] {
  return names.flatMap((name) => beds.filter(({ block }) => block.name === name && !block.sheet.startsWith("Alder")));
}

const rowsOf = (sheet: string) => host.values(`'${sheet}'!A1:P160`);
/** The cell of the first row with a label, or the last. */
function cellOf(label: string, column = "B", { sheet = "Alder Court", last = false } = {}): string {
  const labels = rowsOf(sheet).map(([first]) => first);
  const row = last ? labels.lastIndexOf(label) : labels.indexOf(label);
  if (row < 0) throw new Error(`No row is labeled ${label}.`);
  return `'${sheet}'!${column}${row + 1}`;
}
const shown = (label: string, column = "B") => host.value(cellOf(label, column));

const job = ({ jobs }: FoundJob) => jobs.find(({ sheet }) => sheet === "Alder Court")!;

/** What the beds cost together, worked out apart from the sheet. */
const priceOf = (beds: readonly FoundBed[]) => priceTogether(beds).job.amounts.price;

async function preview(...names: readonly string[]) {
  const found = await readJob();
  return previewJobUpdate(job(found), bedsNamed(found.beds, ...names), found);
}

async function update(names: readonly string[], replaces: (words: string) => boolean = () => false) {
  const before = await preview(...names);
  const done = await writeJobUpdate(
    before,
    before.kept.filter(({ words }) => replaces(words)),
  );
  const found = await readJob();
  return { before, done, found, beds: bedsNamed(found.beds, ...names) };
}

describe("a job's estimate that is updated where it is", () => {
  test("gets lines for a stone that a bed has by now, and a price", async () => {
    const stone = keyAddresses(estimateRows(forms[2]!), { row: 0, column: 0 }).get("stone");
    await host.type({ [`Gate!${stone}`]: "crushed granite" });
    expect(shown("Price")).not.toBeTypeOf("number");
    const { before, found, beds } = await update(["Wall", "Walk", "Gate"]);
    expect(before.lines).toEqual([
      "lines for another stone: crushed granite, to 1.25 in",
      "in all 7 rows added, 1 cell changed",
    ]);
    expect(before.kept).toEqual([]);
    expect(job(found).amounts.price).toBeCloseTo(Number(priceOf(beds)), 9);
    expect(shown("Stone, crushed granite, to 1.25 in", "H")).toBeGreaterThan(0);
  });

  test("takes a bed in", async () => {
    const { before, found, beds } = await update(["Wall", "Walk", "Gate", "Ring"]);
    expect(before.lines.slice(0, 2)).toEqual([
      "bed added: Ring",
      "lines for another stone: crushed granite, to 1.25 in",
    ]);
    expect(job(found).beds.map(({ sheet }) => sheet)).toEqual(["Wall", "Walk", "Gate", "Ring"]);
    expect(job(found).amounts.price).toBeCloseTo(Number(priceOf(beds)), 9);
    const shares = job(found).beds.map(({ price }) => Number(price));
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(Number(priceOf(beds)), 6);
    await host.type({ [cellOf("Length", "B", { sheet: "Ring" })]: 20 });
    const longer = await readJob();
    const price = priceOf(bedsNamed(longer.beds, "Wall", "Walk", "Gate", "Ring"));
    expect(job(longer).amounts.price).toBeCloseTo(Number(price), 9);
    expect(price).toBeGreaterThan(Number(priceOf(beds)));
  });

  test("leaves a bed out, and the lines of its stone", async () => {
    const { before, found, beds } = await update(["Wall", "Gate"]);
    expect(before.lines.slice(0, 2)).toEqual([
      "bed removed: Walk",
      "no lines anymore for the stone pea gravel, to 0.375 in",
    ]);
    expect(job(found).beds.map(({ sheet }) => sheet)).toEqual(["Wall", "Gate"]);
    expect(job(found).amounts.price).toBeCloseTo(Number(priceOf(beds)), 9);
    expect(rowsOf("Alder Court").flat().join()).not.toContain("pea gravel");
  });

  test("goes on without a bed whose sheet was deleted", async () => {
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Walk").delete();
      await context.sync();
    });
    const { before, found, beds } = await update(["Wall", "Gate"]);
    expect(before.lines[0]).toBe("1 bed without an estimate removed");
    expect(job(found).amounts.price).toBeCloseTo(Number(priceOf(beds)), 9);
  });

  test("keeps what was typed by hand, and says so", async () => {
    await host.type({
      [cellOf("Lines", "A").replace(/\d+$/, (row) => String(Number(row) + 1))]: "Remove old shrubs",
      [cellOf("Lines", "B").replace(/\d+$/, (row) => String(Number(row) + 1))]: 3,
      [cellOf("Lines", "D").replace(/\d+$/, (row) => String(Number(row) + 1))]: 48,
      [cellOf("Discount, %")]: 0.05,
      [cellOf("Stone, river rock, to 1.25 in")]: 9,
      [cellOf("Pins", "F")]: 0.5,
      [cellOf(fields.crewSize.label)]: 4,
    });
    const typed = () => ({
      shrubs: host.value(cellOf("Remove old shrubs")),
      discount: shown("Discount, %"),
      stone: shown("Stone, river rock, to 1.25 in"),
      markup: shown("Pins", "F"),
      crew: shown(fields.crewSize.label),
    });
    const before = typed();
    expect(before).toEqual({ shrubs: 3, discount: 0.05, stone: 9, markup: 0.5, crew: 4 });
    const { before: seen } = await update(["Wall", "Gate", "Ring"]);
    expect(seen.kept.map(({ words }) => words)).toEqual([
      "line “Remove old shrubs” added",
      "Pins, markup: 0.5",
      "Stone, river rock, to 1.25 in, quantity: 9",
      "Discount, %: 0.05",
      `${fields.crewSize.label}: 4`,
    ]);
    expect(typed()).toEqual(before);
  });

  test("replaces what was typed by hand where it is told to", async () => {
    await host.type({ [cellOf("Stone, river rock, to 1.25 in")]: 9 });
    const { found, beds } = await update(["Wall", "Walk", "Gate", "Ring"], (words) => words.startsWith("Stone, river"));
    expect(job(found).amounts.price).toBeCloseTo(Number(priceOf(beds)), 9);
  });

  test("keeps a number of the working with its bed when another bed before it goes", async () => {
    const area = (column: string) => cellOf("Scrape and load", column, { last: true });
    await host.type({ [area("E")]: 7.25 });
    expect(host.value(cellOf("From each bed", "E"))).toBe("Gate");
    await update(["Wall", "Gate"]);
    expect(host.value(cellOf("From each bed", "D"))).toBe("Gate");
    expect(host.value(area("D"))).toBe(7.25);
    expect(host.value(area("E"))).toBeFalsy();
  });

  test("keeps the quantity typed for a stone when its lines move", async () => {
    await host.type({ [cellOf("Stone, pea gravel, to 0.375 in")]: 6 });
    await update(["Walk"]);
    expect(shown("Stone, pea gravel, to 0.375 in")).toBe(6);
  });

  test("finds its bed where the name was typed over, and a bed that was renamed", async () => {
    await host.type({ [cellOf("Walk", "A")]: "Front walk", "'Gate'!B1": "Garden gate" });
    const { before, found } = await update(["Wall", "Walk", "Garden gate", "Ring"]);
    expect(before.kept.map(({ words }) => words)).toEqual(["“Front walk” typed over a label"]);
    expect(job(found).beds.map(({ sheet }) => sheet)).toEqual(["Wall", "Walk", "Gate", "Ring"]);
  });

  test("shows another version of the job beside it, live, and drops it when its sheet is deleted", async () => {
    const first = await readJob();
    const before = rowsOf("Alder Court");
    const beds = bedsNamed(first.beds, "Wall", "Walk", "Gate");
    await insertOption(job(first), beds, { name: "Granite", differences: { stone: "crushed granite" } }, undefined);
    const added = await readJob();
    const price = () => Number(shown("Price"));
    const alone = price();
    const table = await updateComparison("Alder Court", added);
    expect(table).toBeDefined();
    expect(await updateComparison("Alder Court", await readJob())).toBeUndefined();

    const option = () => added.jobs.find((one) => one.option === "Granite")!;
    const row = (label: string) =>
      ["B", "C", "D", "E"].map((column) => host.value(cellOf(label, column, { last: true })));
    const total = Number(option().amounts.priceWithTax);
    expect(row("Option 1")).toEqual([alone, alone, "", "yes"]);
    expect(row("Granite")).toEqual([option().amounts.price, total, expect.closeTo(total - alone, 9), "no"]);
    expect(total).not.toBeCloseTo(alone, 2);
    expect(price()).toBe(alone);
    await host.type({ [cellOf("Length", "B", { sheet: "Wall" })]: 40 });
    expect(row("Option 1")[0]).toBeGreaterThan(alone);
    expect(row("Granite")[1]).toBeGreaterThan(total);
    expect((await preview("Wall", "Walk", "Gate")).lines).toEqual([]);
    await host.type({ [cellOf("Length", "B", { sheet: "Wall" })]: 32 });

    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem(option().sheet).delete();
      await context.sync();
    });
    const gone = await update(["Wall", "Walk", "Gate"]);
    expect(gone.before.lines[0]).toBe("an option without a sheet removed");
    expect(rowsOf("Alder Court")).toEqual(before);
  });

  test("says that nothing changes where nothing does", async () => {
    const { lines, kept } = await preview("Wall", "Walk", "Gate");
    expect({ lines, kept }).toEqual({ lines: [], kept: [] });
  });

  test("is undone in one step, to the cell", async () => {
    await host.type({
      [cellOf("Stone, pea gravel, to 0.375 in")]: 6,
      [cellOf("Scrape and load", "E", { last: true })]: 7,
    });
    const before = await snapshotOf(host);
    const { done } = await update(["Gate", "Ring"]);
    expect(difference(before, await snapshotOf(host))).not.toBe("");
    await done.undo();
    expect(difference(before, await snapshotOf(host))).toBe("");
  });
});
