import { describe, expect, test } from "vitest";
import { factsOf, knowledge, type SheetInput } from "../../test/reviewWorkbook";
import { dismiss, sortDismissed } from "./dismissals";
import { reviewAtOnce } from "./review";

const sheet = (rows: SheetInput["rows"]) => factsOf({ sheets: [{ name: "Jobs", rows }] });
const head = ["Bed", "Length (ft)", "Width (ft)", "Area (sq ft)"];
const bed = (name: string, row: number, area: number | string = `=B${row}*C${row}`) => [name, 12, 4, area];

const found = (rows: SheetInput["rows"]) => reviewAtOnce(sheet(rows), knowledge).findings;
const before = [head, bed("Walk", 2), bed("Yard", 3), bed("Patio", 4, 50), bed("Gate", 5)];
const [finding] = found(before);
const dismissal = dismiss(finding!, "  taped by hand, round corner ", "2026-03-02");

describe("a dismissed finding", () => {
  test("is kept with its reason, its day, and where it was", () => {
    expect(dismissal).toMatchObject({ reason: "taped by hand, round corner", on: "2026-03-02", where: "Jobs!D4" });
    const { open, dismissed } = sortDismissed(found(before), [dismissal]);
    expect(open).toEqual([]);
    expect(dismissed.map((one) => one.dismissal.reason)).toEqual(["taped by hand, round corner"]);
  });

  test("stays dismissed when rows are inserted above it and between", () => {
    const moved = [
      ["Spring"],
      head,
      bed("Shed", 3),
      bed("Walk", 4),
      bed("Yard", 5),
      bed("Patio", 6, 50),
      bed("Gate", 7),
    ];
    expect(found(moved).map(({ where }) => where)).toEqual(["Jobs!D6"]);
    expect(sortDismissed(found(moved), [dismissal]).open).toEqual([]);
  });

  test("comes back when the number is another", () => {
    const changed = [head, bed("Walk", 2), bed("Yard", 3), bed("Patio", 4, 55), bed("Gate", 5)];
    expect(sortDismissed(found(changed), [dismissal]).open).toHaveLength(1);
  });

  test("does not cover the same mistake at another bed", () => {
    const other = [head, bed("Walk", 2), bed("Yard", 3, 50), bed("Patio", 4), bed("Gate", 5)];
    expect(sortDismissed(found(other), [dismissal]).open).toHaveLength(1);
  });

  test("is told as gone once nothing is found there any more", () => {
    const corrected = [head, bed("Walk", 2), bed("Yard", 3), bed("Patio", 4), bed("Gate", 5)];
    expect(sortDismissed(found(corrected), [dismissal]).gone).toEqual([dismissal]);
  });
});

test("two findings that look the same have keys of their own", () => {
  const rows = [head, bed("", 2), bed("", 3, 50), bed("", 4), bed("", 5), bed("", 6), bed("", 7)];
  const twice = [
    ...rows,
    [""],
    [""],
    ...[9, 10, 11, 12, 13].map((row) => bed("", row + 1, row === 10 ? 50 : undefined)),
  ];
  const keys = found(twice).map(({ key }) => key);
  expect(new Set(keys).size).toBe(keys.length);
});
