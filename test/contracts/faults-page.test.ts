import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, test } from "vitest";
import { faultsPage, readFaults } from "../../src/help/faultsPage";
import { many } from "../../src/help/numbers/stated";
import { textOf } from "../guide/fragments";

const ROOT = resolve(import.meta.dirname, "../..");
const found = readFaults(ROOT);
const said = textOf(faultsPage(found).content);

test("the page of troubles says in how many pairs a thing was tried, and no more than was found there", () => {
  const cells = found.operations.flatMap((operation) => Object.values(operation.cells));
  const pairs = found.operations.length * found.troubles.length;
  expect(cells.length).toBeLessThan(pairs);
  expect(said).toContain(`can happen: ${many(cells.length)} of ${many(pairs)} pairs`);
  expect(said).toContain(`In ${many(cells.reduce((sum, { done }) => sum + done, 0))} the pane said it was done`);
  expect(said).not.toMatch(/everything:|all that was asked/);
});

test("lists what is compared as the test compares it", () => {
  const snapshot = readFileSync(join(ROOT, "test/contracts/faults/snapshot.ts"), "utf8");
  // What a snapshot holds, by its keys, and the words for it.
  for (const [key, words] of Object.entries({
    sheets: "the sheets, their names, order",
    hidden: "visibility",
    isProtected: "protection",
    names: "names",
    tables: "tables",
    kept: "what the add-in stores in the workbook",
    selection: "and the selection",
    cells: "cell values and formulas",
    widths: "column widths and row heights in the used range",
    hiddenColumns: "which are hidden",
    merged: "merged cells",
    rules: "conditional formats",
    lists: "drop-down lists",
    pictures: "pictures",
    page: "page setup",
    frozen: "frozen rows",
  })) {
    expect(snapshot).toMatch(new RegExp(`\\b${key}\\b[:,]`));
    expect(said).toContain(words);
  }
});

test("does not promise that undoing on the sheet, or closing, brings a workbook back", () => {
  expect(said).toContain("Undo on the sheet (Ctrl+Z) may not help");
  expect(said).toContain("Go back to an earlier version of the file");
  expect(said).toMatch(/Closing doesn't help if AutoSave is on/);
});
