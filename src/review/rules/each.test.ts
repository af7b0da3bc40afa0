import { describe, expect, test } from "vitest";
import { factsOf, knowledge, type SheetInput } from "../../../test/reviewWorkbook";
import { areaAddress } from "../../spreadsheet/areas";
import { Study } from "../study";
import { eachCell, eachFormula, eachMeasure, eachSum, type Observation } from "./rule";

function studyOf(...sheets: readonly Omit<SheetInput, "name">[]): Study {
  const facts = factsOf({ sheets: sheets.map((sheet, at) => ({ name: `Sheet${at}`, ...sheet })) });
  const steps = Study.of(facts, knowledge);
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

const seenAt = (row: number, column = 0): Observation => ({
  cell: { sheet: 0, row, column },
  group: "",
  about: "",
  seen: "",
  todo: "",
});

/** What came of a way through a workbook: cells seen, and pauses. */
function walked(steps: Generator<Observation | undefined>) {
  const all = [...steps];
  const seen = all.filter((one) => one !== undefined).map(({ cell }) => areaAddress(cell));
  return { seen, pauses: all.filter((one) => one === undefined).length };
}

const column = (count: number, cell: (row: number) => string | number) =>
  Array.from({ length: count }, (_, at) => ["Bed", cell(at + 1)]);

describe("each cell", () => {
  test("is looked at, row by row, on the sheets that are checked", () => {
    const rows = [
      ["a", "b"],
      ["c", "d"],
    ];
    const study = studyOf({ rows }, { rows, protected: true }, { rows, visibility: "VeryHidden" }, { rows: [["e"]] });
    const looked: string[] = [];
    const { seen } = walked(
      eachCell(study, ({ sheet, row, column: at }, grid) => {
        looked.push(String(grid.value(row, at)));
        return sheet === 0 && row === 1 ? seenAt(row, at) : undefined;
      }),
    );
    expect(looked).toEqual(["a", "b", "c", "d", "e"]);
    expect(seen).toEqual(["A2", "B2"]);
  });

  test("pauses every hundred rows", () => {
    expect(walked(eachCell(studyOf({ rows: column(250, () => 1) }), () => undefined)).pauses).toBe(3);
  });
});

describe("each measure", () => {
  test("is looked at, with pauses every hundred", () => {
    const study = studyOf({ rows: [["Bed", "Area (sq ft)"], ...column(250, () => 90)] });
    const { seen, pauses } = walked(
      eachMeasure(study, ({ cell, role }) => (role === "area" ? seenAt(cell.row) : undefined)),
    );
    expect(seen).toHaveLength(250);
    expect(pauses).toBe(3);
  });
});

describe("each sum", () => {
  test("is looked at on the sheets that are checked, with pauses every hundred", () => {
    const sums = column(250, (row) => `=SUM(C${row}:D${row})`);
    const study = studyOf({ rows: sums }, { rows: sums, protected: true });
    const { seen, pauses } = walked(eachSum(study, ({ cell }) => [seenAt(cell.row), seenAt(cell.row, cell.column)]));
    expect(seen).toHaveLength(500);
    expect(seen.slice(0, 3)).toEqual(["A1", "B1", "A2"]);
    expect(pauses).toBe(3);
  });
});

describe("each formula", () => {
  const filled = (count: number) => studyOf({ rows: column(count, (row) => `=C${row}*2`) });
  const lookedAt = (study: Study, isSeen: (row: number) => boolean) => {
    const looked = new Set<number>();
    const way = walked(
      eachFormula(study, ({ row }) => {
        looked.add(row + 1);
        return isSeen(row + 1) ? seenAt(row) : undefined;
      }),
    );
    return { ...way, looked: [...looked] };
  };

  test("is looked at where it is filled down over 200 rows", () => {
    expect(lookedAt(filled(200), () => false).looked).toHaveLength(200);
  });

  test("is looked at in four rows of a longer run, and then no further", () => {
    expect(lookedAt(filled(201), () => false).looked).toEqual([1, 2, 101, 201]);
  });

  test.each([1, 2, 151, 301])("is looked at everywhere when one of the four shows something: row %i", (row) => {
    const { looked, seen } = lookedAt(filled(301), (one) => one === row || one === 200);
    expect(looked).toHaveLength(301);
    expect(seen).toHaveLength(2);
  });

  test("pauses in long runs and between many of them", () => {
    expect(lookedAt(filled(301), () => true).pauses).toBe(1 + 4);
    const different = studyOf({ rows: column(150, (row) => `=C${row}*${row}`) });
    expect(lookedAt(different, () => false).pauses).toBe(2 + 2);
  });

  test("is not looked at on sheets that aren't checked, or where it can't be read", () => {
    const rows = [["Bed", "=C1*2"]];
    expect(lookedAt(studyOf({ rows: [] }, { rows, protected: true }), () => true).seen).toEqual([]);
    expect(lookedAt(studyOf({ rows: [["Bed", { f: "=C1*", v: 1 }]] }), () => true).seen).toEqual([]);
  });
});
