import type { Page } from "playwright-core";

/** One measure of several past jobs. */
interface PastLines {
  /** The row of the list that the first comes to, from 1. */
  readonly row: number;
  readonly measure: string;
  readonly unit: string;
  readonly estimated: number;
  readonly actuals: readonly number[];
  readonly setThen: number;
}

/** Types lines of invented jobs into the list of past jobs by hand. */
export function typePastJobs(page: Page, lines: PastLines): Promise<void> {
  return page.evaluate(
    ({ row, measure, unit, estimated, actuals, setThen }) =>
      Excel.run(async (context) => {
        const list = context.workbook.worksheets.getItem("Past jobs");
        list.getRange(`A${row}:G${row + actuals.length - 1}`).values = actuals.map((actual, index) => [
          `Invented job ${index + 1}`,
          46000 + index,
          measure,
          unit,
          estimated,
          actual,
          setThen,
        ]);
        await context.sync();
      }),
    lines,
  );
}

/** Hours for edging that took a fifth to a third more than was estimated. */
export const slowEdging: PastLines = {
  row: 6,
  measure: "Set edging",
  unit: "labor hours",
  estimated: 10,
  actuals: [12, 13, 12.2, 12.8, 12.4],
  setThen: 14,
};
