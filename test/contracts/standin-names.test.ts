import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { createHost, type HeadlessHost } from "../headlessHost";

let host: HeadlessHost;
beforeEach(async () => {
  host = await createHost({
    office: {
      sheets: [
        { name: "Jobs", cells: { A1: 5, B1: "=Waste*2", B2: '=IFERROR(B1,"no rate")', C3: 7 } },
        { name: "My rates", cells: { A1: 3 } },
      ],
    },
  });
});
afterEach(() => host.dispose());

const inNames = (work: (names: Excel.NamedItemCollection, context: Excel.RequestContext) => void) =>
  Excel.run(async (context) => {
    work(context.workbook.names, context);
    await context.sync();
  });
const addWaste = (address = "A1") =>
  inNames((names, { workbook }) => names.add("Waste", workbook.worksheets.getItem("Jobs").getRange(address)));

describe("a name", () => {
  test("that is added later makes the formulas work that call it, and one that is gone leaves their text", async () => {
    expect(host.values("B1:B2")).toEqual([["#NAME?"], ["no rate"]]);
    await addWaste();
    expect(host.values("B1:B2")).toEqual([[10], [10]]);
    await host.type({ A1: 6 });
    expect(host.value("B1")).toBe(12);
    await inNames((names) => names.getItem("waste").delete());
    expect(host.values("B1:B2")).toEqual([["#NAME?"], ["no rate"]]);
    expect(host.formula("B1")).toBe("=Waste*2");
    await addWaste("C3");
    expect(host.value("B1")).toBe(14);
  });

  test("is read again in long formulas, too", async () => {
    await host.type({ D1: `=IF(ISNUMBER(Waste),Waste*2,"${"no rate was found for the waste ".repeat(3)}")` });
    expect(host.value("D1")).toMatch(/^no rate/);
    await addWaste();
    expect(host.value("D1")).toBe(10);
    await inNames((names) => names.getItem("Waste").delete());
    expect(host.value("D1")).toMatch(/^no rate/);
    await addWaste("C3");
    expect(host.value("D1")).toBe(14);
  });

  test("stands for a formula or a constant as well, and tells whether it stands for cells", async () => {
    await inNames((names) => {
      names.add("Rate_total", "=SUM('My rates'!$A$1:$A$3)*2");
      names.add("Rate_fixed", "=2*5");
      names.add("Rate_cell", "='My rates'!$A$1");
    });
    await host.type({ D1: "=Rate_total+Rate_fixed+Rate_cell" });
    // 2 × 3 + 10 + 3
    expect(host.value("D1")).toBe(19);
    await Excel.run(async (context) => {
      const { names } = context.workbook;
      names.load("items/name,items/formula,items/scope");
      const none = names.getItem("Rate_fixed").getRangeOrNullObject();
      const cell = names.getItem("Rate_cell").getRangeOrNullObject().load("address");
      await context.sync();
      expect(names.items.map(({ name, formula, scope }) => [name, formula, scope])).toEqual([
        ["Rate_total", "=SUM('My rates'!$A$1:$A$3)*2", "Workbook"],
        ["Rate_fixed", "=2*5", "Workbook"],
        ["Rate_cell", "='My rates'!$A$1", "Workbook"],
      ]);
      expect([none.isNullObject, cell.address]).toEqual([true, "'My rates'!A1"]);
    });
  });

  test("can be turned to other cells", async () => {
    await addWaste();
    await inNames((names) => {
      names.getItem("Waste").formula = "=Jobs!$C$3";
    });
    expect(host.value("B1")).toBe(14);
    await expect(
      inNames((names) => {
        names.getItem("Waste").formula = "Jobs!$C$3";
      }),
    ).rejects.toMatchObject({ code: "InvalidArgument" });
  });

  test("goes with its cells, and with the sheet's name", async () => {
    await addWaste();
    await inNames((names) => names.add("Rate_cell", "='My rates'!$A$1"));
    const { sheets } = host.grid;
    sheets.insertRows(sheets.activeId(), 0, 2);
    sheets.rename(sheets.list()[1]!.id, "Rates");
    await host.grid.settled();
    expect(host.grid.names.list().map(({ formula }) => formula)).toEqual(["=Jobs!$A$3", "=Rates!$A$1"]);
    await host.type({ A3: 8 });
    expect(host.value("B3")).toBe(16);
  });

  test("is kept over a reload", async () => {
    await addWaste();
    const kept = host.save();
    host.dispose();
    host = await createHost({ kept });
    await host.type({ A1: 9 });
    expect(host.value("B1")).toBe(18);
    await inNames((names) => names.getItem("Waste").delete());
    expect(host.value("B1")).toBe("#NAME?");
  });
});
