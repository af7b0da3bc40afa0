import { expect, test } from "vitest";
import { blankForm } from "../../quantities/bed/form";
import { SOURCED_STONES } from "../../quantities/tableSources";
import { cautions } from "../cautions";
import { estimateBlock } from "./block";
import { headings } from "./headings";

test("the cautions are in the block whole, in lines no longer than it is wide", () => {
  const { formulas, widths } = estimateBlock(blankForm(), { row: 0, column: 0 });
  const first = formulas.findIndex(([cell]) => cell === headings.cautions) + 1;
  const rows = formulas.slice(
    first,
    formulas.findIndex(([cell], row) => row > first && cell === headings.stone),
  );
  const across = widths.slice(1).reduce((sum, width) => sum + width, 0);
  const isFormula = (row: readonly unknown[]) => String(row[1]).startsWith("=");
  const words = rows.filter((row) => !isFormula(row));
  for (const [, line] of words) expect(String(line).length, String(line)).toBeLessThanOrEqual(across);
  for (const { cautions: own } of SOURCED_STONES)
    expect(own.map(({ text }) => text).join(" ").length).toBeLessThanOrEqual(across);
  expect(rows.filter(isFormula)).toHaveLength(1);
  const said = words.map(([about, line]) => `${about ? `\n${about}: ` : " "}${line}`).join("");
  expect(said.trim().split("\n")).toEqual(cautions.map(({ about, text }) => `${about}: ${text}`));
});

test("the caution about digging says that lines of the owner's own are not marked, and who rules", () => {
  const digging = cautions.find(({ about }) => about === "Buried lines")?.text;
  expect(digging).toMatch(
    /^Call 811 .* Private lines \(sprinklers, .*\) aren't marked: ask the owner\. .*state law\.$/,
  );
});

test("the block is printed one page wide, and what the numbers rest on begins a page", () => {
  const { page, formulas } = estimateBlock(blankForm(), { row: 0, column: 0 });
  expect(page).toMatchObject({ landscape: false, pagesWide: 1, headingRows: 1 });
  expect(page).not.toHaveProperty("paper");
  expect(page?.breaksAbove?.map((row) => formulas[row]?.[0])).toEqual(["Depth and stone"]);
  const { left, right } = page!.marginsIn;
  // Letter leaves at least 6 in between them.
  expect(left + right).toBeLessThanOrEqual(2.5);
});
