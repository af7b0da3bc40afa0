import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { HeadlessHost } from "../../../test/headlessHost";
import { createProductHost } from "../../../test/productHost";
import { columnLetters } from "../../spreadsheet/areas";
import { findPastJobs, morePastJobs, type PastLine, pastJobsSheet } from "./pastJobs";

const stone: PastLine = {
  ...{ job: "Alder Court", date: 46_363, measure: "Stone", unit: "tons", estimated: 4, actual: 5, setThen: 1.35 },
};
const neverPlanned: PastLine = { ...stone, measure: "Hauling", estimated: 0, actual: 2 };
const CORNER = { row: 0, column: 0 };

describe("the ratio of actual to estimated", () => {
  let host: HeadlessHost;
  beforeAll(async () => {
    host = await createProductHost({ sheets: [{ name: "Past", cells: {} }] });
    const { formulas } = pastJobsSheet([stone, neverPlanned], CORNER);
    const cells = formulas.flatMap((row, down) =>
      row.flatMap((content, across) =>
        content === "" ? [] : [[`Past!${columnLetters(across)}${down + 1}`, content] as const],
      ),
    );
    await host.type(Object.fromEntries(cells));
  });
  afterAll(() => host.dispose());

  test("is 5 / 4 for five tons where four were planned", () => {
    expect(host.value("Past!H5")).toBe(1.25);
  });

  test("is blank where nothing was planned", () => {
    expect(host.value("Past!H6")).toBe("");
  });

  test("is blank once the actual amount is deleted", async () => {
    await host.type({ "Past!F5": "" });
    expect(host.value("Past!H5")).toBe("");
  });
});

describe("the list of past jobs on a sheet", () => {
  const shown = (lines: readonly PastLine[], at = CORNER) => {
    const { formulas } = pastJobsSheet(lines, at);
    return formulas.map((row) => row.map((cell) => (typeof cell === "string" ? cell.replace(/^'/, "") : cell)));
  };

  test("is found by its heading row, wherever it is, and read back", () => {
    const values = shown([stone, neverPlanned]).map((row) => ["", ...row]);
    const found = findPastJobs(values, { row: 10, column: 2 });
    expect(found?.area).toEqual({ row: 13, column: 3, rows: 3, columns: 8 });
    expect(found?.lines).toEqual([stone, neverPlanned]);
    expect(found?.unusable).toEqual([]);
  });

  test("ends at the first blank row, and names the rows that can't be used", () => {
    const [title, how, blank, heading, line] = shown([stone]);
    const noActual = line!.with(5, "");
    const values = [title!, how!, blank!, heading!, line!, noActual, line!.map(() => ""), line!];
    const found = findPastJobs(values, CORNER);
    expect(found?.area.rows).toBe(3);
    expect(found?.lines).toEqual([stone]);
    expect(found?.unusable).toEqual([5]);
  });

  test("isn't found where a heading was changed", () => {
    const values = shown([stone]).map((row) => row.map((cell) => (cell === "Estimated" ? "Planned" : cell)));
    expect(findPastJobs(values, CORNER)).toBeUndefined();
  });

  test("takes more lines without another heading", () => {
    const { formulas } = morePastJobs([stone], { row: 20, column: 0 });
    expect(formulas).toHaveLength(1);
    expect(formulas[0]!.at(-1)).toContain("F21/E21");
  });
});
