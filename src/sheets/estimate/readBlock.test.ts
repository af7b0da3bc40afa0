import { describe, expect, test } from "vitest";
import { blankForm, textOf } from "../../quantities/bed/form";
import { estimateBlock } from "./block";
import { blockAt, findBlocks } from "./readBlock";

const kidney = {
  ...blankForm(),
  name: "Kidney",
  way: "widths" as const,
  typed: { spacing: "4'", rollWidth: "4", trenchDepth: "1 3/4", crewSize: "3", materialMarkup: "0.25" },
  widths: ["0", "5.5", `7'`, "0"],
  cutOuts: [["8", "1.5", "2", ""] as const],
};
const corners = {
  ...blankForm(),
  way: "points" as const,
  points: [["0", "0", "1"] as const, ["6", "0", "0"] as const, ["6", "6", "1"] as const],
};

/** What a block shows where its inputs are constants: the text mark of typed text does not show. */
const shown = (form: typeof kidney | typeof corners, column = 0) =>
  estimateBlock(form, { row: 0, column }).formulas.map((cells) => [
    ...Array(column).fill(""),
    ...cells.map((cell) => (typeof cell === "string" ? cell.replace(/^'/, "") : cell)),
  ]);

describe("reading a block back", () => {
  test("gives the form that it was made from", () => {
    const [{ form, area } = undefined!] = findBlocks(shown(kidney), { row: 3, column: 0 });
    expect(area).toMatchObject({ row: 3, column: 0, columns: 9 });
    expect(form).toMatchObject({ name: "Kidney", way: "widths", widths: kidney.widths, cutOuts: kidney.cutOuts });
    for (const [key, text] of Object.entries(kidney.typed))
      expect(textOf(form, key as keyof typeof kidney.typed)).toBe(text);
    expect(textOf(form, "pieceLength")).toBe("8");
  });

  test("finds the block that a cell lies in, and none where it lies in none", () => {
    const sheet = [...shown(kidney, 2), ...shown(corners, 2)];
    const rows = shown(kidney).length;
    const blocks = findBlocks(sheet, { row: 0, column: 0 });
    expect(blockAt(blocks, { row: 5, column: 3 })?.form.name).toBe("Kidney");
    expect(blockAt(blocks, { row: rows + 5, column: 3 })?.form.points).toEqual(corners.points);
    expect(blockAt(blocks, { row: 5, column: 0 })).toBeUndefined();
  });

  test("keeps to labels where rows were added between", () => {
    const rows = shown(kidney);
    rows.splice(8, 0, ["a note of the office", "", "", "", "", "", "", "", ""]);
    expect(findBlocks(rows, { row: 0, column: 0 })[0]?.form.widths).toEqual(kidney.widths);
  });

  test("finds nothing in other sheets", () => {
    expect(
      findBlocks(
        [
          ["Stone", 1],
          ["Stone bed estimate", ""],
        ],
        { row: 0, column: 0 },
      ),
    ).toEqual([]);
  });
});
