import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { createHost, type HeadlessHost } from "../headlessHost";

let host: HeadlessHost;
beforeAll(async () => {
  host = await createHost();
});
afterAll(() => host.dispose());

const rangeAt = (context: Excel.RequestContext, address: string) =>
  context.workbook.worksheets.getActiveWorksheet().getRange(address);

describe("a range's looks", () => {
  test("read back as they were set, and leave what is in the cells alone", async () => {
    await Excel.run(async (context) => {
      const range = rangeAt(context, "A1:B2");
      range.formulas = [
        [1, "=A1*2"],
        ["text", ""],
      ];
      const { format } = range;
      format.fill.color = "#fbf0d9";
      format.font.color = "#5A3A00";
      format.font.bold = true;
      format.font.italic = true;
      format.font.size = 13;
      format.font.name = "Georgia";
      format.wrapText = true;
      format.horizontalAlignment = Excel.HorizontalAlignment.center;
      format.verticalAlignment = Excel.VerticalAlignment.top;
      format.indentLevel = 2;
      range.load("formulas,format,format/fill,format/font");
      await context.sync();
      expect(range.formulas).toEqual([
        [1, "=A1*2"],
        ["text", ""],
      ]);
      const { fill, font } = format;
      expect([fill.color, font.color, font.bold, font.italic, font.size, font.name]).toEqual([
        "#FBF0D9",
        "#5A3A00",
        true,
        true,
        13,
        "Georgia",
      ]);
      expect([format.wrapText, format.horizontalAlignment, format.verticalAlignment, format.indentLevel]).toEqual([
        true,
        "Center",
        "Top",
        2,
      ]);
    });
  });

  test("read as nothing in common where the cells differ, and as white where a fill was cleared", async () => {
    await Excel.run(async (context) => {
      const range = rangeAt(context, "D1:D2");
      range.getCell(0, 0).format.font.bold = true;
      range.getCell(0, 0).format.fill.color = "#112233";
      range.load("format/font/bold,format/fill/color");
      await context.sync();
      expect([range.format.font.bold, range.format.fill.color]).toEqual([null, ""]);
      range.format.fill.clear();
      range.load("format/fill/color");
      await context.sync();
      expect(range.format.fill.color).toBe("#FFFFFF");
    });
  });

  test("measure columns and rows in points", async () => {
    await Excel.run(async (context) => {
      const range = rangeAt(context, "F1:G1");
      range.format.columnWidth = 120;
      range.format.rowHeight = 30;
      range.load("format/columnWidth,format/rowHeight");
      await context.sync();
      expect([range.format.columnWidth, range.format.rowHeight]).toEqual([120, 30]);
    });
  });

  test("have borders on each edge, drawn once they are given a style, a weight or a color", async () => {
    await Excel.run(async (context) => {
      const range = rangeAt(context, "H1:I2");
      const bottom = range.format.borders.getItem(Excel.BorderIndex.edgeBottom);
      bottom.style = Excel.BorderLineStyle.continuous;
      bottom.weight = Excel.BorderWeight.medium;
      bottom.color = "#24413A";
      const below = rangeAt(context, "I2").format.borders.getItem("EdgeBottom").load("style,weight,color");
      const above = rangeAt(context, "I1").format.borders.getItem("EdgeBottom").load("style");
      await context.sync();
      expect([below.style, below.weight, below.color, above.style]).toEqual([
        "Continuous",
        "Medium",
        "#24413A",
        "None",
      ]);
    });
  });

  test("lose the lines inside, from whichever of two cells they were drawn", async () => {
    await Excel.run(async (context) => {
      const range = rangeAt(context, "K3:L4");
      rangeAt(context, "K4:L4").format.borders.getItem("EdgeTop").style = "Double";
      rangeAt(context, "L3:L4").format.borders.getItem("EdgeLeft").style = "Double";
      for (const side of ["InsideHorizontal", "InsideVertical"] as const)
        range.format.borders.getItem(side).style = "None";
      const read = range.getCellProperties({ format: { borders: { style: true } } });
      await context.sync();
      const styles = read.value.flat().flatMap(({ format }) => Object.values(format!.borders!));
      expect(styles.map(({ style }: Excel.CellBorder) => style)).toEqual(Array(16).fill("None"));
    });
  });

  test("are read and set cell by cell in one go", async () => {
    await Excel.run(async (context) => {
      const range = rangeAt(context, "K1:L1");
      range.getCell(0, 0).format.fill.color = "#112233";
      const asked = { format: { fill: { color: true }, font: { bold: true } } };
      const looks = range.getCellProperties(asked);
      expect(() => looks.value).toThrow(expect.objectContaining({ code: "ValueNotLoaded" }));
      await context.sync();
      expect(looks.value).toEqual([
        [
          { format: { fill: { color: "#112233" }, font: { bold: false } } },
          { format: { fill: { color: "#FFFFFF" }, font: { bold: false } } },
        ],
      ]);
      range.setCellProperties([[{ format: { font: { bold: true } } }, {}]]);
      const after = range.getCellProperties(asked);
      await context.sync();
      expect(after.value[0]?.map(({ format }) => [format?.fill?.color, format?.font?.bold])).toEqual([
        ["#112233", true],
        ["#FFFFFF", false],
      ]);
    });
  });
});

describe("merged cells", () => {
  test("are told of every range that touches them", async () => {
    await Excel.run(async (context) => {
      rangeAt(context, "A10:B11").merge();
      const touched = rangeAt(context, "B11:C12").getMergedAreasOrNullObject();
      const clear = rangeAt(context, "C12").getMergedAreasOrNullObject();
      touched.load("address,areaCount");
      await context.sync();
      expect([touched.address, touched.areaCount, clear.isNullObject]).toEqual(["Sheet1!A10:B11", 1, true]);
    });
  });
});

describe("rules that dress cells", () => {
  test("are added with their formula, read back, and taken out of the cells they are cleared from", async () => {
    await Excel.run(async (context) => {
      const range = rangeAt(context, "A20:A24");
      const { custom } = range.conditionalFormats.add(Excel.ConditionalFormatType.custom);
      custom.rule.formula = "=$A20>1";
      custom.format.fill.color = "#FFD9B0";
      custom.format.font.color = "#7A2600";
      range.conditionalFormats.load("items/id,items/type");
      await context.sync();
      const [rule] = range.conditionalFormats.items;
      rule?.custom.rule.load("formula");
      rule?.custom.format.fill.load("color");
      rangeAt(context, "A22").conditionalFormats.clearAll();
      const counts = ["A21", "A22", "A23"].map((at) => rangeAt(context, at).conditionalFormats.getCount());
      await context.sync();
      expect([range.conditionalFormats.items.length, rule?.type]).toEqual([1, "Custom"]);
      expect([rule?.custom.rule.formula, rule?.custom.format.fill.color]).toEqual(["=$A20>1", "#FFD9B0"]);
      expect(counts.map(({ value }) => value)).toEqual([1, 0, 1]);
    });
  });

  test("take no function of an add-in, as in the host", async () => {
    const run = Excel.run(async (context) => {
      const { custom } = rangeAt(context, "C20").conditionalFormats.add(Excel.ConditionalFormatType.custom);
      custom.rule.formula = "=BED.FEET(C20)>1";
      await context.sync();
    });
    await expect(run).rejects.toMatchObject({
      code: "InvalidArgument",
      debugInfo: { errorLocation: "ConditionalFormatRule.formula" },
    });
  });
});

describe("lists to choose from", () => {
  test("are set, told by their type, and cleared", async () => {
    await Excel.run(async (context) => {
      const range = rangeAt(context, "E20:E21");
      range.dataValidation.rule = { list: { inCellDropDown: true, source: "loam, clay" } };
      range.dataValidation.errorAlert = { showAlert: false, style: "Information", title: "", message: "" };
      const types = ["E20:E21", "E21:E22", "E22"].map((at) => rangeAt(context, at).dataValidation.load("type"));
      range.dataValidation.load("rule");
      await context.sync();
      expect(types.map(({ type }) => type)).toEqual(["List", "Inconsistent", "None"]);
      expect(range.dataValidation.rule.list?.source).toBe("loam,clay");
      rangeAt(context, "E21").dataValidation.clear();
      const after = ["E20", "E21"].map((at) => rangeAt(context, at).dataValidation.load("type"));
      await context.sync();
      expect(after.map(({ type }) => type)).toEqual(["List", "None"]);
    });
  });

  test("that are written out are no longer than 255 characters, as in the host", async () => {
    const run = Excel.run(async (context) => {
      rangeAt(context, "G20").dataValidation.rule = { list: { inCellDropDown: true, source: "x".repeat(256) } };
      await context.sync();
    });
    await expect(run).rejects.toMatchObject({ code: "InvalidArgument" });
  });
});

describe("pictures", () => {
  // A PNG of 2 by 1 pixels; 96 pixels are 72 points.
  const png = "iVBORw0KGgoAAAANSUhEUgAAAAIAAAABCAIAAAB7QOjdAAAADElEQVR42mNgYGAAAAAEAAHI6uv5AAAAAElFTkSuQmCC";

  test("come in their natural size, and keep their name, their words and their place", async () => {
    await Excel.run(async (context) => {
      const { shapes } = context.workbook.worksheets.getActiveWorksheet();
      const made = shapes.addImage(png);
      made.load("width,height,left,top");
      await context.sync();
      expect([made.width, made.height, made.left, made.top]).toEqual([1.5, 0.75, 0, 0]);
      made.name = "Plan";
      made.altTextDescription = "The bed in plan";
      made.left = 100;
      made.top = 50;
      made.width = 200;
      const found = shapes.getItemOrNullObject("Plan").load("left,top,width,height,altTextDescription");
      const none = shapes.getItemOrNullObject("Section");
      await context.sync();
      expect([found.left, found.top, found.width, found.height]).toEqual([100, 50, 200, 0.75]);
      expect([found.altTextDescription, none.isNullObject]).toEqual(["The bed in plan", true]);
      found.delete();
      const count = shapes.getCount();
      await context.sync();
      expect(count.value).toBe(0);
    });
  });

  test("span the cells that they are as wide as, on a new sheet whose columns were widened, too", async () => {
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.add("Wide");
      // Three columns of 150 points in place of the usual ones.
      sheet.getRange("A1:C1").format.columnWidth = 150;
      await context.sync();
      const made = sheet.shapes.addImage(png);
      made.width = 300;
      sheet.load("id");
      await context.sync();
      const { injector, library, workbook } = host.open;
      const [image] = host.open.workbook.getSheetBySheetId(sheet.id)?.getImages() ?? [];
      const drawing = injector.get(library.drawing.ISheetDrawingService).getDrawingByParam({
        unitId: workbook.getId(),
        subUnitId: sheet.id,
        drawingId: image!.getId(),
      });
      // 300 points end with the second column, where the third begins.
      const { column, columnOffset } = drawing!.sheetTransform.to;
      expect(column === 2 ? columnOffset : column === 1 ? columnOffset - 200 : Number.NaN).toBeCloseTo(0, 6);
    });
  });

  test("are PNG files and nothing else", async () => {
    const run = Excel.run(async (context) => {
      context.workbook.worksheets.getActiveWorksheet().shapes.addImage("PHN2Zy8+");
      await context.sync();
    });
    await expect(run).rejects.toMatchObject({ code: "InvalidArgument" });
  });
});
