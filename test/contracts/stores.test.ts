import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { estimateBlock } from "../../src/sheets/estimate/block";
import { withTemplate } from "../../src/sheets/templates/keptTemplates";
import { insertPlan } from "../../src/workbook/change/insert";
import { lastInsert } from "../../src/workbook/change/receipt";
import { undoLastInsert } from "../../src/workbook/change/undo";
import { redrawSelectedBlock } from "../../src/workbook/drawing/drawing";
import { readForCheck } from "../../src/workbook/read/workbook";
import { changeDismissals } from "../../src/workbook/settings/dismissals";
import { KeptFailure } from "../../src/workbook/settings/setting";
import { changeKeptTemplates, readKeptTemplates } from "../../src/workbook/settings/templates";
import { bedsOfEachWay } from "../bedsOfEachWay";
import type { HeadlessHost } from "../headlessHost";
import { createProductHost } from "../productHost";
import { selectedBlock } from "../selectedBlock";

/*
 * What is kept in a workbook's settings: damaged or of a later version it is told, and stays as it is. What is damaged
 * gives way once the person has said so; what a later version wrote never does.
 */
let host: HeadlessHost;
beforeEach(async () => {
  host = await createProductHost();
});
afterEach(() => host.dispose());

const setting = (key: string) =>
  Excel.run(async (context) => {
    const found = context.workbook.settings.getItemOrNullObject(key);
    found.load("value");
    await context.sync();
    return found.isNullObject ? undefined : String(found.value);
  });

const put = (key: string, text: string) =>
  Excel.run(async (context) => {
    context.workbook.settings.add(key, text);
    await context.sync();
  });

const pictures = () =>
  Excel.run(async (context) => {
    const { shapes } = context.workbook.worksheets.getActiveWorksheet();
    shapes.load("items/name");
    await context.sync();
    return shapes.items.map(({ name }) => name);
  });

const bed = { ...bedsOfEachWay["rectangle, rounded"]!, name: "Front walk" };
const insertBed = () => insertPlan((at) => estimateBlock(bed, at), { kind: "selection" });
/** A PNG of one pixel. */
const PIXEL = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkYPhfDwAChwGA60e6kgAAAABJRU5ErkJggg==";
const picture = async () => ({ png: PIXEL, widthPoints: 40, heightPoints: 40, altText: "" });
const dismissal = (key: string) => ({ key, reason: "agreed", title: "Odd", where: "Jobs!B3", on: "2026-03-02" });
const template = {
  format: "bedrow-template",
  version: 1,
  name: "Crew day sheet",
  rows: 1,
  columns: 1,
  widths: [10],
  cells: [{ at: "A1", text: "Crew" }],
} as const;

/** Each list that the workbook keeps, and a change to it. */
const lists = [
  {
    key: "Bedrow.dismissals",
    later: '{"version":2,"kept":[]}',
    change: (startOver: boolean) => changeDismissals((there) => [...there, dismissal("new")], startOver),
    now: async () => (await readForCheck()).known.dismissals.map(({ key }) => key),
    after: ["new"],
    writesAt: 2,
  },
  {
    key: "Bedrow.drawings",
    later: '{"version":2,"kept":[]}',
    change: (startOver: boolean) => redrawSelectedBlock(picture, startOver),
    now: async () => [(await selectedBlock())?.drawing],
    after: ["current"],
    writesAt: 3,
  },
  {
    key: "Bedrow.templates",
    later: '{"format":"bedrow-templates","version":2,"templates":[]}',
    change: (startOver: boolean) => changeKeptTemplates((there) => withTemplate(there, template, false), startOver),
    now: async () => (await readKeptTemplates()).map(({ name }) => name),
    after: ["Crew day sheet"],
    writesAt: 2,
  },
] as const;

describe.each(lists)("$key", ({ key, later, change, now, after, writesAt }) => {
  beforeEach(async () => {
    await insertBed();
  });

  test("of a later version isn't changed, also where the person would start again", async () => {
    await put(key, later);
    for (const startOver of [false, true]) {
      const refusal = await change(startOver).then(
        () => undefined,
        (error: unknown) => error,
      );
      expect(refusal).toBeInstanceOf(KeptFailure);
      expect(refusal).toMatchObject({ canStartOver: false });
      expect(String(refusal)).toMatch(
        /A newer version of this add-in .* (wasn't|weren't) changed.*[Uu]se that version/s,
      );
    }
    expect(await setting(key)).toBe(later);
  });

  test.each(["{half", "[1", '"text"', '{"version":1,"kept":{"a":1}}'])(
    "damaged as %s isn't changed, until the person does the same once more",
    async (text) => {
      await put(key, text);
      await expect(change(false)).rejects.toMatchObject({
        canStartOver: true,
        message: expect.stringMatching(/damaged/),
      });
      expect(await setting(key)).toBe(text);
      expect(await pictures()).toEqual([]);
      await change(true);
      expect(await now()).toEqual(after);
    },
  );

  test("damaged stays as it is where starting again fails", async () => {
    await put(key, "{half");
    host.failAtSync(writesAt);
    await expect(change(true)).rejects.toThrow();
    expect(await setting(key)).toBe("{half");
    expect(await pictures()).toEqual([]);
  });
});

test("entries of a list that can't be read stay beside those that can", async () => {
  const odd = { key: 7, from: "somebody" };
  await put("Bedrow.dismissals", JSON.stringify([dismissal("a"), odd]));
  await changeDismissals((there) => [...there, dismissal("b")], false);
  expect((await readForCheck()).known.dismissals.map(({ key }) => key)).toEqual(["a", "b"]);
  expect(await setting("Bedrow.dismissals")).toContain(JSON.stringify(odd));
});

test("what can't be read of what was ignored is said with the findings, which all show", async () => {
  await put("Bedrow.dismissals", "{half");
  expect((await readForCheck()).known).toEqual({
    dismissals: [],
    why: expect.stringMatching(/^The list of ignored findings .* is damaged .* All findings are shown\.$/),
  });
});

describe("the note of the last insert", () => {
  test("of a later version, or damaged, is offered, and takes nothing back but says why", async () => {
    await put("Bedrow.lastInsert", '{"version":2,"kept":{}}');
    expect(await lastInsert()).toMatchObject({ title: "what was inserted last" });
    await expect(undoLastInsert()).rejects.toThrow(/by a newer version of this add-in/);
    await put("Bedrow.lastInsert", "{half");
    await expect(undoLastInsert()).rejects.toThrow(/record of the last insert is damaged, so nothing was undone/);
    expect(await setting("Bedrow.lastInsert")).toBe("{half");
  });

  test("of a later version, or damaged, gives way to the next insert, which is then the one to undo", async () => {
    for (const text of ['{"version":2,"kept":{}}', "{half"]) {
      await put("Bedrow.lastInsert", text);
      await insertBed();
      await undoLastInsert();
      expect(host.value("A1")).toBe("");
      expect(await setting("Bedrow.lastInsert")).toBe("");
    }
  });

  test("that claims more cells than it has formulas for takes nothing back: they may be someone else's", async () => {
    await insertBed();
    await host.type({ H40: "typed by somebody" });
    const text = (await setting("Bedrow.lastInsert"))!;
    const note = JSON.parse(text) as { kept: { parts: { area: { rows: number; columns: number } }[] } };
    note.kept.parts[0]!.area = { ...note.kept.parts[0]!.area, rows: 200, columns: 20 };
    await put("Bedrow.lastInsert", JSON.stringify(note));
    await expect(undoLastInsert()).rejects.toThrow(/damaged/);
    expect(host.value("H40")).toBe("typed by somebody");
    expect(host.value("A1")).not.toBe("");
  });

  test("written before notes had a version still takes its insert back", async () => {
    await insertBed();
    const { kept } = JSON.parse((await setting("Bedrow.lastInsert"))!) as { kept: unknown };
    await put("Bedrow.lastInsert", JSON.stringify(kept));
    await undoLastInsert();
    expect(host.value("A1")).toBe("");
  });
});
