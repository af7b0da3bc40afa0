import ExcelJS from "exceljs";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { copyFile, copyForSheet, copyForWorkbook, writeCopy } from "../../src/pane/copy/makeCopy";
import { readSource, type Source } from "../../src/pane/copy/source";
import { keyAddresses } from "../../src/sheets/compose";
import { estimateBlock, estimateRows } from "../../src/sheets/estimate/block";
import { insertPlan } from "../../src/workbook/change/insert";
import { readRates } from "../../src/workbook/read/rates";
import { bedsOfEachWay } from "../bedsOfEachWay";
import type { HeadlessHost } from "../headlessHost";
import { insertRates, rateAddress } from "../insertRates";
import { createProductHost } from "../productHost";
import { hasLibreOffice, recalculated } from "../recalculate";

let host: HeadlessHost;
let source: Source;
let sheet: string;
let keys: ReadonlyMap<string, string>;

/** A block that follows the office's own rates, by their names. */
beforeAll(async () => {
  host = await createProductHost();
  const ratesSheet = await insertRates();
  await host.type({
    [`${ratesSheet}!${rateAddress("Rate_crew_hour")}`]: 57,
    [`${ratesSheet}!${rateAddress("Rate_waste")}`]: 0.1,
  });
  const { rates } = (await readRates())!;
  const bed = { ...bedsOfEachWay["rectangle, plain"]!, rates };
  const inserted = await insertPlan((at) => estimateBlock(bed, at), { kind: "new sheet", name: "Bed" });
  if (!inserted.done) throw new Error("a new sheet is free");
  sheet = inserted.sheetName;
  keys = keyAddresses(estimateRows(bed), { row: 0, column: 0 });
  source = await readSource("block");
});
afterAll(() => host.dispose());

const live = (key: string) => host.value(`'${sheet}'!${keys.get(key)}`);

describe("a copy of a block that follows the office's rates", () => {
  test("goes on following them in the same workbook", async () => {
    const { outside } = copyForSheet(source, "formulas", { kind: "new sheet" });
    expect(outside.map(({ what }) => what)).toEqual(expect.arrayContaining(["Rate_crew_hour", "Rate_waste"]));
    const written = await writeCopy(source, "formulas", { kind: "new sheet" });
    if (!written.done) throw new Error("a new sheet is free");
    const copied = (key: string) => host.value(`'${written.sheetName}'!${keys.get(key)}`);
    expect(copied("price")).toBeCloseTo(Number(live("price")), 9);
    const before = copied("price");
    await host.type({ [`Rates!${rateAddress("Rate_crew_hour")}`]: 75 });
    expect(copied("price")).not.toBe(before);
    expect(copied("price")).toBeCloseTo(Number(live("price")), 9);
    await host.type({ [`Rates!${rateAddress("Rate_crew_hour")}`]: 57 });
  });

  test("brings them along as values in a workbook of its own, and follows those", async () => {
    const { carried, plan } = copyForWorkbook(source, "formulas");
    expect(carried).toEqual(
      expect.arrayContaining([
        // What a list of the office can feed, such as the crew rate, comes as a number.
        { what: "Rate_edging_feet", value: 14 },
        { what: "Rate_waste", value: 0.1 },
      ]),
    );
    for (const content of plan.formulas.flat())
      if (String(content).startsWith("=")) expect(content).not.toMatch(/Rate_|Whose_|Rates!|BED\./);

    const book = new ExcelJS.Workbook();
    await book.xlsx.load((await copyFile(source, "formulas")).slice().buffer);
    const [copy] = book.worksheets;
    expect(copy!.getCell(keys.get("price")!).result).toBeCloseTo(Number(live("price")), 9);
    if (!hasLibreOffice()) return console.warn("LibreOffice is not on this machine: the file was not recalculated.");
    copy!.eachRow((row) => {
      if (row.getCell(1).value === "Rate_edging_feet") row.getCell(2).value = 20;
    });
    const [changed] = recalculated([new Uint8Array(await book.xlsx.writeBuffer())]);
    await book.xlsx.load(new Uint8Array(changed!).buffer);
    await host.type({ [`Rates!${rateAddress("Rate_edging_feet")}`]: 20 });
    expect(book.worksheets[0]!.getCell(keys.get("price")!).result).toBeCloseTo(Number(live("price")), 9);
  });
});
