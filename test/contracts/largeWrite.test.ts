import { afterEach, describe, expect, test } from "vitest";
import { compose, type DraftRow } from "../../src/sheets/compose";
import type { Anchor } from "../../src/spreadsheet/areas";
import { undoChanges, type WrittenChanges } from "../../src/workbook/change/cells";
import { insertPlan } from "../../src/workbook/change/insert";
import { undoLastInsert } from "../../src/workbook/change/undo";
import { readListSheet, writeRows } from "../../src/workbook/jobRows";
import type { HeadlessHost } from "../headlessHost";
import { fillOf, fitOf, officeOf } from "../listSheets";
import { createProductHost } from "../productHost";
import { select } from "./faults/bench";
import { difference, snapshotOf } from "./faults/snapshot";

/*
 * The program's library cuts a table of more than 1,500 cells into parts, which are several changes in one request. A
 * failure between two of them leaves the first written and the rest not. Whatever is written that large must be
 * undone then, cell by cell.
 */
const MOST_CELLS_OF_A_PART = 1500;

let host: HeadlessHost;
afterEach(() => host.dispose());

/** Writes, and gives how many changes each request made. */
async function changesOf(write: () => Promise<unknown>): Promise<number[]> {
  const before = host.session.changesOfRequests.length;
  await write();
  return host.session.changesOfRequests.slice(before);
}

/** Has a write fail after each change of each of its requests, and says where the workbook is not as it was. */
async function leftBehind(changes: readonly number[], write: () => Promise<unknown>): Promise<string[]> {
  const before = snapshotOf(host);
  const left: string[] = [];
  // There is something between two changes.
  expect(Math.max(...changes)).toBeGreaterThan(1);
  for (const [index, made] of changes.entries()) {
    for (let after = 0; after < made; after += 1) {
      host.failAtSync(index + 1, after);
      const failed = await write().then(
        () => false,
        () => true,
      );
      host.session.planNothing();
      await host.grid.settled();
      const changed = difference(before, snapshotOf(host));
      const where = `request ${index + 1} after ${after} of ${made} changes`;
      if (!failed) left.push(`${where}: it did not fail`);
      if (changed) left.push(`${where}: ${changed}`);
    }
  }
  return left;
}

describe("a plan of 2,400 cells", () => {
  const rows = 300;
  const columns = 8;
  const numbered = (row: number): DraftRow => ({
    cells: Array.from({ length: columns }, (_, column) => ({ content: row * columns + column + 1 })),
  });
  const plan = (at: Anchor) =>
    compose(
      "large plan",
      Array.from({ length: rows }, (_, row) => numbered(row)),
      Array.from({ length: columns }, () => 10),
      at,
    );
  const small = (at: Anchor) =>
    compose(
      "small plan",
      [numbered(0)],
      Array.from({ length: columns }, () => 10),
      at,
    );

  test.each([
    ["at a cell", { kind: "selection" as const }],
    ["on a new sheet", { kind: "new sheet" as const, name: "Large" }],
  ])(
    "%s goes in whole or not at all, wherever it fails",
    async (_, place) => {
      host = await createProductHost(officeOf([["Bed"]]));
      await select("List", "D3");
      const before = snapshotOf(host);
      const ofSmall = await changesOf(() => insertPlan(small, place));
      await undoLastInsert();
      const changes = await changesOf(() => insertPlan(plan, place));
      // The contents and the number formats come in two parts each.
      expect(rows * columns).toBeGreaterThan(MOST_CELLS_OF_A_PART);
      expect(sum(changes)).toBeGreaterThan(sum(ofSmall));
      await undoLastInsert();
      await select("List", "D3");
      expect(difference(before, snapshotOf(host))).toBe("");
      // The last request brings it to the front, and notes it: where only that fails, it is there, and undone here.
      const write = () => insertPlan(plan, place);
      expect(await leftBehind(changes.slice(0, -1), write)).toEqual([]);
    },
    300_000,
  );
});

describe("results for a list of 1,600 beds", () => {
  const beds = 1600;
  const headings = ["Job", "Bed", "Length, ft", "Width, ft", "Depth, in", "Stone", "Waste", "Tons"];
  const bed = (row: number) => [`Job ${row % 40}`, `Bed ${row}`, 20, 4, 2.5, "river rock", 0.08, ""];

  test("are filled in for all or for none, wherever it fails, and are undone", async () => {
    host = await createProductHost(officeOf([headings, ...Array.from({ length: beds }, (_, row) => bed(row))]));
    await select("List", "A2");
    const { sheet } = await readListSheet();
    const fit = fitOf(sheet);
    const { changes: filled } = fillOf(fit);
    expect(filled.length).toBeGreaterThan(MOST_CELLS_OF_A_PART);
    const before = snapshotOf(host);
    let written: WrittenChanges | undefined;
    const fill = async () => {
      written = await writeRows(fit, filled);
    };
    const changes = await changesOf(fill);
    // 20 x 4 ft x 2.5 in is 0.617 cu yd; with 8% waste, at 1.35 tons a cu yd, 0.9 tons.
    expect(host.value("H1601")).toBeCloseTo(0.9, 3);
    const filledIn = snapshotOf(host);
    const undoing = await changesOf(() => undoChanges(written!));
    expect(difference(before, snapshotOf(host))).toBe("");
    expect(await leftBehind(changes, fill)).toEqual([]);

    // The undo comes in parts, too: it is tried again, or nothing of it was done.
    const last = undoing.length;
    for (let after = 0; after < undoing[last - 1]!; after += 1) {
      await fill();
      host.failAtSync(last, after);
      const isUndone = await undoChanges(written!).then(
        () => true,
        () => false,
      );
      host.session.planNothing();
      await host.grid.settled();
      expect(difference(isUndone ? before : filledIn, snapshotOf(host)), `undo after ${after} changes`).toBe("");
      if (!isUndone) await undoChanges(written!);
    }
  }, 300_000);
});

const sum = (numbers: readonly number[]) => numbers.reduce((total, one) => total + one, 0);
