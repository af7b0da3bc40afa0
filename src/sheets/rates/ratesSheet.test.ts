import { expect, test } from "vitest";
import { stoneListNames } from "../../quantities/bed/rates";
import { ratesSheet } from "./ratesSheet";

test("the names of the stone list reach from its first row to its last, in one block", () => {
  const { formulas, names } = ratesSheet({ row: 0, column: 0 });
  const first = 1 + formulas.findIndex(([heading]) => heading === "Stone by kind");
  const below = formulas.findIndex((cells, row) => row > first && cells.every((cell) => cell === ""));
  const rows = below - first;
  expect(rows).toBeGreaterThan(8);
  const areaOf = (name: string) => names!.find((one) => one.name === name)!.area;
  expect(areaOf(stoneListNames.kinds)).toEqual({ row: first, column: 0, rows, columns: 1 });
  for (const name of Object.values(stoneListNames))
    expect(areaOf(name)).toMatchObject({ row: first, rows, columns: 1 });
});
