import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { insertEstimate } from "../../src/pane/insertEstimate";
import { previewOf } from "../../src/pane/preview";
import { openBed, previewUpdate, writeUpdate } from "../../src/pane/updateEstimate";
import { type BedForm, blankForm } from "../../src/quantities/bed/form";
import { readRates } from "../../src/workbook/read/rates";
import type { HeadlessHost } from "../headlessHost";
import { createProductHost } from "../productHost";
import { select } from "./faults/bench";
import { addFixtures, office } from "./faults/office";
import { bed, insertRates } from "./faults/operations/inserts";
import { written } from "./faults/operations/said";
import { difference, snapshotOf } from "./faults/snapshot";

/*
 * A bed's estimate is opened from the sheet, changed in the pane, and written back where it is. What the person changed
 * on the sheet is kept.
 */
let host: HeadlessHost;
beforeEach(async () => {
  host = await createProductHost(office);
  await addFixtures(host);
  await select("Notes", "D12");
});
afterEach(() => host.dispose());

const COLUMNS = "DEFGHIJKL";

/** The cell of a row of the estimate on Notes: by its label, the first or the last that has it. */
function cellOf(label: string, column = 1, last = false): string {
  const labels = host.values("Notes!D12:D200").map(([cell]) => cell);
  const index = last ? labels.lastIndexOf(label) : labels.indexOf(label);
  if (index < 0) throw new Error(`No row is labeled ${label}.`);
  return `Notes!${COLUMNS[column]}${12 + index}`;
}
/** The row of a line, which has its label below the heading of the lines. */
function lineCell(label: string, column: number): string {
  const labels = host.values("Notes!D12:D200").map(([cell]) => cell);
  return `Notes!${COLUMNS[column]}${12 + labels.indexOf(label, labels.indexOf("Lines"))}`;
}
/** The first spare line, below the last line. */
const spareCell = (column: number) => {
  const labels = host.values("Notes!D12:D200").map(([cell]) => cell);
  return `Notes!${COLUMNS[column]}${12 + labels.indexOf("Clean up", labels.indexOf("Lines")) + 1}`;
};

const rates = async () => (await readRates())?.rates;
const open = async () => {
  await select("Notes", "D14");
  return openBed("selected", await rates());
};

/** Opens the bed, changes the form, and writes it back. */
async function update(change: (form: BedForm) => BedForm, replaces: (words: string) => boolean = () => false) {
  const opened = await open();
  const preview = await previewUpdate(opened, change(opened.form), await rates());
  expect(preview.refused).toBeUndefined();
  const replaced = preview.kept.filter(({ words }) => replaces(words));
  return { preview, done: await writeUpdate(preview, replaced) };
}
const typed = (fields: BedForm["typed"]) => (form: BedForm) => ({ ...form, typed: { ...form.typed, ...fields } });

describe("the sides with edging", () => {
  const bare = { rightEdging: "0", frontEdging: "0", leftEdging: "0" };
  const plain: BedForm = { ...blankForm(), name: "Front walk", typed: { length: "20", width: "6" } };

  test("of a bed are typed on the sheet, counted live, and read back", async () => {
    await written(insertEstimate(plain, { kind: "selection" }));
    const edging = () => host.values(cellOf("Edging", 1))[0]?.[0];
    // Front and both ends: 20 + 6 + 6.
    expect(edging()).toBe(32);
    await host.type({ [cellOf("Edging, house side")]: 1, [cellOf("Edging, front")]: 0 });
    expect(edging()).toBe(32);
    await host.type({ [cellOf("Edging, left end")]: 0 });
    expect(edging()).toBe(26);
    const { form, kept } = await open();
    expect(kept).toEqual([]);
    expect(form.typed).toEqual({
      ...plain.typed,
      houseEdging: "1",
      rightEdging: "1",
      frontEdging: "0",
      leftEdging: "0",
    });
  });

  test("of a block that counts them are opened as counts, and become sides once one is picked", async () => {
    const counted = { ...plain, typed: { ...plain.typed, longBorders: "1", shortBorders: "2" } };
    await written(insertEstimate(counted, { kind: "selection" }));
    expect(host.values(cellOf("Long sides with edging"))).toEqual([[1]]);
    const opened = await open();
    expect(opened).toMatchObject({ kept: [], form: counted });
    // Nothing changed, nothing written.
    expect((await previewUpdate(opened, opened.form, await rates())).lines).toEqual([]);
    const { longBorders: _, shortBorders: __, ...others } = counted.typed;
    const { preview } = await update((form) => ({ ...form, typed: { ...others, ...bare, houseEdging: "1" } }));
    expect(preview.kept).toEqual([]);
    expect(() => cellOf("Long sides with edging")).toThrow();
    expect(host.values(cellOf("Edging, house side"))).toEqual([[1]]);
    expect(host.values(cellOf("Edging", 1))).toEqual([[20]]);
    const again = await open();
    expect(again.kept).toEqual([]);
    expect(again.form.typed).toEqual({ ...others, ...bare, houseEdging: "1" });
  });

  test("and its rounded corners are laid out where they were picked, on the sheet as in the pane", async () => {
    const picked: BedForm = {
      ...plain,
      typed: { ...plain.typed, ...bare, houseEdging: "1", cornerRadius: "2", roundBackRight: "1" },
    };
    await written(insertEstimate(picked, { kind: "selection" }));
    const { estimate } = previewOf(picked);
    // 18 ft of the house side, and a quarter circle of 2 ft around the corner at its end.
    expect(estimate?.amounts.borderRun).toBeCloseTo(18 + Math.PI, 9);
    expect(host.values(cellOf("Edging", 1))[0]?.[0]).toBeCloseTo(18 + Math.PI, 9);
    expect(host.values(cellOf("Area to cover", 1))[0]?.[0]).toBeCloseTo(120 - 4 + Math.PI, 9);
    await host.type({ [cellOf("Rounded, back right")]: 0, [cellOf("Rounded, front left")]: 1 });
    expect(host.values(cellOf("Edging", 1))[0]?.[0]).toBeCloseTo(20, 9);
    expect((await open()).form.typed).toMatchObject({ roundBackRight: "0", roundFrontLeft: "1" });
  });

  test("of a bed by widths include its base line", async () => {
    const curve: BedForm = {
      ...blankForm(),
      name: "Front walk",
      way: "widths",
      typed: { spacing: "4", baseEdging: "1", outerEdging: "0", firstEdging: "0", lastEdging: "0" },
      widths: ["3", "3", "3"],
    };
    await written(insertEstimate(curve, { kind: "selection" }));
    expect(host.values(cellOf("Edging", 1))).toEqual([[8]]);
    await host.type({ [cellOf("Edging, outer edge")]: 1 });
    expect(host.values(cellOf("Edging", 1))).toEqual([[16]]);
    expect((await open()).form.typed).toEqual({ ...curve.typed, outerEdging: "1" });
  });
});

describe("an estimate that is opened", () => {
  test("has what was typed, and no default is taken for typed", async () => {
    await written(insertEstimate(bed, { kind: "selection" }));
    const opened = await open();
    expect(opened).toMatchObject({ where: "Notes!D12", name: "Front walk", kept: [] });
    expect(opened.form).toEqual(bed);
  });

  test("has the inputs that were typed into its cells", async () => {
    await written(insertEstimate(bed, { kind: "selection" }));
    await host.type({
      [cellOf("Width")]: `6' 3"`,
      [cellOf("Waste and low spots")]: 0.12,
      [lineCell("Stone", 3)]: 71,
    });
    const opened = await open();
    expect(opened.form.typed).toEqual({ ...bed.typed, width: `6' 3"`, waste: "12%", stoneCost: "71" });
    expect(opened.kept).toEqual([]);
  });

  test("goes on following the office's rates, but for what was typed over", async () => {
    await written(insertRates());
    const found = (await rates())!;
    await select("Notes", "D12");
    await written(insertEstimate({ ...bed, rates: found }, { kind: "selection" }));
    expect((await open()).form).toEqual(bed);
    await host.type({ [cellOf("Waste and low spots")]: 0.12 });
    const opened = await open();
    expect(opened.form.typed).toEqual({ ...bed.typed, waste: "12%" });
    expect(opened.kept).toEqual([]);
  });

  test("names what was changed by hand: a quantity, a line added, a label, a markup, and a row", async () => {
    await written(insertEstimate(bed, { kind: "selection" }));
    await host.type({
      [lineCell("Stone", 1)]: 4.5,
      [spareCell(0)]: "Remove old shrubs",
      [spareCell(1)]: 3,
      [spareCell(2)]: "h",
      [spareCell(3)]: 48,
      [lineCell("Delivery", 5)]: 0.1,
    });
    await host.type({ [lineCell("Scrape and load", 0)]: "Strip sod" });
    expect((await open()).kept).toEqual([
      "“Scrape and load” renamed to “Strip sod”",
      "Stone, quantity: 4.5",
      "Delivery, markup: 0.1",
      "line “Remove old shrubs” added",
    ]);
  });

  test("has the input of a row whose label was changed", async () => {
    await written(insertEstimate(bed, { kind: "selection" }));
    await host.type({ [cellOf("Length")]: "21", [cellOf("Length", 0)]: "Along the wall" });
    const opened = await open();
    expect(opened.form.typed).toEqual({ ...bed.typed, length: "21" });
    expect(opened.kept).toEqual(["“Length” renamed to “Along the wall”"]);
  });
});

describe("an update", () => {
  test("writes only the cells that differ, and undo brings the sheet back cell by cell", async () => {
    await written(insertEstimate(bed, { kind: "selection" }));
    await select("Notes", "D14");
    const before = snapshotOf(host);
    const priceBefore = host.value(cellOf("Price"));
    const { preview, done } = await update(typed({ width: "6", waste: "10%" }));
    expect(preview.lines).toEqual(["E19 Width: 5 → 6", expect.stringMatching(/Waste and low spots: 0.08 → 0.1$/)]);
    expect(host.value(cellOf("Width"))).toBe(6);
    expect(host.value(cellOf("Price"))).not.toBe(priceBefore);
    await done.undo();
    expect(difference(before, snapshotOf(host))).toBe("");
  });

  test("comes to what the pane's form comes to on a sheet of its own", async () => {
    await written(insertEstimate(bed, { kind: "selection" }));
    await update((form) => ({
      ...typed({ width: "6", stone: "pea gravel", rollWidth: "4" })(form),
      name: "Side walk",
    }));
    const other = {
      ...bed,
      name: "Side walk",
      typed: { ...bed.typed, width: "6", stone: "pea gravel", rollWidth: "4" },
    };
    const { sheetName } = await written(insertEstimate(other, { kind: "new sheet", name: "Other" }));
    const rows = host.values("Notes!D12:D200").length;
    expect(host.values(`Notes!D12:L${11 + rows}`)).toEqual(host.values(`${sheetName}!A1:I${rows}`));
  });

  test("keeps what was changed by hand on the sheet, and the price follows it", async () => {
    await written(insertEstimate(bed, { kind: "selection" }));
    await host.type({
      [lineCell("Stone", 1)]: 4.5,
      [spareCell(0)]: "Remove old shrubs",
      [spareCell(1)]: 3,
      [spareCell(3)]: 48,
    });
    const line = host.value(lineCell("Stone", 6));
    const { preview } = await update(typed({ width: "6" }));
    expect(preview.kept.map(({ words }) => words)).toEqual(["Stone, quantity: 4.5", "line “Remove old shrubs” added"]);
    expect(host.value(lineCell("Stone", 1))).toBe(4.5);
    expect(host.value(lineCell("Stone", 6))).toBe(line);
    expect(host.value(spareCell(4))).toBe(144);
    expect(host.value(cellOf("Width"))).toBe(6);
  });

  test("replaces what was changed by hand where it is told to", async () => {
    await written(insertEstimate(bed, { kind: "selection" }));
    const formula = host.formula(lineCell("Stone", 1));
    await host.type({ [lineCell("Stone", 1)]: 4.5, [lineCell("Delivery", 5)]: 0.1 });
    await update(
      (form) => form,
      (words) => words.startsWith("Stone"),
    );
    expect(host.formula(lineCell("Stone", 1))).toBe(formula);
    expect(host.value(lineCell("Delivery", 5))).toBe(0.1);
  });

  test("keeps a row that the person put in, with references elsewhere pointing where they did", async () => {
    await written(insertEstimate(bed, { kind: "selection" }));
    const price = cellOf("Price").replace("Notes!", "");
    await host.type({ "List!K1": `=Notes!${price}*2` });
    const row = Number(lineCell("Fabric rolls", 0).match(/\d+/)![0]);
    host.grid.sheets.insertRows(notes(), row - 1, 1);
    await host.type({ [`Notes!D${row}`]: "Root barrier", [`Notes!E${row}`]: 2, [`Notes!J${row}`]: 80 });
    expect((await open()).kept).toEqual(["row “Root barrier” added"]);
    await update(typed({ width: "6" }));
    expect(host.value(`Notes!D${row}`)).toBe("Root barrier");
    expect(host.value("List!K1")).toBe(2 * Number(host.value(cellOf("Price"))));
  });

  test("lets a field follow its rate again, and types over one that followed", async () => {
    await written(insertRates());
    const found = (await rates())!;
    await select("Notes", "D12");
    await written(insertEstimate({ ...bed, rates: found }, { kind: "selection" }));
    const followed = host.formula(cellOf("Waste and low spots"));
    const { preview } = await update(typed({ waste: "12%" }));
    expect(preview.lines[0]).toMatch(/Waste and low spots: formula → 0.12$/);
    expect(host.value(cellOf("Waste and low spots"))).toBe(0.12);
    const without = await update(({ typed: { waste: _, ...rest }, ...form }) => ({ ...form, typed: rest }));
    expect(without.preview.lines[0]).toMatch(/0.12 → follows Rates$/);
    expect(host.formula(cellOf("Waste and low spots"))).toBe(followed);
  });

  test("leaves an estimate without rates as it is, where the workbook has rates by now", async () => {
    await written(insertEstimate(bed, { kind: "selection" }));
    await written(insertRates());
    const { preview } = await update(typed({ width: "6" }));
    expect(preview.lines).toEqual(["E19 Width: 5 → 6"]);
  });

  test("keeps what was typed into the sheet after the bed was opened", async () => {
    await written(insertEstimate(bed, { kind: "selection" }));
    const opened = await open();
    await host.type({ [cellOf("Length")]: "24" });
    const preview = await previewUpdate(opened, typed({ width: "6" })(opened.form), undefined);
    await writeUpdate(preview, []);
    expect([host.value(cellOf("Length")), host.value(cellOf("Width"))]).toEqual([24, 6]);
  });

  test("is refused where the sheet has changed since the preview", async () => {
    await written(insertEstimate(bed, { kind: "selection" }));
    const opened = await open();
    const preview = await previewUpdate(opened, typed({ width: "6" })(opened.form), undefined);
    await host.type({ [cellOf("Length")]: "24" });
    await expect(writeUpdate(preview, [])).rejects.toThrow(/was just changed, so nothing was written/);
    expect(host.value(cellOf("Width"))).toBe(5);
  });

  test("finds the estimate where it was moved to, and says so where it is gone", async () => {
    await written(insertEstimate(bed, { kind: "selection" }));
    const opened = await open();
    host.grid.sheets.insertRows(notes(), 0, 3);
    const preview = await previewUpdate(opened, typed({ width: "6" })(opened.form), undefined);
    expect(preview.lines).toEqual(["E22 Width: 5 → 6"]);
    await host.type({ "Notes!D15": "" });
    await expect(previewUpdate(opened, opened.form, undefined)).rejects.toThrow(/isn't where it was opened/);
  });

  test("keeps a formula that was typed for an input, unless the same is changed in the pane and ticked", async () => {
    await written(insertEstimate(bed, { kind: "selection" }));
    await host.type({ [cellOf("Length")]: "=10+8" });
    const { preview } = await update(typed({ width: "6" }));
    expect(preview.kept.map(({ words }) => words)).toEqual(["Length: =10+8"]);
    await update(typed({ length: "20" }));
    expect(host.formula(cellOf("Length"))).toBe("=10+8");
    await update(typed({ length: "20" }), () => true);
    expect(host.value(cellOf("Length"))).toBe(20);
  });
});

describe("an update by which rows come and go", () => {
  const kidney: BedForm = {
    ...blankForm(),
    name: "Kidney",
    way: "widths",
    typed: { spacing: "4" },
    widths: ["4", "5", `6' 6"`, "4", "0"],
    cutOuts: [["8", "2", "2", ""]],
  };
  const ring: BedForm = { ...blankForm(), name: "Ring", way: "round", typed: { diameter: "8", innerDiameter: "2" } };
  const corners: BedForm = {
    ...blankForm(),
    name: "Corner",
    way: "points",
    points: [
      ["0", "0", "1"],
      ["9", "0", "0"],
      ["9", "7", "1"],
      ["0", "7", "1"],
    ],
  };
  /** A bed as the pane has it, with what its plan fills in. */
  const made = (form: BedForm) => previewOf(form).form;
  const insertAlone = async (form: BedForm, name: string) => {
    const { sheetName } = await written(insertEstimate(made(form), { kind: "new sheet", name }));
    await select(sheetName, "B3");
    return sheetName;
  };
  /** Everything of a sheet, without its name, and without how it prints but for its area; F17:F17 is F17. */
  const sheetOf = (name: string) => {
    const { sheets } = snapshotOf(host) as unknown as { sheets: { name: string; page: { printArea?: unknown } }[] };
    const { name: _, page, ...rest } = sheets.find((one) => one.name === name)!;
    return JSON.parse(
      JSON.stringify({ ...rest, print: page.printArea })
        .replaceAll(`sheet ${name}`, "sheet")
        .replace(/\b([A-Z]+\d+):\1\b/g, "$1"),
    );
  };
  const openAlone = async () => openBed("selected", undefined);

  test.each([
    ["two more widths and no cut-out", kidney, { ...kidney, widths: ["0", "5", "6", "7", "6", "4", "0"], cutOuts: [] }],
    ["fewer widths", kidney, { ...kidney, widths: ["4", "5", "4", "0"] }],
    [
      "another point and a cut-out",
      corners,
      { ...corners, points: [...corners.points, ["-2", "3", "1"] as const], cutOuts: [["4", "3", "1", "2"] as const] },
    ],
    ["a ring in place of a rectangle", bed, ring],
    ["a curved bed in place of a ring", ring, kidney],
    [
      "an area in place of outline points",
      corners,
      {
        ...blankForm(),
        name: "Lawn",
        way: "area" as const,
        typed: { area: "140", edge: "50", longest: "20", widest: "8" },
      },
    ],
  ])("gives the block that an insert gives: %s", async (_, first, then) => {
    const sheet = await insertAlone(first, "Bed");
    await host.type({ "List!K1": `=${sheet}!B2+${sheet}!B3` });
    const before = snapshotOf(host);
    const opened = await openAlone();
    expect(opened.kept).toEqual([]);
    const preview = await previewUpdate(opened, then, undefined);
    expect(preview.refused).toBeUndefined();
    const done = await writeUpdate(preview, []);
    const updated = sheetOf(sheet);
    expect(host.value("List!K1")).toBe(Number(host.value(`${sheet}!B2`)) + Number(host.value(`${sheet}!B3`)));
    await done.undo();
    expect(difference(before, snapshotOf(host))).toBe("");
    await insertAlone(then, "Anew");
    expect(difference(sheetOf("Anew"), updated)).toBe("");
  });

  test("keeps what was changed by hand, and what other sheets read", async () => {
    const sheet = await insertAlone(kidney, "Bed");
    const labels = () => host.values(`${sheet}!A1:A160`).map(([cell]) => cell);
    const row = (label: string) => labels().indexOf(label, labels().indexOf("Lines")) + 1;
    await host.type({
      [`${sheet}!B${row("Stone")}`]: 4.5,
      "List!K1": `=${sheet}!B${row("Stone")}+${sheet}!G${row("Totals")}`,
    });
    const before = snapshotOf(host);
    const opened = await openAlone();
    const preview = await previewUpdate(
      opened,
      { ...opened.form, widths: ["0", "5", "6", "7", "6", "4", "0"] },
      undefined,
    );
    expect(preview.kept.map(({ words }) => words)).toEqual(["Stone, quantity: 4.5"]);
    expect(preview.lines.slice(0, 2)).toEqual([
      expect.stringMatching(/^row \d+ added, Width 6: 4$/),
      expect.stringMatching(/^row \d+ added, Width 7: 0$/),
    ]);
    const done = await writeUpdate(preview, []);
    expect(host.value(`${sheet}!B${row("Stone")}`)).toBe(4.5);
    expect(host.value("List!K1")).toBe(4.5 + Number(host.value(`${sheet}!G${row("Totals")}`)));
    await done.undo();
    expect(difference(before, snapshotOf(host))).toBe("");
  });

  test("is refused where other cells would move, or formulas would lose what they read", async () => {
    const sheet = await insertAlone(bed, "Bed");
    await host.type({ [`${sheet}!L9`]: "call back" });
    const opened = await openAlone();
    expect((await previewUpdate(opened, ring, undefined)).refused).toMatch(
      /cells below or beside them would move \(L9\)/,
    );
    await host.type({ [`${sheet}!L9`]: "", [`${sheet}!A200`]: "call back" });
    expect((await openAlone()).kept).toEqual([]);
    expect((await previewUpdate(opened, ring, undefined)).refused).toMatch(/would move \(A200\)/);
    await host.type({ [`${sheet}!A200`]: "", "List!K1": `=${sheet}!B7*2` });
    expect((await previewUpdate(opened, ring, undefined)).refused).toMatch(
      /removes rows that formulas read \(List!K1\)/,
    );
    await host.type({ "List!K1": `=SUM(${sheet}!B2:B20)` });
    expect((await previewUpdate(opened, ring, undefined)).refused).toBeUndefined();
  });

  test("can't be undone once the estimate was changed since", async () => {
    const sheet = await insertAlone(kidney, "Bed");
    const opened = await openAlone();
    const done = await writeUpdate(
      await previewUpdate(opened, { ...opened.form, widths: ["4", "5", "4", "0"] }, undefined),
      [],
    );
    await host.type({ [`${sheet}!B7`]: 5 });
    const stands = snapshotOf(host);
    await expect(done.undo()).rejects.toThrow(/B7 was just changed, so nothing was written/);
    expect(difference(stands, snapshotOf(host))).toBe("");
  });
});

const notes = () => host.grid.sheets.list().find(({ name }) => name === "Notes")!.id;
