import { describe, expect, test } from "vitest";
import { foundBed } from "../../../test/foundBed";
import { blankForm } from "../../quantities/bed/form";
import type { BedLine } from "../../sheets/job/jobBeds";
import { startingDetails } from "./details";
import { jobOf } from "./makePapers";
import { depositShare, priceOf, proposalOf } from "./proposalOf";

const found = foundBed({ ...blankForm(), name: "Front", typed: { length: "20", width: "5" } }, 1);

function jobWith(line: Partial<BedLine>) {
  const own = {
    ...{
      key: undefined,
      label: "Remove old shrubs",
      quantity: 3,
      unit: "h",
      unitCost: 41.5,
      kind: "labor",
      typed: true,
    },
    ...line,
  };
  return jobOf([{ ...found, block: { ...found.block, lines: [...found.block.lines, own] } }]);
}

describe("what is due", () => {
  // By hand: 1,203.55 + 84.25 = 1,287.80; 30% is 386.34, and 901.46 are left.
  test("is price and tax, split into deposit and balance to the cent", () => {
    expect(priceOf(1203.55, 84.25, 0.3)).toEqual({
      ...{ price: 1203.55, salesTax: 84.25, total: 1287.8, deposit: 386.34, balance: 901.46 },
    });
    // A third of 100.00 is 33.33; the cent that is over stays in the balance.
    expect(priceOf(100, 0, 1 / 3)).toMatchObject({ deposit: 33.33, balance: 66.67 });
  });

  test.each([
    ["", 0],
    ["30", 0.3],
    ["12.5 %", 0.125],
    ["100", 1],
  ])("a deposit of %j is a share of %d", (depositPercent, share) => {
    expect(depositShare({ ...startingDetails, depositPercent })).toBe(share);
  });

  test.each(["101", "-5", "half"])("a deposit of %j is refused in words", (depositPercent) => {
    expect(() => depositShare({ ...startingDetails, depositPercent })).toThrow(/^Deposit\b/);
  });
});

describe("the scope", () => {
  test("has the estimator's own lines, without their hours or costs", () => {
    const [item] = proposalOf(jobWith({}), startingDetails).scope;
    expect(item?.text).toContain("Remove old shrubs.");
    expect(item?.text).not.toMatch(/41\.5|\b3 h\b/);
  });

  test("names only work that the estimate has", () => {
    const lines = found.block.lines.filter(({ key }) => key !== "fabric" && key !== "haul");
    const job = jobOf([{ ...found, block: { ...found.block, lines } }]);
    const [item] = proposalOf(job, startingDetails).scope;
    expect(item?.text).toContain("leave it on site");
    expect(item?.text).not.toContain("fabric");
    expect(proposalOf(jobOf([found]), startingDetails).scope[0]?.text).toContain("Lay weed fabric");
  });

  test("has a price for each bed, or one for the job", () => {
    const price = (byBed: "bed" | "sum") =>
      proposalOf(jobOf([found]), { ...startingDetails, byBed }).scope.map((item) => item.price);
    expect(price("bed")).toEqual([found.block.price]);
    expect(price("sum")).toEqual([undefined]);
  });
});
