import { expect, test } from "vitest";
import type { PastLine } from "../../../sheets/papers/pastJobs";
import type { PastJobsOnSheet } from "../readJob";
import { today } from "../today";
import { addPastLines } from "./addPastLines";

const line = (job: string, date: number): PastLine => ({
  ...{ job, date, measure: "Stone", unit: "tons", estimated: 4, actual: 5 },
});
const listed = (job: string, date: number) =>
  ({
    sheet: "Past jobs",
    area: { row: 0, column: 0, rows: 2, columns: 8 },
    lines: [line(job, date)],
  }) as unknown as PastJobsOnSheet;

test("a job that was added today isn't added twice", async () => {
  await expect(addPastLines([line("Alder Court", today())], listed("Alder Court", today()))).rejects.toThrow(
    /^Alder Court is already in the list, dated today\./,
  );
});

// Without a workbook the writing itself fails; what matters here is that the list doesn't refuse the job.
test.each([
  ["the same job on another day", "Alder Court", today() - 1],
  ["another job of today", "Birch Lane", today()],
])("%s is no reason to refuse", async (_, job, date) => {
  await expect(addPastLines([line("Alder Court", today())], listed(job, date))).rejects.not.toThrow(/already/);
});
