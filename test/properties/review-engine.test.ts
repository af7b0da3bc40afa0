import { toCol } from "@borgar/fx";
import { afterEach, expect, test } from "vitest";
import type { HeadlessHost } from "../headlessHost";
import { createProductHost } from "../productHost";
import { contentOf, factsOf, type WorkbookInput } from "../reviewWorkbook";
import { bedsAcross } from "./review-workbooks/bedsAcross";
import { jobRows } from "./review-workbooks/jobRows";
import { messy } from "./review-workbooks/messy";
import { ours } from "./review-workbooks/ours";
import { sections } from "./review-workbooks/sections";

/*
 * The workbooks of the check's tests are worked out by its own small evaluator, since a thousand of them are. Here
 * the clean ones go through the grid's engine as well, and every cell has to come out the same.
 */
let host: HeadlessHost;
afterEach(() => host.dispose());

test.each(Object.entries({ ours, jobRows, sections, bedsAcross, messy }))(
  "%s comes out in the grid's engine as in the evaluator",
  async (_, make) => {
    const input: WorkbookInput = make();
    host = await createProductHost({ sheets: input.sheets.map(({ name }) => ({ name, cells: {} })) });
    for (const [name, formula] of Object.entries(input.names ?? {})) host.grid.names.add(name, formula);
    const cells: Record<string, string | number | boolean> = {};
    for (const { name, rows } of input.sheets) {
      for (const [row, contents] of rows.entries()) {
        for (const [column, cell] of contents.entries()) {
          const content = contentOf(cell);
          if (content !== "") cells[`'${name}'!${toCol(column)}${row + 1}`] = content;
        }
      }
    }
    await host.type(cells);

    let formulas = 0;
    for (const sheet of factsOf(input).sheets) {
      for (const [row, contents] of (sheet.used?.formulas ?? []).entries()) {
        for (const [column, content] of contents.entries()) {
          if (typeof content !== "string" || !content.startsWith("=")) continue;
          const address = `'${sheet.name}'!${toCol(column)}${row + 1}`;
          const worked = sheet.used!.values[row]![column]!;
          const engine = host.value(address);
          formulas++;
          if (typeof worked === "number") expect(engine, `${address} ${content}`).toBeCloseTo(worked, 9);
          else expect(engine, `${address} ${content}`).toBe(worked);
        }
      }
    }
    expect(formulas).toBeGreaterThan(30);
  },
);
