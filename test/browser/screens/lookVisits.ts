import type { Page } from "playwright-core";
import { selectCells } from "../cells";
import { holdWorkbook, openGroups, press, visitsOf, writeCells } from "./visit";

let letGo: () => Promise<void>;

export const checkVisits = visitsOf("Check the sheets", [
  ["before", async (page) => void (await page.getByLabel("What to check").waitFor())],
  [
    "busy",
    async (page) => {
      await writeCells(page, "Jobs", { L8: 0.6, I9: 10, M17: "=SUM(M5:M14)", G11: 0.25 });
      letGo = await holdWorkbook(page);
      await press(page, /^Check$/);
      await page.getByRole("button", { name: "Stop" }).waitFor();
    },
    { leave: () => letGo() },
  ],
  [
    "found, with fixes open",
    async (page) => {
      await page.getByRole("heading", { name: "Not checked" }).waitFor();
      await openGroups(page);
      await page.getByRole("button", { name: "Ignore…" }).first().click();
    },
  ],
  [
    "one let be",
    async (page) => {
      await page.getByLabel("Reason").fill("a thin strip, agreed with the customer on the phone");
      await page.getByRole("button", { name: "Ignore", exact: true }).click();
      await page.getByText("Ignored (1)").click();
    },
  ],
  [
    "a fix written",
    async (page) => {
      await page.getByRole("button", { name: "Fix", exact: true }).first().click();
      await page.getByText(/Fixed: /).waitFor();
    },
  ],
]);

const explain = async (page: Page, sheet: string, cell: string, seen: string | RegExp) => {
  await selectCells(page, sheet, cell);
  await press(page, "Explain the selected cell");
  await page.locator("#pane .screen:visible").last().getByText(seen).first().waitFor();
  await openGroups(page);
};

export const explainVisits = visitsOf("Explain a cell", [
  ["a function", (page) => explain(page, "Jobs", "L5", "Jobs!L5")],
  [
    "an error",
    async (page) => {
      await writeCells(page, "Jobs", { P20: `=BED.STONE_TONS("nothing",2,"river rock",0.08)` });
      await explain(page, "Jobs", "P20", "Jobs!P20");
    },
  ],
  ["a price", (page) => explain(page, "Estimate", "B5", "From quantity to price")],
  ["typed", (page) => explain(page, "Jobs", "D5", "This was typed")],
  ["blank", (page) => explain(page, "Jobs", "R30", "is blank")],
]);

export const copyVisits = visitsOf("Copy for others", [
  ["before", async (page) => void (await page.getByLabel("What to copy").waitFor())],
  [
    "looked at",
    async (page) => {
      await selectCells(page, "Jobs", "A5");
      await press(page, "Preview copy");
      await page.getByText("on a new sheet, Jobs plain").waitFor();
      await openGroups(page);
    },
  ],
  [
    "made",
    async (page) => {
      await press(page, "Make the copy");
      await page.getByText("Copied to Jobs plain").waitFor();
    },
  ],
  [
    "in the way",
    async (page) => {
      await page.getByLabel("What to copy").selectOption("cells");
      await page.getByLabel("Copy to").selectOption("cell");
      await selectCells(page, "Jobs", "A4:N6");
      await press(page, "Preview copy");
      await page.getByText("starting at the cell you select").waitFor();
      await selectCells(page, "Jobs", "B7");
      await press(page, /^Put it at Jobs!B7/);
      await page.getByRole("alertdialog").waitFor();
    },
    { leave: (page) => page.keyboard.press("Escape") },
  ],
  [
    "as a workbook, looked at",
    async (page) => {
      await page.getByLabel("What to copy").selectOption("block");
      await page.getByLabel("Copy to").selectOption("workbook");
      await selectCells(page, "Estimate", "A4");
      await press(page, "Preview copy");
      await page.getByText("as a separate workbook.").waitFor();
      await openGroups(page);
    },
  ],
]);

export const helpVisits = visitsOf("Help", [
  [
    "all pages",
    async (page) =>
      void (await page
        .getByText(/^\d+ pages\. Each/)
        .first()
        .waitFor()),
  ],
  [
    "looked for",
    async (page) => {
      await page.getByLabel("Search").fill("stone weight");
      await page
        .getByText(/^\d answers?\./)
        .first()
        .waitFor();
    },
  ],
  [
    "nothing found",
    async (page) => {
      await page.getByLabel("Search").fill("retaining wall financing");
      await page.getByText("Here are the closest").first().waitFor();
    },
  ],
]);
