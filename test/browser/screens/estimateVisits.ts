import type { Page } from "playwright-core";
import { type Way, ways } from "../../../src/quantities/bed/form";
import { measureBy } from "../bedForm";
import { chooseCell, selectCells } from "../cells";
import { holdWorkbook, openGroups, press, visitsOf, writeCells } from "./visit";

let letGo: () => Promise<void>;

/** Sizes of an invented bed, by the labels of their fields. */
const sizes: Readonly<Partial<Record<Way, Readonly<Record<string, string>>>>> = {
  round: { Diameter: "12", "Inner diameter": "2" },
  widths: { "Width 1": "3", "Width 2": "5' 6\"", "Width 3": "4" },
  points: {
    "Point 1, x": "0",
    "Point 1, y": "0",
    "Point 2, x": "12",
    "Point 2, y": "0",
    "Point 3, x": "12",
    "Point 3, y": "6",
  },
  area: { Area: "140", "Edging length": "48" },
};

async function measure(page: Page, way: Way): Promise<void> {
  await measureBy(page, way);
  for (const [label, text] of Object.entries(sizes[way] ?? {})) {
    await page.getByLabel(label, { exact: true }).first().fill(text);
  }
}

export const estimateVisits = visitsOf("Estimate", [
  [
    "with the tools open",
    async (page) => {
      await press(page, "Tools");
      await page.getByRole("button", { name: "Check the sheets" }).waitFor();
    },
    { leave: (page) => page.keyboard.press("Escape") },
  ],
  ["nothing typed yet", async (page) => void (await page.getByText("Still needed: Length, Width").waitFor())],
  [
    "a rectangle, with its drawing",
    async (page) => {
      await page.getByLabel("Bed name").fill("Front walk along the long fence by the neighbors' garage");
      await page.getByLabel("Length", { exact: true }).fill(`18' 6"`);
      await page.getByLabel("Width", { exact: true }).fill("5");
      await page.locator(".drawing svg").first().waitFor();
    },
  ],
  [
    "with everything open",
    async (page) => {
      await openGroups(page);
      await press(page, "Add a cut-out");
    },
  ],
  [
    "a piece of edging that is bought for a few inches",
    async (page) => {
      await page.getByLabel("Length", { exact: true }).fill(`15' 11"`);
      await page.getByLabel("Width", { exact: true }).fill("4");
      await page.getByText("The last of 4 pieces").waitFor();
    },
  ],
  ...(Object.keys(ways) as Way[])
    .filter((way) => way !== "rectangle")
    .map((way) => [`measured by ${way}`, (page: Page) => measure(page, way)] as const),
  [
    "refused, with what stands in the way",
    async (page) => {
      await measureBy(page, "rectangle");
      await press(page, "Remove cut-out 1");
      await page.getByLabel("Waste and low spots").fill("8 percent");
      await press(page, /^Insert/);
      await page.getByRole("alert").filter({ hasText: "Before this can be inserted" }).waitFor();
    },
  ],
  [
    "in the way of job rows",
    async (page) => {
      await page.getByLabel("Waste and low spots").fill("8%");
      await selectCells(page, "Jobs", "A5");
      await chooseCell(page);
      await press(page, /^Insert/);
      await page.getByRole("alertdialog").waitFor();
    },
    { leave: (page) => page.keyboard.press("Escape") },
  ],
  [
    "busy",
    async (page) => {
      await selectCells(page, "Estimate", "A4");
      letGo = await holdWorkbook(page);
      await press(page, /^Insert/);
      await page.getByText("Writing the estimate…").waitFor();
    },
    { leave: () => letGo() },
  ],
  [
    "inserted",
    async (page) => {
      await page.getByText("Added to Estimate!A4").waitFor();
      await page.getByText(": drawing up to date").waitFor();
    },
  ],
  [
    "an estimate of the sheet, opened, with what was changed in it",
    async (page) => {
      await writeCells(page, "Estimate", { E31: 3, A47: "Remove the old shrubs and the stumps along the whole fence" });
      await press(page, "Open this bed");
      await page.getByText("made on the sheet").waitFor();
    },
  ],
  [
    "an update, before it is written",
    async (page) => {
      await page.getByLabel("Width", { exact: true }).fill(`6' 3"`);
      await page.getByLabel("Waste and low spots").fill("11%");
      await press(page, /^Update /);
      await page.getByRole("dialog", { name: /change/ }).waitFor();
    },
  ],
  [
    "updated",
    async (page) => {
      await page
        .getByRole("dialog", { name: /change/ })
        .getByRole("button", { name: "Update" })
        .click();
      await page.getByText(/^Updated /).waitFor();
    },
  ],
]);
