import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { blankForm } from "../../src/quantities/bed/form";
import { type RateKey, rateKeys } from "../../src/quantities/bed/rates";
import { unfollowingCells } from "../../src/sheets/estimate/followRates";
import { writeChanges } from "../../src/workbook/change/cells";
import { readWorkbook } from "../../src/workbook/read/workbook";
import type { HeadlessHost } from "../headlessHost";
import { insertRates, rateAddress } from "../insertRates";
import { createProductHost } from "../productHost";
import { formWithRates, insertBlock, paneEstimate, taped, typeRates } from "../ratesBench";

let host: HeadlessHost;
let sheet: string;

describe("an estimate from before the workbook had rates", () => {
  beforeEach(async () => {
    host = await createProductHost();
  });
  afterEach(() => host.dispose());

  /** The cells of the estimates that could follow, as the pane finds them. */
  async function olderCells() {
    const { facts } = await readWorkbook();
    const names = facts.names.map(({ name }) => name);
    return facts.sheets.flatMap(({ name, used }) =>
      used ? unfollowingCells(used.values, used.formulas, used, names).map((cell) => ({ ...cell, sheet: name })) : [],
    );
  }

  test("follows them once it is let, but for what was changed by hand", async () => {
    // A price by hand keeps the whole roll; a border piece that is not the one it started with, the whole piece.
    const typed = { ...taped, rollCost: "59", pieceLength: "10", stone: "pea gravel", crewRate: "51" };
    const block = await insertBlock(host, { ...blankForm(), name: "Front walk", typed });
    const before = block.value("price");
    sheet = await insertRates();
    const cells = await olderCells();
    const kept: RateKey[] = [
      "rollWidth",
      "rollLength",
      "rollCost",
      "pieceLength",
      "stakesPerPiece",
      "pieceCost",
      "crewRate",
    ];
    expect(cells.map(({ rate }) => rate)).toEqual(rateKeys.filter((key) => !kept.includes(key)));
    await writeChanges("let older estimates follow", cells);
    expect(block.value("price")).toBe(before);

    await typeRates(host, sheet, {
      Rate_fabric_roll: 80,
      Rate_border_piece: 80,
      Rate_crew_hour: 80,
      Rate_pin_box: 21,
      Rate_waste: 0.1,
    });
    const row = Number(rateAddress("Rate_stone_kinds").slice(1)) + 1;
    await host.type({ [`${sheet}!B${row}`]: 55 });
    expect(block.value("stoneLine.unitCost")).toBe(55);
    const hand = { ...typed, rollWidth: "6", rollLength: "50", stakesPerPiece: "3", pieceCost: "24" };
    const expected = paneEstimate(await formWithRates(hand));
    expect(block.value("price")).toBeCloseTo(expected.price, 9);
    expect(await olderCells()).toEqual([]);
  });

  test.each([1, 2])("stays as it was when sync %i of that fails", async (sync) => {
    const block = await insertBlock(host, { ...blankForm(), name: "Front walk", typed: taped });
    await insertRates();
    const cells = await olderCells();
    host.failAtSync(sync, 5);
    await expect(writeChanges("let older estimates follow", cells)).rejects.toThrow();
    expect(block.formula("fabric.unitCost")).toBeUndefined();
    expect(await olderCells()).toEqual(cells);
  });
});
