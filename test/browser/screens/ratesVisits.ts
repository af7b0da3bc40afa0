import type { Page } from "playwright-core";
import { openGroups, openScreen, press, visitsOf, writeCells } from "./visit";

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
        await press(page, "Insert the sheet Rates");
        await page.getByRole("heading", { name: "Still examples" }).waitFor();
        await page.getByText(/The rates stand on Rates at/).waitFor();
      },
    ],
    [
      "one of them damaged",
      async (page) => {
        await writeNamed(page, "Rate_fabric_roll", "ask Dale");
        await page.locator("li:visible", { hasText: "arrived as “ask Dale”" }).waitFor();
      },
    ],
    [
      "older estimates found",
      async (page) => {
        await writeNamed(page, "Rate_fabric_roll", 95);
        await press(page, "Look for them");
        await page.getByRole("button", { name: /^Let (it|these \d+) follow$/ }).waitFor();
        await openGroups(page);
      },
    ],
    [
      "older estimates let follow",
      async (page) => {
        await press(page, /^Let (it|these \d+) follow$/);
        await page.getByText(/cells follow the rates now/).waitFor();
      },
    ],
  ]),
  ...visitsOf("Estimate a bed", [
    [
      "with prices from the rates, one of them typed for this bed alone",
      async (page) => {
        await page.getByText(/Prices from the sheet Rates/).waitFor();
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
