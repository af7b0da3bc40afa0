import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { estimateBed } from "../../src/quantities/bed/estimate";
import { type BedForm, blankForm } from "../../src/quantities/bed/form";
import { readForm } from "../../src/quantities/bed/read";
import { keyAddresses } from "../../src/sheets/compose";
import { estimateBlock, estimateRows } from "../../src/sheets/estimate/block";
import { insertPlan } from "../../src/workbook/insert";
import type { HeadlessHost } from "../headlessHost";
import { createProductHost } from "../productHost";

const form = (changes: Partial<BedForm>): BedForm => ({ ...blankForm(), name: "Front walk", ...changes });

/** One bed of each way of measuring, in tape text. */
const beds: Record<string, BedForm> = {
  rectangle: form({
    typed: { length: `18' 6"`, width: "5", cornerRadius: "2", roundedCorners: "2", stoneSize: "3/4" },
  }),
  ring: form({ way: "round", typed: { diameter: `7' 6"`, innerDiameter: "1.5", innerBorder: "1" } }),
  "widths, to a point": form({
    way: "widths",
    typed: { spacing: "4", corners: "1" },
    widths: ["3'", `4' 6"`, "5.5", "4 ft", "0", ""],
  }),
  points: form({
    way: "points",
    typed: { borderless: "12", cutOuts: "4", cutAround: "8" },
    points: [
      ["0", "0"],
      [`12'`, "0"],
      ["12", `6' 6"`],
      ["-2", "3 1/2"], [`-1' 6\"`, "1"],
    ],
  }),
  "area from a plan": form({
    way: "area",
    typed: { area: "210", edge: "44", longest: "30", widest: "8", stone: "1.4", waste: "5%" },
  }),
};

let host: HeadlessHost;
beforeAll(async () => {
  host = await createProductHost();
});
afterAll(() => host.dispose());

describe.each(Object.entries(beds))("the block of a bed measured as %s", (_, bed) => {
  const keys = keyAddresses(estimateRows(bed), { row: 0, column: 0 });

  test("works out in the sheet what the pane shows before it is written", async () => {
    const inserted = await insertPlan((at) => estimateBlock(bed, at), { kind: "new sheet", name: "Bed" });
    if (!inserted.done) throw new Error("a new sheet is free");
    const value = (key: string) => host.value(`'${inserted.sheetName}'!${keys.get(key)}`);
    const { amounts, lines, ...sums } = estimateBed(readForm(bed).bed!);

    for (const [key, amount] of Object.entries(amounts)) {
      if (keys.has(key)) expect(value(key), key).toBeCloseTo(amount, 9);
    }
    for (const { key, amount, costSum, priceSum } of lines) {
      expect(value(`${key}.quantity`), key).toBeCloseTo(amount, 9);
      expect(value(`${key}.cost`), key).toBeCloseTo(costSum, 9);
      expect(value(`${key}.price`), key).toBeCloseTo(priceSum, 9);
    }
    for (const key of [
      "directCost",
      "overheadCost",
      "fullCost",
      "price",
      "markupOnCost",
      "marginOnPrice",
      "laborHours",
      "crewDays",
    ] as const) {
      expect(value(key), key).toBeCloseTo(sums[key]!, 9);
    }
  });
});
