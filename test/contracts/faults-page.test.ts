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
  expect(said).toContain(`in ${many(cells.length)} of ${many(pairs)} pairs`);
  expect(said).toContain(`In ${many(cells.reduce((sum, { done }) => sum + done, 0))} the pane said that it was done`);
  expect(said).not.toMatch(/everything:|all that was asked/);
});

test("lists what is compared as the test compares it", () => {
  const snapshot = readFileSync(join(ROOT, "test/contracts/faults/snapshot.ts"), "utf8");
  // What a snapshot holds, by its keys, and the words for it.
  for (const [key, words] of Object.entries({
    sheets: "the sheets, their names, order",
    hidden: "hiding",
    isProtected: "protection",
    names: "names",
    tables: "tables",
    kept: "what the add-in keeps",
    selection: "what is selected",
    cells: "what stands in the cells",
    widths: "the widths of the columns and the heights of the rows, up to the last that holds anything",
    hiddenColumns: "which of them are hidden",
    merged: "merged cells",
    rules: "color rules",
    lists: "lists of choices",
    pictures: "pictures",
    page: "page setup",
    frozen: "frozen rows",
  })) {
    expect(snapshot).toMatch(new RegExp(`\\b${key}\\b[:,]`));
    expect(said).toContain(words);
  }
});

test("does not promise that undoing in the sheet, or closing, brings a workbook back", () => {
  expect(said).toContain("Undo in the sheet (Ctrl+Z) may not reach it");
  expect(said).toContain("Go back to an earlier version of the file");
  expect(said).toMatch(/Closing does not help where the file is saved by itself/);
});
