import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { type BedForm, blankForm } from "../../src/quantities/bed/form";
import { estimateBlock } from "../../src/sheets/estimate/block";
import { insertPlan } from "../../src/workbook/change/insert";
import { undoLastInsert } from "../../src/workbook/change/undo";
import { redrawSelectedBlock } from "../../src/workbook/drawing/drawing";
import type { Picture } from "../../src/workbook/drawing/picture";
import { DRAWINGS } from "../../src/workbook/drawing/records";
import type { HeadlessHost } from "../headlessHost";
import { createProductHost } from "../productHost";
import { selectedBlock } from "../selectedBlock";

// The smallest PNG there is: one pixel (RFC 2083).
const PNG = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==";
const picture: Picture = { png: PNG, widthPoints: 300, heightPoints: 200, altText: "A bed in plan" };
const draw = async () => picture;

const bed: BedForm = { ...blankForm(), name: "Front walk", typed: { length: `18' 6"`, width: "5" } };

let host: HeadlessHost;
beforeEach(async () => {
  host = await createProductHost();
  await insertPlan((at) => estimateBlock(bed, at), { kind: "selection" });
});
afterEach(() => host.dispose());

const select = (address: string) =>
  Excel.run(async (context) => {
    context.workbook.worksheets.getActiveWorksheet().getRange(address).select();
    await context.sync();
  });

async function shapes() {
  return Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getActiveWorksheet();
    sheet.shapes.load("items/name,items/altTextDescription,items/left,items/top,items/width");
    await context.sync();
    return sheet.shapes.items.map(({ name, altTextDescription, left, top, width }) => ({
      name,
      altTextDescription,
      left,
      top,
      width,
    }));
  });
}

describe("the drawing of a block", () => {
  test("is put beside it in three syncs, with words for those who do not see it", async () => {
    await select("B8");
    expect(await selectedBlock()).toMatchObject({ name: "Front walk", drawing: "none" });
    const before = host.syncCount;
    expect(await redrawSelectedBlock(draw)).toEqual({ name: "Front walk" });
    expect(host.syncCount - before).toBeLessThanOrEqual(3);
    const [shape, ...others] = await shapes();
    expect(others).toEqual([]);
    expect(shape).toMatchObject({ altTextDescription: "A bed in plan", width: 300, top: 0 });
    const right = await Excel.run(async (context) => {
      const cell = context.workbook.worksheets.getActiveWorksheet().getRange("J1");
      cell.load("left");
      await context.sync();
      return cell.left;
    });
    expect(shape!.left).toBeGreaterThanOrEqual(right);
  });

  test("is made from what the cells hold now, and told to be out of date until then", async () => {
    await select("B8");
    await redrawSelectedBlock(draw);
    expect(await selectedBlock()).toMatchObject({ drawing: "current" });
    await host.type({ B7: "20 ft" });
    expect(await selectedBlock()).toMatchObject({ drawing: "out of date" });
    const drawn: string[] = [];
    await redrawSelectedBlock(async (form) => {
      drawn.push(form.typed.length ?? "");
      return picture;
    });
    expect(drawn).toEqual(["20 ft"]);
    expect(await shapes()).toHaveLength(1);
    expect(await selectedBlock()).toMatchObject({ drawing: "current" });
  });

  test("does not cover what is beside the block", async () => {
    await host.type({ L9: "a note of the office" });
    await select("B8");
    await redrawSelectedBlock(draw);
    const [shape] = await shapes();
    expect(shape!.top).toBeGreaterThan(1000);
  });

  test("leaves that of another block of the same name alone, and goes with the block that is undone", async () => {
    await select("B8");
    await redrawSelectedBlock(draw);
    await select("A200");
    await insertPlan((at) => estimateBlock(bed, at), { kind: "selection" });
    expect(await selectedBlock()).toMatchObject({ drawing: "none" });
    await redrawSelectedBlock(draw);
    expect(await shapes()).toHaveLength(2);
    const [first] = await shapes();
    await undoLastInsert();
    expect(await shapes()).toEqual([first]);
    await select("B8");
    expect(await selectedBlock()).toMatchObject({ drawing: "current" });
  });

  test("adds no picture where the list of drawings has to stay as it is", async () => {
    await select("B8");
    host.grid.kept.set(DRAWINGS.key, "damaged");
    const add = vi.spyOn(host.grid.pictures, "add");
    await expect(redrawSelectedBlock(draw)).rejects.toThrow("is damaged and can't be read");
    expect(add).not.toHaveBeenCalled();
    expect(host.grid.kept.get(DRAWINGS.key)).toBe("damaged");
  });

  test("keeps what other panes note of theirs right before, and right after", async () => {
    await select("B8");
    const note = (shapeName: string) => () => {
      const { kept = [] } = JSON.parse(String(host.grid.kept.get(DRAWINGS.key) ?? '{"version":1}'));
      const record = { shapeName, sheetId: "other", bedName: shapeName, row: 0, column: 0, drawnFrom: "" };
      host.grid.kept.set(DRAWINGS.key, JSON.stringify({ version: 1, kept: [...kept, record] }));
    };
    host.session.beforeSync(3, note("before"));
    host.session.beforeSync(4, note("after"));
    await redrawSelectedBlock(draw);
    const { kept } = JSON.parse(String(host.grid.kept.get(DRAWINGS.key)));
    const names = kept.map(({ bedName }: { bedName: string }) => bedName);
    expect(names.sort()).toEqual(["Front walk", "after", "before"]);
  });

  test("says that the bed is drawn where only the clearing of another pane's drawing fails", async () => {
    await select("B8");
    host.session.beforeSync(3, () => {
      host.grid.kept.set(DRAWINGS.key, JSON.stringify({ version: 1, kept: [] }));
      for (const sync of [1, 2, 3, 4]) host.failAtSync(sync);
    });
    await expect(redrawSelectedBlock(draw)).rejects.toThrow(
      /couldn't do this\. The bed was drawn\. .* delete the one underneath/,
    );
    expect(await shapes()).toHaveLength(1);
    expect(await selectedBlock()).toMatchObject({ drawing: "current" });
  });

  test("is not made of a block that is emptied meanwhile", async () => {
    await select("B8");
    const sheetId = host.grid.sheets.list()[0]!.id;
    const all = { sheetId, row: 0, column: 0, rowCount: 200, columnCount: 12 };
    host.session.beforeSync(3, () => host.grid.cells.clear(all, "contents"));
    await expect(redrawSelectedBlock(draw)).rejects.toThrow("The estimate was removed at the same time");
    expect(await shapes()).toEqual([]);
    expect(String(host.grid.kept.get(DRAWINGS.key) ?? "")).not.toContain("Front walk");
  });

  test("needs a block to be selected", async () => {
    await select("L3");
    expect(await selectedBlock()).toBeUndefined();
    await expect(redrawSelectedBlock(draw)).rejects.toThrow(/Select a cell in an estimate/);
  });

  test.each([1, 2, 3].flatMap((sync) => [0, 1, 2, 5, 8].map((after) => [sync, after] as const)))(
    "stays as it was when sync %i fails after %i changes",
    async (sync, after) => {
      await select("B8");
      await redrawSelectedBlock(draw);
      const before = await shapes();
      await host.type({ B7: "20 ft" });
      host.failAtSync(sync, after);
      const failed = await redrawSelectedBlock(draw).then(
        () => false,
        () => true,
      );
      if (failed) expect(await shapes()).toEqual(before);
      expect(await selectedBlock()).toMatchObject({ drawing: failed ? "out of date" : "current" });
    },
  );
});
