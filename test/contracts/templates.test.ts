import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { isThereIn, writeTemplate } from "../../src/pane/templates/opening";
import { readToSave, templateOfCells } from "../../src/pane/templates/saving";
import { estimateBlock } from "../../src/sheets/estimate/block";
import { contentsOf } from "../../src/sheets/templates/contents";
import type { Treatment } from "../../src/sheets/templates/findOutside";
import { type KeptTemplate, keptText, withoutTemplate, withTemplate } from "../../src/sheets/templates/keptTemplates";
import { readOfficeIndex } from "../../src/sheets/templates/officeIndex";
import { type Choices, unanswered } from "../../src/sheets/templates/openTemplate";
import { readTemplate } from "../../src/sheets/templates/readTemplate";
import type { Template } from "../../src/sheets/templates/template";
import { templateText } from "../../src/sheets/templates/templateText";
import { insertPlan } from "../../src/workbook/change/insert";
import { undoLastInsert } from "../../src/workbook/change/undo";
import { sheetsAndNames } from "../../src/workbook/read/selection";
import { changeKeptTemplates, readKeptTemplates } from "../../src/workbook/settings/templates";
import { bedsOfEachWay } from "../bedsOfEachWay";
import type { HeadlessHost } from "../headlessHost";
import { insertRates, rateAddress } from "../insertRates";
import { createProductHost } from "../productHost";
import { formWithRates } from "../ratesBench";

const DAY = new Date(2026, 2, 31);

let host: HeadlessHost;
beforeEach(async () => {
  host = await createProductHost({
    sheets: [
      {
        name: "Jobs",
        cells: {
          A1: "Yard price",
          B1: 41.5,
          B3: "Length, ft",
          C3: "Width, ft",
          D3: "Tons",
          E3: "Price",
          B4: `18' 6"`,
          C4: 5,
          D4: "=BED.STONE_TONS(BED.AREA_RECTANGLE(B4,C4),2,Rates!$B$1,Rates!B2)",
          E4: "=D4*B$1*(1+Markup)",
          B5: `32' 6 1/2"`,
          C5: 3,
          D5: "=BED.STONE_TONS(BED.AREA_RECTANGLE(B5,C5),2,Rates!$B$1,Rates!B2)",
          E5: "=D5*B$1*(1+Markup)",
          B6: "Sum",
          E6: "=SUM($E$4:E5)",
        },
        looks: [{ range: "B3:E3", fill: "#EEF3E6", bold: true }],
      },
      { name: "Rates", cells: { A1: "Stone", B1: "river rock", A2: "Waste", B2: 0.08 } },
      { name: "Room", cells: {} },
    ],
  });
  await nameCell("Markup", "Rates", "B3");
  await host.type({ "Rates!B3": 0.35 });
});
afterEach(() => host.dispose());

async function nameCell(name: string, sheet: string, address: string): Promise<void> {
  await Excel.run(async (context) => {
    context.workbook.names.add(name, context.workbook.worksheets.getItem(sheet).getRange(address));
    await context.sync();
  });
}

async function select(sheet: string, address: string): Promise<void> {
  await Excel.run(async (context) => {
    const worksheet = context.workbook.worksheets.getItem(sheet);
    worksheet.activate();
    worksheet.getRange(address).select();
    await context.sync();
  });
}

/** The selected cells or block as a template, by way of the text of its file. */
async function saveAs(
  name: string,
  what: "block" | "cells",
  treatment: (reads: string) => Treatment = () => "keep",
): Promise<{ template: Template; text: string; told: readonly string[] }> {
  const read = await readToSave(what);
  const treatments = new Map(read.outside.map(({ reads }) => [reads, treatment(reads)]));
  const { template, faults, told } = templateOfCells(read, treatments, { name, note: "", by: "" }, DAY);
  expect(faults).toEqual([]);
  const text = templateText(template);
  const again = readTemplate(text);
  if (!again.ok) throw new Error(again.why.join(" "));
  expect(again.template).toEqual(template);
  return { template: again.template, text, told };
}

const noAnswers: Choices = new Map();
const idOf = (name: string) => host.grid.sheets.list().find((sheet) => sheet.name === name)!.id;
const at = (sheet: string, row: number, column: number) => ({
  kind: "cell" as const,
  sheetId: idOf(sheet),
  at: { row, column },
});

/** Every formula of a sheet's corner, with its looks and settings: what a failed write must leave alone. */
async function everything() {
  return Excel.run(async (context) => {
    const { worksheets, settings } = context.workbook;
    worksheets.load("items/name");
    const kept = settings.getItemOrNullObject("Bedrow.templates");
    kept.load("value");
    await context.sync();
    const read = worksheets.items.map((sheet) => {
      const range = sheet.getRange("A1:L20");
      range.load("formulas,numberFormat");
      const looks = range.getCellProperties({ format: { fill: { color: true }, font: { bold: true, color: true } } });
      return { name: sheet.name, range, looks };
    });
    await context.sync();
    return {
      kept: kept.isNullObject ? "" : kept.value,
      sheets: read.map(({ name, range, looks }) => [name, range.formulas, range.numberFormat, looks.value]),
    };
  });
}

describe("from a sheet to a file to another workbook", () => {
  test("an estimate block keeps the office's lines, markups, order and notes, and gives the same numbers", async () => {
    const bed = { ...bedsOfEachWay["rectangle, rounded"]!, name: "Front walk" };
    const inserted = await insertPlan((place) => estimateBlock(bed, place), at("Room", 3, 1));
    if (!inserted.done) throw new Error("the place is free");
    const rows = host.values("Room!B4:J120").map(([label]) => label);
    const rowOf = (label: string) => rows.indexOf(label!) + 4;
    const stone = rowOf("Haul off");
    // The office's own: a markup typed over, a line of its own in a spare line, a note, a typed-over price.
    await host.type({
      [`Room!G${stone}`]: 0.5,
      [`Room!J${stone}`]: "our own dump",
      [`Room!B${stone}`]: "Haul to our dump",
    });
    const live = host.values("Room!C5:C7");
    expect(Number(live[0]?.[0])).toBeGreaterThan(100);
    await select("Room", "C20");
    const { template, text } = await saveAs("Our front bed", "block");
    expect(text).toContain('"text":"Haul to our dump"');
    expect(template.warnings?.length).toBeGreaterThan(5);
    expect(template.choices?.length).toBeGreaterThan(0);
    const numbers = host.values("Room!B4:J120");
    host.dispose();

    host = await createProductHost({ sheets: [{ name: "Another", cells: { A1: "theirs" } }] });
    const read = readTemplate(text);
    if (!read.ok) throw new Error(read.why.join(" "));
    const { sheets, names } = await sheetsAndNames();
    expect(unanswered(read.template, noAnswers, isThereIn({ sheets, names }))).toEqual([]);
    const written = await writeTemplate(read.template, noAnswers, at("Another", 40, 6));
    expect(written).toMatchObject({ done: true, title: "template Our front bed", sheetName: "Another" });
    const others = host.values("Another!G41:O157");
    const isNear = (one: unknown, other: unknown) =>
      typeof one === "number" && typeof other === "number"
        ? Math.abs(one - other) <= 1e-9 * Math.abs(one)
        : one === other;
    const different = numbers.flatMap((cells, row) =>
      cells.flatMap((value, column) => (isNear(value, others[row]?.[column]) ? [] : [[value, others[row]?.[column]]])),
    );
    expect(different).toEqual([]);
    // The mark of a typed-over markup came along: its condition is on its cell.
    const marks = await Excel.run(async (context) => {
      const cell = context.workbook.worksheets.getItem("Another").getRange(`L${stone + 37}`);
      cell.conditionalFormats.load("items/id");
      cell.load("format/fill/color");
      await context.sync();
      return cell.conditionalFormats.items.length;
    });
    expect(marks).toBeGreaterThan(0);
    // Undone like anything that was inserted.
    await undoLastInsert();
    expect(host.value("Another!G41")).toBe("");
    expect(host.value("Another!A1")).toBe("theirs");
  });

  test("references inside move with it, with and without $; those outside mean the cell that they meant", async () => {
    await select("Jobs", "B3:E6");
    const { template } = await saveAs("Two beds", "cells");
    expect(template.outside).toEqual([
      { reads: "Rates!$B$1", opened: "keep", value: "river rock" },
      { reads: "Rates!$B$2", opened: "keep", value: 0.08 },
      { reads: "Jobs!$B$1", opened: "keep", value: 41.5 },
      { reads: "Markup", opened: "keep", value: 0.35 },
    ]);
    expect(await writeTemplate(template, noAnswers, at("Room", 9, 6))).toMatchObject({
      done: true,
      address: "G10:J13",
    });
    expect(host.formula("Room!J11")).toBe("=I11*Jobs!$B$1*(1+Markup)");
    expect(host.formula("Room!J13")).toBe("=SUM($J$11:J12)");
    expect(host.value("Room!J13")).toBeCloseTo(Number(host.value("Jobs!E6")), 9);
    // By hand: 18.5 × 5 and 32 ft 6 1/2 in × 3 sq ft, 2 in deep, 8 % waste, 1.35 t a cubic yard of river rock.
    const tons = ((18.5 * 5 + (32 + 6.5 / 12) * 3) * 2 * 1.08 * 1.35) / 324;
    expect(host.value("Room!J13")).toBeCloseTo(tons * 41.5 * 1.35, 6);
  });

  test("what was to be put as its value is in the formulas, or in place of them", async () => {
    await host.type({ "Jobs!D6": "=SUM(Rates!B2:B3)" });
    await select("Jobs", "B3:E6");
    const { template } = await saveAs("Two beds", "cells", () => "value");
    expect(template.outside).toBeUndefined();
    expect(template.cells.find((cell) => cell.at === "D2")?.formula).toBe("=C2*41.5*(1+0.35)");
    // A range has no one value, so the formula that reads it gives way to what it shows: 0.08 + 0.35.
    expect(template.cells.find((cell) => cell.at === "C4")).toEqual({ at: "C4", number: expect.closeTo(0.43, 12) });
    host.dispose();
    host = await createProductHost({ sheets: [{ name: "Another", cells: {} }] });
    await writeTemplate(template, noAnswers, at("Another", 0, 0));
    const tons = ((18.5 * 5 + (32 + 6.5 / 12) * 3) * 2 * 1.08 * 1.35) / 324;
    expect(host.value("Another!D4")).toBeCloseTo(tons * 41.5 * 1.35, 6);
  });

  test("what is to be asked, or is not there, is asked before anything is written", async () => {
    await select("Jobs", "B3:E6");
    const { template } = await saveAs("Two beds", "cells", (reads) => (reads === "Markup" ? "ask" : "keep"));
    host.dispose();
    host = await createProductHost({ sheets: [{ name: "Rates", cells: { B1: "river rock", B2: 0.1, C9: 50 } }] });
    const isThere = isThereIn(await sheetsAndNames());
    const asked = unanswered(template, noAnswers, isThere).map(({ reads }) => reads);
    expect(asked).toEqual(["Jobs!$B$1", "Markup"]);
    const choices: Choices = new Map([
      ["Jobs!$B$1", { kind: "cells", reads: "Rates!$C$9" }],
      ["Markup", { kind: "value", value: 0.2 }],
    ]);
    expect(unanswered(template, choices, isThere)).toEqual([]);
    await writeTemplate(template, choices, at("Rates", 0, 4));
    expect(host.formula("Rates!H2")).toBe("=G2*Rates!$C$9*(1+0.2)");
    const tons = ((18.5 * 5 + (32 + 6.5 / 12) * 3) * 2 * 1.1 * 1.35) / 324;
    expect(host.value("Rates!H4")).toBeCloseTo(tons * 50 * 1.2, 6);
  });

  test("looks, widths and merged cells come along; what would hide something shows, and is told", async () => {
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Jobs");
      sheet.getRange("B7:C7").merge();
      sheet.getRange("B7").values = [["kept together"]];
      sheet.getRange("C4").numberFormat = [[";;;"]];
      sheet.getRange("E4").format.font.color = "#FFFFFF";
      await context.sync();
    });
    await select("Jobs", "B3:E7");
    const { template, told } = await saveAs("Two beds", "cells");
    expect(told.join("\n")).toMatch(/C4 has a number format that hides its contents \(;;;\); in the template it shows/);
    expect(told.join("\n")).toMatch(/E4 has text that doesn't show on its fill/);
    expect(template.merged).toEqual(["A5:B5"]);
    await writeTemplate(template, noAnswers, at("Room", 0, 0));
    const read = await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Room");
      const head = sheet.getRange("A1");
      head.load("format/fill/color,format/font/bold");
      const merged = sheet.getRange("A1:D5").getMergedAreasOrNullObject();
      merged.load("address");
      await context.sync();
      return [head.format.fill.color, head.format.font.bold, merged.isNullObject ? "" : merged.address];
    });
    expect(read).toEqual(["#EEF3E6", true, "Room!A5:B5"]);
  });

  test("rates are followed by name, wherever the template is opened", async () => {
    await nameCell("Rate_waste", "Rates", "B2");
    await host.type({ "Room!A1": 10, "Room!B1": "=A1*(1+Rate_waste)" });
    await select("Room", "A1:B1");
    const { template } = await saveAs("With waste", "cells");
    expect(template.outside).toBeUndefined();
    host.dispose();
    host = await createProductHost({ sheets: [{ name: "Theirs", cells: { C1: 0.25 } }] });
    expect(contentsOf(template).rates).toEqual([{ name: "Rate_waste", formulas: 1 }]);
    expect(isThereIn(await sheetsAndNames())("Rate_waste")).toBe(false);
    await writeTemplate(template, noAnswers, at("Theirs", 4, 0));
    // Without the rate there is no price, and no wrong one either.
    expect(typeof host.value("Theirs!B5")).not.toBe("number");
    await nameCell("Rate_waste", "Theirs", "C1");
    await host.type({ "Theirs!A5": 20 });
    expect(host.value("Theirs!B5")).toBeCloseTo(25, 9);
  });

  test("an estimate that follows the rates is kept without a question, and follows those where it is opened", async () => {
    await insertRates();
    const form = await formWithRates({});
    const inserted = await insertPlan((place) => estimateBlock(form, place), at("Room", 0, 0));
    if (!inserted.done) throw new Error("the place is free");
    await select("Room", "A1");
    expect((await readToSave("block")).outside).toEqual([]);
    const { template } = await saveAs("Ours, with rates", "block");
    expect(template.outside).toBeUndefined();
    host.dispose();
    host = await createProductHost({ sheets: [{ name: "Theirs", cells: {} }] });
    const sheet = await insertRates();
    await writeTemplate(template, noAnswers, at("Theirs", 0, 0));
    const price = Number(host.value("Theirs!B2"));
    expect(price).toBeGreaterThan(100);
    await host.type({ [`${sheet}!${rateAddress("Rate_dump_fee")}`]: 400 });
    expect(Number(host.value("Theirs!B2"))).toBeGreaterThan(price);
  });

  test("a name for cells of the region reads the template's own, and a list read from cells its names", async () => {
    await host.type({ "Room!A1": "river rock", "Room!A2": "pea gravel", "Room!B1": 8, "Room!B2": "=Yards*2" });
    await nameCell("Yards", "Room", "B1");
    await Excel.run(async (context) => {
      const { dataValidation } = context.workbook.worksheets.getItem("Room").getRange("B4");
      dataValidation.rule = { list: { inCellDropDown: true, source: "=$A$1:$A$2" } };
      await context.sync();
    });
    await select("Room", "A1:B4");
    const { template, told } = await saveAs("Named", "cells");
    expect(template.cells.at(-1)).toEqual({ at: "B2", formula: "=$B$1*2" });
    expect(template.choices).toEqual([{ at: "B4", names: ["river rock", "pea gravel"] }]);
    expect(told).toContain("Yards: read as the template's own cells, without the name.");
    await writeTemplate(template, noAnswers, at("Jobs", 20, 2));
    expect(host.formula("Jobs!D22")).toBe("=$D$21*2");
    await host.type({ "Room!B1": 100 });
    expect(host.value("Jobs!D22")).toBe(16);
  });

  test("text that begins like a formula stays text", async () => {
    await host.type({ "Room!A1": "'=1+1", "Room!A2": "'+cmd|' /c calc'!A0", "Room!A3": "'-2", "Room!A4": "'@SUM(1)" });
    const before = host.values("Room!A1:A4");
    await select("Room", "A1:A4");
    const { template } = await saveAs("Texts", "cells");
    expect(template.cells.every((cell) => typeof cell.text === "string")).toBe(true);
    await writeTemplate(template, noAnswers, at("Room", 0, 4));
    expect(host.values("Room!E1:E4")).toEqual(before);
    expect(["E1", "E2", "E3", "E4"].map((cell) => host.formula(`Room!${cell}`))).toEqual(Array(4).fill(undefined));
  });
});

describe("where it can't be done, it says why", () => {
  test("cells with a function that a template may not call are named as they are on the sheet", async () => {
    await host.type({ "Jobs!F4": `=INDIRECT("B4")` });
    await select("Jobs", "B3:F6");
    const read = await readToSave("cells");
    const treatments = new Map(read.outside.map(({ reads }) => [reads, "keep" as const]));
    const { faults } = templateOfCells(read, treatments, { name: "a", note: "", by: "" }, DAY);
    expect(faults).toEqual(["F4 calls INDIRECT, which hides what it reads."]);
  });

  test("what could not be opened again is not saved", async () => {
    await select("Jobs", "B3:B6");
    const read = await readToSave("cells");
    const faultsFor = (name: string, note = "") => templateOfCells(read, new Map(), { name, note, by: "" }, DAY).faults;
    expect(faultsFor("a".repeat(81))).toEqual(["Its name is longer than 80 characters."]);
    expect(faultsFor("a", "b".repeat(1001))).toEqual(["Its note is longer than 1000 characters."]);
    expect(faultsFor("a\u202E")).toEqual(["Its name has a hidden character (U+202E)."]);
    for (let row = 10; row < 50; row += 1) await host.type({ [`Jobs!B${row}`]: "x".repeat(30_000) });
    await select("Jobs", "B3:B50");
    const large = templateOfCells(await readToSave("cells"), new Map(), { name: "a", note: "", by: "" }, DAY);
    expect(large.faults.join(" ")).toMatch(/^It would have 1,2\d\d,\d{3} characters; the limit is 1,000,000\.$/);
  });

  test("what was not answered is not kept silently", async () => {
    await select("Jobs", "B3:E6");
    const { faults } = templateOfCells(await readToSave("cells"), new Map(), { name: "a", note: "", by: "" }, DAY);
    expect(faults.join(" ")).toMatch(/reads Rates!\$B\$1, which the template doesn't list/);
  });

  test("too large a region is refused in words", async () => {
    await host.type({ "Room!A1": 1, "Room!DA1": 1 });
    await select("Room", "A1:DA2");
    await expect(readToSave("cells")).rejects.toThrow(
      /by 105 columns\. A template holds at most 2,000 rows, 100 columns/,
    );
  });

  test("blank cells, and a cell of no block, are told", async () => {
    await select("Jobs", "G9:H12");
    await expect(readToSave("cells")).rejects.toThrow(/The selected cells are blank/);
    await select("Jobs", "C4");
    await expect(readToSave("block")).rejects.toThrow(/Select a cell in an estimate/);
  });

  test("a template is never written over anything", async () => {
    await select("Jobs", "B3:E6");
    const { template } = await saveAs("Two beds", "cells");
    const before = await everything();
    const written = await writeTemplate(template, noAnswers, at("Jobs", 4, 2));
    expect(written).toMatchObject({ done: false, inTheWay: { address: "C5:F8" } });
    expect(await everything()).toEqual(before);
  });
});

describe("kept in the workbook", () => {
  const add =
    (template: Template, replacing = false) =>
    (templates: readonly KeptTemplate[]) =>
      withTemplate(templates, template, replacing);

  async function aTemplate(name: string): Promise<Template> {
    await select("Jobs", "B3:E6");
    return (await saveAs(name, "cells")).template;
  }

  test("templates are there for whoever opens it, in one sync", async () => {
    const template = await aTemplate("Two beds");
    expect(await readKeptTemplates()).toEqual([]);
    await changeKeptTemplates(add(template));
    const before = host.syncCount;
    expect(await readKeptTemplates()).toMatchObject([{ name: "Two beds", template }]);
    expect(host.syncCount - before).toBe(1);
  });

  test("a name is taken once", async () => {
    await changeKeptTemplates(add(await aTemplate("Two beds")));
    await expect(changeKeptTemplates(add(await aTemplate("two BEDS")))).rejects.toThrow(
      /already has a template “two BEDS”/,
    );
    await changeKeptTemplates(add(await aTemplate("two BEDS"), true));
    expect((await readKeptTemplates()).map(({ name }) => name)).toEqual(["two BEDS"]);
  });

  test.each([
    [
      "of a later version",
      `{"format":"bedrow-templates","version":2,"templates":[]}`,
      /A newer version .* weren't changed/,
    ],
    ["damaged", `{"format":"bedrow-templ`, /are damaged and can't be read\. They weren't changed/],
    ["something else", `[1]`, /are damaged/],
  ])("what is %s is told, and isn't changed", async (_, text, words) => {
    const template = await aTemplate("Two beds");
    await Excel.run(async (context) => {
      context.workbook.settings.add("Bedrow.templates", text);
      await context.sync();
    });
    const before = await everything();
    await expect(readKeptTemplates()).rejects.toThrow(words);
    await expect(changeKeptTemplates(add(template))).rejects.toThrow(words);
    expect(await everything()).toEqual(before);
  });

  test("one that can't be read says why, and stays beside the others until it is deleted", async () => {
    const template = await aTemplate("Two beds");
    const later = { ...template, name: "From later", version: 7 };
    const text = keptText([{ name: "From later", content: later }]);
    await Excel.run(async (context) => {
      context.workbook.settings.add("Bedrow.templates", text);
      await context.sync();
    });
    await changeKeptTemplates(add(template));
    const kept = await readKeptTemplates();
    expect(kept[0]).toMatchObject({ name: "From later", content: later });
    expect(kept[0]?.why?.[0]).toMatch(/A newer version of this add-in wrote it/);
    await changeKeptTemplates((all) => withoutTemplate(all, kept[0]!));
    expect((await readKeptTemplates()).map(({ name }) => name)).toEqual(["Two beds"]);
  });
});

describe("a fault at any sync leaves the workbook as it was, or all of it done", () => {
  test.each([1, 2, 3])("opening a template, at sync %i", async (n) => {
    await select("Jobs", "B3:E6");
    const { template } = await saveAs("Two beds", "cells");
    const before = await everything();
    for (const after of [0, 3, 9]) {
      host.failAtSync(n, after);
      const written = await writeTemplate(template, noAnswers, at("Room", 2, 2)).catch((trouble: Error) => trouble);
      // Once all of it is written, only the host's answer was lost.
      if (!(written instanceof Error)) await undoLastInsert();
      expect(written instanceof Error || (n === 3 && after > 0)).toBe(true);
      expect(await everything()).toEqual(before);
    }
  });

  test.each([1, 2])("keeping, changing and deleting one, at sync %i", async (n) => {
    await select("Jobs", "B3:E6");
    const { template } = await saveAs("Two beds", "cells");
    const actions = [
      (all: readonly KeptTemplate[]) => withTemplate(all, template, true),
      (all: readonly KeptTemplate[]) => withoutTemplate(all, { name: "Two beds", content: template }),
    ];
    for (const action of actions) {
      const before = await everything();
      host.failAtSync(n, 0);
      await expect(changeKeptTemplates(action)).rejects.toThrow(/Try again/);
      expect(await everything()).toEqual(before);
      await changeKeptTemplates(action);
    }
  });

  test.each([1, 2, 3, 4, 5])("reading cells to save, at sync %i", async (n) => {
    await select("Jobs", "B3:E6");
    const before = await everything();
    host.failAtSync(n, 0);
    await expect(readToSave("cells")).rejects.toThrow();
    expect((await everything()).sheets).toEqual(before.sheets);
  });
});

describe("what comes with the add-in", () => {
  const file = (path: string) => readFileSync(resolve(import.meta.dirname, "../..", path), "utf8");
  const schema = (path: string) => JSON.parse(file(path));

  test.each([
    ["assets/templates/template-1.schema.json", "src/sheets/templates/template-1.schema.json"],
    ["assets/templates/office-settings-1.schema.json", "src/sheets/office/office-settings-1.schema.json"],
  ])("the published schema %s is the one that files are held to", (published, own) => {
    expect(schema(published)).toEqual(schema(own));
  });

  test("the examples for the office are templates, and work anywhere", async () => {
    const index = readOfficeIndex(file("assets/templates/index.json"));
    expect(index).toEqual({ ok: true, files: ["front-bed-with-sleeves.json", "crew-day-sheet.json"] });
    const [bed, day] = (index.ok ? index.files : []).map((name) => {
      const read = readTemplate(file(`assets/templates/${name}`));
      if (!read.ok) throw new Error(read.why.join(" "));
      expect(read.template.note).toMatch(/invented example/);
      expect(read.template.outside).toBeUndefined();
      return read.template;
    });
    await writeTemplate(day!, noAnswers, at("Room", 0, 0));
    // 18.5 × 5 + 12 × 3.5 sq ft.
    expect(host.value("Room!D7")).toBeCloseTo(18.5 * 5 + 12 * 3.5, 9);
    await writeTemplate(bed!, noAnswers, at("Room", 20, 2));
    const rows = host.values("Room!C21:K153");
    const line = (label: string) => rows.find(([first]) => first === label)!;
    // Two sleeves at 14.50, and the office's markup on a ton of stone at 62.
    expect(line("Sleeves under the walk")[4]).toBeCloseTo(29, 9);
    expect(line("Stone").slice(4, 7)).toEqual([62, 0.45, expect.closeTo(62 * 1.45, 9)]);
    expect(Number(rows[1]?.[1])).toBeGreaterThan(900);
  });
});
