import { slowEdging, typePastJobs } from "../pastJobs";
import { openGroups, press, visitsOf, writeCells } from "./visit";

export const papersVisits = visitsOf("Job documents", [
  [
    "the beds of the workbook",
    async (page) => void (await page.getByRole("group", { name: "Beds of this job" }).waitFor()),
  ],
  [
    "with everything open, and a start that is no day",
    async (page) => {
      await page.getByLabel("Job", { exact: true }).fill("Alder Court 4, front and both sides, second visit");
      await openGroups(page);
      await page.getByLabel("Start date", { exact: true }).fill("soon");
    },
  ],
  [
    "with a start too soon for its notice",
    async (page) => {
      const tomorrow = new Date(Date.now() + 86_400_000).toLocaleDateString("en-CA");
      await page.getByLabel("Start date", { exact: true }).fill(tomorrow);
      await page.getByText(/Give notice by/).waitFor();
    },
  ],
  [
    "the proposal refused",
    async (page) => {
      await page.getByLabel("Start date", { exact: true }).fill("2031-03-06");
      await page.getByText("Monday, March 3, 2031").waitFor();
      await page.getByLabel("Good for", { exact: true }).fill("a while");
      await page.getByLabel("Deposit").fill("120");
    },
  ],
  [
    "papers made",
    async (page) => {
      await page.getByLabel("Good for", { exact: true }).fill("30");
      await page.getByLabel("Deposit").fill("30");
      await press(page, "All three");
      await page.getByText("Print them from the spreadsheet program").waitFor();
    },
  ],
  [
    "papers made again, and asked what becomes of the earlier ones",
    async (page) => {
      await press(page, "All three");
      await page.getByRole("alertdialog").waitFor();
    },
    { leave: (page) => page.keyboard.press("Escape") },
  ],
  [
    "what was really used, one of it refused",
    async (page) => {
      await page.getByLabel("Set edging, actual").fill("much");
    },
  ],
  [
    "past jobs, and what they say",
    async (page) => {
      await page.getByLabel("Set edging, actual").fill("12.5");
      await press(page, "Add to past jobs");
      await page.getByText(/lines? added to past jobs/).waitFor();
      await typePastJobs(page, slowEdging);
      await writeCells(page, "Past jobs", { A11: "Invented job 6", B11: 46009, F11: 12 });
      const tons = [10.5, 10.9, 11, 10.6, 14];
      const stone = { measure: "Stone", unit: "tons", estimated: 10.8, actuals: tons, setThen: 0.08 };
      await typePastJobs(page, { row: 12, ...stone });
      await press(page, "Refresh");
      await page.getByText(/An order like this would have been short on 1 of your last 5 jobs/).waitFor();
      await page.getByRole("button", { name: /Change “Set edging”/ }).waitFor();
      await openGroups(page);
    },
  ],
  [
    "a rate changed by past jobs",
    async (page) => {
      await press(page, /Change “Set edging”/);
      await page.getByText("changed with it").waitFor();
    },
    {
      leave: async (page) => {
        await press(page, "Undo the rate change");
        await page.getByText("The rate is back to what it was.").waitFor();
      },
    },
  ],
]);
