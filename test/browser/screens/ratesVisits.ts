import type { Page } from "playwright-core";
import { openScreen } from "../openScreen";
import { openGroups, press, visitsOf, writeCells } from "./visit";

/** Settings of an invented office, with long words in them. */
const SETTINGS = {
  format: "bedrow-office-settings",
  version: 1,
  office: "Fernlea Stone and Landscape Supply of Northeastern Ohio",
  saved: "2026-11-30",
  number: 3,
  rates: {
    values: { Rate_fabric_roll: 71.5, Rate_waste: 0.12, Rate_moon_haul: 9 },
    samples: [],
    stones: [{ name: "3/4 inch washed creek gravel from the lower pit", perTon: 57, tonsPerYard: 1.42 }],
  },
  texts: {
    office: "Fernlea Stone",
    terms: "Half on signing, the other half on the day that the work is done and approved",
  },
  pastJobs: [{ job: "Elm Row 3", date: "2025-12-09", measure: "Stone", unit: "tons", estimated: 3, actual: 3.4 }],
};

/** Puts something into the cell of a name. */
function writeNamed(page: Page, name: string, content: string | number): Promise<void> {
  return page.evaluate(
    ([wanted, text]) =>
      Excel.run(async (context) => {
        context.workbook.names.getItem(String(wanted)).getRange().values = [[text]];
        await context.sync();
      }),
    [name, content] as const,
  );
}

export const ratesVisits = [
  ...visitsOf("Rates", [
    ["none in the workbook", openGroups],
    [
      "inserted, with examples",
      async (page) => {
        await press(page, "Add the Rates sheet");
        await page.getByRole("heading", { name: "Still samples" }).waitFor();
        await page.getByText(/Added the Rates sheet: Rates!/).waitFor();
      },
    ],
    [
      "one of them damaged",
      async (page) => {
        await writeNamed(page, "Rate_fabric_roll", "ask Dale");
        await page.locator("li:visible", { hasText: "can't read “ask Dale”" }).waitFor();
      },
    ],
    [
      "older estimates found",
      async (page) => {
        await writeNamed(page, "Rate_fabric_roll", 95);
        await press(page, "Find them");
        await page.getByRole("button", { name: /^Let (it|these \d+) follow$/ }).waitFor();
        await openGroups(page);
      },
    ],
    [
      "older estimates let follow",
      async (page) => {
        await press(page, /^Let (it|these \d+) follow$/);
        await page.getByText(/cells now follow your rates/).waitFor();
      },
    ],
    [
      "sample rows to be cleared",
      async (page) => {
        await press(page, "Show sample rows");
        await page.getByRole("button", { name: /^Clear these \d+ rows$/ }).waitFor();
      },
    ],
    [
      "sample rows cleared",
      async (page) => {
        await press(page, /^Clear these \d+ rows$/);
        await page.getByText(/^Cleared \d+ sample rows/).waitFor();
      },
    ],
    [
      "office settings being saved",
      async (page) => {
        await press(page, "Save office settings…");
        await page.getByRole("heading", { name: "Save office settings" }).waitFor();
      },
      { leave: (page) => press(page, "Cancel") },
    ],
    [
      "office settings being loaded",
      async (page) => {
        await press(page, "Load office settings…");
        await page.getByRole("heading", { name: "Load office settings" }).waitFor();
      },
    ],
    [
      "what office settings would change",
      async (page) => {
        const buffer = Buffer.from(JSON.stringify(SETTINGS));
        const file = { name: "ours.json", mimeType: "application/json", buffer };
        await page.getByLabel("Office settings file (.json)").setInputFiles(file);
        await page.getByText("Nothing is written yet").waitFor();
        await openGroups(page);
      },
    ],
    [
      "office settings loaded",
      async (page) => {
        await press(page, "Load these settings");
        await page.getByText(/^Loaded Fernlea Stone/).waitFor();
      },
      {
        leave: async (page) => {
          await press(page, "Undo loading");
          await page.getByText("Everything is as it was before.").waitFor();
        },
      },
    ],
  ]),
  ...visitsOf("Estimate", [
    [
      "with prices from the rates, one of them typed for this bed alone",
      async (page) => {
        await page.getByText(/Prices from Rates/).waitFor();
        await openGroups(page);
        await page.getByLabel("Fabric roll", { exact: true }).last().fill("70");
        await page.getByRole("button", { name: "Use the rate: Fabric roll" }).waitFor();
      },
    ],
    [
      "with a rate that is missing",
      async (page) => {
        await press(page, "Use the rate: Fabric roll");
        await writeNamed(page, "Rate_fabric_roll", "ask Dale");
        await page.getByText(/1 rate is missing or damaged/).waitFor();
      },
      {
        leave: async (page) => {
          await writeNamed(page, "Rate_fabric_roll", 95);
          await openScreen(page, "Rates");
          await writeCells(page, "Jobs", {});
        },
      },
    ],
  ]),
];
