import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { addPastLines } from "../../src/pane/papers/after/addPastLines";
import { startingDetails } from "../../src/pane/papers/details";
import { makeOfficeFile } from "../../src/pane/rates/office/makeOfficeFile";
import { loadTexts, storedTexts, textsToSave, unloadTexts } from "../../src/pane/rates/office/officeDetails";
import { planLoad } from "../../src/pane/rates/office/planLoad";
import { readOfficeState, readOfficeWorkbook } from "../../src/pane/rates/office/readOfficeWorkbook";
import { exampleStonePrices } from "../../src/quantities/bed/examples";
import type { FieldKey } from "../../src/quantities/bed/fields";
import { listSamples } from "../../src/quantities/bed/listSamples";
import {
  type ListKey,
  listFields,
  listKeys,
  listNames,
  listOf,
  quotedNames,
} from "../../src/quantities/bed/officeLists";
import { type Rates, rateLabel, stoneUnitNames } from "../../src/quantities/bed/rates";
import type { OfficeFile } from "../../src/sheets/office/officeFile";
import { readOffice } from "../../src/sheets/office/readOffice";
import type { PastLine } from "../../src/sheets/papers/pastJobs";
import { findPastJobs } from "../../src/sheets/papers/pastJobs";
import { cellAddress } from "../../src/spreadsheet/areas";
import { undoOffice, writeOffice } from "../../src/workbook/change/officeSettings";
import { readRateCells, readRates } from "../../src/workbook/read/rates";
import { readWorkbook } from "../../src/workbook/read/workbook";
import type { HeadlessHost } from "../headlessHost";
import { insertRates, rateAddress } from "../insertRates";
import { createProductHost } from "../productHost";
import { formWithRates, insertBlock, typeRates } from "../ratesBench";
import { difference, snapshotOf } from "./faults/snapshot";

/*
 * What an office sets up in one workbook is the same in the next one: saved to a file, read strictly, looked at before it
 * is loaded, and undone cell by cell.
 */
let host: HeadlessHost;
const kept = new Map<string, string>();

beforeEach(async () => {
  kept.clear();
  vi.stubGlobal("localStorage", {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => void kept.set(key, text),
    removeItem: (key: string) => void kept.delete(key),
  });
  host = await createProductHost();
});
afterEach(() => {
  host.dispose();
  vi.unstubAllGlobals();
});

const THIRD = { office: "Fernlea Stone", saved: "2026-11-30", number: 3 };
const ALL = { rates: true, texts: true, past: true };

const LINES: readonly PastLine[] = [
  { job: "Elm Row 3", date: 46_000, measure: "Stone", unit: "tons", estimated: 3, actual: 3.4, setThen: 0.08 },
  { job: "Elm Row 3", date: 46_000, measure: "Set edging", unit: "h", estimated: 4, actual: 5 },
  { job: "Alder Court", date: 46_010, measure: "Stone", unit: "tons", estimated: 2, actual: 2 },
];

/** What an invented office types over the samples: prices, a tape, a share, stone of its own. */
const TYPED = {
  Rate_fabric_roll: 71.5,
  Rate_waste: 0.1,
  Rate_piece_length: `7' 6"`,
  Rate_crew_hour: 52,
  // The very price that it started with, marked as the office's own.
  Whose_border_piece: "own",
};

/** The row of the list of stone at which a kind is in a new sheet; the first blank one for "". */
const stoneAt = async (kind: string) => {
  const list = (await readRateCells())!.named.get("rate_stone_kinds")!;
  return { row: list.row + list.values.findIndex(([name]) => name === kind), sheet: list.sheet };
};

/** A workbook with the office's own rates, its past jobs, and the file that is saved from it. */
async function savedOffice(): Promise<OfficeFile> {
  const sheet = await insertRates();
  await typeRates(host, sheet, TYPED);
  const [blank, lava] = [await stoneAt(""), await stoneAt("lava rock")];
  await host.type({
    [`${sheet}!A${blank.row + 1}`]: "3/4 creek gravel",
    [`${sheet}!B${blank.row + 1}`]: 57,
    [`${sheet}!F${blank.row + 1}`]: 1.42,
    [`${sheet}!A${lava.row + 1}`]: "",
    [`${sheet}!B${lava.row + 1}`]: "",
  });
  await addPastLines(LINES, undefined);
  kept.set(
    "Bedrow.papers",
    JSON.stringify({ ...startingDetails, office: "Fernlea Stone", terms: "Half on signing", job: "Elm Row 3" }),
  );
  const { text } = makeOfficeFile(THIRD, await readOfficeWorkbook(), ALL);
  const read = readOffice(text);
  if (!read.ok) throw new Error(read.why.join(" "));
  return read.file;
}

async function freshWorkbook() {
  host.dispose();
  host = await createProductHost();
}

async function load(file: OfficeFile) {
  const plan = planLoad(file, await readOfficeWorkbook());
  return { plan, written: await writeOffice(plan.writes) };
}

const priceOfBed = async () => Number((await insertBlock(host, await formWithRates())).value("price"));

const pastLines = async () => {
  const { facts } = await readWorkbook();
  return facts.sheets.flatMap(({ used }) => (used && findPastJobs(used.values, used)?.lines) || []);
};

describe("office settings saved in one workbook and loaded in the next", () => {
  test("make a Rates sheet with equal rates, and a bed has the same price", async () => {
    const file = await savedOffice();
    const rates = (await readRates())!.rates;
    const price = await priceOfBed();
    await freshWorkbook();
    const { plan } = await load(file);
    expect(plan.newSheet).toContain(`${rateLabel("rollCost")}: $71.50`);
    expect((await readRates())!.rates).toEqual(rates);
    expect(await priceOfBed()).toBeCloseTo(price, 9);
    expect(price).toBeGreaterThan(100);
  });

  test("change the Rates sheet that is there, cell by cell, and a bed there follows", async () => {
    const file = await savedOffice();
    const rates = (await readRates())!.rates;
    const price = await priceOfBed();
    await freshWorkbook();
    await insertRates();
    const block = await insertBlock(host, await formWithRates());
    await load(file);
    const now = (await readRates())!.rates;
    expect(now.byField).toEqual(rates.byField);
    expect([...now.stones].sort((one, other) => one.name.localeCompare(other.name))).toEqual(
      [...rates.stones].sort((one, other) => one.name.localeCompare(other.name)),
    );
    expect(Number(block.value("price"))).toBeCloseTo(price, 9);
  });

  test("carry the list of past jobs along, once", async () => {
    const file = await savedOffice();
    await freshWorkbook();
    await load(file);
    expect(await pastLines()).toEqual(LINES);
    const { plan } = await load(file);
    expect(plan.past).toEqual({ jobs: 0, lines: 0, there: 3 });
    expect(await pastLines()).toEqual(LINES);
  });

  test("add past jobs below the list that is there, without those that it has", async () => {
    const file = await savedOffice();
    await freshWorkbook();
    await addPastLines([{ ...LINES[2]!, job: "Mill Lane 9" }, LINES[0]!], undefined);
    const { plan } = await load(file);
    expect(plan.past).toEqual({ jobs: 2, lines: 2, there: 1 });
    expect((await pastLines()).map(({ job, measure }) => [job, measure])).toEqual([
      ["Mill Lane 9", "Stone"],
      ["Elm Row 3", "Stone"],
      ["Elm Row 3", "Set edging"],
      ["Alder Court", "Stone"],
    ]);
    // The last column is a formula: 5 hours for 4.
    const { used } = (await readWorkbook()).facts.sheets.find(({ name }) => name === "Past jobs")!;
    const row = used!.values.find(([, , measure]) => measure === "Set edging")!;
    expect(row[7]).toBe(1.25);
  });

  test("leave past jobs out where something is below the list, and say where", async () => {
    const file = await savedOffice();
    await freshWorkbook();
    await addPastLines([{ ...LINES[0]!, job: "Mill Lane 9" }], undefined);
    await host.type({ "'Past jobs'!C8": "our note" });
    const { plan } = await load(file);
    expect(plan.past).toBeUndefined();
    expect(plan.notes).toEqual([expect.stringMatching(/Past jobs!A6:H8 isn't blank\. Make room there/)]);
    expect(host.value("'Past jobs'!C8")).toBe("our note");
  });
});

describe("the preview", () => {
  test("lists what would change, with what was typed by hand apart, and nothing else changes", async () => {
    const file = await savedOffice();
    await freshWorkbook();
    const sheet = await insertRates();
    await typeRates(host, sheet, { Rate_waste: 0.12, Rate_crew_size: 3, Rate_fabric_roll: "=60+8" });
    await host.type({ [`${sheet}!G3`]: "our own note", [`${sheet}!J20`]: "=B20*2" });
    const before = snapshotOf(host);
    const { pastJobs: _, ...without } = file;
    const { plan, written } = await load(without);
    const words = plan.differences!.map(({ label, now, file: then, typed }) => [label, now, then, typed]);
    expect(words).toEqual([
      ["Stone: 3/4 creek gravel", "(not listed)", "$57.00 a ton, 1.42 tons/cu yd", false],
      ["Stone: lava rock", "$140.00 a ton (sample)", "(removed)", false],
      [rateLabel("pieceLength"), "8 ft", `7' 6"`, false],
      [rateLabel("pieceCost"), "$24.00 (sample)", "$24.00", false],
      [rateLabel("rollCost"), "=60+8, $68.00", "$71.50", true],
      [rateLabel("crewRate"), expect.stringMatching(/\(sample\)$/), "$52.00", false],
      [rateLabel("crewSize"), "3 people", "2 people", true],
      [rateLabel("waste"), "12%", "10%", true],
    ]);
    // What differs on the sheet is what was to be written, and the row that says which settings they are.
    const cells = (snapshot: ReturnType<typeof snapshotOf>) =>
      (snapshot.sheets as { name: string; cells: Record<string, [{ formula?: string; value: unknown }]> }[]).find(
        ({ name }) => name === sheet,
      )!.cells;
    const [was, is] = [cells(before), cells(snapshotOf(host))];
    const contentOf = (cell: [{ formula?: string; value: unknown }] | undefined) =>
      cell?.[0].formula ?? cell?.[0].value ?? "";
    const changed = [...new Set([...Object.keys(was), ...Object.keys(is)])].filter(
      (place) => contentOf(was[place]) !== contentOf(is[place]),
    );
    const wanted = plan.writes.cells.map(({ row, column }) => `${row},${column}`);
    expect(changed.sort()).toEqual(wanted.sort());
    await undoOffice(written);
    expect(difference(before, snapshotOf(host))).toBe("");
  });

  test("says so where the workbook has all of it", async () => {
    const file = await savedOffice();
    await load(file);
    const plan = planLoad({ ...file, texts: {} }, await readOfficeWorkbook());
    expect(plan).toMatchObject({ differences: [], texts: [], past: { lines: 0 }, notes: [] });
    expect(plan.writes.cells).toEqual([]);
    expect(plan.writes.sheets).toEqual([]);
  });

  test("names rates that the sheet has no cell for, and rates that this version doesn't have", async () => {
    const file = await savedOffice();
    const { values } = file.rates!;
    await Excel.run(async (context) => {
      context.workbook.names.getItem("Rate_waste").delete();
      await context.sync();
    });
    const later = { ...file, rates: { ...file.rates!, values: { ...values, Rate_hauling_moon: 9 } } };
    const { notes } = planLoad(later, await readOfficeWorkbook());
    expect(notes).toEqual([
      `The Rates sheet has no cell for ${rateLabel("waste")}. Add what's missing from the sheet first, then load again.`,
      "This version of the add-in doesn't have Rate_hauling_moon: left out.",
    ]);
  });

  test("keeps stone that only the workbook lists, and refuses more kinds than the list has rows for", async () => {
    const file = await savedOffice();
    await freshWorkbook();
    const sheet = await insertRates();
    const { row } = await stoneAt("");
    await host.type({ [`${sheet}!A${row + 1}`]: "black slate", [`${sheet}!B${row + 1}`]: 88 });
    expect(planLoad(file, await readOfficeWorkbook()).stays).toEqual(["black slate"]);
    const many = Array.from({ length: 9 }, (_, index) => ({ name: `stone ${index + 1}`, perTon: 50 }));
    const plan = planLoad(
      { ...file, rates: { ...file.rates!, stones: [...file.rates!.stones, ...many] } },
      await readOfficeWorkbook(),
    );
    expect(plan.notes[0]).toMatch(/The list of stone has room for 8 more, and the file adds 10\. Insert rows/);
    expect(plan.differences!.some(({ label }) => label.startsWith("Stone"))).toBe(false);
  });
});

describe("undo", () => {
  test("removes the sheets that loading made, and the note of the version", async () => {
    const file = await savedOffice();
    await freshWorkbook();
    const before = snapshotOf(host);
    const { written } = await load(file);
    expect(difference(before, snapshotOf(host))).not.toBe("");
    await undoOffice(written);
    expect(difference(before, snapshotOf(host))).toBe("");
    expect((await readOfficeState()).known).toEqual({});
  });

  test("changes nothing where a rate was typed since, and names the cell", async () => {
    const file = await savedOffice();
    await freshWorkbook();
    const sheet = await insertRates();
    const { written } = await load(file);
    await typeRates(host, sheet, { Rate_waste: 0.2 });
    const before = snapshotOf(host);
    await expect(undoOffice(written)).rejects.toThrow(`${sheet}!${rateAddress("Rate_waste")} was just changed`);
    expect(difference(before, snapshotOf(host))).toBe("");
  });
});

describe("a workbook says which office settings it uses", () => {
  test("on a new Rates sheet, and in the row that says so once the next version is loaded", async () => {
    const file = await savedOffice();
    await freshWorkbook();
    await load(file);
    expect(host.value("Rates!A2")).toBe("Office settings: Fernlea Stone, version 2026-11-30, no. 3");
    await load({ ...file, saved: "2026-12-04", number: 4 });
    expect(host.value("Rates!A2")).toBe("Office settings: Fernlea Stone, version 2026-12-04, no. 4");
    expect((await readOfficeState()).known.record).toMatchObject({ office: "Fernlea Stone", number: 4 });
  });

  test("below a Rates sheet that was there before", async () => {
    const file = await savedOffice();
    await freshWorkbook();
    await insertRates();
    const { used } = (await readWorkbook()).facts.sheets.find(({ name }) => name === "Rates")!;
    await load(file);
    const at = cellAddress({ row: used!.values.length + 1, column: 0 });
    expect(host.value(`Rates!${at}`)).toBe("Office settings: Fernlea Stone, version 2026-11-30, no. 3");
  });

  test("and what was changed since", async () => {
    const file = await savedOffice();
    await freshWorkbook();
    const sheet = await insertRates();
    await load(file);
    expect((await readOfficeState()).changedSince).toEqual([]);
    await typeRates(host, sheet, { Rate_waste: 0.2, Rate_crew_size: 4 });
    expect((await readOfficeState()).changedSince).toEqual([rateLabel("crewSize"), rateLabel("waste")]);
  });

  test("a note of a later version stays, and so does everything else", async () => {
    const file = await savedOffice();
    await freshWorkbook();
    await Excel.run(async (context) => {
      context.workbook.settings.add("Bedrow.office", '{"version":4,"kept":{}}');
      await context.sync();
    });
    const before = snapshotOf(host);
    const plan = planLoad(file, await readOfficeWorkbook());
    expect(plan.notes).toEqual([expect.stringMatching(/newer version/i)]);
    await expect(writeOffice(plan.writes)).rejects.toThrow(/newer version/);
    expect(difference(before, snapshotOf(host))).toBe("");
  });

  test("a damaged note gives way to the next settings", async () => {
    const file = await savedOffice();
    await freshWorkbook();
    await Excel.run(async (context) => {
      context.workbook.settings.add("Bedrow.office", "{half");
      await context.sync();
    });
    expect((await load(file)).plan.notes).toEqual([expect.stringMatching(/damaged.*Loading replaces it/)]);
    expect((await readOfficeState()).known.record).toMatchObject({ number: 3 });
  });
});

describe("letterhead and terms", () => {
  test("go into the file, and what belongs to one job stays behind", async () => {
    const { texts } = await savedOffice();
    expect(texts).toMatchObject({ office: "Fernlea Stone", terms: "Half on signing", noticeDays: "2" });
    for (const key of ["job", "customer", "place", "start"]) expect(texts).not.toHaveProperty(key);
  });

  test("are listed before they are loaded, and undone without what was typed since", async () => {
    const { texts = {} } = await savedOffice();
    kept.set("Bedrow.papers", JSON.stringify({ ...startingDetails, office: "Old name", job: "Elm Row 3" }));
    const file: OfficeFile = { format: "bedrow-office-settings", version: 1, ...THIRD, texts };
    expect(planLoad(file, await readOfficeWorkbook()).texts).toEqual([
      "Office name: Old name → Fernlea Stone",
      "Terms: (blank) → Half on signing",
    ]);
    const loaded = loadTexts(texts);
    if ("trouble" in loaded) throw new Error(loaded.trouble);
    expect(storedTexts().details).toMatchObject({
      office: "Fernlea Stone",
      terms: "Half on signing",
      job: "Elm Row 3",
    });
    const there = storedTexts().details;
    kept.set("Bedrow.papers", JSON.stringify({ ...there, terms: "All on signing" }));
    unloadTexts(loaded);
    expect(storedTexts().details).toMatchObject({ office: "Old name", terms: "All on signing" });
    expect(textsToSave(storedTexts().details).terms).toBe("All on signing");
  });
});

describe("stone that is sold by the cubic yard or the bulk bag", () => {
  const STONES = [
    ["cedar mulch", 38.5, "Cubic yard", 0.5, 2],
    ["creek gravel", 129, "bulk bag", "", 4],
    ["dock rock", 57, "", 0.25, ""],
  ] as const;
  const OF_STONE = [
    ...["Rate_stone_kinds", "Rate_stone_prices", "Rate_stone_units", "Rate_stone_steps", "Rate_stone_minimums"],
  ];

  async function savedStones(): Promise<OfficeFile> {
    await insertRates();
    const typed = await Promise.all(
      STONES.flatMap((stone, row) =>
        OF_STONE.map(async (name, column) => [
          await cellOf(name, exampleStonePrices.length + row),
          stone[column] ?? "",
        ]),
      ),
    );
    await host.type(Object.fromEntries(typed));
    return savedRates();
  }

  test("is in the file with its unit, which no earlier add-in reads, and makes an equal list", async () => {
    const file = await savedStones();
    // An earlier add-in would take a price per cubic yard for one per ton.
    expect(file.version).toBe(3);
    expect(file.rates!.stones.slice(-3)).toEqual([
      { name: "cedar mulch", soldBy: "cubic yard", price: 38.5, orderStep: 0.5, orderMinimum: 2 },
      { name: "creek gravel", soldBy: "bulk bag", price: 129, orderMinimum: 4 },
      { name: "dock rock", perTon: 57, orderStep: 0.25 },
    ]);
    const rates = (await readRates())!.rates;
    await freshWorkbook();
    const { plan } = await load(file);
    expect(plan.newSheet).toContain("Stone: cedar mulch: $38.50 a cubic yard, increment 0.5 cu yd, minimum 2 cu yd");
    expect(plan.newSheet).toContain("Stone: dock rock: $57.00 a ton, increment 0.25 tons");
    expect((await readRates())!.rates).toEqual(rates);
    expect((await readOfficeState()).changedSince).toEqual([]);
  });

  test("changes the list of a Rates sheet that is there, and undo brings every cell back", async () => {
    const file = await savedStones();
    const rates = (await readRates())!.rates;
    await freshWorkbook();
    await insertRates();
    const before = snapshotOf(host);
    const { plan, written } = await load(file);
    expect(plan.differences!.find(({ label }) => label === "Stone: creek gravel")).toMatchObject({
      file: "$129.00 a bulk bag, minimum 4 bulk bags",
    });
    expect((await readRates())!.rates.stones).toEqual(rates.stones);
    await undoOffice(written);
    expect(difference(before, snapshotOf(host))).toBe("");
  });

  test("stays out of a list that has no units, where its price would be one per ton", async () => {
    const file = await savedStones();
    await freshWorkbook();
    await insertRates();
    await Excel.run(async (context) => {
      for (const name of stoneUnitNames) context.workbook.names.getItem(name).delete();
      await context.sync();
    });
    const { plan } = await load(file);
    expect(plan.notes).toEqual([
      "The list of stone on the Rates sheet has no columns for what it's sold by, its increment, and its minimum. Left out: cedar mulch, creek gravel, dock rock.",
    ]);
    const names = (await readRates())!.rates.stones.map(({ name }) => name);
    expect(names).toEqual(exampleStonePrices.map(({ stone }) => expect.stringMatching(new RegExp(stone, "i"))));
  });

  test("by the ton in an earlier file is by the ton once it is loaded", async () => {
    const file = await savedStones();
    const older = file.rates!.stones.map((stone) =>
      stone.name === "cedar mulch" ? { name: "cedar mulch", perTon: 190 } : stone,
    );
    const { plan } = await load({ ...file, version: 2, rates: { ...file.rates!, stones: older } });
    expect(plan.differences!.map(({ label, now, file: loaded }) => [label, now, loaded])).toEqual([
      ["Stone: cedar mulch", "$38.50 a Cubic yard, increment 0.5 cu yd, minimum 2 cu yd", "$190.00 a ton"],
    ]);
    const mulch = (await readRates())!.rates.stones.find(({ name }) => name === "cedar mulch")!;
    expect(mulch).toEqual({ name: "cedar mulch", stoneCost: { text: "190", isExample: false } });
  });
});

test("what no workbook could load isn't saved, and the message says what to change", async () => {
  const sheet = await insertRates();
  const { row } = await stoneAt("");
  await host.type({ [`${sheet}!A${row + 1}`]: "'=our gravel", [`${sheet}!B${row + 1}`]: 44 });
  const workbook = await readOfficeWorkbook();
  const save = (office: string, ticks = { ...ALL, past: false }) =>
    makeOfficeFile({ ...THIRD, office }, workbook, ticks);
  expect(() => save("Fernlea Stone")).toThrow("Nothing was saved. The stone “=our gravel” can't begin with “=”.");
  expect(() => save("")).toThrow("Type the office's name first. Nothing was saved.");
  expect(() => save("F".repeat(81))).toThrow(/shorter name, of 80 characters/);
  expect(() => save("Fernlea Stone", { rates: false, texts: false, past: true })).toThrow(/Choose what to save first/);
  kept.set("Bedrow.papers", JSON.stringify({ ...startingDetails, terms: "Half\ton\u200B signing" }));
  const { file } = save("Fernlea Stone", { rates: false, texts: true, past: false });
  expect(file.texts!.terms).toBe("Half on signing");
});

test("a damaged rate is left out of the file, and the message says which", async () => {
  const sheet = await insertRates();
  await typeRates(host, sheet, { Rate_waste: 8, Rate_crew_hour: "ask Dale" });
  const { file, leftOut } = makeOfficeFile(THIRD, await readOfficeWorkbook(), { ...ALL, past: false });
  expect(leftOut).toEqual([rateLabel("crewRate"), rateLabel("waste")]);
  expect(file.rates!.values).not.toHaveProperty("Rate_waste");
});

/** A row of an office's own, a cell for each column of its list but the quote. */
const OWN: Readonly<Partial<Record<FieldKey, number | string>>> = {
  ...{ pieceCost: 33.5, borderHeight: 5, trenchDepth: 2, pieceLength: `7' 6"`, stakesPerPiece: 1, stakeCost: 3.1 },
  ...{ rollCost: 71, rollWidth: 3, rollLength: 20, pinBoxCost: 21, pinsPerBox: 30 },
  ...{ haulCost: 61, dumpFee: 38, truckYards: 0.4, truckPayload: 0.3 },
  ...{ deliveryCost: 77, deliveryYards: 0.5, deliveryPayload: 0.6, crewRate: 57, crewSize: 4 },
};
const OWN_NAME = "3/4 house special";
/** December 1, 2026, as a cell has it. */
const QUOTED = 46_357;

/** The cell of a column of a list, so many rows below its first. */
async function cellOf(name: string, row: number): Promise<string> {
  const cells = (await readRateCells())!.named.get(name.toLowerCase())!;
  return `${cells.sheet}!${cellAddress({ row: cells.row + row, column: cells.column })}`;
}

/** Types an office's own row over the first blank one of a list, and changes the price of its first sample to its own. */
async function typeOwnRow(key: ListKey): Promise<void> {
  const { names, columns, price } = listOf(key);
  const { by, on } = quotedNames(listOf(key));
  const at = listSamples[key].length;
  const typed: Record<string, number | string> = {
    [await cellOf(names, at)]: `'${OWN_NAME}`,
    [await cellOf(by, at)]: "Miller & Sons",
    [await cellOf(on, at)]: QUOTED,
    [await cellOf(columns[price]!, 0)]: 99,
  };
  for (const field of listFields(key)) typed[await cellOf(columns[field]!, at)] = OWN[field]!;
  await host.type(typed);
}

/** A workbook without past jobs and texts, saved to a file that is read again. */
async function savedRates(): Promise<OfficeFile> {
  const { text, leftOut } = makeOfficeFile(THIRD, await readOfficeWorkbook(), {
    rates: true,
    texts: false,
    past: false,
  });
  expect(leftOut).toEqual([]);
  const read = readOffice(text);
  if (!read.ok) throw new Error(read.why.join(" "));
  return read.file;
}

/** The names and the marks of a workbook's lists, and what is quoted. */
async function listsNow() {
  const { found, named } = (await readRateCells())!;
  const quoted = listKeys.map((key) => named.get(quotedNames(listOf(key)).on.toLowerCase())?.values.flat());
  return { lists: found.rates.lists, quoted: quoted.map((days) => days?.filter((day) => day !== "")) };
}

/** Rows in any order. */
const sorted = (lists: Rates["lists"]) =>
  listKeys.map((key) => [...(lists?.[key]?.rows ?? [])].sort((one, other) => one.name.localeCompare(other.name)));

describe("the office's lists in its settings", () => {
  beforeEach(async () => {
    await insertRates();
    for (const key of listKeys) await typeOwnRow(key);
  });

  test("have a line a row in the file, with days that no program reads as others", async () => {
    const file = await savedRates();
    expect(file.version).toBe(2);
    const { text } = makeOfficeFile(THIRD, await readOfficeWorkbook(), { rates: true, texts: false, past: false });
    for (const key of listKeys) {
      const rows = file.rates!.lists![listOf(key).names]!;
      expect(rows.map(({ name, sample = false }) => [name, sample])).toEqual([
        ...listSamples[key].map(({ name }, row) => [name, row > 0]),
        [OWN_NAME, false],
      ]);
      const { by, on } = quotedNames(listOf(key));
      const fed = listFields(key).map((field) => [listOf(key).columns[field]!, OWN[field]!]);
      expect(rows.at(-1)!.cells).toEqual({ ...Object.fromEntries(fed), [by]: "Miller & Sons", [on]: "2026-12-01" });
      expect(text).toContain(JSON.stringify(rows.at(-1)));
    }
  });

  test("make a new Rates sheet with equal rows, marks, and quotes", async () => {
    const [file, before] = [await savedRates(), await listsNow()];
    await freshWorkbook();
    const { plan, written } = await load(file);
    expect(plan.newSheet).toContain("Pins: Pins, box of 500: $76.00, Pins per box 500 pins (sample)");
    expect(await listsNow()).toEqual(before);
    expect((await readOfficeState()).changedSince).toEqual([]);
    await undoOffice(written);
    expect(await readRates()).toBeUndefined();
  });

  test("change the lists of a Rates sheet that is there, as shown, and undo brings back every cell", async () => {
    const [file, wanted] = [await savedRates(), await listsNow()];
    await freshWorkbook();
    const sheet = await insertRates();
    await host.type({
      [await cellOf("Rate_pin_names", 2)]: "Coil of wire",
      [await cellOf("Rate_pin_prices", 2)]: 12,
    });
    const before = snapshotOf(host);
    const { plan, written } = await load(file);
    expect(plan.stays).toEqual(["Pins: Coil of wire"]);
    expect(plan.notes).toEqual([]);
    const labels = plan.differences!.map(({ label }) => label);
    for (const key of listKeys) {
      const label = `${listOf(key).of.charAt(0).toUpperCase()}${listOf(key).of.slice(1)}`;
      expect(labels).toContain(`${label}: ${OWN_NAME}`);
      expect(labels).toContain(`${label}: ${listSamples[key][0]!.name}`);
    }
    const now = await listsNow();
    const pins = { ...now.lists!.pins!, rows: now.lists!.pins!.rows.filter(({ name }) => name !== "Coil of wire") };
    expect(sorted({ ...now.lists, pins })).toEqual(sorted(wanted.lists));
    expect(now.quoted).toEqual(wanted.quoted);
    expect(planLoad(file, await readOfficeWorkbook()).differences).toEqual([]);
    await undoOffice(written);
    expect(difference(before, snapshotOf(host))).toBe("");
    expect(host.value(`${sheet}!${rateAddress("Whose_pin_names")}`)).toBe("sample");
  });

  test("take samples off that the file doesn't list, and leave them where it has no lists", async () => {
    const file = await savedRates();
    await freshWorkbook();
    await insertRates();
    const before = await listsNow();
    const { lists: _, ...older } = file.rates!;
    await load({ ...file, version: 1, rates: older });
    expect(await listsNow()).toEqual(before);
    const [only] = file.rates!.lists!.Rate_crew_names!.slice(-1);
    await load({ ...file, rates: { ...older, lists: { Rate_crew_names: [only!], Rate_pin_names: [] } } });
    const { lists } = await listsNow();
    expect(lists!.crew!.rows.map(({ name }) => name)).toEqual([OWN_NAME]);
    expect(lists!.pins!.rows).toEqual([]);
    expect(lists!.edging).toEqual(before.lists!.edging);
  });

  test("say what a Rates sheet has no list for, or no room", async () => {
    const file = await savedRates();
    const full = Array.from({ length: 9 }, (_, row) => ({ name: `crew ${row}`, cells: { Rate_crew_rates: 50 } }));
    const lists = { Rate_crew_names: full, Rate_moon_names: [{ name: "x", cells: { Rate_moon_prices: 1 } }] };
    await Excel.run(async (context) => {
      for (const name of listNames("pins")) context.workbook.names.getItem(name).delete();
      await context.sync();
    });
    expect(planLoad(file, await readOfficeWorkbook()).notes).toEqual([
      "The Rates sheet has no cell for the list of pins. Add what's missing from the sheet first, then load again.",
    ]);
    expect(planLoad({ ...file, rates: { ...file.rates!, lists } }, await readOfficeWorkbook()).notes).toEqual([
      expect.stringMatching(/^The list of crews has room for \d more, and the file adds 9\. Insert rows inside/),
      "This version of the add-in doesn't have Rate_moon_names: left out.",
    ]);
  });

  test.each(listKeys)("leave a damaged row of %s out of the file, and the message says which", async (key) => {
    const { columns, price, of } = listOf(key);
    await host.type({ [await cellOf(columns[price]!, 1)]: "ask Dale" });
    const { file, leftOut } = makeOfficeFile(THIRD, await readOfficeWorkbook(), { ...ALL, past: false });
    const name = listSamples[key][1]!.name;
    expect(leftOut.map((label) => label.toLowerCase())).toEqual([`${of}: ${name}`.toLowerCase()]);
    expect(file.rates!.lists![listOf(key).names]!.map((row) => row.name)).not.toContain(name);
  });
});
