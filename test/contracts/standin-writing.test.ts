import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { createHost, type HeadlessHost } from "../headlessHost";

// What is expected of the stand-in here is what the host's reference says of Range.values and Range.formulas.

let host: HeadlessHost;
beforeAll(async () => {
  host = await createHost();
});
afterAll(() => host.dispose());

/** Writes into a range of the first sheet in one run. */
async function write(address: string, given: unknown, property: "values" | "formulas" = "values"): Promise<void> {
  await Excel.run(async (context) => {
    context.workbook.worksheets.getActiveWorksheet().getRange(address)[property] =
      given as (typeof Excel.Range.prototype)["values"];
    await context.sync();
  });
}

describe("what is written", () => {
  test.each([
    ["too few rows", "A1:A3", [[1], [2]]],
    ["too many columns", "A1:B1", [[1, 2, 3]]],
    ["rows of different lengths", "A1:B2", [[1, 2], [3]]],
    ["a list that is no table", "A1:B1", [1, 2]],
    ["an object in a cell", "A1", [[{}]]],
  ])("is refused at sync with %s", async (_, address, given) => {
    await expect(write(address, given)).rejects.toMatchObject({
      code: "InvalidArgument",
      debugInfo: { errorLocation: "Range.values" },
    });
    expect(host.value("A1")).toBe("");
  });

  test("goes into every cell of the range where it is one value", async () => {
    await write("A10:B11", "same");
    expect(host.values("A10:B11").flat()).toEqual(["same", "same", "same", "same"]);
  });

  test("leaves a cell alone where it is null, and empties it where it is empty text", async () => {
    await write("C1:E1", [[1, "=1+1", 3]]);
    await write("C1:E1", [[null, null, ""]]);
    expect(host.values("C1:E1")).toEqual([[1, 2, ""]]);
    expect(host.formula("D1")).toBe("=1+1");
  });

  test("is a formula where it begins with =, by either property, and a value otherwise", async () => {
    await write("A20:B20", [["=2*3", 5]], "formulas");
    await write("C20:D20", [["=A20+B20", "plain"]], "values");
    expect(host.values("A20:D20")).toEqual([[6, 5, 11, "plain"]]);
    expect([host.formula("A20"), host.formula("B20"), host.formula("C20")]).toEqual(["=2*3", undefined, "=A20+B20"]);
  });

  test("takes the place of a formula, and a formula the place of a value", async () => {
    await write("F1", [["=1+1"]]);
    await write("F1", [[7]]);
    expect([host.value("F1"), host.formula("F1")]).toEqual([7, undefined]);
    await write("F1", [["=1+2"]]);
    expect([host.value("F1"), host.formula("F1")]).toEqual([3, "=1+2"]);
  });

  test.each([
    ["'=1+1", "=1+1"],
    ["'0042", "0042"],
    ["32' 6 1/2\"", "32' 6 1/2\""],
    ["4'6", "4'6"],
    ["4'", "4'"],
    ["4’6", "4’6"],
    ["18-6", "18-6"],
    ["18 6", "18 6"],
    ["12 6", "12 6"],
    ["4,6", "4,6"],
    ["6'-8\"", "6'-8\""],
    ["9.8 m", "9.8 m"],
    ["½ in", "½ in"],
  ])("stays text: %s", async (given, expected) => {
    await write("G1", [[given]]);
    expect(host.value("G1")).toBe(expected);
  });

  test.each([
    ["12.50", 12.5],
    ["1,234", 1234],
    ["8%", 0.08],
    ["$62.00", 62],
    ["TRUE", true],
    // 1 January 1900 is day 1 of the host's dates; 2026-03-02 is day 46083 (days since, and one for the leap day of
    // 1900 that the host counts, from memory).
    ["2026-03-02", 46_083],
  ])("is read as if it had been typed: %s", async (given, expected) => {
    await write("H1", [[given]]);
    expect(host.value("H1")).toBe(expected);
  });

  test("is text where the cell's format is that of text", async () => {
    await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getActiveWorksheet().getRange("I1");
      range.numberFormat = [["@"]];
      range.values = [["0042"]];
      await context.sync();
    });
    expect(host.value("I1")).toBe("0042");
  });

  test("keeps the number format that someone chose, and brings its own where no one did", async () => {
    await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getActiveWorksheet().getRange("J1:J2");
      range.getCell(0, 0).numberFormat = [["0.000"]];
      range.values = [["8%"], ["8%"]];
      range.load("numberFormat,text");
      await context.sync();
      expect(range.numberFormat).toEqual([["0.000"], ["0%"]]);
      expect(range.text).toEqual([["0.080"], ["8%"]]);
    });
  });

  test("may lie beyond what the grid held so far", async () => {
    await write("AD400", [["far"]]);
    expect(host.value("AD400")).toBe("far");
  });
});

describe("clear", () => {
  test("empties the cells of contents, of formats, or of both", async () => {
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getActiveWorksheet();
      const cells = ["L1", "L2", "L3"].map((address) => sheet.getRange(address));
      for (const cell of cells) {
        cell.values = [["text"]];
        cell.format.font.bold = true;
      }
      cells[0]?.clear(Excel.ClearApplyTo.contents);
      cells[1]?.clear(Excel.ClearApplyTo.formats);
      cells[2]?.clear();
      for (const cell of cells) cell.load("values,format/font/bold");
      await context.sync();
      expect(cells.map((cell) => [cell.values[0]?.[0], cell.format.font.bold])).toEqual([
        ["", true],
        ["text", false],
        ["", false],
      ]);
    });
  });
});

describe("copyFrom", () => {
  test("carries formulas with their relative references, formats, and fills a larger range", async () => {
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getActiveWorksheet();
      sheet.getRange("N1:O1").values = [[2, "=N1*$N$1"]];
      sheet.getRange("O1").format.fill.color = "#112233";
      sheet.getRange("N2:N3").values = [[3], [4]];
      sheet.getRange("O2:O3").copyFrom("O1");
      const copied = sheet.getRange("O2:O3").load("formulas,values,format/fill/color");
      sheet.getRange("P2").copyFrom(sheet.getRange("O2"), Excel.RangeCopyType.values);
      const values = sheet.getRange("P2").load("formulas,format/fill/color");
      await context.sync();
      expect(copied.formulas).toEqual([["=N2*$N$1"], ["=N3*$N$1"]]);
      expect(copied.values).toEqual([[6], [8]]);
      expect(copied.format.fill.color).toBe("#112233");
      expect([values.formulas, values.format.fill.color]).toEqual([[[6]], "#FFFFFF"]);
    });
  });
});

describe("rows of a sheet that is not in front", () => {
  const onBack = (work: (sheet: Excel.Worksheet) => void) =>
    Excel.run(async (context) => {
      work(context.workbook.worksheets.getItem("Back"));
      await context.sync();
    });
  beforeAll(async () => {
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.add("Back");
      sheet.getRange("A1:A4").values = [[1], [2], [3], [4]];
      sheet.getRange("B1").formulas = [["=A4*10"]];
      const { custom } = sheet.getRange("A3:A4").conditionalFormats.add("Custom");
      custom.rule.formula = "=A3>1";
      custom.format.fill.color = "#ff0000";
      context.workbook.worksheets.getActiveWorksheet().getRange("D5").select();
      await context.sync();
    });
  });
  const rules = () => {
    const { id } = host.grid.sheets.list().find(({ name }) => name === "Back")!;
    const whole = { sheetId: id, row: 0, column: 0, rowCount: 20, columnCount: 5 };
    return host.grid.rules.shadings(whole).map(({ area, rule }) => [area.row, area.rowCount, rule.formula]);
  };

  test("come in above others, whose formulas and color rules go along, and what is selected stays", async () => {
    const { selection } = host.grid;
    const selected = selection.get();
    await onBack((sheet) => void sheet.getRange("A2:A3").getEntireRow().insert("Down"));
    expect(host.values("Back!A1:A6").flat()).toEqual([1, "", "", 2, 3, 4]);
    expect([host.formula("Back!B1"), host.value("Back!B1")]).toEqual(["=A6*10", 40]);
    expect(rules()).toEqual([[4, 2, "=A5>1"]]);
    expect(selection.get()).toEqual(selected);
  });

  test("go with what is in them", async () => {
    await onBack((sheet) => sheet.getRange("A2:A4").getEntireRow().delete("Up"));
    expect(host.values("Back!A1:A4").flat()).toEqual([1, 3, 4, ""]);
    expect(host.formula("Back!B1")).toBe("=A3*10");
    expect(rules()).toEqual([[1, 2, "=A2>1"]]);
  });

  test("are moved as wholes alone", async () => {
    await expect(onBack((sheet) => void sheet.getRange("A2").insert("Down"))).rejects.toMatchObject({
      code: "InvalidArgument",
    });
  });
});
