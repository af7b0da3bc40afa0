import { selectCells } from "../cells";
import { openGroups, press, visitsOf, writeCells } from "./visit";

/** Reads a heading and sizes in words and units of an office of its own; one heading can be read two ways. */
const LIST = {
  A1: "Client",
  B1: "Where",
  C1: "L m",
  D1: "Width",
  E1: "Depth – cm",
  F1: "Rock (tons)",
  G1: "Size",
  A2: "Elm Row 3",
  B2: "front",
  C2: 6.096,
  D2: "'4'",
  E2: 6.35,
  G2: "big",
  A3: "Elm Row 3",
  B3: "back",
  C3: "20 ft",
  D3: 4,
  E3: 6.35,
  F3: 0.7,
  G3: "big",
  A5: "gate code is with the office",
} as const;

export const jobRowsVisits = visitsOf("Job rows", [
  ["before a list is read", async (page) => void (await page.getByLabel("What you have").waitFor())],
  [
    "refused: no list there",
    async (page) => {
      await page.evaluate(() =>
        Excel.run(async (context) => {
          context.workbook.worksheets.add("Week").activate();
          await context.sync();
        }),
      );
      await selectCells(page, "Week", "C5");
      await press(page, "Read the list at the selection");
      await page
        .getByText(/a heading row|is blank|nothing/i)
        .first()
        .waitFor();
    },
  ],
  [
    "read, with a question and a filled cell",
    async (page) => {
      await writeCells(page, "Week", LIST);
      await selectCells(page, "Week", "C2");
      await press(page, "Read the list at the selection");
      await page.getByText("One heading can be read more than one way").waitFor();
      await openGroups(page);
    },
  ],
  [
    "about to write over a cell",
    async (page) => {
      await page.getByLabel(/Replace 1 filled cell in/).check();
      await page.getByRole("cell", { name: "0.7", exact: true }).waitFor();
    },
  ],
  [
    "written",
    async (page) => {
      await press(page, /^Write \d+ cells/);
      await page.getByText(/^Wrote \d+ cells on Week/).waitFor();
    },
  ],
  [
    "with names of stone to explain, and no depth",
    async (page) => {
      await writeCells(page, "Week", {
        ...{ A20: "Bed", B20: "L", C20: "W", D20: "Type" },
        ...{ A21: "front", B21: "'18-6", C21: 4, D21: "'RR 1-1/2" },
        ...{ A22: "back", B22: 12, C22: 5, D22: "granite boulders" },
      });
      await selectCells(page, "Week", "A21");
      await press(page, "Read the list at the selection");
      await page.getByText("Unknown stone names").waitFor();
      await page.getByText("Type the depth for every bed").waitFor();
    },
  ],
  [
    "starting a list",
    async (page) => {
      await page.getByLabel("What you have").selectOption("start");
      await openGroups(page);
    },
  ],
  [
    "starting a list, with a size refused",
    async (page) => {
      const first = page.getByRole("group", { name: "The first bed" });
      await first.getByLabel("Length").fill("twelve");
      await first.getByLabel("Width").fill("0");
    },
  ],
  [
    "a started list in the way",
    async (page) => {
      const first = page.getByRole("group", { name: "The first bed" });
      await first.getByLabel("Length").fill(`18' 6"`);
      await first.getByLabel("Width").fill("5");
      await page.getByLabel("Stone depth").fill("2");
      await selectCells(page, "Jobs", "A5");
      await press(page, "Insert at the selected cell");
      await page.getByRole("alertdialog").waitFor();
    },
  ],
  [
    "started on a sheet of its own",
    async (page) => {
      await page.getByRole("alertdialog").getByRole("button", { name: "On a new sheet" }).click();
      await page.getByText("Added the list to Beds").waitFor();
    },
  ],
]);
