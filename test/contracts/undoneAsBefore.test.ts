import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { insertEstimate } from "../../src/pane/insertEstimate";
import { undoLastInsert } from "../../src/workbook/change/undo";
import type { HeadlessHost } from "../headlessHost";
import { createProductHost } from "../productHost";
import { select } from "./faults/bench";
import { addFixtures, office } from "./faults/office";
import { bed } from "./faults/operations/inserts";
import { difference, type Snapshot, snapshotOf } from "./faults/snapshot";

/*
 * What was inserted over cells that someone had dressed, and is undone, leaves no trace: their lines, their letters
 * and their locks are as they were.
 */
let host: HeadlessHost;
let before: Snapshot;
beforeEach(async () => {
  host = await createProductHost(office);
  await addFixtures(host);
  await select("Notes", "D12");
  before = snapshotOf(host);
});
afterEach(() => host.dispose());

const insert = () => insertEstimate(bed, { kind: "selection" });

describe("an estimate over cells that someone had dressed", () => {
  test("is over lines, letters and locks that are not usual", () => {
    const { looks, sheets } = host.grid;
    const id = sheets.list().find(({ name }) => name === "Notes")!.id;
    expect(looks.border(id, 13, 4, "bottom")).toMatchObject({ style: "Double", weight: "Thick" });
    expect(looks.border(id, 13, 5, "right")).toMatchObject({ style: "Continuous", weight: "Thick" });
    expect(looks.read(id, 14, 4)).toMatchObject({ strikethrough: true, underline: "Double", turned: 45 });
    expect(looks.read(id, 15, 4).locked).toBe(false);
  });

  test("leaves no trace once it is undone", async () => {
    expect(await insert()).toMatchObject({ done: true });
    expect(difference(before, snapshotOf(host))).not.toBe("");
    await undoLastInsert();
    expect(difference(before, snapshotOf(host))).toBe("");
  });

  test("leaves a column as wide as someone has made it since", async () => {
    const { looks, sheets } = host.grid;
    const id = sheets.list().find(({ name }) => name === "Notes")!.id;
    const width = (column: number) => looks.columnWidth(id, column);
    const widths = [3, 4, 5, 6].map(width);
    await insert();
    expect([3, 4, 5, 6].map(width)).not.toEqual(widths);
    looks.setColumnWidth({ sheetId: id, row: 0, column: 4, rowCount: 1, columnCount: 1 }, 210);
    await undoLastInsert();
    expect([3, 4, 5, 6].map(width)).toEqual([widths[0], 210, widths[2], widths[3]]);
  });

  test("leaves no trace where it fails half-way", async () => {
    host.failAtSync(2, Number.POSITIVE_INFINITY);
    await expect(insert()).rejects.toThrow("Nothing was changed.");
    expect(difference(before, snapshotOf(host))).toBe("");
  });
});
