import { describe, expect, test } from "vitest";
import type { Area, CellsChanged } from "./port";
import { shiftedArea } from "./shift";

const area = (row: number, column: number, rowCount: number, columnCount: number): Area => ({
  sheetId: "jobs",
  row,
  column,
  rowCount,
  columnCount,
});
const change = (kind: CellsChanged["kind"], start: number, count: number): CellsChanged => ({
  kind,
  area: kind.startsWith("rows") ? area(start, 0, count, 16_384) : area(0, start, 1_048_576, count),
  byHost: false,
});

describe("an area of rows 4 to 6 and columns 2 to 5", () => {
  const before = area(4, 2, 3, 4);
  test.each([
    ["rows inserted above", change("rowsInserted", 1, 2), area(6, 2, 3, 4)],
    ["rows inserted before its first", change("rowsInserted", 4, 1), area(5, 2, 3, 4)],
    ["rows inserted inside", change("rowsInserted", 5, 2), area(4, 2, 5, 4)],
    ["rows inserted below", change("rowsInserted", 7, 2), before],
    ["rows deleted above", change("rowsDeleted", 0, 2), area(2, 2, 3, 4)],
    ["rows deleted above and at its head", change("rowsDeleted", 3, 2), area(3, 2, 2, 4)],
    ["rows deleted at its foot and below", change("rowsDeleted", 6, 5), area(4, 2, 2, 4)],
    ["all of it deleted", change("rowsDeleted", 2, 9), undefined],
    ["columns inserted inside", change("columnsInserted", 3, 1), area(4, 2, 3, 5)],
    ["columns deleted on its left", change("columnsDeleted", 0, 1), area(4, 1, 3, 4)],
    ["cells edited in it", { ...change("edited", 0, 1), area: before }, before],
  ])("is right after %s", (_, news, after) => {
    expect(shiftedArea(before, news)).toEqual(after);
  });

  test("stays where another sheet changes", () => {
    const news = change("rowsInserted", 0, 2);
    expect(shiftedArea(before, { ...news, area: { ...news.area, sheetId: "other" } })).toEqual(before);
  });
});
