import { afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { insertEstimate } from "../../src/pane/insertEstimate";
import { insertJob, insertOption, isInJob, priceTogether } from "../../src/pane/papers/jobTogether";
import { type FoundBed, type FoundJob, readJob } from "../../src/pane/papers/readJob";
import { jobChanges, previewJobUpdate, updateComparison } from "../../src/pane/papers/updateJob";
import { writeJobUpdate } from "../../src/pane/papers/writeJobUpdate";
import { openBed, previewUpdate, writeUpdate } from "../../src/pane/updateEstimate";
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
// Inserted once, and opened for each test from there.
let inserted: ReturnType<HeadlessHost["save"]>;
beforeAll(async () => {
  host = await createProductHost();
  for (const one of [...forms, fourth]) await insertEstimate(one, { kind: "new sheet", name: one.name });
  const { beds } = await readJob();
  await insertJob("Alder Court", bedsNamed(beds, "Wall", "Walk", "Gate"));
  inserted = host.save();
  host.dispose();
});
beforeEach(async () => {
  host = await createProductHost(undefined, structuredClone(inserted), true);
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

/** A list of the office's own, with one bed. */
const addBedList = () =>
  Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.add("Bed list");
    sheet.getRange("A1:E2").values = [
      ["Bed", "Length, ft", "Width, ft", "Depth, in", "Stone"],
      ["North side", 20, 4, 2.5, "river rock"],
    ];
    await context.sync();
  });

const job = ({ jobs }: FoundJob) => jobs.find(({ sheet }) => sheet === "Alder Court")!;

/** All of the workbook but what an undo of a new sheet leaves: which sheet is in front, and what was inserted last. */
const contentsNow = () => ({ ...snapshotOf(host), kept: {}, front: "", selection: "" });

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
      "in all 9 rows added, 1 cell changed",
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

  test("takes a line's formula from before discounts in dollars for its own", async () => {
    const at = cellOf("Lines", "H").replace(/\d+$/, (row) => String(Number(row) + 4));
    const now = String(host.formula(at));
    const older = now.replace(/^=IF\((\w+)>1,(.*)-\1,\2\*\(1-\1\)\)$/, "=$2*(1-$1)");
    expect(older).toMatch(/^=\w+\*\(1\+\w+\)\*\(1-\w+\)$/);
    await host.type({ [at]: older });
    expect(await preview("Wall", "Walk", "Gate")).toMatchObject({ lines: [], kept: [] });
  });

  test("says that nothing changes where nothing does", async () => {
    const { lines, kept } = await preview("Wall", "Walk", "Gate");
    expect({ lines, kept }).toEqual({ lines: [], kept: [] });
  });

  test("takes in a row of a list, whose estimate on a sheet of its own follows the row", async () => {
    await addBedList();
    const before = contentsNow();
    const found = await readJob();
    const row = found.beds.filter(({ where }) => where.startsWith("Bed list"));
    const beds = [...bedsNamed(found.beds, "Wall", "Walk", "Gate"), ...row];
    const seen = await previewJobUpdate(job(found), beds, found);
    expect(seen.lines[0]).toBe("bed added: North side");
    expect(seen.lines.at(-1)).toBe("estimate on a new sheet: North side");
    expect(jobChanges(job(found), beds, found)).toEqual(seen.lines);
    expect(seen.kept).toEqual([]);
    const done = await writeJobUpdate(seen, []);
    const inSheet = async () => {
      const now = await readJob();
      const own = bedsNamed(now.beds, "Wall", "Walk", "Gate", "North side").filter(({ onSheet }) => onSheet);
      return {
        shown: job(now).amounts.price,
        worked: Number(priceOf(own)),
        sheets: job(now).beds.map(({ sheet }) => sheet),
      };
    };
    const first = await inSheet();
    expect(first.sheets).toEqual(["Wall", "Walk", "Gate", "North side"]);
    expect(first.shown).toBeCloseTo(first.worked, 9);
    await host.type({ "'Bed list'!B2": 30 });
    const longer = await inSheet();
    expect(longer.shown).toBeCloseTo(longer.worked, 9);
    expect(longer.worked).toBeGreaterThan(first.worked);
    await host.type({ "'Bed list'!B2": 20 });
    await done.undo();
    expect(difference(before, contentsNow())).toBe("");
  });

  test("goes on reading beds below it once rows have come and gone", async () => {
    await addBedList();
    const found = await readJob();
    const row = found.beds.filter(({ where }) => where.startsWith("Bed list"));
    await insertJob("List job", [...bedsNamed(found.beds, "Walk"), ...row, ...bedsNamed(found.beds, "Gate")]);
    const now = await readJob();
    const listJob = now.jobs.find(({ name }) => name === "List job")!;
    const own = now.beds.filter((bed) => isInJob(bed, listJob) && bed.block.name !== "Walk");
    const seen = await previewJobUpdate(listJob, [...own, ...bedsNamed(now.beds, "Ring")], now);
    expect(seen.kept).toEqual([]);
    await writeJobUpdate(seen, []);
    const after = await readJob();
    const updated = after.jobs.find(({ name }) => name === "List job")!;
    const beds = after.beds.filter((bed) => isInJob(bed, updated));
    expect(beds.map(({ block }) => block.name).sort()).toEqual(["Gate", "North side", "Ring"]);
    expect(updated.amounts.price).toBeCloseTo(Number(priceOf(beds)), 9);
  });

  describe("with an option", () => {
    beforeEach(async () => {
      const first = await readJob();
      const beds = bedsNamed(first.beds, "Wall", "Walk", "Gate");
      const differences = { stone: "crushed granite", stoneCost: "71", borderHeight: "5" };
      await insertOption(job(first), beds, { name: "Granite", differences }, undefined);
      await updateComparison("Alder Court", await readJob());
    });
    const optionNow = async () => {
      const found = await readJob();
      const option = found.jobs.find((one) => one.option === "Granite")!;
      const own = found.beds.filter((bed) => isInJob(bed, option));
      return { option, own, price: option.amounts.price, worked: Number(priceOf(own)) };
    };
    const ownSheet = (beds: readonly FoundBed[]) => beds.filter(({ block }) => block.sheet === block.name);
    const plan = async (...names: readonly string[]) => {
      const found = await readJob();
      return previewJobUpdate(job(found), ownSheet(bedsNamed(found.beds, ...names)), found);
    };

    test("takes a bed in there, too, with what sets the option apart", async () => {
      const before = contentsNow();
      const seen = await plan("Wall", "Walk", "Gate", "Ring");
      expect(seen.lines).toContain("Granite: bed added: Ring");
      expect(seen.lines.at(-1)).toBe("estimate on a new sheet: Ring Granite");
      const done = await writeJobUpdate(seen, []);
      const { option, own, price, worked } = await optionNow();
      expect(option.beds).toHaveLength(4);
      expect(own.at(-1)?.block.form.typed).toMatchObject({ length: "10", stone: "crushed granite", borderHeight: "5" });
      expect(price).toBeCloseTo(worked, 9);
      await host.type({ [cellOf("Length", "B", { sheet: "Ring" })]: 20 });
      const longer = await optionNow();
      expect(longer.price).toBeCloseTo(longer.worked, 9);
      expect(longer.worked).toBeGreaterThan(worked);
      await host.type({ [cellOf("Length", "B", { sheet: "Ring" })]: 10 });
      await done.undo();
      expect(difference(before, contentsNow())).toBe("");
    });

    test("leaves a bed out there, too", async () => {
      const seen = await plan("Wall", "Gate");
      expect(seen.lines).toContain("Granite: bed removed: Walk");
      expect(seen.options.map(({ update: { byHand } }) => byHand)).toEqual([[]]);
      await writeJobUpdate(seen, []);
      const { option, price, worked } = await optionNow();
      expect(option.beds).toHaveLength(2);
      expect(price).toBeCloseTo(worked, 9);
    });

    test("is undone as a whole where the option's sheet refuses", async () => {
      const seen = await plan("Wall", "Walk", "Gate", "Ring");
      await Excel.run(async (context) => {
        context.workbook.worksheets.getItem("Alder Court Granite").protection.protect();
        await context.sync();
      });
      const before = contentsNow();
      await expect(writeJobUpdate(seen, [])).rejects.toThrow("protected");
      expect(difference(before, contentsNow())).toBe("");
    });
  });

  test("needs no update for a width that its bed gets at the end", async () => {
    const kidney: BedForm = {
      ...form("Kidney", { spacing: "4" }),
      way: "widths",
      widths: ["0", "3", "4.5", "5", "4", "2.5", "2"],
      cutOuts: [["12", "1.5", "2", "3"]],
    };
    await insertEstimate(kidney, { kind: "new sheet", name: "Kidney" });
    await insertJob("Kidney job", bedsNamed((await readJob()).beds, "Wall", "Kidney"));
    const strips = () => String(host.value(cellOf("Strips to cut", "D", { sheet: "Kidney job" })));
    const before = strips();

    const worksheet = host.grid.sheets.list().find(({ name }) => name === "Kidney")!;
    const opened = await openBed({ sheetId: worksheet.id, at: { row: 0, column: 0 }, name: "Kidney" }, undefined);
    const longer = { ...opened.form, widths: [...kidney.widths, "3", "6"] };
    await writeUpdate(await previewUpdate(opened, longer, undefined), []);
    const found = await readJob();
    const beds = bedsNamed(found.beds, "Wall", "Kidney");
    expect(strips()).not.toBe(before);
    const updated = found.jobs.find(({ sheet }) => sheet === "Kidney job")!;
    expect(updated.amounts.price).toBeCloseTo(Number(priceOf(beds)), 9);
    expect(jobChanges(updated, beds, found)).toEqual([]);

    // A job of an earlier version reads the list up to the last row that it had; an update has it read on.
    const address = cellOf("Strips to cut", "D", { sheet: "Kidney job" });
    const formula = host.formula(address)!;
    const upToLast = formula.replace(
      /:INDEX\([^()]*:([A-Z]+)(\d+),ROWS\([^()]*\)-(\d+)\)/g,
      (_, column: string, row: string, below: string) => `:${column}${Number(row) - Number(below)}`,
    );
    expect(upToLast).not.toContain("INDEX(Kidney!");
    await host.type({ [address]: upToLast });
    const again = await readJob();
    const seen = await previewJobUpdate(updated, bedsNamed(again.beds, "Wall", "Kidney"), again);
    expect([seen.lines, seen.kept]).toEqual([["in all 1 cell changed"], []]);
    await writeJobUpdate(seen, []);
    expect(host.formula(address)).toBe(formula);
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
