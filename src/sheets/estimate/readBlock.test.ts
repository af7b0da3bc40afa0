import { describe, expect, test } from "vitest";
import { type BedForm, blankForm, textOf } from "../../quantities/bed/form";
import { olderTexts } from "../../quantities/bed/olderTexts";
import { blockUpdate } from "../blockUpdate";
import { ratesFrom } from "../rates/ratesFrom";
import { estimateBlock, estimateRows } from "./block";
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
const shown = (form: BedForm, column = 0) =>
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

  test("leaves out what follows the office's rates, where the formulas are at hand", () => {
    const following = { ...kidney, rates: ratesFrom(new Map([["Rate_waste", [[0.05]]]]))! };
    const formulas = shown(following);
    const values = formulas.map((cells) => cells.map((cell) => (String(cell).startsWith("=") ? 9 : cell)));
    const [found] = findBlocks(values, { row: 0, column: 0 }, formulas);
    expect(found?.form.typed.pieceLength).toBeUndefined();
    expect(found?.form.typed).toMatchObject({ crewSize: "3", rollWidth: "4", borderHeight: "4" });
    // By values alone a drawing is made of what the cells show.
    expect(findBlocks(values, { row: 0, column: 0 })[0]?.form.typed.pieceLength).toBe("9");
  });

  test("reads a block from before the dump fee and the tax", () => {
    const newer = ["Dump fee", "Sales tax rate", "Sales tax", "Price with tax"];
    const [found] = findBlocks(
      shown(kidney).filter(([label]) => !newer.includes(String(label))),
      { row: 0, column: 0 },
    );
    expect(found?.form.typed).toMatchObject(kidney.typed);
    expect(found?.form.typed.salesTax).toBeUndefined();
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

describe("a block of an earlier version", () => {
  /** The block as today's product prints it, with the words it had before. */
  const older = Object.fromEntries(Object.entries(olderTexts).map(([before, now]) => [now, before]));
  const inOlderWords = (rows: ReturnType<typeof shown>) =>
    rows.map((cells) => cells.map((cell, column) => (column === 0 || column === 2 ? (older[cell] ?? cell) : cell)));

  test("is read the same as one of today", () => {
    const [today] = findBlocks(shown(kidney), { row: 0, column: 0 });
    const rows = inOlderWords(shown(kidney));
    expect(rows.map(([label]) => label)).toEqual(expect.arrayContaining(["Stakes at most apart", "Barrow tray"]));
    expect(findBlocks(rows, { row: 0, column: 0 })).toEqual([today]);
  });

  test("has nothing in it that counts as changed by hand", () => {
    const next = estimateRows({ ...kidney, typed: { ...kidney.typed, crewSize: "4" } });
    const contents = inOlderWords(shown(kidney)).map((cells) => cells.map((cell) => cell ?? ""));
    const { byHand, changes } = blockUpdate([estimateRows(kidney)], next, { at: { row: 0, column: 0 }, contents });
    expect(byHand).toEqual([]);
    expect(changes.map(({ label }) => label)).toEqual(["Crew size"]);
  });
});
