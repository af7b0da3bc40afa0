import type { Page } from "playwright-core";
import { selectCells } from "../cells";
import { openGroups, press, visitsOf } from "./visit";

const LONG_NAME = "Front bed with our markups, pins at sixty-two percent and two rows of sleeves";

function chooseFile(page: Page, content: string): Promise<void> {
  const file = { name: "rows.json", mimeType: "application/json", buffer: Buffer.from(content) };
  return page.getByLabel("Template file (.json)").setInputFiles(file);
}

let saved: string;

export const templatesVisits = visitsOf("Templates", [
  ["none kept", async (page) => void (await page.getByText("Front bed with sleeves").waitFor())],
  [
    "refused: no block is selected",
    async (page) => {
      await selectCells(page, "Jobs", "P30");
      await press(page, "Save the estimate");
      await page.locator(".trouble:visible").first().waitFor();
    },
  ],
  [
    "saving cells that read outside",
    async (page) => {
      await selectCells(page, "Jobs", "D4:N6");
      await press(page, "Save the selected cells");
      await page.getByText("It reads cells outside itself (2)").waitFor();
      await openGroups(page);
    },
  ],
  [
    "saving, something still to be chosen",
    async (page) => {
      await page.getByLabel("Name", { exact: true }).fill(LONG_NAME);
      await press(page, "Save in this workbook");
      await page.getByText(/Choose what to do with .* first/).waitFor();
    },
  ],
  [
    "one kept",
    async (page) => {
      await page.getByLabel("Jobs!$C$5", { exact: true }).selectOption("ask");
      await page.getByLabel("Jobs!$C$6", { exact: true }).selectOption("value");
      await press(page, "Save in this workbook");
      await page.getByText("in this workbook.").waitFor();
    },
  ],
  [
    "asked whether to replace the kept one",
    async (page) => {
      await selectCells(page, "Jobs", "D4:N6");
      await press(page, "Save the selected cells");
      await page.getByLabel("For all of them").selectOption("ask");
      await page.getByLabel("Name", { exact: true }).fill(LONG_NAME);
      await press(page, "Save in this workbook");
      await page.getByRole("alertdialog").waitFor();
    },
    {
      leave: async (page) => {
        await press(page, "Keep the old one");
        await press(page, "Cancel");
      },
    },
  ],
  ["being renamed", (page) => press(page, `Rename ${LONG_NAME}`), { leave: (page) => press(page, "Cancel") }],
  ["asked whether to delete", (page) => press(page, `Delete ${LONG_NAME}`), { leave: (page) => press(page, "Keep") }],
  [
    "looked at, with a question",
    async (page) => {
      const downloading = page.waitForEvent("download");
      await press(page, `Save ${LONG_NAME} to a file`);
      const { readFileSync } = await import("node:fs");
      saved = readFileSync((await (await downloading).path())!, "utf8");
      await press(page, `Preview ${LONG_NAME}`);
      await page.getByRole("heading", { name: LONG_NAME }).waitFor();
      await openGroups(page);
    },
  ],
  [
    "in the way of job rows",
    async (page) => {
      await page.getByLabel(/What to read for Jobs!\$C\$5/).selectOption("value");
      await selectCells(page, "Jobs", "A5");
      await press(page, /^Put it at/);
      await page.getByRole("alertdialog").waitFor();
    },
    { leave: (page) => page.keyboard.press("Escape") },
  ],
  [
    "put on a new sheet",
    async (page) => {
      await press(page, "Preview Crew day sheet");
      await press(page, "On a new sheet");
      await page.getByText(/Added “Crew day sheet” to/).waitFor();
    },
  ],
  [
    "a file refused",
    async (page) => {
      await chooseFile(page, saved.slice(0, 200));
      await page.getByText(/rows\.json wasn't opened/).waitFor();
    },
  ],
]);
