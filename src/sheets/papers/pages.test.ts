import { describe, expect, test } from "vitest";
import { compose } from "../compose";
import { pageBreaks, roomOf } from "./pages";

const margins = { top: 1, bottom: 1, left: 1, right: 1 };
const sheet = { paper: "letter", landscape: false, marginsIn: margins, headingRows: 1 } as const;

describe("the room of a page", () => {
  test("is the paper less its margins", () => {
    // 9 in of 72 points, of which 97% are planned with; (40 × 7 + 5) × 0.75 = 213.75 points go into 6.5 in.
    expect(roomOf([40], sheet)).toEqual({ scale: 1, heightPoints: 9 * 72 * 0.97 });
  });

  test("grows by as much as the print shrinks to its width", () => {
    // 177.57 characters take (177.57 × 7 + 5) × 0.75 = 936 points: twice the 468 of the paper.
    const { scale, heightPoints } = roomOf([1243 / 7], sheet);
    expect(scale).toBeCloseTo(0.5, 9);
    expect(heightPoints).toBeCloseTo(2 * 9 * 72 * 0.97, 6);
  });

  test("is wider than high in landscape, and longer on A4", () => {
    expect(roomOf([40], { ...sheet, landscape: true }).heightPoints).toBeCloseTo(6.5 * 72 * 0.97, 9);
    expect(roomOf([40], { ...sheet, paper: "a4" }).heightPoints).toBeCloseTo(9.69 * 72 * 0.97, 9);
  });
});

describe("page breaks", () => {
  // 9 × 72 × 0.97 / 15 = 41.9 rows a page, of which the first is repeated on each.
  const plan = (rows: number) =>
    compose(
      "test",
      Array.from({ length: rows }, () => ({ cells: [] })),
      [40],
      { row: 0, column: 0 },
    );

  test("come before a group that doesn't fit on what is left of the page", () => {
    expect(pageBreaks(plan(60), [10, 30, 50], sheet)).toEqual([30]);
    expect(pageBreaks(plan(41), [10, 30], sheet)).toEqual([]);
  });

  test("count the rows that each page repeats", () => {
    // From row 30 on, 40 rows fit under the repeated one.
    expect(pageBreaks(plan(70), [30, 69], sheet)).toEqual([30]);
    expect(pageBreaks(plan(71), [30, 70], sheet)).toEqual([30, 70]);
  });

  test("are where a page of its own is asked for", () => {
    expect(pageBreaks(plan(20), [5, 10], sheet, [10])).toEqual([10]);
  });

  test("let a group that is longer than a page run on", () => {
    // Rows 5 to 94 fill two pages and ten rows of a third; the last group fits under them.
    expect(pageBreaks(plan(100), [5, 95], sheet)).toEqual([5]);
  });
});
