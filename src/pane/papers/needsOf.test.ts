import { describe, expect, test } from "vitest";
import { foundBed } from "../../../test/foundBed";
import { blankForm } from "../../quantities/bed/form";
import type { BedLine, JobBed } from "../../sheets/job/jobBeds";
import { needsOf } from "./needsOf";

const { block, worked } = foundBed({ ...blankForm(), name: "Front", typed: { length: "20", width: "5" } }, 1);
const added = (change: Partial<BedLine>): BedLine => ({
  ...{ key: undefined, label: "Boulder", unit: "each", quantity: 2, unitCost: 40, kind: "material", typed: true },
  ...change,
});
const needs = (change: Partial<JobBed>) => needsOf({ ...(block as JobBed), ...change }, worked!);
const withLine = (line: BedLine) => needs({ lines: [...block.lines, line] });

describe("what a bed takes", () => {
  test("is ordered under the sheet's name where the bed has none", () => {
    expect(needs({}).name).toBe("Front");
    expect(needs({ name: "" }).name).toBe(block.sheet);
  });

  test("includes a line of material that was added to the block", () => {
    expect(withLine(added({})).others).toEqual([
      { item: "Boulder", unit: "each", order: { quantity: 2, typed: true, unitCost: 40 } },
    ]);
    expect(withLine(added({ label: "" })).others?.[0]?.item).toBe("Not named");
  });

  test("counts an added line of labor as hours, and orders nothing for it", () => {
    const { others, work } = withLine(added({ kind: "labor", label: "Stack a wall", quantity: 3 }));
    expect(others).toEqual([]);
    expect(work?.otherHours).toEqual([{ label: "Stack a wall", hours: 3 }]);
  });

  test("leaves out what has no line in the block any more", () => {
    expect(needs({}).pins).toBeDefined();
    const lines = block.lines.filter(({ key }) => key !== "pinLine");
    expect(needs({ lines })).not.toHaveProperty("pins");
  });
});
